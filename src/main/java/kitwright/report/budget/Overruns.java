package kitwright.report.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.claim.ClaimStanding;
import kitwright.claim.ClaimStandings;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Table;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.KitItem;
import kitwright.ledger.Loan;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.ledger.Substitution;
import kitwright.money.Account;
import kitwright.money.Cause;
import kitwright.money.LineState;
import kitwright.money.Why;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.value.Money;

/** Why each line that is forecast over is over, and what of it a claim may bring back. */
public final class Overruns {
  private final Facts now;
  private final List<Why.Part> parts;
  private final Map<String, Set<String>> claims;

  private Overruns(Facts now) {
    this.now = now;
    this.parts = Why.of(now.ledger(), Account.on(now));
    this.claims = claims(now);
  }

  /** A heading and a table for each line that is forecast over; none where none is. */
  public static List<Block> blocks(Facts now) {
    Overruns overruns = new Overruns(now);
    List<Block> blocks = new ArrayList<>();
    Account.on(now).all().stream()
        .filter(line -> line.over().signum() > 0)
        .forEach(line -> blocks.addAll(overruns.line(line)));
    return blocks;
  }

  /** Each part of each such line. */
  public static Table all(Facts now) {
    Overruns overruns = new Overruns(now);
    return overruns.table(
        Account.on(now).all().stream()
            .filter(line -> line.over().signum() > 0)
            .flatMap(line -> overruns.own(line).stream())
            .map(overruns::row)
            .toList());
  }

  private List<Why.Part> own(LineState line) {
    return parts.stream()
        .filter(part -> part.line().equals(line.line()))
        .sorted(
            Comparator.comparing((Why.Part part) -> part.cause() == Cause.REST)
                .thenComparing(part -> part.amount().amount().negate()))
        .toList();
  }

  /** Why one line ends where it does, over or not; none where nothing is known. */
  public static List<Block> of(LineState line, Facts now) {
    Overruns overruns = new Overruns(now);
    return overruns.own(line).isEmpty() ? List.of() : overruns.line(line).subList(1, 2);
  }

  private List<Block> line(LineState line) {
    List<Why.Part> own = own(line);
    Money back =
        own.stream()
            .map(Why.Part::recoverable)
            .reduce(Money.zero(now.ledger().build().currency()), Money::plus);
    List<Row> rows = new ArrayList<>(own.stream().map(this::row).toList());
    rows.add(
        Row.row(
            Cell.none(),
            Cell.text("Over").strong(),
            Cells.signed(line.over()).strong(),
            Cells.amountOrNone(back).strong(),
            Cell.text("")));
    return List.of(Block.heading(3, line.title()), table(rows));
  }

  private Table table(List<Row> rows) {
    return new Table(
        "Why lines end over",
        Column.columns(
            Column.data("line"),
            Column.head("Cause"),
            Column.right("Adds"),
            Column.right("May come back"),
            Column.left("By")),
        rows);
  }

  private Row row(Why.Part part) {
    List<String> claims = part.recoverable().signum() == 0 ? List.of() : claims(part);
    return Row.row(
        Cell.text(part.line()),
        Cell.text(words(part)),
        Cells.signed(part.amount()),
        Cells.amountOrNone(part.recoverable()),
        Cell.ids(claims));
  }

  private String words(Why.Part part) {
    return switch (part.cause()) {
      case SHORTAGE -> part.of().map(id -> "missing: " + missing(id)).orElse("something missing");
      case SUBSTITUTION ->
          part.of().map(id -> "substitution: " + substitution(id)).orElse("a substitution");
      case REPAIR -> "making good: " + part.of().map(this::tool).orElse("a borrowed tool");
      case FORGOTTEN -> "not planned" + spends(part, Spend.Cause.FORGOTTEN);
      case PRICE -> "dearer than planned" + spends(part, Spend.Cause.PRICE);
      case QUANTITY -> "more than planned" + spends(part, Spend.Cause.QUANTITY);
      case CURRENCY -> "the rate since the budget was made";
      case REST ->
          part.amount().signum() > 0 ? "no record says why" : "less spent on what was planned";
    };
  }

  /** What a line's spends of a cause were for. */
  private String spends(Why.Part part, Spend.Cause cause) {
    List<String> names =
        Account.on(now).spendsOn(part.line()).stream()
            .filter(each -> each.cause().filter(cause::equals).isPresent())
            .filter(each -> each.because().isEmpty() && each.substitution().isEmpty())
            .map(each -> each.spend().what())
            .distinct()
            .toList();
    return names.isEmpty() ? "" : ": " + Say.list(names);
  }

  private String missing(String id) {
    return now.ledger()
        .<Shortage>find(Kind.SHORTAGES, id)
        .map(Shortage::item)
        .map(item -> now.ledger().kitItem(item).map(KitItem::what).orElse(item.id()))
        .orElse(id);
  }

  private String tool(String id) {
    return now.ledger().<Loan>find(Kind.BORROWED, id).map(Loan::tool).orElse(id);
  }

  private String substitution(String id) {
    return now.ledger()
        .<Substitution>find(Kind.SUBSTITUTIONS, id)
        .map(Substitution::why)
        .orElse(id);
  }

  /** The claims that ask back what a part has cost. */
  private List<String> claims(Why.Part part) {
    return part.of().map(id -> List.copyOf(claims.getOrDefault(id, Set.of()))).orElse(List.of());
  }

  /** The open claims that name a shortage, or a cost that it brought about, by its id. */
  private static Map<String, Set<String>> claims(Facts now) {
    Map<String, Set<String>> all = new HashMap<>();
    for (ClaimStanding claim : ClaimStandings.on(now).all()) {
      if (claim.settled().isEmpty()) {
        Stream.concat(
                claim.costs().stream().flatMap(cost -> cost.spend().because().stream()),
                claim.claim().shortages().stream())
            .forEach(
                shortage ->
                    all.computeIfAbsent(shortage.id(), id -> new LinkedHashSet<>())
                        .add(claim.claim().id()));
      }
    }
    return all;
  }
}
