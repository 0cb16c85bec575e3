package kitwright.report.week;

import java.util.Optional;
import kitwright.daybook.Hours;
import kitwright.document.Inline;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Task;
import kitwright.report.words.Say;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Word;

/** What the public reads of tasks, phases, things and people. */
final class PublicNames {
  private final Ledger ledger;
  private final Spoken spoken;

  /** Names of a ledger, each noted as said. */
  PublicNames(Ledger ledger, Spoken spoken) {
    this.ledger = ledger;
    this.spoken = spoken;
  }

  /** The title that its author gave a task for the public. */
  Optional<String> title(Task task) {
    return task.publicly().map(title -> spoken.say(title, task.at().of("public"), task.allow()));
  }

  String phase(String phase) {
    return phase.equals(Hours.ELSEWHERE)
        ? phase
        : ledger.tasks().stream()
            .filter(task -> task.phase().filter(phase::equals).isPresent())
            .findFirst()
            .map(task -> spoken.say(phase, task.at().of("phase"), task.allow()))
            .orElse(Hours.ELSEWHERE);
  }

  /** The kit’s name of a thing, not the builder’s own for what lay about. */
  String kit(Ref item) {
    return ledger
        .kitItem(item)
        .map(each -> spoken.say(each.what(), each.at().of("what"), each.allow()))
        .orElse("something");
  }

  Inline soMany(Quantity qty, Ref item, String ending) {
    return Inline.text(Word.capital(Say.so(qty, kit(item)) + ending));
  }

  /** Who somebody is, without who it is. */
  String role(Ref by) {
    return ledger
        .party(by)
        .map(Party::role)
        .map(role -> "the " + Word.spoken(role))
        .orElse("somebody");
  }
}
