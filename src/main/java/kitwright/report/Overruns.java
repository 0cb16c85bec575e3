package kitwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.ledger.Claim;
import kitwright.ledger.KitItem;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.ledger.Substitution;
import kitwright.money.LineState;
import kitwright.money.Valued;
import kitwright.value.Money;
import kitwright.value.Ref;

/** Why each line that is forecast over is over, and what of it a claim may bring back. */
final class Overruns {
  /** A cause, what it adds to the line, and where it may come back from. */
  private record Cause(String what, Money adds, Money recoverable, List<String> claims) {}

  private final Situation now;
  private final Map<String, Claim> claimOf = new LinkedHashMap<>();

  private Overruns(Situation now) {
    this.now = now;
    now.claims()
        .all()
        .forEach(
            each -> each.costs().forEach(spend -> claimOf.putIfAbsent(spend.id(), each.claim())));
  }

  /** A heading and a table for each line that is forecast over; none where none is. */
  static List<Block> blocks(Situation now) {
    Overruns overruns = new Overruns(now);
    List<Block> blocks = new ArrayList<>();
    now.account().all().stream()
        .filter(line -> line.over().signum() > 0)
        .forEach(line -> blocks.addAll(overruns.line(line)));
    return blocks;
  }

  private List<Block> line(LineState line) {
    List<Cause> causes = causes(line);
    Money known = causes.stream().map(Cause::adds).reduce(zero(), Money::plus);
    Money rest = line.over().minus(known);
    if (rest.signum() != 0) {
      causes.add(
          new Cause(
              rest.signum() > 0 ? "no record says why" : "less spent on the rest of the line",
              rest,
              zero(),
              List.of()));
    }
    causes.sort(Comparator.comparing((Cause cause) -> cause.adds().amount()).reversed());
    Money back = causes.stream().map(Cause::recoverable).reduce(zero(), Money::plus);
    List<Row> rows = new ArrayList<>(causes.stream().map(Overruns::row).toList());
    rows.add(
        Cells.total(
            "Over",
            Say.signed(line.over()),
            back.signum() == 0 ? Cells.NONE : Say.amount(back),
            ""));
    return List.of(
        Block.heading(3, line.title()),
        Block.table(
            Column.columns(
                Column.left("Cause"),
                Column.right("Adds"),
                Column.right("May come back"),
                Column.left("By")),
            rows));
  }

  private static Row row(Cause cause) {
    return Row.row(
        cause.what(),
        Say.signed(cause.adds()),
        cause.recoverable().signum() == 0 ? Cells.NONE : Say.amount(cause.recoverable()),
        String.join(", ", cause.claims()));
  }

  private Money zero() {
    return Money.zero(now.home());
  }

  private List<Cause> causes(LineState line) {
    Map<String, List<Valued>> byWords = new LinkedHashMap<>();
    now.account()
        .spendsOn(line.line())
        .forEach(
            each ->
                words(each.spend())
                    .ifPresent(
                        words ->
                            byWords.computeIfAbsent(words, any -> new ArrayList<>()).add(each)));
    List<Cause> causes = new ArrayList<>();
    byWords.forEach((words, spends) -> causes.add(cause(words, spends)));
    if (line.waysOut().signum() != 0) {
      causes.add(new Cause("getting round open shortages", line.waysOut(), zero(), List.of()));
    }
    if (line.byRate().signum() != 0) {
      causes.add(new Cause("the rate since the budget was made", line.byRate(), zero(), List.of()));
    }
    return causes;
  }

  private Cause cause(String words, List<Valued> spends) {
    List<Valued> asked =
        spends.stream()
            .filter(each -> each.spend().state() != Spend.State.REFUNDED)
            .filter(each -> claimOf.containsKey(each.spend().id()))
            .toList();
    return new Cause(
        words,
        // what the rate added has a row of its own
        spends.stream().map(Overruns::planned).reduce(zero(), Money::plus),
        asked.stream().map(Valued::counted).reduce(zero(), Money::plus),
        asked.stream().map(each -> claimOf(each.spend())).distinct().toList());
  }

  private static Money planned(Valued each) {
    return each.spend().state() == Spend.State.REFUNDED ? each.planned().negated() : each.planned();
  }

  private String claimOf(Spend spend) {
    return Optional.ofNullable(claimOf.get(spend.id())).map(Claim::id).orElse("");
  }

  /** What a spend says of why it was; empty for what was planned. */
  private Optional<String> words(Spend spend) {
    if (spend.because().isPresent()) {
      return spend.because().map(ref -> "missing: " + missing(ref));
    }
    if (spend.substitution().isPresent()) {
      return spend
          .substitution()
          .map(
              ref ->
                  "substitution: "
                      + now.ledger().substitution(ref).map(Substitution::why).orElse(ref.id()));
    }
    return spend
        .cause()
        .map(
            cause ->
                switch (cause) {
                  case SHORTAGE -> "a shortage";
                  case SUBSTITUTION -> "a substitution";
                  case PRICE -> "dearer than planned: " + spend.what();
                  case QUANTITY -> "more than planned: " + spend.what();
                  case FORGOTTEN -> "not thought of: " + spend.what();
                });
  }

  private String missing(Ref ref) {
    return now.ledger()
        .shortage(ref)
        .map(Shortage::item)
        .flatMap(item -> now.ledger().kitItem(item))
        .map(KitItem::what)
        .orElse(ref.id());
  }
}
