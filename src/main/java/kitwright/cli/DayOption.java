package kitwright.cli;

import java.time.LocalDate;
import picocli.CommandLine.Option;

/** Which day it is. */
final class DayOption {
  @Option(
      names = "--today",
      paramLabel = "DATE",
      description = "The day to judge by, such as 2026-03-29; else the clock’s.")
  private String today = "";

  LocalDate today(Session session) {
    return today.isEmpty() ? session.clock().get() : LedgerOptions.day(today);
  }
}
