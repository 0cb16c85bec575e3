package kitwright.choice;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;

/** Fires where a way out names a substitution that answers another shortage. */
public final class OptionOfOtherShortage implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Shortage shortage : day.written().shortages()) {
      for (Shortage.Option option : shortage.options()) {
        option
            .substitution()
            .flatMap(day.written()::substitution)
            .filter(substitution -> !Choice.isOf(substitution, shortage))
            .ifPresent(substitution -> out.add(other(shortage, option, substitution)));
      }
    }
  }

  private Finding other(Shortage shortage, Shortage.Option option, Substitution substitution) {
    return stop(
        option.at().of("substitution"),
        "The way out “"
            + option.name()
            + "” of the "
            + shortage.named()
            + " names the "
            + substitution.named()
            + ", which is for "
            + substitution.shortage().map(ref -> ref.id()).orElse("another")
            + ".",
        "Its strength, mass and signatures are not shown for this way out.",
        "Name a substitution for this shortage, or correct “for” of the substitution.",
        List.of(shortage.named(), substitution.named()));
  }
}
