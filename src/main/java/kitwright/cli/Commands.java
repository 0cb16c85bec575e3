package kitwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The words of the command line in the order of use: what tells, what records, what else there is.
 */
final class Commands {
  private Commands() {}

  /**
   * A word, what it does in a line, and how its command is made; made only when it is called, since
   * the command line library takes its time over each.
   */
  record Word(String name, String does, Supplier<Command> maker) {}

  /** A class, not a lambda: the first of those costs the start of every run. */
  private record Recorded(String word) implements Supplier<Command> {
    @Override
    public Command get() {
      return new RecordCommand(word);
    }
  }

  static List<Word> all() {
    return List.of(
        new Word("start", "lay out a new ledger", StartCommand::new),
        new Word("check", "find what is wrong, missing or late", CheckCommand::new),
        new Word("open", "list what is open, most pressing first", OpenCommand::new),
        new Word("tomorrow", "one page for the next working day", TomorrowCommand::new),
        new Word("ahead", "look ahead: work, material, weather, what if", AheadCommand::new),
        new Word("claim", "write the letter of a claim, or list the claims", ClaimCommand::new),
        new Word("kit", "how each item stands: promised, counted, covered, open", KitCommand::new),
        new Word("options", "the ways out of a shortage, side by side", OptionsCommand::new),
        new Word("assess", "work out how strong a part is, as built", AssessCommand::new),
        new Word("fingerprint", "print what a signature must cover", FingerprintCommand::new),
        new Word("cut", "plan which piece yields which parts", CutCommand::new),
        new Word("budget", "where the money stands and where it will end", BudgetCommand::new),
        new Word("week", "tell what happened this week and what comes next", WeekCommand::new),
        new Word("report", "write the reports", ReportCommand::new),
        new Word("calendar", "write the days to act for a phone", CalendarCommand::new),
        new Word("count", "record what was counted in a delivery", CountCommand::new),
        new Word("begin", "record that a task was begun", new Recorded("begin")),
        new Word("finish", "record that a task is finished", new Recorded("finish")),
        new Word("log", "write the log of a day, or add to it", new Recorded("log")),
        new Word("short", "record that something is missing or no good", new Recorded("short")),
        new Word("demand", "begin a claim, line by line", new Recorded("demand")),
        new Word("send", "record that a claim went out", new Recorded("send")),
        new Word("answer", "record what came of a claim", new Recorded("answer")),
        new Word("settle", "record how a claim ended", new Recorded("settle")),
        new Word("buy", "record something bought and paid", new Recorded("buy")),
        new Word("order", "record something ordered", new Recorded("order")),
        new Word("pay", "record a payment of an order", new Recorded("pay")),
        new Word("refund", "record money that came back", new Recorded("refund")),
        new Word("borrow", "record a borrowed tool", new Recorded("borrow")),
        new Word("return", "record that a borrowed tool went back", new Recorded("return")),
        new Word("propose", "record what shall be built otherwise", new Recorded("propose")),
        new Word("calculate", "record how that is to be worked out", new Recorded("calculate")),
        new Word("sign", "record a signature, once its statement was read", SignCommand::new),
        new Word("amend", "set any key of a record, or add to a list", AmendCommand::new),
        new Word(
            "materials",
            "list the materials and where their values come from",
            MaterialsCommand::new),
        new Word("rules", "what each rule of check protects against", RulesCommand::new),
        new Word("keys", "tell the keys of the records and what they mean", KeysCommand::new),
        new Word(
            "since", "what has changed since a day or a commit, and by whom", SinceCommand::new),
        new Word("history", "follow a figure from commit to commit", HistoryCommand::new),
        new Word(
            "signed",
            "by which commit each sign-off came, and whether its day fits",
            SignedCommand::new),
        new Word("guard", "have Git check what is staged before each commit", GuardCommand::new),
        new Word("import", "take a list of somebody else’s as records", ImportCommand::new),
        new Word("export", "print records as a table for a spreadsheet", ExportCommand::new),
        new Word("manual", "print the manual page of a command", ManualCommand::new),
        new Word("completions", "print completions for a shell", CompletionsCommand::new),
        new Word("hash", "print the SHA-256 of a file, for evidence", HashCommand::new),
        new Word("new", "begin a record of any kind", NewCommand::new));
  }

  static Optional<Word> named(String name) {
    return all().stream().filter(word -> word.name().equals(name)).findFirst();
  }
}
