package kitwright.substitution;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.assessment.Assessments;
import kitwright.assessment.Judging;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Assessment;
import kitwright.ledger.Evidence;
import kitwright.ledger.Facts;
import kitwright.ledger.Grade;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Seal;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.Condition;
import kitwright.ledger.Substitution.SignOff;
import kitwright.network.Headways;
import kitwright.value.Ref;

/**
 * Judges one substitution by the grade of its part. Structural: proposed by somebody named; an
 * assessment that asks for stiffness, strength and reserve, gives a reason for each limit below 1
 * and passes; then a signature of somebody entitled who neither proposed nor builds it, with a
 * letter. Systems and finish: a signature of somebody entitled; an assessment, where there is one,
 * must not fail.
 */
final class Judge {
  private final Ledger ledger;
  private final LocalDate today;
  private final Facts day;
  private final Headways headways;

  Judge(Facts day) {
    this.ledger = day.ledger();
    this.today = day.day();
    this.day = day;
    this.headways = Headways.on(day);
  }

  /** Asked only where something is assessed: most builds have no mechanics to load. */
  private Judging judging() {
    return Judging.on(day);
  }

  SubstitutionStanding standing(Substitution substitution) {
    Grading grading = Grading.of(substitution, ledger);
    Optional<Assessment> assessment = substitution.assessment().flatMap(ledger::assessment);
    Optional<Verdict> verdict = assessment.map(found -> judging().assessments().apply(found));
    List<Signature> signatures =
        lastWords(
            substitution.signOffs().stream()
                .map(signOff -> signature(signOff, substitution, grading.grade(), assessment))
                .toList());
    List<Lack> lacks = new ArrayList<>(lacksOfAssessment(grading.grade(), assessment, verdict));
    if (grading.grade() == Grade.STRUCTURAL && !OtherStuff.of(substitution, ledger).isEmpty()) {
      lacks.add(Lack.ASSESSED_OTHERWISE);
    }
    if (grading.grade() == Grade.STRUCTURAL && substitution.proposed().isEmpty()) {
      lacks.add(Lack.PROPOSER_UNKNOWN);
    }
    lacks.addAll(lacksOfSignatures(signatures));
    return new SubstitutionStanding(
        substitution,
        grading,
        state(substitution, lacks),
        verdict,
        signatures,
        lacks,
        lacks.isEmpty() ? List.of() : signers(substitution, grading.grade()),
        hold(substitution, signatures, lacks.isEmpty()));
  }

  /**
   * Of one signer the last statement counts, by its day, and of one day by its place; a later one
   * that only lacks its papers takes nothing back.
   */
  private List<Signature> lastWords(List<Signature> signatures) {
    List<Signature> all = new ArrayList<>();
    for (int i = 0; i < signatures.size(); i++) {
      SignOff signOff = signatures.get(i).signOff();
      boolean superseded = false;
      for (int j = 0; j < signatures.size(); j++) {
        SignOff other = signatures.get(j).signOff();
        boolean later =
            other.on().isAfter(signOff.on()) || (j > i && other.on().equals(signOff.on()));
        superseded |=
            later
                && signatures.get(j).saysOtherwise()
                && Persons.areOne(other.by(), signOff.by(), ledger);
      }
      all.add(superseded ? signatures.get(i).superseded() : signatures.get(i));
    }
    return all;
  }

  private List<Signer> signers(Substitution substitution, Grade grade) {
    return ledger.parties().stream()
        .filter(party -> Rights.maySign(party, grade, today))
        .map(party -> new Ref(party.id(), party.at().record()))
        .filter(
            party ->
                grade != Grade.STRUCTURAL
                    || (!proposed(party, substitution) && !builds(party, substitution)))
        .map(
            party ->
                new Signer(
                    ledger.party(party).orElseThrow(),
                    Statement.of(substitution, party, conditionsOf(party, substitution), ledger)))
        .toList();
  }

  /** The conditions of somebody's last signature: asked to sign anew, they would ask the same. */
  private static List<Condition> conditionsOf(Ref party, Substitution substitution) {
    return substitution.signOffs().stream()
        .filter(signOff -> signOff.by().id().equals(party.id()))
        .reduce((earlier, later) -> later)
        .map(SignOff::conditions)
        .orElse(List.of());
  }

  private boolean proposed(Ref party, Substitution substitution) {
    return substitution
        .proposed()
        .filter(proposal -> Persons.areOne(proposal.by(), party, ledger))
        .isPresent();
  }

  private SubstitutionStanding.State state(Substitution substitution, List<Lack> lacks) {
    if (substitution.withdrawn().isPresent()) {
      return SubstitutionStanding.State.WITHDRAWN;
    }
    return lacks.isEmpty()
        ? SubstitutionStanding.State.APPROVED
        : SubstitutionStanding.State.WAITING;
  }

