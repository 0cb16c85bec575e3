package kitwright.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.claim.Standing;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.report.ClaimLetter;
import kitwright.value.Days;
import kitwright.value.Money;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Writes the letter of a claim, or lists the claims. */
@picocli.CommandLine.Command(
    name = "claim",
    description = {
      "Prints the letter of a claim to the supplier; without an ID, lists all claims with their"
          + " ages.",
      "A letter is no legal advice; periods of notice depend on contract and country."
    })
final class ClaimCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Mixin private OutOptions out = new OutOptions();

  @Parameters(paramLabel = "ID", arity = "0..1", description = "The claim.")
  private Optional<String> id = Optional.empty();

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    Facts now = Facts.of(ledger, opened.today());
    if (id.isEmpty()) {
      session.out().print(list(kitwright.claim.Standings.on(now).all()));
      return CLEAN;
    }
    Standing claim =
        kitwright.claim.Standings.on(now)
            .of(id.get())
            .orElseThrow(
                () ->
                    Refusal.unknown(
                        "There is no claim “" + id.get() + "”.",
                        id.get(),
                        ledger.ids(Kind.CLAIMS),
                        "“kitwright claim” alone lists them."));
    return out.tell(List.of(ClaimLetter.of(claim, now)), OutOptions.PRINTED, opened, session);
  }

  private static String list(List<Standing> claims) {
    if (claims.isEmpty()) {
      return "No claims.\n";
    }
    Listing list = Listing.of("claim", "stands", ">days", "answer", ">asks");
    for (Standing each : claims) {
      list.row(
          each.claim().id(),
          each.state().name().toLowerCase(Locale.ROOT),
          each.age().map(String::valueOf).orElse("–"),
          answer(each),
          each.total().stream().map(Money::toString).collect(Collectors.joining(" + ")));
    }
    return list.text();
  }

  private static String answer(Standing each) {
    if (each.settled().isPresent()) {
      return each.settled().get().how().name().toLowerCase(Locale.ROOT)
          + " "
          + each.settled().get().on();
    }
    if (each.isDraft()) {
      return "not sent";
    }
    return each.daysLeft()
        .map(ClaimCommand::due)
        .orElse(each.promisedFor().map(day -> "promised for " + day).orElse("no day promised"));
  }

  private static String due(long days) {
    String count = Days.told(Math.abs(days));
    return days == 0 ? "due today" : days < 0 ? count + " late" : "due in " + count;
  }
}
