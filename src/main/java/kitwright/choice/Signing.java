package kitwright.choice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Shortage;
import kitwright.substitution.LeavingOut;
import kitwright.value.Word;

/**
 * Who must agree before the part may be closed up.
 *
 * @param signers who may sign, by name; empty where it is signed already or nobody may
 * @param by the last day on which the held task can start without moving the end of the plan
 * @param lacks what stands in the way, each a clause; empty where it may be built
 */
public record Signing(List<String> signers, Optional<LocalDate> by, List<String> lacks) {
  public Signing {
    signers = List.copyOf(signers);
    lacks = List.copyOf(lacks);
  }

  /** Of a way out that is on record nowhere, so that nobody can have agreed. */
  static Signing withoutRecord(Shortage.Option option) {
    return new Signing(
        List.of(),
        Optional.empty(),
        List.of(
            option
                .substitution()
                .map(ref -> "no substitution " + ref.id() + " of this shortage is on record")
                .orElse("no substitution is on record for it")));
  }

  /** Of doing without a part on which much depends: whoever is entitled to its grade must agree. */
  static Optional<Signing> leavingOut(
      Shortage.Option option, Shortage shortage, Waiting waiting, Facts now) {
    if (option.way() != Shortage.Way.DO_WITHOUT) {
      return Optional.empty();
    }
    return LeavingOut.asked(shortage, now.ledger())
        .map(
            grade -> {
              boolean agreed =
                  shortage.chosen().filter(option::equals).isPresent()
                      && LeavingOut.beyond(shortage, now.ledger()).isEmpty();
              return agreed
                  ? new Signing(List.of(), waiting.neededBy(), List.of())
                  : new Signing(
                      LeavingOut.entitled(grade, now.day(), now.ledger()),
                      waiting.neededBy(),
                      List.of(
                          "nobody entitled to the grade "
                              + Word.key(grade)
                              + " has agreed to leave it out"));
            });
  }

  /** Whether nothing is lacking. */
  public boolean isDone() {
    return lacks.isEmpty();
  }
}
