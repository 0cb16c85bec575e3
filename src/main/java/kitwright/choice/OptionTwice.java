package kitwright.choice;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Shortage;

/** Fires where two ways out of a shortage have one name. */
public final class OptionTwice implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Shortage shortage : day.written().shortages()) {
      Set<String> names = new HashSet<>();
      shortage.options().stream()
          .filter(option -> !names.add(option.name()))
          .forEach(option -> out.add(twice(shortage, option)));
    }
  }

  private Finding twice(Shortage shortage, Shortage.Option option) {
    return warn(
        option.at().of(option.id().isPresent() ? "id" : "kind"),
        "Two ways out of the " + shortage.named() + " are called “" + option.name() + "”.",
        "A decision cannot tell them apart.",
        "Give each an “id” of its own.",
        List.of(shortage.named()));
  }
}
