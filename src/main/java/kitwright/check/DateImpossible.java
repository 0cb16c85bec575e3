package kitwright.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/**
 * Fires where something is said to have happened in the future, or a plan lies absurdly far off.
 */
public final class DateImpossible implements Rule {
  private static final int YEARS_AHEAD = 15;

  @Override
  public String name() {
    return "date-impossible";
  }

  @Override
  public void examine(Facts day, Findings out) {
    Judge judge = new Judge(day.day(), out);
    judge.planned(day.ledger().build(), "launch", day.ledger().build().launch());
    day.ledger()
        .deliveries()
        .forEach(
            delivery -> {
              judge.happened(delivery, "received", delivery.received());
              judge.planned(delivery, "expected", delivery.expected());
            });
    day.ledger()
        .shortages()
        .forEach(shortage -> judge.happened(shortage, "found", Optional.of(shortage.found())));
    day.ledger()
        .claims()
        .forEach(
            claim -> {
              judge.happened(claim, "sent", claim.sent());
              judge.planned(claim, "reply-by", claim.replyBy());
            });
    day.ledger()
        .tasks()
        .forEach(
            task -> {
              judge.happened(task, "started", task.started());
              judge.happened(task, "finished", task.finished());
            });
    day.ledger()
        .borrowed()
        .forEach(
            loan -> {
              judge.happened(loan, "on", Optional.of(loan.on()));
              judge.happened(loan, "returned", loan.returned());
              judge.planned(loan, "due", loan.due());
            });
    day.ledger().log().forEach(log -> judge.happened(log, "day", Optional.of(log.day())));
  }

  private final class Judge {
    private final LocalDate today;
    private final Findings out;

    Judge(LocalDate today, Findings out) {
      this.today = today;
      this.out = out;
    }

    void happened(Entry entry, String key, Optional<LocalDate> day) {
      day.filter(d -> d.isAfter(today))
          .ifPresent(
              d ->
                  add(
                      entry,
                      key,
                      d,
                      "is still to come; today is " + today,
                      "Correct the date, or take the entry out until it has happened."));
    }

    void planned(Entry entry, String key, Optional<LocalDate> day) {
      day.filter(d -> d.isAfter(today.plusYears(YEARS_AHEAD)))
          .ifPresent(
              d ->
                  add(
                      entry,
                      key,
                      d,
                      "is more than " + YEARS_AHEAD + " years off",
                      "Check the year."));
    }

    private void add(Entry entry, String key, LocalDate day, String what, String mend) {
      out.add(
          new Finding(
              name(),
              Severity.STOP,
              entry.at().of(key),
              "“" + key + ": " + day + "” of the " + entry.named() + " " + what + ".",
              "Ages, floats and sums built on it are false.",
              mend,
              List.of(entry.named())));
    }
  }
}
