package kitwright.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import kitwright.ledger.LedgerFolder;
import kitwright.value.Days;
import kitwright.value.Misread;

/** Which ledger, and which day it is. */
final class LedgerOptions {
  private String ledger = "";
  private final DayOption day = new DayOption();

  void declare(Declaring to) {
    to.option(
        "--ledger",
        "DIR",
        given -> ledger = given,
        "The ledger’s folder; else “ledger” here, else the nearest folder upward with a build"
            + " record.");
    day.declare(to);
  }

  LedgerFolder folder(Session session) {
    if (ledger.isEmpty()) {
      return LedgerFolder.near(session.here())
          .orElseThrow(
              () ->
                  new Refusal(
                      "No ledger was found here or in any folder above.",
                      "Name one with --ledger DIR, or begin one with “kitwright start DIR”."));
    }
    Path folder = path(session, ledger);
    if (Files.isRegularFile(folder)) {
      throw new Refusal(
          "“" + ledger + "” is a file.", "Name the folder that it lies in after --ledger.");
    }
    if (!Files.isDirectory(folder)) {
      throw new Refusal("There is no folder “" + ledger + "”.", "Check the path after --ledger.");
    }
    return LedgerFolder.at(folder);
  }

  LocalDate today(Session session) {
    return day.today(session);
  }

  /** A day given on the command line. */
  static LocalDate day(String text) {
    try {
      return Days.day(text);
    } catch (Misread misread) {
      throw Refusal.of(misread);
    }
  }

  /** A path given on the command line. */
  static Path path(Session session, String text) {
    try {
      return session.here().resolve(text);
    } catch (InvalidPathException nonsense) {
      throw new Refusal("“" + text + "” is no path.", "Check it for odd characters.");
    }
  }
}
