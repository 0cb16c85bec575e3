package kitwright.report.claim;

import java.util.List;
import java.util.Optional;
import kitwright.claim.ClaimStanding;
import kitwright.claim.Line;
import kitwright.document.Block;
import kitwright.document.Slots;
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
        ClaimLetter.name(claim) + "-since.md",
        "claim-since",
        Slots.none()
            .sentence("claim", claim.claim().id())
            .sentence("to", ClaimsReport.against(claim))
            .value("today", Cells.spoken(now.day()))
            .sentence("stands", Word.capital(ClaimsReport.stands(claim)) + ".")
            .block("lines", ClaimSums.table(claim))
            .sentence("sums", ClaimSums.words(claim))
            .block("history", ClaimHistory.of(claim).toArray(Block[]::new)));
  }

  /** The letter that reminds the supplier, written from the history. */
  public static Sheet reminder(ClaimStanding claim, Facts now) {
    List<Line> open = claim.lines().stream().filter(line -> !line.isOver()).toList();
    return new Sheet(
        ClaimLetter.name(claim) + "-reminder-" + now.day() + ".md",
        "claim-reminder",
        Slots.none()
            .sentence("day", Say.day(now.day()))
            .sentence("claim", claim.claim().id())
            .sentence("to", ClaimsReport.against(claim))
            .sentence("from", new Names(now.ledger()).builder())
            .sentence("sent", claim.claim().sent().map(Say::day).orElse(""))
            .sentence("late", late(claim))
            .block("history", ClaimHistory.of(claim).toArray(Block[]::new))
            .block("items", open.isEmpty() ? new Block[0] : new Block[] {ClaimItems.table(open)})
            .sentence("sums", claim.open().isEmpty() ? "" : Say.monies(claim.open()))
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
