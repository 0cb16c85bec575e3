package kitwright.report.claim;

import static kitwright.document.Column.left;
import static kitwright.document.Column.right;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.choice.Choice;
import kitwright.choice.Dominated;
import kitwright.choice.Signing;
import kitwright.choice.Taken;
import kitwright.choice.Turning;
import kitwright.choice.WayOut;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.money.Lacks;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.shortage.ShortageStanding;
import kitwright.value.Money;
import kitwright.value.Ref;
import kitwright.value.Word;

/** The ways out of a shortage side by side, and the list of shortages that have any. */
public final class OptionsTold {
  private OptionsTold() {}

  /** The open shortages with their ways out. */
  public static Sheet list(Ledger ledger, List<ShortageStanding> open) {
    Table table =
        new Table(
            "Open shortages",
            Column.columns(
                Column.head("Shortage"), right("Open"), left("Ways out"), left("Decided")),
            open.stream().map(OptionsTold::row).toList());
    return new Sheet(
        "options.md",
        "options",
        Slots.none().sentence("build", ledger.build().name()).table("shortages", table));
  }

  private static Row row(ShortageStanding each) {
    List<String> ways = each.shortage().options().stream().map(Shortage.Option::name).toList();
    return Row.row(
        Cell.id(each.shortage().id()),
        Cells.qty(each.open()),
        Cell.several(ways.isEmpty() ? "none written down" : String.join(", ", ways), ways),
        Cell.text(each.shortage().decided().map(Shortage.Decision::option)));
  }

  /** The ways out of one. */
  public static Sheet of(Choice choice, Facts now) {
    WaysTold told = WaysTold.of(choice, now.ledger());
    Shortage shortage = choice.standing().shortage();
    Slots slots =
        Slots.none()
            .sentence("shortage", shortage.id())
            .sentence("unlisted", unlisted(choice))
            .value("open", Cells.qty(choice.standing().open()))
            .sentence(
                "missing",
                Say.so(choice.standing().open(), ShortagesReport.what(choice.standing())))
            .value("launch-if-here", Cells.spoken(choice.launchIfHere()))
            .value("needed-by", Cell.day(choice.neededBy()))
            .table(
                "ways",
                ways(choice),
                choice.ways().isEmpty() ? List.<Block>of() : List.of(sideBySide(choice, told)))
            .value(
                "lacking",
                Cell.several(String.join("; ", Lacks.ofForecast(now)), Lacks.ofForecast(now)))
            .list("notes", Inline.texts(told.notes()))
            .table("turning", turning(choice), bullets(told.turning()))
            .value(
                "decided",
                Cell.of(
                    told.decision(),
                    shortage
                        .decided()
                        .<Value>map(made -> new Value.Text(made.option()))
                        .orElseGet(Value.Nothing::new)));
    return new Sheet("options-" + shortage.id() + ".md", "ways-out", slots);
  }

  private static List<Block> bullets(List<String> sentences) {
    return sentences.isEmpty() ? List.of() : List.of(Block.bullets(Inline.texts(sentences)));
  }

  private static Table sideBySide(Choice choice, WaysTold told) {
    List<Column> columns = new ArrayList<>(List.of(Column.head("").named("measure")));
    choice.ways().forEach(way -> columns.add(right(way.name())));
    List<Row> rows = new ArrayList<>();
    for (WaysTold.Line line : told.lines()) {
      List<String> cells = new ArrayList<>(List.of(line.name()));
      cells.addAll(line.cells());
      rows.add(Row.row(cells.toArray(String[]::new)));
    }
    return new Table("The ways out side by side", columns, rows);
  }

  private static Table ways(Choice choice) {
    List<Map<String, Cell>> ways = choice.ways().stream().map(way -> way(way, choice)).toList();
    List<String> names = ways.isEmpty() ? List.of("name") : List.copyOf(ways.get(0).keySet());
    return new Table(
        "The ways out",
        names.stream().map(name -> left(name)).toList(),
        ways.stream().map(way -> new Row(List.copyOf(way.values()))).toList());
  }

