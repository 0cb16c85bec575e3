package kitwright.kit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Claim;
import kitwright.ledger.Cut;
import kitwright.ledger.Delivery;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Rule;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/** Fires where one thing is told in units that do not convert into each other. */
public final class UnitsApart implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Comparison comparison = new Comparison(day.written(), out);
    day.written().kit().forEach(comparison::price);
    day.written().deliveries().forEach(comparison::delivery);
    day.written().shortages().forEach(comparison::shortage);
    day.written().substitutions().forEach(comparison::substitution);
    day.written().tasks().forEach(comparison::task);
    day.written().spending().forEach(comparison::spend);
    day.written().log().forEach(comparison::log);
    day.written().cuts().forEach(comparison::cut);
    day.written().claims().forEach(comparison::claim);
  }

  /** Compares the quantities of one ledger with those of the things that they are of. */
  private final class Comparison {
    private final Ledger ledger;
    private final Findings out;

    Comparison(Ledger ledger, Findings out) {
      this.ledger = ledger;
      this.out = out;
    }

    void price(KitItem item) {
      item.price()
          .filter(any -> item.cost(item.qty()).isEmpty())
          .ifPresent(
              price ->
                  out.add(
                      apart(
                          item,
                          item.at().of("price"),
                          "The price is for one " + price.per().orElseThrow().symbol(),
                          item.qty(),
                          item)));
    }

    void delivery(Delivery delivery) {
      for (Delivery.Packed line : delivery.packed()) {
        item(line.item(), line.qty(), delivery, line.at().of("qty"));
      }
      for (Delivery.Counted line : delivery.counted()) {
        item(line.item(), line.qty(), delivery, line.at().of("qty"));
        line.damaged().ifPresent(qty -> item(line.item(), qty, delivery, line.at().of("damaged")));
        line.wrong().ifPresent(qty -> item(line.item(), qty, delivery, line.at().of("wrong")));
        line.undersize()
            .ifPresent(qty -> item(line.item(), qty, delivery, line.at().of("undersize")));
      }
      for (Delivery.SentBack line : delivery.sentBack()) {
        item(line.item(), line.qty(), delivery, line.at().of("qty"));
      }
    }

    void shortage(Shortage shortage) {
      item(shortage.item(), shortage.qty(), shortage, shortage.at().of("qty"));
    }

    void substitution(Substitution substitution) {
      Substitution.InsteadOf instead = substitution.insteadOf();
      instead
          .item()
          .ifPresent(
              ref -> item(ref, instead.qty(), substitution, substitution.at().of("instead-of")));
      for (Substitution.Take take : substitution.use()) {
        thing(take.item(), take.stock(), take.qty(), substitution, take.at().of("qty"));
      }
    }

    void task(Task task) {
      for (Task.Use use : task.uses()) {
        use.qty().ifPresent(qty -> thing(use.item(), use.stock(), qty, task, use.at().of("qty")));
      }
    }

    void spend(Spend spend) {
      spend
          .qty()
          .ifPresent(
              qty -> {
                Place at = spend.at().of("qty");
                thing(spend.item(), Optional.empty(), qty, spend, at);
                spend
                    .replaces()
                    .filter(any -> spend.item().isEmpty())
                    .ifPresent(ref -> asked(ref, qty, spend, at));
              });
    }

    void log(LogDay day) {
      for (LogDay.Used used : day.used()) {
        thing(used.item(), used.stock(), used.qty(), day, used.at().of("qty"));
      }
    }

    /** Pieces that were sawn up are counted. */
    void cut(Cut cut) {
      for (Cut.Taken taken : cut.used()) {
        Quantity pieces = new Quantity(BigDecimal.valueOf(taken.pieces()), Unit.EACH);
        thing(Optional.empty(), Optional.of(taken.stock()), pieces, cut, taken.at().of("pieces"));
      }
    }

    void claim(Claim claim) {
      for (Claim.Asked line : claim.asked()) {
        line.qty().ifPresent(qty -> asked(line.shortage(), qty, claim, line.at().of("qty")));
        for (Claim.Settlement end : line.settled()) {
          end.qty().ifPresent(qty -> asked(line.shortage(), qty, claim, end.at().of("qty")));
        }
      }
      for (Claim.Event event : claim.events()) {
        List<Ref> of = event.of().isEmpty() ? claim.shortages() : event.of();
        event
            .qty()
            .ifPresent(qty -> of.forEach(ref -> asked(ref, qty, claim, event.at().of("qty"))));
      }
    }

    private void asked(Ref ref, Quantity qty, Entry by, Place at) {
      ledger.shortage(ref).ifPresent(found -> compare(qty, found.qty(), found, by, at));
    }

    private void thing(Optional<Ref> item, Optional<Ref> stock, Quantity qty, Entry by, Place at) {
      item.ifPresent(ref -> item(ref, qty, by, at));
      stock.flatMap(ledger::stock).ifPresent(found -> compare(qty, found.amount(), found, by, at));
    }

    private void item(Ref ref, Quantity qty, Entry by, Place at) {
      ledger.kitItem(ref).ifPresent(found -> compare(qty, found.qty(), found, by, at));
    }

    private void compare(Quantity qty, Quantity own, Entry thing, Entry by, Place at) {
      if (!qty.convertsTo(own)) {
        out.add(apart(by, at, "Here stands " + qty, own, thing));
      }
    }
  }

  private Finding apart(Entry by, Place at, String written, Quantity own, Entry thing) {
    return stop(
        at,
        written + ", but " + thing.named() + " is reckoned in " + word(own.unit()) + ".",
        "Neither converts into the other, so this amount is left out of every sum.",
        mend(own.unit(), thing, by),
        List.of(by.named(), thing.named()).stream().distinct().toList());
  }

  private static String mend(Unit unit, Entry thing, Entry by) {
    String in = "in " + word(unit);
    if (by instanceof Cut) {
      return "Write what it took into the log of that day, " + in + ", and leave it out here.";
    }
    if (by instanceof Claim) {
      return "Write it "
          + in
          + "; an event that is about some of the shortages only names them"
          + " under “of”.";
    }
    return "Write it "
        + in
        + (thing instanceof KitItem ? ", or correct the item’s own unit." : ".");
  }

  private static String word(Unit unit) {
    return "“" + unit.symbol() + "”";
  }
}
