package kitwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Change;
import kitwright.ledger.Claim;
import kitwright.ledger.Kind;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records how a claim ended. */
@picocli.CommandLine.Command(
    name = "settle",
    description = {
      "Records how a claim ended: replaced, credited, refunded, refused or withdrawn.",
      "For example: kitwright settle claim-2026-02-10 credited 63.00 EUR"
    })
final class SettleCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Option(names = "--print", description = "Print the changed file instead of writing it.")
  private boolean print;

  @Parameters(index = "0", paramLabel = "CLAIM", description = "The claim.")
  private String id = "";

  @Parameters(index = "1", paramLabel = "HOW", description = "How it ended.")
  private String how = "";

  @Parameters(
      index = "2..*",
      arity = "0..*",
      paramLabel = "AMOUNT",
      description = "What was credited or refunded.")
  private List<String> amount = List.of();

  @Option(names = "--on", paramLabel = "DATE", description = "The day; today where none is said.")
  private Optional<String> on = Optional.empty();

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, print);
    Claim claim = (Claim) recording.record(Kind.CLAIMS, id);
    if (claim.settled().isPresent()) {
      var end = claim.settled().get();
      throw recording.twice(claim, "settled", end.on());
    }
    Map<String, Optional<String>> end = new LinkedHashMap<>();
    end.put("on", Optional.of(on.orElse(recording.opened().today().toString())));
    end.put("how", Optional.of(how));
    end.put("amount", amount.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", amount)));
    return recording.make(claim, Change.of(Map.of("settled", Recording.group(end))));
  }
}
