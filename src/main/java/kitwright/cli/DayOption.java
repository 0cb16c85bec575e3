package kitwright.cli;

import java.time.LocalDate;

final class DayOption {
  private String today = "";

  void declare(Declaring to) {
    to.option(
        "--today",
        "DATE",
        given -> today = given,
        "The day to judge by, such as 2026-03-29; else the clock’s.");
  }

  LocalDate today(Session session) {
    return today.isEmpty() ? session.clock().get() : LedgerOptions.day(today);
  }
}
