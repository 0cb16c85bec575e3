package kitwright.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.At;
import kitwright.ledger.Claim;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Substitution;

/** Fires where something ended before it began. */
public final class DatesDisordered implements Rule {
  @Override
  public String name() {
    return "dates-disordered";
  }

  @Override
  public void examine(Facts day, Findings out) {
    ordered(
        day.ledger().build(),
        day.ledger().build().at(),
        "started",
        Optional.of(day.ledger().build().started()),
        "launch",
        day.ledger().build().launch(),
        out);
    day.ledger()
        .tasks()
        .forEach(
            task ->
                ordered(
                    task, task.at(), "started", task.started(), "finished", task.finished(), out));
    day.ledger()
        .borrowed()
        .forEach(
            loan -> {
              ordered(
                  loan, loan.at(), "on", Optional.of(loan.on()), "returned", loan.returned(), out);
              ordered(loan, loan.at(), "on", Optional.of(loan.on()), "due", loan.due(), out);
            });
    day.ledger()
        .spending()
        .forEach(
            spend ->
                ordered(
                    spend,
                    spend.at(),
                    "on",
                    Optional.of(spend.on()),
                    "expected",
                    spend.expected(),
                    out));
    day.ledger().claims().forEach(claim -> claim(claim, day.ledger(), out));
    day.ledger().substitutions().forEach(substitution -> substitution(substitution, out));
    day.ledger()
        .shortages()
        .forEach(
            shortage ->
                shortage
                    .decided()
                    .ifPresent(
                        decided ->
                            later(
                                shortage,
                                decided.at(),
                                "on",
                                decided.on(),
                                "the shortage was found",
                                shortage.found(),
                                out)));
  }

  private void claim(Claim claim, Ledger ledger, Findings out) {
    ordered(claim, claim.at(), "sent", claim.sent(), "reply-by", claim.replyBy(), out);
    claim
        .sent()
        .ifPresent(
            sent -> {
              claim
                  .events()
                  .forEach(
                      event ->
                          later(
                              claim,
                              event.at(),
                              "on",
                              event.on(),
                              "the claim was sent",
                              sent,
                              out));
              claim
                  .settled()
                  .ifPresent(
                      end ->
                          later(claim, end.at(), "on", end.on(), "the claim was sent", sent, out));
              claim
                  .shortages()
                  .forEach(
                      ref ->
                          ledger
                              .shortage(ref)
                              .ifPresent(
                                  shortage ->
                                      later(
                                          claim,
                                          claim.at(),
                                          "sent",
                                          sent,
                                          "the shortage " + shortage.id() + " was found",
                                          shortage.found(),
                                          out)));
            });
  }

  private void substitution(Substitution substitution, Findings out) {
    substitution
        .proposed()
        .ifPresent(
            proposal ->
                substitution
                    .signOffs()
                    .forEach(
                        signOff ->
                            later(
                                substitution,
                                signOff.at(),
                                "on",
                                signOff.on(),
                                "the substitution was proposed",
                                proposal.on(),
                                out)));
  }

  private void ordered(
      Entry entry,
      At at,
      String firstKey,
      Optional<LocalDate> first,
      String lastKey,
      Optional<LocalDate> last,
      Findings out) {
    if (first.isPresent() && last.isPresent()) {
      later(entry, at, lastKey, last.get(), "“" + firstKey + "”", first.get(), out);
    }
  }

  private void later(
      Entry entry,
      At at,
      String key,
      LocalDate day,
      String whatBefore,
      LocalDate before,
      Findings out) {
    if (day.isBefore(before)) {
      out.add(
          new Finding(
              name(),
              Severity.STOP,
              at.of(key),
              "The "
                  + entry.named()
                  + " says “"
                  + key
                  + ": "
                  + day
                  + "”, which is before "
                  + whatBefore
                  + " ("
                  + before
                  + ").",
              "Ages, deadlines and sums built on it are false.",
              "Look both dates up and correct the wrong one.",
              List.of(entry.named())));
    }
  }
}
