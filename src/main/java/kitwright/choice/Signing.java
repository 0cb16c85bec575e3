package kitwright.choice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Shortage;

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

  /** Whether nothing is lacking. */
  public boolean isDone() {
    return lacks.isEmpty();
  }
}