  private static Map<String, Cell> way(WayOut way, Choice choice) {
    Map<String, Cell> cells = new LinkedHashMap<>();
    cells.put("name", Cell.text(way.name()));
    cells.put("cash-now", money(way.outlay().now()));
    cells.put("cost-low", money(way.outlay().cost().map(cost -> cost.low())));
    cells.put("cost-likely", money(way.outlay().cost().map(cost -> cost.likely())));
    cells.put("cost-high", money(way.outlay().cost().map(cost -> cost.high())));
    cells.put("forecast", money(way.outlay().forecast()));
    cells.put("claimable", Cells.money(way.outlay().claimable()));
    cells.put("own-hours", Cell.number("", way.outlay().hours()));
    cells.put("own-hours-worth", money(way.outlay().hoursWorth()));
    cells.put("cost-with-hours", money(way.outlay().withHours()));
    timing(way, cells);
    strength(way, cells);
    cells.put("sign-by", day(way.signing().flatMap(Signing::by)));
    cells.put("signers", texts(way.signing().map(Signing::signers).orElse(List.of())));
    cells.put("lacks", texts(way.signing().map(Signing::lacks).orElse(List.of())));
    cells.put("takes", Cell.of("", new Value.Rows(takes(way))));
    Optional<Dominated> beaten =
        choice.dominated().stream().filter(each -> each.way().equals(way.name())).findFirst();
    cells.put("beaten-by", Cell.text(beaten.map(Dominated::by)));
    cells.put("because", Cell.text(beaten.map(Dominated::reason)));
    return cells;
  }

  private static void timing(WayOut way, Map<String, Cell> cells) {
    cells.put("arrives", day(way.timing().arrives()));
    cells.put("leaves-missing", way.timing().rest().map(Cells::qty).orElseGet(Cell::none));
    cells.put("delays", Cell.text(way.timing().held().map(held -> held.task())));
    cells.put("delays-days", number(way.timing().held().map(held -> held.days())));
    cells.put("float-used", rounded(way.timing().held().map(held -> held.floatUsed())));
    cells.put("float-left", rounded(way.timing().held().map(held -> held.floatLeft())));
    cells.put("launch", day(way.timing().launch().map(launch -> launch.on())));
    cells.put("launch-later", number(way.timing().launch().map(launch -> launch.later())));
  }

  private static void strength(WayOut way, Map<String, Cell> cells) {
    cells.put(
        "strength",
        Cell.text(way.strength().flatMap(s -> s.verdict()).map(v -> Word.key(v.outcome()))));
    cells.put("governing", Cell.text(way.strength().flatMap(s -> s.governing())));
    cells.put(
        "margin",
        rounded(
            way.strength().filter(s -> s.margin().isPresent()).map(s -> s.margin().getAsDouble())));
    cells.put(
        "mass-ratio",
        rounded(way.strength().filter(s -> s.mass().isPresent()).map(s -> s.mass().getAsDouble())));
  }

  private static Table takes(WayOut way) {
    List<Row> rows = new ArrayList<>();
    for (Taken taken : way.taken()) {
      rows.add(
          Row.row(
              Cell.id(taken.thing()),
              Cells.qty(taken.qty()),
              taken.left().map(Cells::qty).orElse(Cell.none()),
              taken.lacking().map(Cells::qty).orElse(Cell.none()),
              texts(taken.losers())));
    }
    return new Table(
        "",
        Column.columns(
            left("thing"), left("qty"), left("left"), left("lacking"), left("meant-for")),
        rows);
  }

  private static Table turning(Choice choice) {
    List<Row> rows = new ArrayList<>();
    for (Turning each : choice.turning()) {
      rows.add(
          Row.row(
              Cell.text(each.way()),
              Cell.text(each.against()),
              money(each.lessCost()),
              money(each.belowHour()),
              money(each.aboveHour()),
              number(each.daysSooner()),
              money(each.dayWorth())));
    }
    return new Table(
        "What would turn the choice",
        Column.columns(
            left("way"),
            left("against"),
            left("cheaper-by"),
            left("hour-worth-below"),
            left("hour-worth-above"),
            left("days-sooner"),
            left("day-worth-above")),
        rows);
  }

  private static Cell money(Optional<Money> money) {
    return money.map(Cells::money).orElseGet(Cell::none);
  }

  private static Cell day(Optional<LocalDate> day) {
    return Cell.day(day);
  }

  private static Cell number(Optional<Long> number) {
    return number.map(Cell::number).orElseGet(Cell::none);
  }

  private static Cell rounded(Optional<Double> number) {
    return number
        .map(n -> Cell.number("", BigDecimal.valueOf(n).setScale(4, RoundingMode.HALF_UP)))
        .orElseGet(Cell::none);
  }

  private static Cell texts(List<String> texts) {
    return Cell.several("", texts);
  }

  /** Substitutions for the shortage that none of its ways out names. */
  private static String unlisted(Choice choice) {
    Set<String> named = new HashSet<>();
    choice.ways().forEach(way -> way.option().substitution().map(Ref::id).ifPresent(named::add));
    List<String> others =
        choice.standing().substitutions().stream()
            .filter(each -> !each.isWithdrawn())
            .map(each -> each.substitution().id())
            .filter(id -> !named.contains(id))
            .toList();
    return others.isEmpty()
        ? ""
        : "On record for it, and in no option: "
            + Say.list(others)
            + ". List it with {kind: substitute, substitution: "
            + others.get(0)
            + "} to see what it costs, when it is there and who must sign.";
  }
}
