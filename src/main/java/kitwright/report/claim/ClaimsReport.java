package kitwright.report.claim;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kitwright.claim.ClaimStanding;
import kitwright.claim.ClaimStandings;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Party;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Days;
import kitwright.value.Money;
import kitwright.value.Word;

/** Every claim with its age, the late ones first. */
public final class ClaimsReport {
  private ClaimsReport() {}

  public static List<Sheet> sheets(Facts now) {
    List<ClaimStanding> open =
        order(ClaimStandings.on(now).all().stream().filter(ClaimsReport::isOpen).toList());
    List<ClaimStanding> ended =
        ClaimStandings.on(now).all().stream().filter(each -> !isOpen(each)).toList();
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("today", Cells.spoken(now.day()))
            .sentence("summary", summary(open, ended))
            .table("open", openTable(open))
            .table("ended", endedTable(ended));
    return List.of(new Sheet("claims.md", "claims", slots));
  }

  private static boolean isOpen(ClaimStanding claim) {
    return claim.state() != ClaimStanding.State.SETTLED;
  }

  private static List<ClaimStanding> order(List<ClaimStanding> claims) {
    return claims.stream()
        .sorted(
            Comparator.comparing((ClaimStanding each) -> each.daysLeft().orElse(Long.MAX_VALUE - 1))
                .thenComparing(ClaimStanding::isDraft))
        .toList();
  }

  private static String summary(List<ClaimStanding> open, List<ClaimStanding> ended) {
    if (open.isEmpty() && ended.isEmpty()) {
      return "Nothing has been claimed.";
    }
    List<ClaimStanding> late = open.stream().filter(ClaimStanding::isOverdue).toList();
    long drafts = open.stream().filter(ClaimStanding::isDraft).count();
    List<String> against =
        Stream.concat(open.stream(), ended.stream()).map(ClaimsReport::against).distinct().toList();
    String text =
        Say.count(open.size() - drafts, "claim is", "claims are")
            + " with "
            + Say.list(against)
            + " and not settled, "
            + Say.count(ended.size(), "has ended.", "have ended.");
    if (!late.isEmpty()) {
      text +=
          " No answer in time to "
              + Say.list(
                  late.stream()
                      .map(e -> e.claim().id() + ", late by " + Say.days(-e.daysLeft().orElse(0L)))
                      .toList())
              + ".";
    }
    if (drafts > 0) {
      text +=
          " "
              + Say.count(drafts, "is a draft", "are drafts")
              + ": periods of notice run from the delivery, not from the draft.";
    }
    return text;
  }

  private static Table openTable(List<ClaimStanding> claims) {
    return new Table(
        "Open claims",
        Column.columns(
            Column.head("Claim"),
            Column.left("Missing"),
            Column.left("Reply by"),
            Column.left("Status"),
            Column.right("Asked").named("asks"),
            Column.right("Still open").named("still-open"),
            Column.data("days"),
            Column.data("state"),
            Column.data("goods"),
            Column.data("open-goods"),
            Column.data("money-asked"),
            Column.data("granted"),
            Column.data("come-back")),
        claims.stream().map(ClaimsReport::openRow).toList());
  }

  private static Row openRow(ClaimStanding each) {
    return Row.row(
        Cell.id(each.claim().id()),
        missing(each),
        Cell.day(each.claim().replyBy()),
        stands(each, stands(each)),
        Cell.text(asks(each.goods(), each.asked()))
            .with("goods", Value.of(each.goods()))
            .with("money", Value.of(each.asked())),
        Cell.sums(asks(each.openGoods(), each.open()), each.open()),
        each.age().map(Cell::number).orElseGet(Cell::none),
        Cell.text(Word.spoken(each.state())),
        monies(each.goods()),
        monies(each.openGoods()),
        monies(each.asked()),
        monies(each.granted()),
        monies(each.paid()));
  }

  /** Goods, and money beside them. */
  private static String asks(List<Money> worth, List<Money> sums) {
    String goods = worth.isEmpty() ? "" : "goods of " + Say.monies(worth);
    String money = sums.isEmpty() ? "" : Say.monies(sums);
    return goods.isEmpty() || money.isEmpty()
        ? goods + money + (goods.isEmpty() && money.isEmpty() ? Cells.NONE : "")
        : goods + "; " + money;
  }

