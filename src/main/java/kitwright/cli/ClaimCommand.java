package kitwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.claim.Asking;
import kitwright.claim.ClaimStanding;
import kitwright.claim.ClaimStandings;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.report.claim.ClaimLetter;
import kitwright.report.claim.ClaimSince;
import kitwright.report.claim.ClaimsReport;
import kitwright.report.words.Sheet;
import kitwright.value.Ref;
import kitwright.value.Visible;

/** Writes the letter of a claim, or lists the claims. */
final class ClaimCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();
  private final OutOptions out = new OutOptions();
  private Optional<String> id = Optional.empty();
  private boolean reminder;
  private boolean since;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Prints the letter of a claim to the supplier; without an ID, lists all claims with their"
            + " ages.",
        "A letter is no legal advice; periods of notice depend on contract and country.",
        "For example: kitwright claim claim-2026-02-20");
    options.declare(to);
    telling.declare(to);
    out.declare(to);
    to.mayPlace("ID", given -> id = Optional.of(given), "The claim.");
    to.flag(
        "--reminder",
        () -> reminder = true,
        "A letter that reminds them, from what was written so far.");
    to.flag(
        "--since",
        () -> since = true,
        "What came after it was sent: asked, granted, paid and open, line by line.");
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    Facts now = Facts.of(ledger, opened.today());
    if (id.isEmpty()) {
      return telling.tell(ClaimsReport.sheets(now).get(0), opened, session);
    }
    boolean isOfToday = reminder || since;
    ClaimStanding claim =
        (isOfToday ? ClaimStandings.on(now).of(id.get()) : ClaimStandings.asTold(id.get(), now))
            .orElseThrow(
                () ->
                    Refusal.unknown(
                        ledger, Kind.CLAIMS, id.get(), "“kitwright claim” alone lists them."));
    if (reminder) {
      ClaimSince.whyNot(claim)
          .ifPresent(
              why -> {
                throw new Refusal(
                    "The claim “" + id.get() + "” cannot be reminded of: " + why + ".",
                    "“kitwright claim " + id.get() + "” prints its letter.");
              });
    }
    if (!isOfToday && !claim.isDraft() && !telling.isForPrograms()) {
      Optional<Integer> told = asSent(claim.claim(), opened, session);
      if (told.isPresent()) {
        return told.get();
      }
    }
    List<Ref> unfound = Asking.unfound(claim.claim(), ledger);
    if (!unfound.isEmpty()) {
      session.note("The letter leaves out what cannot be read or is not there: " + ids(unfound));
    }
    Sheet sheet =
        reminder
            ? ClaimSince.reminder(claim, now)
            : since ? ClaimSince.page(claim, now) : ClaimLetter.of(claim, now);
    int end = out.tell(sheet, telling, opened, session);
    if (!since) {
      session.err().print(Visible.lines(hint(claim, sheet)));
    }
    return end;
  }

  /** The letter that was sent, where it is kept; else it is said that this is worked out. */
  private Optional<Integer> asSent(Claim claim, Opened opened, Session session) {
    for (SentLetter letter : SentLetter.of(claim, opened, session)) {
      Optional<String> text = letter.text(opened);
      letter.doubt().ifPresent(session::note);
      if (text.isPresent()) {
        return text.map(words -> asSent(letter, words, session));
      }
    }
    if (claim.letter().isEmpty()) {
      session.note(
          "No file is kept of what was sent: this is worked out from today’s records as of "
              + claim.sent().orElseThrow()
              + ". Name the file that was sent under “letter”, and it is printed instead.");
    }
    return Optional.empty();
  }

  /** What was sent stays what it was; it is not written a second time. */
  private int asSent(SentLetter letter, String text, Session session) {
    if (out.isNamed()) {
      session.say("as it was " + letter.file());
    } else {
      session.print(text);
    }
    return CLEAN;
  }

  /** For the sender, and not in the letter. */
  private String hint(ClaimStanding claim, Sheet sheet) {
    String caution =
        "This is no legal advice. Whether and how soon a shortage must be notified, and what may be"
            + " asked, depends on your contract and your country. Check both before you send it,"
            + " and keep proof of the day it was sent.\n";
    if (reminder) {
      return caution
          + "Once it is sent, record it under “events” of "
          + claim.claim().id()
          + ": {on: DAY, what: reminded}\n";
    }
    return claim.isDraft()
        ? caution
            + "It is a draft until you record that it went out, with the file that did: kitwright"
            + " send "
            + claim.claim().id()
            + " --letter …/"
            + sheet.file()
            + "\n"
        : caution;
  }

  static String ids(List<Ref> refs) {
    return refs.stream().map(ref -> "“" + ref.id() + "”").collect(Collectors.joining(", ")) + ".";
  }
}
