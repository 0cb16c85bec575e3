package kitwright.substitution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.ledger.Assessment;
import kitwright.ledger.Grade;
import kitwright.ledger.Ledger;
import kitwright.ledger.Section;
import kitwright.ledger.Substitution;
import kitwright.ledger.WeakLink;
import kitwright.value.Ref;
import kitwright.value.Word;

/**
 * How much hangs on a substitution: what it says itself, and never less than what it replaces,
 * holds or loads. What is assessed for a load, for strength or as a weak link is structural, unless
 * somebody entitled to structural work says otherwise.
 *
 * @param because why it is more than the substitution says, each a clause; empty where it is not
 * @param byLook whether it is more only by what its assessment asks, so that somebody entitled may
 *     say otherwise
 */
public record Grading(Grade grade, List<String> because, boolean byLook) {
  private static final Set<String> OF_STRENGTH =
      Set.of(
          "strength",
          "strength-across",
          "moment",
          "moment-across",
          "shear",
          "shear-across",
          "reserve",
          "proof",
          "weak-link");

  public Grading {
    because = List.copyOf(because);
  }

  /** The grade by which a substitution is judged on a day. */
  static Grading of(Substitution substitution, Ledger ledger) {
    Grade stated = substitution.grade();
    Grade grade = stated;
    List<String> because = new ArrayList<>();
    boolean byLook = true;
    for (Part part : parts(substitution, ledger).toList()) {
      if (part.grade().compareTo(stated) < 0) { // the gravest stands first
        because.add(part.clause());
        byLook &= part.look();
        grade = part.grade().compareTo(grade) < 0 ? part.grade() : grade;
      }
    }
    return new Grading(grade, because, byLook && !because.isEmpty());
  }

  /** Something that the substitution touches, with its grade. */
  private record Part(Grade grade, String clause, boolean look) {}

  private static Stream<Part> parts(Substitution substitution, Ledger ledger) {
    Stream<Part> replaced =
        substitution.insteadOf().item().flatMap(ledger::kitItem).stream()
            .flatMap(item -> part(item.grade(), "what it replaces, " + item.named() + ","));
    Stream<Part> held =
        substitution.hold().flatMap(ledger::task).stream()
            .flatMap(task -> part(task.grade(), "what it holds, " + task.named() + ","));
    Stream<Part> loaded =
        substitution.assessment().flatMap(ledger::assessment).stream()
            .flatMap(assessment -> loaded(assessment, substitution, ledger));
    return Stream.of(replaced, held, loaded).flatMap(parts -> parts);
  }

  private static Stream<Part> part(Optional<Grade> grade, String what) {
    return grade.stream()
        .map(there -> new Part(there, what + " is " + Word.key(there), /* look= */ false));
  }

  private static Stream<Part> loaded(
      Assessment assessment, Substitution substitution, Ledger ledger) {
    Stream<Part> sections =
        Stream.concat(
                Stream.of(assessment.designed(), assessment.built()).flatMap(Optional::stream),
                assessment.weakLink().stream().flatMap(WeakLink::parts))
            .flatMap(ref -> ledger.section(ref).stream())
            .flatMap((Section section) -> part(section.grade(), section.named()));
    boolean excepted =
        assessment.notStructural().filter(said -> counts(said, substitution, ledger)).isPresent();
    Stream<Part> looks =
        excepted
            ? Stream.empty()
            : structural(assessment).stream()
                .map(why -> new Part(Grade.STRUCTURAL, "its assessment " + why, /* look= */ true));
    return Stream.concat(sections, looks);
  }

  /** Why an assessment is of something structural; empty where nothing in it says so. */
  private static Optional<String> structural(Assessment assessment) {
    if (assessment.load().isPresent()) {
      return Optional.of("states a load");
    }
    if (assessment.weakLink().isPresent()) {
      return Optional.of("states a weak link");
    }
    return Stream.concat(
            assessment.require().keySet().stream(), assessment.allow().keySet().stream())
        .map(Ref::id)
        .filter(OF_STRENGTH::contains)
        .findFirst()
        .map(measure -> "asks for " + measure);
  }

  /**
   * The exception holds where somebody says so who may sign structural work and did not propose it.
   */
  private static boolean counts(
      Assessment.NotStructural said, Substitution substitution, Ledger ledger) {
    return Rights.maySign(said.by(), Grade.STRUCTURAL, said.on(), ledger)
        && substitution
            .proposed()
            .filter(proposal -> Persons.areOne(proposal.by(), said.by(), ledger))
            .isEmpty();
  }
}
