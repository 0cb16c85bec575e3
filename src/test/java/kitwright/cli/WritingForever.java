package kitwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Records one thing after the other until it is killed; says after each that it is done. */
final class WritingForever {
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
    switch (i % 9) {
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
      default -> run(root, "fingerprint", "paint", "--by", "me", "--out", id + ".txt");
    }
  }

  private static void run(Path root, String... words) {
    Run run = Run.in(root, words);
    // A step that was made, but killed before it was said, is made again.
    if (run.code() == Command.UNREADABLE && !run.err().contains("already")) {
      throw new IllegalStateException(String.join(" ", words) + ": " + run.err());
    }
  }
}
