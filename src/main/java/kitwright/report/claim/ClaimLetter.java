package kitwright.report.claim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.claim.ClaimStanding;
import kitwright.claim.ClaimStandings;
import kitwright.claim.Cost;
import kitwright.claim.Line;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Value;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.report.words.Amounts;
import kitwright.report.words.Cells;
import kitwright.report.words.FileName;
import kitwright.report.words.Names;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Money;
import kitwright.value.Word;

/** The letter to the supplier: what is missing, what it is worth, what is asked and by when. */
public final class ClaimLetter {
  private final ClaimStanding claim;
  private final Ledger ledger;
  private final LocalDate today;
  private final ClaimFile file;
  private final String waiting;
  private final List<Cost> costs;

  private ClaimLetter(ClaimStanding claim, Facts now) {
    this.claim = claim;
    this.ledger = now.ledger();
    this.today = now.day();
    this.file = ClaimFile.of(claim, now);
    this.waiting = WaitingCost.of(claim, now);
    this.costs = ClaimFile.costs(claim).toList();
  }

  /**
   * The letter of a claim, as it was on the day it was sent: what came later stands in {@link
   * ClaimSince}. A draft is told as of today.
   */
  public static Sheet of(ClaimStanding claim, Facts now) {
    Facts then = claim.isDraft() ? now : claim.claim().sent().map(now::on).orElse(now);
    ClaimStanding sent = ClaimStandings.on(then).of(claim.claim().id()).orElse(claim);
    return new Sheet(name(claim, now) + ".md", "claim", new ClaimLetter(sent, then).slots());
  }

  /** The name of a claim’s papers, without an ending. */
  public static String name(ClaimStanding claim, Facts now) {
    List<String> ids = now.written().ids(Kind.CLAIMS).stream().map(ClaimLetter::bare).toList();
    return "claim-" + FileName.of(bare(claim.claim().id()), ids);
  }

  private static String bare(String id) {
    return id.replaceFirst("^claim-", "");
  }

  /** Of a letter that goes out today, the day that its sending will write where none is said. */
  private Optional<LocalDate> replyBy() {
    return claim.isDraft()
        ? Optional.of(claim.claim().replyBy().orElse(Claim.usualReplyBy(today)))
        : claim.claim().replyBy();
  }

  private Slots slots() {
    return Slots.none()
        .value("day", Cells.said(claim.claim().sent().orElse(today)))
        .block("heads", Block.bullets(heads()))
        .sentence("to", ClaimsReport.against(claim))
        .sentence("from", new Names(ledger).builder())
        .sentence("opening", opening())
        .block("items", ClaimItems.table(claim.lines()))
        .value(
            "worth",
            Cell.text(worth())
                .with("goods", Value.of(claim.goods()))
                .with("money", Value.of(claim.asked())))
        .block("costs", costs.isEmpty() ? new Block[0] : new Block[] {costs()})
        .sentence("remedy", remedy())
        .value("reply-by", Cells.said(replyBy()))
        .sentence("then", claim.claim().then().map(ClaimLetter::sentence).orElse(""))
        .sentence("waiting", waiting)
        .block("evidence", file.table().toArray(Block[]::new))
        .block("history")
        .sentence("ended", "")
        .sentence("draft", claim.isDraft() ? "draft" : "");
  }

  public static String sentence(String text) {
    String start = Word.capital(text);
    return start.endsWith(".") ? start : start + ".";
  }

  private List<Inline> heads() {
    List<Inline> heads = new ArrayList<>();
    heads.add(
        Cells.fact(
            "To", ClaimsReport.against(claim) + with(claim.against().flatMap(Party::contact))));
    heads.add(
        Cells.fact("From", new Names(ledger).builder() + ", building " + ledger.build().name()));
    ledger.build().contract().ifPresent(number -> heads.add(Cells.fact("Contract", number)));
    if (!file.notes().isEmpty()) {
      heads.add(Cells.fact("Delivery notes", Say.list(file.notes())));
    }
    heads.add(Cells.fact("Our reference", claim.claim().id()));
    if (!file.received().isEmpty()) {
      heads.add(Cells.fact("Received", Say.list(file.received())));
    }
    if (!file.found().isEmpty()) {
      heads.add(Cells.fact("Found", Say.list(file.found())));
    }
    heads.add(
        Cells.fact(
            "Notified",
            Say.day(claim.claim().sent().orElse(today))
                + with(claim.claim().by().map(way -> "by " + way))));
    return heads;
  }

