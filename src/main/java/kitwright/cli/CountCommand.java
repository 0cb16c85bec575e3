package kitwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.check.Check;
import kitwright.edit.Change;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records what was counted in a delivery. */
@picocli.CommandLine.Command(
    name = "count",
    description = {
      "Records what was counted in a delivery, item by item, and tells what is short of the"
          + " promise.",
      "For example: kitwright count d-fourth stave-s=38,damaged=1 cleat=4"
    })
final class CountCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Option(names = "--print", description = "Print the changed file instead of writing it.")
  private boolean print;

  @Parameters(index = "0", paramLabel = "DELIVERY", description = "The delivery.")
  private String id = "";

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "ITEM=QTY[,damaged=QTY][,wrong=QTY][,undersize=QTY]",
      description = "Each item with all that was found, and how much of it is no good.")
  private List<String> items = List.of();

  @Option(names = "--on", paramLabel = "DATE", description = "The day; today where none is said.")
  private Optional<String> on = Optional.empty();

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, print);
    Delivery delivery = (Delivery) recording.record(Kind.DELIVERIES, id);
    Map<String, String> set = new LinkedHashMap<>();
    if (delivery.received().isEmpty()) {
      set.put("received", on.orElse(recording.opened().today().toString()));
    }
    List<String> lines = items.stream().map(CountCommand::line).toList();
    int code = recording.make(delivery, new Change(set, Map.of("counted", lines)));
    if (!print) {
      tellWhatIsShort(session);
    }
    return code;
  }

  /** What the check says of the items counted, with the records to write. */
  private void tellWhatIsShort(Session session) {
    Opened now = Opened.of(options, session);
    Findings found = new Findings();
    Check.examine(Facts.of(now.ledger(session), now.today()), found);
    for (Finding finding : found.inOrder()) {
      boolean ofThese =
          items.stream()
              .map(word -> "kit item " + word.split("=", 2)[0])
              .anyMatch(finding.records()::contains);
      if (ofThese) {
        session.say("  " + finding.what() + " " + finding.mend());
      }
    }
  }

  private static String line(String word) {
    int equals = word.indexOf('=');
    if (equals < 1) {
      throw new Refusal("“" + word + "” says no quantity.", "Write ITEM=QTY, such as cleat=4.");
    }
    Map<String, Optional<String>> keys = new LinkedHashMap<>();
    keys.put("item", Optional.of(word.substring(0, equals)));
    for (String part : ("qty=" + word.substring(equals + 1)).split(",")) {
      String[] both = part.split("=", 2);
      if (both.length < 2) {
        throw new Refusal(
            "“" + part + "” says no quantity.",
            "Write damaged=QTY, wrong=QTY or undersize=QTY behind the comma.");
      }
      keys.put(both[0].strip(), Optional.of(both[1].strip()));
    }
    return Recording.group(keys);
  }
}
