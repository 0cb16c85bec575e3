package kitwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The words of the command line, those first that a builder asks day by day. */
final class Commands {
  private Commands() {}

  /**
   * A word, what it does in a line, and how its command is made; made only when it is called, since
   * the command line library takes its time over each.
   */
  record Word(String name, String does, Supplier<Command> maker) {}

  static List<Word> all() {
    return List.of(
        new Word("count", "record what was counted in a delivery", CountCommand::new),
        new Word("finish", "record that a task is finished", FinishCommand::new),
        new Word("send", "record that a claim went out", SendCommand::new),
        new Word("settle", "record how a claim ended", SettleCommand::new),
        new Word("return", "record that a borrowed tool went back", ReturnCommand::new),
        new Word("amend", "set any key of a record, or add to a list", AmendCommand::new),
        new Word("check", "find what is wrong, missing or late", CheckCommand::new),
        new Word("open", "list what is open, most pressing first", OpenCommand::new),
        new Word("tomorrow", "one page for the next working day", TomorrowCommand::new),
        new Word("calendar", "write the days to act for a phone", CalendarCommand::new),
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
        new Word("import", "take a list of somebody else’s as records", ImportCommand::new),
        new Word("export", "print records as a table for a spreadsheet", ExportCommand::new),
        new Word("completions", "print completions for a shell", CompletionsCommand::new),
        new Word("hash", "print the SHA-256 of a file, for evidence", HashCommand::new),
        new Word("new", "begin a record of any kind", NewCommand::new),
        new Word("start", "lay out a new ledger", StartCommand::new));
  }

  static Optional<Word> named(String name) {
    return all().stream().filter(word -> word.name().equals(name)).findFirst();
  }
}
