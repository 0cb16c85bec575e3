package kitwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Change;
import kitwright.edit.NewRecord;
import kitwright.ledger.Kind;
import kitwright.ledger.Loan;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Records that a borrowed tool went back. */
@picocli.CommandLine.Command(
    name = "return",
    description = {"Records that a borrowed tool went back, and its condition."})
final class ReturnCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Option(names = "--print", description = "Print the changed file instead of writing it.")
  private boolean print;

  @Parameters(index = "0", paramLabel = "LOAN", description = "The loan.")
  private String id = "";

  @Parameters(
      index = "1",
      paramLabel = "CONDITION",
      description = "Its condition when it went back.")
  private String condition = "";

  @Option(names = "--on", paramLabel = "DATE", description = "The day; today where none is said.")
  private Optional<String> on = Optional.empty();

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, print);
    Loan loan = (Loan) recording.record(Kind.BORROWED, id);
    if (loan.returned().isPresent()) {
      var day = loan.returned().get();
      throw recording.twice(loan, "returned", day);
    }
    Map<String, String> keys = new LinkedHashMap<>();
    keys.put("returned", on.orElse(recording.opened().today().toString()));
    keys.put("back", NewRecord.written(condition));
    return recording.make(loan, Change.of(keys));
  }
}
