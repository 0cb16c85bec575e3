package kitwright.edit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import kitwright.ledger.Kind;

/**
 * A new ledger: a folder for each kind with an example record in it, commented in a builder's
 * words. The examples hang together as one small build that has come to rest, and read without a
 * fault.
 */
public final class Starter {
  /** The day on which the examples are written; their dates move with the day of the start. */
  private static final LocalDate WRITTEN = LocalDate.of(2026, 3, 2);

  private static final Pattern DATE = Pattern.compile("\\b20\\d\\d-\\d\\d-\\d\\d\\b");

  /** Where a ledger’s schema lies; a folder with a full stop is none of the ledger’s records. */
  public static final String SCHEMA = ".schema/ledger.json";

  private Starter() {}

  /**
   * A file that tells editors, in the line that YAML language servers read, by what schema to
   * complete it and underline what is misspelt.
   *
   * @param path from the ledger’s folder
   */
  static String withSchema(String path, String text) {
    if (!path.endsWith(".yaml")) {
      return text;
    }
    String up = "../".repeat((int) path.chars().filter(c -> c == '/').count());
    return "# yaml-language-server: $schema=" + up + SCHEMA + "\n" + text;
  }

  /**
   * The files of a new ledger, by path.
   *
   * @param name of the boat or the build
   */
  public static Map<String, String> files(String name, LocalDate today) {
    Map<String, String> files = new LinkedHashMap<>(frame());
    for (Kind kind : Kind.values()) {
      switch (kind) {
        case BUILD -> {
          String build = Example.text("build.yaml");
          files.put("build.yaml", moved(build.replace("My boat", Scalar.of(name)), today));
        }
        case LOG -> files.put("log/example.md", moved(Example.text("log.md"), today));
        case PARTIES, RATES, BUDGET, FORECAST ->
            files.put(kind.key() + ".yaml", moved(Example.text(kind.key() + ".yaml"), today));
        default ->
            files.put(
                kind.key() + "/example.yaml", moved(Example.text(kind.key() + ".yaml"), today));
      }
    }
    files.replaceAll(Starter::withSchema);
    files.put("evidence/example-count.txt", Example.text("evidence-count.txt"));
    files.put("evidence/example-letter.txt", Example.text("evidence-letter.txt"));
    return files;
  }

  /** What a ledger has besides its records, for a folder that holds records already. */
  public static Map<String, String> frame() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("README.md", Example.text("README.md"));
    files.put(SCHEMA, KeySchema.text());
    files.put(".gitattributes", Example.text("gitattributes"));
    files.putAll(guard());
    return files;
  }

  /** What a forge runs after each push. */
  public static Map<String, String> guard() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(".ci-example/README.md", Example.text("ci-README.md"));
    files.put(".ci-example/check.sh", Example.text("ci-check.sh"));
    return files;
  }

  /**
   * What Git runs before each commit.
   *
   * @param prefix the ledger’s folder from the top of the work tree; empty where it is that
   */
  public static String hook(String prefix) {
    String folder = prefix.isEmpty() ? "." : prefix.replaceFirst("/$", "");
    return Example.text("pre-commit.sh").replace("FOLDER", folder.replace("'", "'\\''"));
  }

  private static String moved(String text, LocalDate today) {
    long days = ChronoUnit.DAYS.between(WRITTEN, today);
    return DATE.matcher(text)
        .replaceAll(found -> LocalDate.parse(found.group()).plusDays(days).toString());
  }
}
