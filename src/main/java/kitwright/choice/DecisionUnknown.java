package kitwright.choice;

import java.util.List;
import java.util.stream.Collectors;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Shortage;
import kitwright.value.Nearest;

/** Fires where a shortage is decided in a way that it does not list. */
public final class DecisionUnknown implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Shortage shortage : day.written().shortages()) {
      shortage
          .decided()
          .filter(
              decided ->
                  shortage.options().stream()
                      .noneMatch(option -> option.name().equals(decided.option())))
          .ifPresent(decided -> out.add(unknown(shortage, decided)));
    }
  }

  private Finding unknown(Shortage shortage, Shortage.Decision decided) {
    List<String> names = shortage.options().stream().map(Shortage.Option::name).toList();
    return warn(
        decided.at().of("option"),
        "The "
            + shortage.named()
            + " is decided for “"
            + decided.option()
            + "”, which it does not list.",
        "What the decision costs, and when it lets the work go on, is in no figure.",
        Nearest.to(decided.option(), names)
            .map(near -> "Did you mean “" + near + "”?")
            .orElse(
                names.isEmpty()
                    ? "List it under “options” with its kind, cost and day."
                    : "Name one of: "
                        + names.stream().distinct().collect(Collectors.joining(", "))
                        + "; or list it under “options”."),
        List.of(shortage.named()));
  }
}
