package kitwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Change;
import kitwright.edit.NewRecord;
import kitwright.ledger.Claim;
import kitwright.ledger.Kind;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records that a claim went out. */
@picocli.CommandLine.Command(
    name = "send",
    description = {"Records that a claim went out, how, and by which day an answer is asked."})
final class SendCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Option(names = "--print", description = "Print the changed file instead of writing it.")
  private boolean print;

  @Parameters(paramLabel = "CLAIM", description = "The claim.")
  private String id = "";

  @Option(names = "--on", paramLabel = "DATE", description = "The day; today where none is said.")
  private Optional<String> on = Optional.empty();

  @Option(names = "--by", paramLabel = "HOW", description = "E-mail, registered letter …")
  private Optional<String> by = Optional.empty();

  @Option(
      names = "--reply-by",
      paramLabel = "DATE",
      description = "The day by which an answer is asked.")
  private Optional<String> replyBy = Optional.empty();

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, print);
    Claim claim = (Claim) recording.record(Kind.CLAIMS, id);
    if (claim.sent().isPresent()) {
      var day = claim.sent().get();
      throw recording.twice(claim, "sent", day);
    }
    Map<String, String> keys = new LinkedHashMap<>();
    keys.put("sent", on.orElse(recording.opened().today().toString()));
    by.ifPresent(how -> keys.put("by", NewRecord.written(how)));
    replyBy.ifPresent(day -> keys.put("reply-by", day));
    return recording.make(claim, Change.of(keys));
  }
}
