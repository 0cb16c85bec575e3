package kitwright.kit;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Stock;
import kitwright.value.Days;
import kitwright.value.Quantity;

/** Fires where the log, or cuts that are done, use up more than there was. */
public final class StockOverused implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (StockPosition position : Positions.on(day).allStock()) {
      String had = "there were only " + position.amount().told();
      examine(position.stock(), position.amount(), had, position.uses(), out);
    }
    for (Position position : Positions.on(day).all()) {
      String had =
          position.isCounted()
              ? "only " + position.good().told() + " were counted good"
              : "nobody has counted any";
      examine(position.item(), position.good(), had, position.uses(), out);
    }
  }

  /** Blames the entry with which it becomes too much. */
  private void examine(Entry thing, Quantity had, String how, List<Use> uses, Findings out) {
    Quantity used = Quantity.none(had.unit());
    for (Use use : uses) {
      boolean fine = used.compareAmount(had) <= 0;
      used = used.plus(use.qty());
      if (fine && used.compareAmount(had) > 0) {
        out.add(finding(thing, how, used, use, isLater(thing, use)));
      }
    }
  }

  /** Whether it came to be only after the day of its use. */
  private static boolean isLater(Entry thing, Use use) {
    return thing instanceof Stock stock && stock.since().filter(use.on()::isBefore).isPresent();
  }

  private Finding finding(Entry thing, String how, Quantity used, Use use, boolean later) {
    return stop(
        use.at(),
        "By "
            + Days.named(use.on())
            + ", "
            + used.told(thing.id())
            + " went into the work, but "
            + how
            + (later ? ", and its “since” is a later day." : "."),
        "What is left of it is told wrongly, and so is what must be bought.",
        "Correct what is recorded as used, or count and record what there really was"
            + (later ? "; correct “since” where it was there before." : "."),
        List.of(thing.named(), use.by().named()));
  }
}
