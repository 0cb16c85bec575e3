package kitwright.cli;

import java.util.List;
import java.util.Optional;

/**
 * The words of the command line in the order of use: what tells, what records, what else there is.
 */
final class Commands {
  private Commands() {}

  /** A word, and what it does in a line. */
  record Word(String name, String does) {
    /**
     * Its command, made only when it is called: the command line library takes its time over each,
     * and a table of makers would link one for every word there is.
     */
    Command command() {
      return switch (name) {
        case "start" -> new StartCommand();
        case "check" -> new CheckCommand();
        case "open" -> new OpenCommand();
        case "tomorrow" -> new TomorrowCommand();
        case "ahead" -> new AheadCommand();
        case "claim" -> new ClaimCommand();
        case "kit" -> new KitCommand();
        case "options" -> new OptionsCommand();
        case "assess" -> new AssessCommand();
        case "fingerprint" -> new FingerprintCommand();
        case "cut" -> new CutCommand();
        case "budget" -> new BudgetCommand();
        case "week" -> new WeekCommand();
        case "report" -> new ReportCommand();
        case "calendar" -> new CalendarCommand();
        case "count" -> new CountCommand();
        case "sign" -> new SignCommand();
        case "amend" -> new AmendCommand();
        case "materials" -> new MaterialsCommand();
        case "rules" -> new RulesCommand();
        case "keys" -> new KeysCommand();
        case "since" -> new SinceCommand();
        case "history" -> new HistoryCommand();
        case "signed" -> new SignedCommand();
        case "guard" -> new GuardCommand();
        case "import" -> new ImportCommand();
        case "export" -> new ExportCommand();
        case "manual" -> new ManualCommand();
        case "completions" -> new CompletionsCommand();
        case "hash" -> new HashCommand();
        case "new" -> new NewCommand();
        default -> new RecordCommand(name);
      };
    }
  }

  static List<Word> all() {
    return List.of(
        new Word("start", "lay out a new ledger"),
        new Word("check", "find what is wrong, missing or late"),
        new Word("open", "list what is open, most pressing first"),
        new Word("tomorrow", "one page for the next working day"),
        new Word("ahead", "look ahead: work, material, weather, what if"),
        new Word("claim", "write the letter of a claim, or list the claims"),
        new Word("kit", "how each item stands: promised, counted, covered, open"),
        new Word("options", "the ways out of a shortage, side by side"),
        new Word("assess", "work out how strong a part is, as built"),
        new Word("fingerprint", "print what a signature must cover"),
        new Word("cut", "plan which piece yields which parts"),
        new Word("budget", "where the money stands and where it will end"),
        new Word("week", "tell what happened this week and what comes next"),
        new Word("report", "write the reports"),
        new Word("calendar", "write the days to act for a phone"),
        new Word("count", "record what was counted in a delivery"),
        new Word("begin", "record that a task was begun"),
        new Word("finish", "record that a task is finished"),
        new Word("log", "write the log of a day, or add to it"),
        new Word("short", "record that something is missing or no good"),
        new Word("demand", "begin a claim, line by line"),
        new Word("send", "record that a claim went out"),
        new Word("answer", "record what came of a claim"),
        new Word("settle", "record how a claim ended"),
        new Word("buy", "record something bought and paid"),
        new Word("order", "record something ordered"),
        new Word("pay", "record a payment of an order"),
        new Word("refund", "record money that came back"),
        new Word("borrow", "record a borrowed tool"),
        new Word("return", "record that a borrowed tool went back"),
        new Word("propose", "record what shall be built otherwise"),
        new Word("calculate", "record how that is to be worked out"),
        new Word("sign", "record a signature, once its statement was read"),
        new Word("amend", "set any key of a record, or add to a list"),
        new Word("materials", "list the materials and where their values come from"),
        new Word("rules", "what each rule of check protects against"),
        new Word("keys", "tell the keys of the records and what they mean"),
        new Word("since", "what has changed since a day or a commit, and by whom"),
        new Word("history", "follow a figure from commit to commit"),
        new Word("signed", "by which commit each sign-off came, and whether its day fits"),
        new Word("guard", "have Git check what is staged before each commit"),
        new Word("import", "take a list of somebody else’s as records"),
        new Word("export", "print records as a table for a spreadsheet"),
        new Word("manual", "print the manual page of a command"),
        new Word("completions", "print completions for a shell"),
        new Word("hash", "print the SHA-256 of a file, for evidence"),
        new Word("new", "begin a record of any kind"));
  }

  static Optional<Word> named(String name) {
    for (Word word : all()) {
      if (word.name().equals(name)) {
        return Optional.of(word);
      }
    }
    return Optional.empty();
  }
}