  private static String with(Optional<String> more) {
    return more.map(text -> ", " + text).orElse("");
  }

  private String opening() {
    return "We have counted what reached us and found that the following is missing or cannot be"
        + " used. It was promised in your packing list, and the build waits for it.";
  }

  private String worth() {
    List<Money> goods = claim.goods();
    List<Money> money = claim.asked();
    String ofGoods =
        goods.isEmpty()
            ? ""
            : "At the prices of the kit the goods that we ask for are worth "
                + Say.monies(goods)
                + ". ";
    String ofMoney =
        money.isEmpty()
            ? ""
            : "In money we ask for "
                + Say.monies(money)
                + (costs.isEmpty() ? "." : ", the costs below among it.");
    return (ofGoods + ofMoney + unpriced()).strip();
  }

  /** What is asked in money and has no price: the sum leaves it out, and shall not pass for all. */
  private String unpriced() {
    List<String> all =
        claim.lines().stream()
            .filter(line -> line.remedy() != Claim.Remedy.REPLACEMENT && line.asked().isEmpty())
            .filter(line -> line.remedy() != Claim.Remedy.COST && !line.qty().isNone())
            .map(line -> Say.so(line.qty(), ShortagesReport.what(line.shortage())))
            .toList();
    return all.isEmpty()
        ? ""
        : " The value of " + Say.list(all) + ", of which we have no price, is to be added.";
  }

  private Block costs() {
    Amounts amounts = Amounts.of(costs.stream().map(Cost::asked).toList());
    List<Row> rows =
        new ArrayList<>(
            costs.stream()
                .map(
                    cost ->
                        Row.row(
                            Cell.day(cost.spend().on()),
                            Cell.text(cost.spend().what() + share(cost)),
                            Cell.text(cost.spend().to().map(ledger::nameOf)),
                            amounts.cell(cost.asked())))
                .toList());
    rows.add(Cells.total(Cell.text("All"), Cell.text(""), Cell.text(""), amounts.total()));
    return Block.table(
        Column.columns(
            Column.left("On"), Column.left("What"), Column.left("To"), amounts.column("Amount")),
        rows);
  }

  /** Of a purchase of more than was missing, the part that is asked. */
  private static String share(Cost cost) {
    return cost.replaced()
        .map(part -> ", " + Say.qty(part) + " of " + cost.spend().qty().map(Say::qty).orElse(""))
        .orElse("");
  }

  private String remedy() {
    List<String> asked =
        claim.lines().stream().map(Line::remedy).distinct().map(this::asks).toList();
    return asked.isEmpty()
        ? ""
        : "We ask you "
            + Say.list(asked)
            + (claim.costs().isEmpty()
                ? "."
                : ", and to make good the costs that its absence has caused besides.");
  }

  private String asks(Claim.Remedy remedy) {
    String what =
        claim.lines().stream().map(Line::remedy).distinct().count() < 2
            ? "what is missing"
            : Say.list(
                claim.lines().stream()
                    .filter(line -> line.remedy() == remedy)
                    .map(line -> Say.so(line.qty(), ShortagesReport.what(line.shortage())))
                    .distinct()
                    .toList());
    return switch (remedy) {
      case REPLACEMENT -> "to send " + what + " at your cost";
      case CREDIT -> "to credit us with the value of " + what;
      case REFUND -> "to pay back the value of " + what;
      case PRICE_REDUCTION -> "to lower the price by the value of " + what;
      case COST -> "to pay what replacing " + what + " has cost us, instead of the goods";
    };
  }
}
