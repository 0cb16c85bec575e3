package kitwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Records one thing after the other until it is killed; says after each that it is done. */
final class WritingForever {
  /** So many kinds of step, in turn. */
  static final int KINDS = 20;

  private static final String USE = "--use=item=bolt,qty=1";
  private static final String BY = "--proposed=by=me";
  private static final String PARTS = "parts=[{mark: P, length: 1 m, width: 100 mm, qty: 1}]";

  private WritingForever() {}

  public static void main(String[] arguments) throws IOException {
    Path root = Path.of(arguments[0]);
    int from = Integer.parseInt(arguments[1]);
    for (int i = from; ; i++) {
      step(root, i);
      System.out.println("done " + i);
      System.out.flush();
    }
  }

  private static void step(Path root, int i) throws IOException {
    String id = "x" + i;
    switch (i % KINDS) {
      case 0 -> run(root, "buy", "bolt " + i, "1 EUR", "--line", "hull", "--id", id);
      case 1 -> run(root, "amend", "task", "glue", "tools+=" + "saw");
      case 2 -> run(root, "log", "--hours", "me=1", "--words", "Step " + i + ".");
      case 3 -> run(root, "count", "d" + i, "bolt=" + i, "--from", "yard");
      case 4 -> run(root, "answer", "c1", "reminded", "step", String.valueOf(i));
      case 5 -> run(root, "new", "stock", "id=" + id, "what=board");
      case 6 -> {
        Files.writeString(
            root.resolve("list.csv"), "id,what,qty\n" + id + ",nut,4\nbolt,bolt," + i + "\n");
        run(root, "import", "kit", "list.csv", "--columns", "a" + i + "=id,qty=qty");
      }
      case 7 -> run(root, "borrow", "saw " + i, "--condition", "good", "--id", id);
      case 8 -> run(root, "fingerprint", "paint", "--by", "me", "--out", id + ".txt");
      case 9 -> {
        run(root, "new", "task", "id=" + id, "what=Sand", "takes=1 d");
        run(root, "begin", id);
        run(root, "finish", id);
      }
      case 10 -> {
        run(root, "short", "bolt", "1", "--cause", "damaged", "--id", id);
        run(root, "demand", id, "--remedy", "credit", "--id", "c" + id);
        run(root, "claim", "c" + id, "--out", "letters");
        run(root, "send", "c" + id, "--letter", "letters/claim-c" + id + ".md");
        run(root, "settle", "c" + id, "credited", "1 EUR");
      }
      case 11 -> {
        run(root, "order", "bolts", "3 EUR", "--line", "hull", "--id", id);
        run(root, "pay", id, "2 EUR", "--id", "p" + id);
        run(root, "refund", "p" + id, "1 EUR", "--id", "r" + id);
      }
      case 12 -> {
        run(root, "borrow", "drill", "--condition", "good", "--id", id);
        run(root, "return", id, "as it came");
      }
      case 13 -> {
        run(root, "short", "bolt", "1", "--cause", "damaged", "--id", "s" + id);
        run(root, "propose", "s" + id, "--id", id, "--grade=finish", "--why=w", USE, BY);
        run(root, "calculate", id, "--method", "external", "--id", "a" + id);
      }
      case 14 -> {
        run(root, "short", "bolt", "1", "--cause", "damaged", "--id", "s" + id);
        run(root, "propose", "s" + id, "--id", id, "--grade=finish", "--why=w", USE, BY);
        run(root, "sign", id, "--by", "me", "--covers", digits(root, id));
      }
      case 15 -> {
        run(root, "new", "stock", "id=b" + id, "what=board", "qty=3", "size=2400 x 100 x 20 mm");
        run(root, "new", "cut", "id=" + id, "kerf=3 mm", "from=[b" + id + "]", PARTS);
        run(root, "cut", id, "--done");
      }
      case 16 -> run(root, "report", "--out", "reports", "open", "tools");
      case 17 -> run(root, "calendar", "told.ics");
      case 18 -> run(root, "start", beside(root, "other-" + i));
      default -> run(root, "manual", "--out", beside(root, "pages-" + i));
    }
  }

  private static String beside(Path root, String name) {
    return root.resolveSibling(name + "-of-" + root.getFileName()).toString();
  }

  private static String digits(Path root, String substitution) {
    String text = Run.in(root, "fingerprint", substitution, "--by", "me").out();
    Matcher digits = Pattern.compile("[0-9a-f]{64}").matcher(text);
    return digits.find() ? digits.group() : "none: " + text;
  }

  private static void run(Path root, String... words) {
    Run run = Run.in(root, words);
    // A step that was made, but killed before it was said, is made again.
    if (run.code() == Command.UNREADABLE && !run.err().contains("already")) {
      throw new IllegalStateException(String.join(" ", words) + ": " + run.err());
    }
  }
}
