package kitwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Change;
import kitwright.ledger.Kind;
import kitwright.ledger.Task;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records that a task is finished. */
@picocli.CommandLine.Command(
    name = "finish",
    description = {
      "Records that a task is finished; where it says no start, the same day is its start."
    })
final class FinishCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Option(names = "--print", description = "Print the changed file instead of writing it.")
  private boolean print;

  @Parameters(paramLabel = "TASK", description = "The task.")
  private String id = "";

  @Option(names = "--on", paramLabel = "DATE", description = "The day; today where none is said.")
  private Optional<String> on = Optional.empty();

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, print);
    Task task = (Task) recording.record(Kind.TASKS, id);
    if (task.finished().isPresent()) {
      var day = task.finished().get();
      throw recording.twice(task, "finished", day);
    }
    String day = on.orElse(recording.opened().today().toString());
    Map<String, String> keys = new LinkedHashMap<>();
    if (task.started().isEmpty()) {
      keys.put("started", day);
    }
    keys.put("finished", day);
    return recording.make(task, Change.of(keys));
  }
}
