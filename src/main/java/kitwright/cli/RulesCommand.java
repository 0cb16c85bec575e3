package kitwright.cli;

import java.util.List;
import java.util.Optional;
import kitwright.check.RuleNames;
import kitwright.check.RulePages;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.finding.RulePage;
import kitwright.report.words.Sheet;
import kitwright.value.Nearest;

/** Tells what rules protect against. */
final class RulesCommand implements Command {
  private final Telling telling = new Telling();
  private Optional<String> rule = Optional.empty();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Tells what a rule protects against, with an example; without a name, lists all.",
        "For example: kitwright rules hold-point-passed");
    telling.declare(to);
    to.mayPlace("RULE", given -> rule = Optional.of(given), "Which.");
  }

  @Override
  public int run(Session session) {
    return telling.tell(rule.isPresent() ? page(rule.get()) : list(), session);
  }

  private static Sheet page(String rule) {
    RulePage page =
        RulePages.of(rule)
            .orElseThrow(
                () ->
                    Refusal.unknown(
                        "There is no rule “" + rule + "”.",
                        Nearest.ofWords(rule, RuleNames.all()),
                        "“kitwright rules” lists them all."));
    return new Sheet(
        rule + ".md",
        "rule",
        Slots.none()
            .sentence("rule", page.name())
            .sentence("summary", page.summary())
            .block("page", Block.prose(page.help(), 0)));
  }

  private static Sheet list() {
    List<RulePage> pages = RulePages.all();
    return new Sheet(
        "rules.md",
        "rules",
        Slots.none()
            .table(
                "rules",
                new Table(
                    "The rules",
                    Column.columns(
                        Column.head("Rule"), Column.left("What it finds").named("finds")),
                    pages.stream()
                        .map(page -> Row.row(Cell.text(page.name()), Cell.text(page.summary())))
                        .toList())));
  }
}
