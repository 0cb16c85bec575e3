package kitwright.report;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import kitwright.claim.Standing;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.ledger.Facts;
import kitwright.ledger.Party;

/** Every claim with its age, the late ones first. */
final class ClaimsReport implements Report {
  @Override
  public String name() {
    return "claims";
  }

  @Override
  public String does() {
    return "claims with their ages, answers awaited and what they ask";
  }

  @Override
  public List<Sheet> sheets(Facts now) {
    List<Standing> open =
        order(
            kitwright.claim.Standings.on(now).all().stream().filter(ClaimsReport::isOpen).toList());
    List<Standing> ended =
        kitwright.claim.Standings.on(now).all().stream().filter(each -> !isOpen(each)).toList();
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .sentence("today", Say.day(now.day()))
            .sentence("summary", summary(open, ended))
            .block("open", open.isEmpty() ? new Block[0] : new Block[] {openTable(open)})
            .block("ended", ended.isEmpty() ? new Block[0] : new Block[] {endedTable(ended)});
    return List.of(new Sheet("claims.md", name(), slots));
  }

  private static boolean isOpen(Standing claim) {
    return claim.state() != Standing.State.SETTLED;
  }

  private static List<Standing> order(List<Standing> claims) {
    return claims.stream()
        .sorted(
            Comparator.comparing((Standing each) -> each.daysLeft().orElse(Long.MAX_VALUE - 1))
                .thenComparing(Standing::isDraft))
        .toList();
  }

  private static String summary(List<Standing> open, List<Standing> ended) {
    if (open.isEmpty() && ended.isEmpty()) {
      return "Nothing has been claimed.";
    }
    List<Standing> late = open.stream().filter(Standing::isOverdue).toList();
    long drafts = open.stream().filter(Standing::isDraft).count();
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

  private static Block openTable(List<Standing> claims) {
    return Block.table(
        Column.columns(
            Column.left("Claim"),
            Column.left("Missing"),
            Column.right("Days"),
            Column.left("Reply by"),
            Column.left("Stands"),
            Column.right("Goods asked, worth"),
            Column.right("Money asked"),
            Column.right("Granted"),
            Column.right("Come back"),
            Column.right("Still open")),
        claims.stream().map(ClaimsReport::openRow).toList());
  }

  private static Row openRow(Standing each) {
    return Row.row(
        Inline.code(each.claim().id()),
        Inline.text(missing(each)),
        Inline.text(each.age().map(Object::toString).orElse("not sent")),
        Inline.text(Cells.maybe(each.claim().replyBy())),
        Inline.text(stands(each)),
        Inline.text(ClaimSums.monies(each.goods())),
        Inline.text(ClaimSums.monies(each.asked())),
        Inline.text(ClaimSums.monies(each.granted())),
        Inline.text(ClaimSums.monies(each.paid())),
        Inline.text(ClaimSums.monies(each.open())));
  }

  static String against(Standing each) {
    return each.against().map(Party::name).orElse(each.claim().against().id());
  }

  private static String missing(Standing each) {
    return Say.list(
        each.lines().stream()
            .map(line -> Say.so(line.qty(), ShortagesReport.what(line.shortage())))
            .toList());
  }

  /** How a claim stands, in a few words. */
  static String stands(Standing each) {
    String late =
        each.daysLeft().filter(days -> days < 0).map(d -> ", late by " + Say.days(-d)).orElse("");
    return switch (each.state()) {
      case DRAFT -> "draft";
      case SENT -> "no word yet" + late;
      case ACKNOWLEDGED -> "received, not answered" + late;
      case ANSWERED ->
          each.promisedFor().map(day -> "promised for " + day).orElse("answered, not settled");
      case DISPUTED -> "disputed";
      case SETTLED ->
          each.settled().map(end -> Say.word(end.how()) + " on " + end.on()).orElse("settled");
    };
  }

  private static Block endedTable(List<Standing> claims) {
    return Block.table(
        Column.columns(
            Column.left("Claim"),
            Column.left("Missing"),
            Column.left("Ended"),
            Column.right("Money asked"),
            Column.right("Granted"),
            Column.right("Come back"),
            Column.right("Still open")),
        claims.stream()
            .map(
                each ->
                    Row.row(
                        Inline.code(each.claim().id()),
                        Inline.text(missing(each)),
                        Inline.text(stands(each)),
                        Inline.text(ClaimSums.monies(each.asked())),
                        Inline.text(ClaimSums.monies(each.granted())),
                        Inline.text(ClaimSums.monies(each.paid())),
                        Inline.text(ClaimSums.monies(each.open()))))
            .toList());
  }
}
