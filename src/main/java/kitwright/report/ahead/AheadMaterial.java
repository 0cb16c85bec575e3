package kitwright.report.ahead;

import static kitwright.document.Column.columns;
import static kitwright.document.Column.head;
import static kitwright.document.Column.left;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Facts;
import kitwright.network.Learnt;
import kitwright.network.Plan;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.shortage.LookAhead;
import kitwright.shortage.Wanted;
import kitwright.takeoff.LearnedWaste;

/** Material ahead: what is not there on the day, what to count, what to order by when. */
public record AheadMaterial(Outlook outlook, Facts now) {
  /** The slots, behind others. */
  public Slots in(Slots slots) {
    List<Wanted> needs =
        LookAhead.on(now).all().stream().filter(each -> outlook.shows(each.task())).toList();
    List<Wanted> shorts =
        LookAhead.on(now).shortages().stream().filter(w -> outlook.shows(w.task())).toList();
    return slots
        .table("needs", needs(needs), shorts.isEmpty() ? List.of() : List.of(shorts(shorts)))
        .table("counts", counts())
        .table("orders", orders(LookAhead.on(now).orders()), ordersShown());
  }

  /** How sections came to what is needed, and what one's own waste has been. */
  Slots takenOff(Slots slots) {
    return slots
        .block("taken-off", takenOff().toArray(Block[]::new))
        .table("waste", learned())
        .table("pace", pace());
  }

  private static Table needs(List<Wanted> needs) {
    List<Column> columns = new ArrayList<>(columns(left("Task"), left("Thing"), left("On")));
    for (String name : List.of("qty", "missing", "short-on-the-day", "uncounted", "ready")) {
      columns.add(left(name));
    }
    return new Table(
        "Needs",
        columns,
        needs.stream()
            .map(
                each ->
                    Row.row(
                        Cell.id(each.task()),
                        Cell.text(each.thing().record()),
                        Cell.day(each.on()),
                        Cells.qty(each.qty()),
                        Cells.qty(each.missing()),
                        Cells.qty(each.shortOnTheDay()),
                        Cells.qty(each.uncounted()),
                        Cell.day(each.readyOn())))
            .toList());
  }

  private Table shorts(List<Wanted> shorts) {
    return new Table(
        "Material that is not there on the day",
        columns(left("On"), head("Missing"), left("Of"), left("For"), left("Comes")),
        shorts.stream()
            .map(
                each ->
                    Row.row(
                        Cell.day(each.on()),
                        Cell.text(Say.so(each.shortOnTheDay(), each.thing().what())),
                        each.qty().equals(each.shortOnTheDay())
                            ? Cell.none()
                            : Cells.qty(each.qty()),
                        Cell.text(Plan.on(now).name(each.task())),
                        Cell.text(comes(each) + dayless(each))))
            .toList());
  }

  /** What was sent, ordered or promised of it, and has no day that holds. */
  private String dayless(Wanted wanted) {
    return wanted.missing().isNone()
        ? ""
        : LookAhead.on(now).dayless(wanted.thing()).stream()
            .map(
                each ->
                    "; "
                        + Say.qty(each.qty())
                        + each.said()
                            .map(day -> " was to come by " + day + " and did not")
                            .orElse(" is to come, nobody says when")
                        + " ("
                        + each.by()
                        + ")")
            .collect(Collectors.joining());
  }

  private static String comes(Wanted wanted) {
    Optional<LocalDate> on =
        wanted.missing().isNone() ? wanted.readyOn() : wanted.cover().ordered();
    String order =
        on.map(day -> (wanted.missing().isNone() ? "by " : "if ordered today, by ") + day)
            .orElse("nobody sends it");
    return wanted.toCome().isEmpty() || wanted.missing().isNone()
        ? order
        : coming(wanted) + "; " + Say.qty(wanted.missing()) + " " + order;
  }

  /** What comes of it, where not all does. */
  private static String coming(Wanted wanted) {
    return wanted.toCome().stream()
        .map(
            draw ->
                Say.qty(wanted.thing().qty(draw.amount()))
                    + " by "
                    + draw.supply().arrives().orElseThrow())
        .collect(Collectors.joining(", "));
  }