  private static List<Lack> lacksOfAssessment(
      Grade grade, Optional<Assessment> assessment, Optional<Verdict> verdict) {
    boolean structural = grade == Grade.STRUCTURAL;
    if (assessment.isEmpty() || verdict.isEmpty()) {
      return structural ? List.of(Lack.NO_ASSESSMENT) : List.of();
    }
    List<Lack> lacks = new ArrayList<>();
    if (structural && !Asked.missing(assessment.get()).isEmpty()) {
      lacks.add(Lack.ASKS_TOO_LITTLE);
    }
    if (structural && !Asked.unexplained(assessment.get()).isEmpty()) {
      lacks.add(Lack.LIMIT_UNEXPLAINED);
    }
    if (verdict.get().fails()) {
      lacks.add(Lack.ASSESSMENT_FAILS);
    } else if (structural && !verdict.get().passes()) {
      lacks.add(Lack.ASSESSMENT_OPEN);
    }
    return lacks;
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
      SignOff signOff, Substitution substitution, Grade grade, Optional<Assessment> assessment) {
    List<Lack> lacks = new ArrayList<>();
    if (!Rights.maySign(signOff.by(), grade, signOff.on(), ledger)) {
      lacks.add(Lack.NOT_ENTITLED);
    }
    if (grade == Grade.STRUCTURAL) {
      lacks.addAll(lacksOfStructural(signOff, substitution));
    }
    lacks.addAll(lacksOfDays(signOff, substitution, assessment));
    if (signOff.covers().isEmpty() && grade != Grade.FINISH) {
      lacks.add(Lack.COVERS_NOTHING);
    }
    Statement statement = Statement.of(substitution, signOff, ledger);
    boolean current = signOff.covers().filter(statement.fingerprint()::matches).isPresent();
    boolean earlier =
        !current
            && signOff
                .covers()
                .filter(Fingerprint.ofFirstForm(substitution, ledger)::matches)
                .isPresent();
    if (signOff.covers().isPresent() && !current && !earlier) {
      lacks.add(Lack.STALE);
    }
    if (signOff.evidence().stream().anyMatch(this::isAltered)) {
      lacks.add(Lack.LETTER_ALTERED);
    }
    lacks.addAll(lacksOfKey(signOff, lacks.contains(Lack.STALE)));
    Optional<Seen> saw = Seen.of(signOff);
    Optional<Seen> now =
        assessment
            .flatMap(found -> Assessments.on(day).of(found.id()))
            .map(result -> Seen.of(result));
    boolean turned = !lacks.contains(Lack.STALE) && saw.isPresent() && saw.get().isTurned(now);
    if (turned) {
      lacks.add(Lack.VERDICT_TURNED);
    }
    lackOfConditions(signOff).ifPresent(lacks::add);
    return new Signature(signOff, lacks, statement, earlier);
  }

  private static List<Lack> lacksOfDays(
      SignOff signOff, Substitution substitution, Optional<Assessment> assessment) {
    List<Lack> lacks = new ArrayList<>();
    if (substitution.proposed().filter(it -> signOff.on().isBefore(it.on())).isPresent()) {
      lacks.add(Lack.BEFORE_PROPOSAL);
    }
    if (assessment.flatMap(Assessment::on).filter(signOff.on()::isBefore).isPresent()) {
      lacks.add(Lack.BEFORE_ASSESSMENT);
    }
    return lacks;
  }

  private Optional<Lack> lackOfConditions(SignOff signOff) {
    if (signOff.conditions().stream()
        .map(each -> judging().conditions().apply(each))
        .anyMatch(Verdict::fails)) {
      return Optional.of(Lack.CONDITION_UNMET);
    }
    return signOff.conditions().stream().anyMatch(this::cannotBeChecked)
        ? Optional.of(Lack.CONDITION_UNCHECKED)
        : Optional.empty();
  }

  /** Whoever has a key signs with it; of another statement than today’s nothing more is said. */
  private List<Lack> lacksOfKey(SignOff signOff, boolean stale) {
    boolean hasKey = ledger.party(signOff.by()).flatMap(Party::signingKey).isPresent();
    if (signOff.signature().isEmpty()) {
      return hasKey ? List.of(Lack.KEY_MISSING) : List.of();
    }
    if (stale) {
      return List.of();
    }
    return switch (hasKey ? ledger.seal(signOff) : Seal.BAD) {
      case GOOD -> List.of();
      case BAD -> List.of(Lack.KEY_FORGED);
      case NOT_CHECKED -> List.of(Lack.KEY_UNCHECKED);
    };
  }

  private List<Lack> lacksOfStructural(SignOff signOff, Substitution substitution) {
    List<Lack> lacks = new ArrayList<>();
    if (proposed(signOff.by(), substitution)) {
      lacks.add(Lack.BY_PROPOSER);
    }
    if (builds(signOff.by(), substitution)) {
      lacks.add(Lack.BY_BUILDER);
    }
    if (signOff.evidence().stream().noneMatch(piece -> piece.sha256().isPresent())) {
      lacks.add(Lack.NO_LETTER);
    }
    return lacks;
  }

  /** Whether somebody is the builder by another id, or is to do the held work. */
  private boolean builds(Ref signer, Substitution substitution) {
    boolean works =
        substitution.hold().flatMap(ledger::task).stream()
            .flatMap(task -> task.who().stream())
            .anyMatch(who -> Persons.areOne(who, signer, ledger));
    return works
        || ledger.party(signer).stream()
            .anyMatch(
                party ->
                    ledger.parties().stream()
                        .filter(other -> !other.id().equals(party.id()))
                        .filter(other -> !Rights.fits(other.role(), Grade.STRUCTURAL))
                        .anyMatch(other -> Persons.name(other).equals(Persons.name(party))));
  }

  /** Words alone are for a person to check; a measure that no section states is nobody’s. */
  private boolean cannotBeChecked(Condition condition) {
    return !condition.atLeast().isEmpty() && !judging().conditions().apply(condition).passes();
  }

  /** Whether a document is another than the recorded one, or is not there. */
  private boolean isAltered(Evidence piece) {
    Optional<String> found = ledger.evidence(piece).sha256();
    return piece.sha256().filter(recorded -> !found.equals(Optional.of(recorded))).isPresent();
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
