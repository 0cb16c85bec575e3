package kitwright.substitution;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.assessment.Judging;
import kitwright.assessment.Verdict;
import kitwright.ledger.Assessment;
import kitwright.ledger.Grade;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.SignOff;
import kitwright.network.Headways;
import kitwright.value.Ref;

/**
 * Judges one substitution. Structural: an assessment that passes, then a signature of somebody
 * entitled who did not propose it. Systems and finish: a signature of somebody entitled; an
 * assessment, where there is one, must not fail.
 */
final class Judge {
  private final Ledger ledger;
  private final Judging judging;
  private final LocalDate today;
  private final Headways headways;

  Judge(Ledger ledger, Judging judging, LocalDate today) {
    this.ledger = ledger;
    this.judging = judging;
    this.today = today;
    this.headways = Headways.of(ledger, today);
  }

  Standing standing(Substitution substitution) {
    Fingerprint fingerprint = Fingerprint.of(substitution, ledger);
    Optional<Assessment> assessment = substitution.assessment().flatMap(ledger::assessment);
    Optional<Verdict> verdict = assessment.map(judging.assessments());
    List<Signature> signatures =
        substitution.signOffs().stream()
            .filter(signOff -> !signOff.on().isAfter(today))
            .map(signOff -> signature(signOff, substitution, assessment, fingerprint))
            .toList();
    List<Lack> lacks = new ArrayList<>(lacksOfAssessment(substitution.grade(), verdict));
    lacks.addAll(lacksOfSignatures(signatures));
    return new Standing(
        substitution,
        state(substitution, lacks),
        fingerprint,
        verdict,
        signatures,
        lacks,
        hold(substitution, signatures, lacks.isEmpty()));
  }

  private Standing.State state(Substitution substitution, List<Lack> lacks) {
    if (substitution.withdrawn().filter(day -> !day.isAfter(today)).isPresent()) {
      return Standing.State.WITHDRAWN;
    }
    return lacks.isEmpty() ? Standing.State.APPROVED : Standing.State.WAITING;
  }

  private static List<Lack> lacksOfAssessment(Grade grade, Optional<Verdict> verdict) {
    boolean needed = grade == Grade.STRUCTURAL;
    if (verdict.isEmpty()) {
      return needed ? List.of(Lack.NO_ASSESSMENT) : List.of();
    }
    return switch (verdict.get().outcome()) {
      case PASS -> List.of();
      case FAIL -> List.of(Lack.ASSESSMENT_FAILS);
      case CANNOT_TELL -> needed ? List.of(Lack.ASSESSMENT_OPEN) : List.of();
    };
  }

  private static Set<Lack> lacksOfSignatures(List<Signature> signatures) {
    if (signatures.stream().anyMatch(Signature::counts)) {
      return Set.of();
    }
    Set<Lack> lacks = new LinkedHashSet<>();
    signatures.forEach(signature -> lacks.addAll(signature.lacks()));
    return lacks.isEmpty() ? Set.of(Lack.UNSIGNED) : lacks;
  }

  private Signature signature(
      SignOff signOff,
      Substitution substitution,
      Optional<Assessment> assessment,
      Fingerprint fingerprint) {
    List<Lack> lacks = new ArrayList<>();
    Grade grade = substitution.grade();
    if (!isEntitled(signOff.by(), grade)) {
      lacks.add(Lack.NOT_ENTITLED);
    }
    if (grade == Grade.STRUCTURAL && isProposer(signOff, substitution)) {
      lacks.add(Lack.BY_PROPOSER);
    }
    if (assessment.flatMap(Assessment::on).filter(signOff.on()::isBefore).isPresent()) {
      lacks.add(Lack.BEFORE_ASSESSMENT);
    }
    if (signOff.covers().isEmpty() && grade != Grade.FINISH) {
      lacks.add(Lack.COVERS_NOTHING);
    }
    if (signOff.covers().filter(digits -> !fingerprint.matches(digits)).isPresent()) {
      lacks.add(Lack.STALE);
    }
    if (signOff.conditions().stream().map(judging.conditions()).anyMatch(Verdict::fails)) {
      lacks.add(Lack.CONDITION_UNMET);
    }
    return new Signature(signOff, lacks);
  }

  private boolean isEntitled(Ref party, Grade grade) {
    return ledger.party(party).stream()
        .flatMap(found -> found.maySign().stream())
        .anyMatch(right -> right.grade() == grade);
  }

  private static boolean isProposer(SignOff signOff, Substitution substitution) {
    return substitution
        .proposed()
        .filter(proposal -> proposal.by().id().equals(signOff.by().id()))
        .isPresent();
  }

  private HoldPoint hold(
      Substitution substitution, List<Signature> signatures, boolean mayBeBuilt) {
    Optional<Ref> held = substitution.hold();
    if (held.isEmpty()) {
      return new HoldPoint(
          held, HoldPoint.State.NONE, Optional.empty(), /* finished= */ false, Optional.empty());
    }
    Optional<Headways.Beginning> begun = headways.beginning(held.get());
    return new HoldPoint(
        held,
        begun
            .map(beginning -> begun(beginning, signatures, mayBeBuilt))
            .orElse(mayBeBuilt ? HoldPoint.State.RELEASED : HoldPoint.State.HOLDS),
        begun.flatMap(Headways.Beginning::on),
        headways.hasEnded(held.get()),
        begun.map(Headways.Beginning::at));
  }

  /** A beginning on a day that nothing tells may have been before the signature. */
  private static HoldPoint.State begun(
      Headways.Beginning beginning, List<Signature> signatures, boolean mayBeBuilt) {
    boolean inTime =
        signatures.stream()
            .filter(Signature::countedWhenGiven)
            .anyMatch(
                signature ->
                    beginning
                        .on()
                        .filter(day -> !day.isBefore(signature.signOff().on()))
                        .isPresent());
    if (!inTime) {
      return HoldPoint.State.PASSED;
    }
    return mayBeBuilt ? HoldPoint.State.RELEASED : HoldPoint.State.OVERTAKEN;
  }
}