  private Table counts() {
    return new Table(
        "Count before",
        columns(left("On"), head("Count"), left("For")),
        LookAhead.on(now).countBefore(outlook.last()).stream()
            .map(
                each ->
                    Row.row(
                        Cell.day(each.on()),
                        Cell.text(Say.so(each.uncounted(), each.thing().what())),
                        Cell.text(Plan.on(now).name(each.task()))))
            .toList());
  }

  private List<Block> ordersShown() {
    List<LookAhead.ToOrder> soon =
        LookAhead.on(now).orders().stream()
            .filter(each -> !each.order().orderBy().isAfter(outlook.last()))
            .toList();
    return soon.isEmpty() ? List.of() : List.of(orders(soon));
  }

  private Table orders(List<LookAhead.ToOrder> orders) {
    return new Table(
        "Last days to order",
        columns(
            left("Order by"),
            head("What").named("thing"),
            Column.data("qty"),
            left("Needed"),
            left("Ordered today, it comes").named("arrives")),
        orders.stream().map(this::order).toList());
  }

  private Row order(LookAhead.ToOrder each) {
    boolean late = each.order().orderBy().isBefore(now.day());
    return Row.row(
        Cell.day(each.order().orderBy()),
        Cell.of(
            Say.so(each.thing().qty(each.order().amount()), each.thing().what()),
            new Value.Text(each.thing().record())),
        Cells.qty(each.thing().qty(each.order().amount())),
        Cell.day(each.order().needed()),
        Cell.of(
            late ? each.order().arrives() + ", too late" : Cells.NONE,
            new Value.Day(each.order().arrives())));
  }

  private List<Block> takenOff() {
    List<Block> blocks = new ArrayList<>();
    String task = "";
    List<Inline> sums = new ArrayList<>();
    for (Wanted wanted : LookAhead.on(now).all()) {
      if (wanted.sums().isEmpty() || !outlook.shows(wanted.task())) {
        continue;
      }
      if (!wanted.task().equals(task)) {
        flush(sums, blocks);
        blocks.add(Block.heading(3, Plan.on(now).name(wanted.task())));
        task = wanted.task();
      }
      wanted.sums().forEach(sum -> sums.add(Inline.text(wanted.thing().what() + ": " + sum)));
    }
    flush(sums, blocks);
    return blocks;
  }

  private static void flush(List<Inline> sums, List<Block> blocks) {
    if (!sums.isEmpty()) {
      blocks.add(Block.bullets(List.copyOf(sums)));
      sums.clear();
    }
  }

  /** What finished work took, against what was thought: for the estimates of the rest. */
  private Table pace() {
    return new Table(
        "Your own pace so far",
        columns(
            head("Phase"),
            Column.right("Low"),
            Column.right("Likely"),
            Column.right("High"),
            Column.right("Tasks")),
        Learnt.of(now).stream()
            .map(
                each ->
                    Row.row(
                        Cell.text(each.phase()),
                        times(each.low()),
                        times(each.likely()),
                        times(each.high()),
                        Cell.number(each.tasks())))
            .toList());
  }

  private static Cell times(double ratio) {
    String shown = String.format(Locale.ROOT, "%.2f", ratio);
    return Cell.number("× " + shown, new BigDecimal(shown));
  }

  private Table learned() {
    return new Table(
        "Your own waste so far",
        columns(
            head("Of"),
            Column.right("Waste"),
            Column.right("Used"),
            Column.right("By the sum"),
            Column.right("Tasks")),
        LearnedWaste.of(now.ledger()).stream()
            .map(
                each ->
                    Row.row(
                        Cell.text(each.role().word()),
                        Cell.number(
                            String.format(
                                Locale.ROOT, "%.1f\u00a0%%", each.share().doubleValue() * 100),
                            each.share()),
                        Cells.qty(each.used()),
                        Cells.qty(each.net()),
                        Cell.number(each.tasks())))
            .toList());
  }
}