  private static Cell monies(List<Money> all) {
    return Cell.sums(ClaimSums.monies(all), all);
  }

  public static String against(ClaimStanding each) {
    return each.against().map(Party::name).orElse(each.claim().against().id());
  }

  private static Cell missing(ClaimStanding each) {
    List<Value> qty = each.lines().stream().map(line -> Value.of(line.qty())).toList();
    List<Value> items =
        each.lines().stream()
            .<Value>map(line -> new Value.Id(line.shortage().shortage().item().id()))
            .toList();
    return Cell.text(
            Say.list(
                each.lines().stream()
                    .map(line -> Say.so(line.qty(), ShortagesReport.what(line.shortage())))
                    .toList()))
        .with("item", new Value.Several(items))
        .with(new Value.Several(qty).beside());
  }

  /** Words on how a claim stands, and the days that they tell. */
  static Cell stands(ClaimStanding each, String words) {
    return switch (each.state()) {
      case SENT, ACKNOWLEDGED -> Cell.text(words).with(due(each));
      case ANSWERED -> Cell.text(words).with("promised-for", each.promisedFor().or(each::lapsed));
      case SETTLED -> Cell.text(words).with("ended-on", new Value.Several(endedOn(each)));
      default -> Cell.text(words);
    };
  }

  /** The days left for the answer, below nothing where it is late, and its day. */
  static Map<String, Value> due(ClaimStanding each) {
    Map<String, Value> due = new LinkedHashMap<>();
    each.daysLeft()
        .ifPresent(days -> due.put("days-left", new Value.Figure(BigDecimal.valueOf(days))));
    each.claim().replyBy().ifPresent(day -> due.put("reply-by", new Value.Day(day)));
    return due;
  }

  private static List<Value> endedOn(ClaimStanding each) {
    return Stream.concat(
            each.settled().stream(),
            each.lines().stream().flatMap(line -> line.asking().settled().stream()))
        .map(Claim.Settlement::on)
        .distinct()
        .sorted()
        .<Value>map(Value.Day::new)
        .toList();
  }

  /** How a claim stands, in a few words. */
  public static String stands(ClaimStanding each) {
    String late = each.daysLeft().map(ClaimsReport::due).orElse("");
    return switch (each.state()) {
      case DRAFT -> "draft";
      case SENT -> "no word yet" + late;
      case ACKNOWLEDGED -> "received, not answered" + late;
      case ANSWERED ->
          each.promisedFor()
              .map(day -> "promised for " + day)
              .or(() -> each.lapsed().map(day -> "promised for " + day + ", which has passed"))
              .orElse("answered, no day promised");
      case DISPUTED -> "disputed";
      case REFUSED -> "refused, not settled";
      case SETTLED ->
          each.settled()
              .map(end -> Word.spoken(end.how()) + " on " + Days.named(end.on()))
              .orElseGet(() -> Say.list(ends(each)));
    };
  }

  /** How a claim ended of which each line has an end of its own. */
  private static List<String> ends(ClaimStanding each) {
    return each.lines().stream()
        .flatMap(line -> line.asking().settled().stream())
        .sorted(Comparator.comparing(Claim.Settlement::on))
        .map(end -> Word.spoken(end.how()) + " on " + Days.named(end.on()))
        .distinct()
        .toList();
  }

  private static String due(long days) {
    return days < 0
        ? ", late by " + Say.days(-days)
        : days == 0 ? ", due today" : ", due in " + Say.days(days);
  }

  private static Table endedTable(List<ClaimStanding> claims) {
    return new Table(
        "Ended claims",
        Column.columns(
            Column.head("Claim"),
            Column.left("Missing"),
            Column.left("Ended"),
            Column.right("Money asked"),
            Column.right("Come back"),
            Column.right("Still open"),
            Column.data("granted")),
        claims.stream()
            .map(
                each ->
                    Row.row(
                        Cell.id(each.claim().id()),
                        missing(each),
                        stands(each, stands(each)),
                        monies(each.asked()),
                        monies(each.paid()),
                        monies(each.open()),
                        monies(each.granted())))
            .toList());
  }
}
