package kitwright.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.claim.Standing;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Spend;
import kitwright.value.Money;

/** The letter to the supplier: what is missing, what it is worth, what is asked and by when. */
public final class ClaimLetter {
  private final Standing claim;
  private final Ledger ledger;
  private final LocalDate today;
  private final ClaimFile file;
  private final String waiting;

  private ClaimLetter(Standing claim, Facts now) {
    this.claim = claim;
    this.ledger = now.ledger();
    this.today = now.day();
    this.file = ClaimFile.of(claim, now.ledger());
    this.waiting = WaitingCost.of(claim, now);
  }

  /** The letter of a claim. */
  public static Sheet of(Standing claim, Facts now) {
    String name = "claim-" + claim.claim().id().replaceFirst("^claim-", "");
    return new Sheet(
        name.replaceAll("[^\\p{L}\\p{N}._-]", "-") + ".md",
        "claim",
        new ClaimLetter(claim, now).slots());
  }

  private Slots slots() {
    return Slots.none()
        .sentence("day", Say.day(claim.claim().sent().orElse(today)))
        .block("heads", Block.bullets(heads()))
        .sentence("to", ClaimsReport.against(claim))
        .sentence("from", new Names(ledger).builder())
        .sentence("opening", opening())
        .block("items", ClaimItems.table(claim.lines()))
        .sentence("worth", worth())
        .block("costs", claim.costs().isEmpty() ? new Block[0] : new Block[] {costs()})
        .sentence("remedy", remedy())
        .sentence("reply-by", claim.claim().replyBy().map(Say::day).orElse(""))
        .sentence("then", claim.claim().then().map(ClaimLetter::sentence).orElse(""))
        .sentence("waiting", waiting)
        .block("evidence", file.table().toArray(Block[]::new))
        .block("history", history().toArray(Block[]::new))
        .sentence(
            "ended",
            claim.settled().map(end -> Say.word(end.how()) + " on " + Say.day(end.on())).orElse(""))
        .sentence("draft", claim.isDraft() ? "draft" : "");
  }

  private static String sentence(String text) {
    String start = Say.capital(text);
    return start.endsWith(".") ? start : start + ".";
  }

  private List<Inline> heads() {
    List<Inline> heads = new ArrayList<>();
    heads.add(
        head("To", ClaimsReport.against(claim) + with(claim.against().flatMap(Party::contact))));
    heads.add(head("From", new Names(ledger).builder() + ", building " + ledger.build().name()));
    ledger.build().contract().ifPresent(number -> heads.add(head("Contract", number)));
    if (!file.notes().isEmpty()) {
      heads.add(head("Delivery notes", Say.list(file.notes())));
    }
    heads.add(head("Our reference", claim.claim().id()));
    if (!file.received().isEmpty()) {
      heads.add(head("Received", Say.list(file.received())));
    }
    if (!file.found().isEmpty()) {
      heads.add(head("Found", Say.list(file.found())));
    }
    heads.add(
        head(
            "Notified",
            claim
                .claim()
                .sent()
                .map(day -> Say.day(day) + with(claim.claim().by().map(way -> "by " + way)))
                .orElse("with this letter")));
    return heads;
  }

  private static String with(Optional<String> more) {
    return more.map(text -> ", " + text).orElse("");
  }

  private static Inline head(String name, String text) {
    return Inline.together(Inline.strong(name), Inline.text(": " + text));
  }

  private String opening() {
    return "We have counted what reached us and found that the following is missing or cannot be"
        + " used. It was promised in your packing list, and the build waits for it.";
  }

  private String worth() {
    List<Money> total = claim.total();
    return total.isEmpty()
        ? ""
        : "At the prices of the kit"
            + (claim.costs().isEmpty() ? "" : " and with the costs below")
            + " this comes to "
            + Say.monies(total)
            + ".";
  }

  private Block costs() {
    Amounts amounts = Amounts.of(claim.costs().stream().map(Spend::amount).toList());
    List<Row> rows =
        new ArrayList<>(
            claim.costs().stream()
                .map(
                    spend ->
                        Row.row(
                            spend.on().toString(),
                            spend.what(),
                            Cells.maybe(spend.to().map(ledger::nameOf)),
                            amounts.cell(Optional.of(spend.amount()))))
                .toList());
    rows.add(Cells.total("All", "", "", amounts.total()));
    return Block.table(
        Column.columns(
            Column.left("On"), Column.left("What"), Column.left("To"), amounts.column("Amount")),
        rows);
  }

  private String remedy() {
    String asked =
        switch (claim.claim().remedy()) {
          case REPLACEMENT -> "We ask you to send what is missing at your cost";
          case CREDIT -> "We ask you to credit us with the value of what is missing";
          case REFUND -> "We ask you to pay back the value of what is missing";
          case PRICE_REDUCTION -> "We ask you to lower the price by the value of what is missing";
          case COST -> "We ask you to pay what replacing what is missing has cost us";
        };
    return asked
        + (claim.costs().isEmpty()
            ? "."
            : ", and to make good the costs that its absence has caused.");
  }

  private List<Block> history() {
    List<Row> rows = new ArrayList<>();
    claim
        .claim()
        .sent()
        .filter(day -> !day.isAfter(today))
        .ifPresent(day -> rows.add(Row.row(day.toString(), "sent", "this claim")));
    claim.events().forEach(event -> rows.add(event(event)));
    claim
        .settled()
        .ifPresent(
            end ->
                rows.add(
                    Row.row(
                        end.on().toString(),
                        Say.word(end.how()),
                        end.amount().map(Say::money).orElse("the claim is closed"))));
    return rows.isEmpty()
        ? List.of()
        : List.of(
            Block.table(
                Column.columns(Column.left("On"), Column.left("What"), Column.left("In words")),
                rows));
  }

  private static Row event(Claim.Event event) {
    String expect = event.expect().map(day -> "for " + day).orElse("");
    String text = event.text().orElse("");
    return Row.row(
        event.on().toString(),
        Say.word(event.what()),
        text.isEmpty() || expect.isEmpty() ? text + expect : text + ", " + expect);
  }
}
