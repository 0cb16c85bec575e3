package kitwright.report.claim;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.claim.ClaimStanding;
import kitwright.claim.Line;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Slots;
import kitwright.document.Value;
import kitwright.ledger.Facts;
import kitwright.report.words.Cells;
import kitwright.report.words.Names;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.value.Days;
import kitwright.value.Word;

/** What came after a claim was sent: a page for the builder, and a letter that reminds of it. */
public final class ClaimSince {
  private ClaimSince() {}

  /** The page: correspondence, and what is asked, granted, paid and still open. */
  public static Sheet page(ClaimStanding claim, Facts now) {
    return new Sheet(
        ClaimLetter.name(claim, now) + "-since.md",
        "claim-since",
        Slots.none()
            .sentence("claim", claim.claim().id())
            .sentence("to", ClaimsReport.against(claim))
            .value("today", Cells.spoken(now.day()))
            .value(
                "stands",
                ClaimsReport.stands(claim, Word.capital(ClaimsReport.stands(claim)) + "."))
            .block("lines", ClaimSums.table(claim))
            .value("sums", ClaimSums.told(claim))
            .block("history", ClaimHistory.of(claim).toArray(Block[]::new)));
  }

  /** The letter that reminds the supplier, written from the history. */
  public static Sheet reminder(ClaimStanding claim, Facts now) {
    List<Line> open = claim.lines().stream().filter(line -> !line.isOver()).toList();
    return new Sheet(
        ClaimLetter.name(claim, now) + "-reminder-" + now.day() + ".md",
        "claim-reminder",
        Slots.none()
            .value("day", Cells.said(now.day()))
            .sentence("claim", claim.claim().id())
            .sentence("to", ClaimsReport.against(claim))
            .sentence("from", new Names(now.ledger()).builder())
            .value("sent", Cells.said(claim.claim().sent()))
            .value(
                "late",
                Cell.text(late(claim))
                    .with(late(claim).isEmpty() ? Map.of() : ClaimsReport.due(claim)))
            .block("history", ClaimHistory.of(claim).toArray(Block[]::new))
            .block("items", open.isEmpty() ? new Block[0] : new Block[] {ClaimItems.table(open)})
            .value(
                "sums",
                Cell.text(claim.open().isEmpty() ? "" : Say.monies(claim.open()))
                    .with(Value.of(claim.open()).beside()))
            .sentence("then", claim.claim().then().map(ClaimLetter::sentence).orElse("")));
  }

  private static String late(ClaimStanding claim) {
    return claim
        .daysLeft()
        .filter(days -> days < 0)
        .flatMap(
            days ->
                claim
                    .claim()
                    .replyBy()
                    .map(
                        day ->
                            "We asked for an answer by "
                                + Say.day(day)
                                + "; that was "
                                + Days.ago(-days)
                                + "."))
        .orElse("");
  }

  /** Whether anything can be reminded of. */
  public static Optional<String> whyNot(ClaimStanding claim) {
    if (claim.isDraft()) {
      return Optional.of("it is not sent yet");
    }
    return claim.state() == ClaimStanding.State.SETTLED
        ? Optional.of("it is settled")
        : Optional.empty();
  }
}
