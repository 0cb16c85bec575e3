package kitwright.ledger;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of record: the top key of each in a file, and what a person calls one of them. */
public enum Kind {
  BUILD("build", "build", "the build itself: one record"),
  PARTIES("parties", "party", "everybody who has to do with the build"),
  RATES("rates", "rate", "what one unit of a foreign currency was worth on a day"),
  BUDGET("budget", "budget line", "the lines of the budget"),
  KIT("kit", "kit item", "what the supplier promised, from the packing list: one record an item"),
  DELIVERIES("deliveries", "delivery", "what came, or is on its way, and what was counted in it"),
  STOCK("stock", "stock", "what lies on the rack: bought, or off-cuts"),
  TASKS("tasks", "task", "the work"),
  SHORTAGES(
      "shortages",
      "shortage",
      "something the kit should have held and did not: write it on the day you find it"),
  CLAIMS("claims", "claim", "a claim against the supplier; “kitwright claim ID” writes the letter"),
  SUBSTITUTIONS(
      "substitutions",
      "substitution",
      "something built otherwise than drawn: structural ones need an assessment and the signature"
          + " of somebody entitled, before the part is closed up"),
  MATERIALS(
      "materials",
      "material",
      "a material that the built-in table lacks, or that you have tested yourself: no source, no"
          + " trust"),
  SECTIONS(
      "sections",
      "section",
      "a cross-section, as designed or as built: layers from bottom to top, or a shape with its"
          + " measures"),
  ASSESSMENTS(
      "assessments",
      "assessment",
      "an engineering check of a substitution, worked out here or elsewhere: a screening, which"
          + " replaces no designer"),
  SPENDING("spending", "spend", "money spent, ordered or got back, tax included"),
  BORROWED("borrowed", "loan", "a borrowed tool: how it came, and when it shall be back"),
  CUTS("cuts", "cut", "parts to be cut from stock: the program plans, you saw"),
  FORECAST("forecast", "forecast day", "the weather expected, a record a day"),
  LOG(
      "log",
      "log day",
      "a day of the log: a Markdown file whose keys stand between two lines of hyphens, your own"
          + " words below");

  private static final Map<String, Kind> BY_KEY =
      Arrays.stream(values())
          .filter(kind -> kind != LOG)
          .collect(Collectors.toUnmodifiableMap(Kind::key, kind -> kind));

  private final String key;
  private final String word;
  private final String says;

  Kind(String key, String word, String says) {
    this.key = key;
    this.word = word;
    this.says = says;
  }

  /** The top key in a file. */
  public String key() {
    return key;
  }

  /** What its records are, without a full stop. */
  public String says() {
    return says;
  }

  /** What a person calls one record. */
  public String word() {
    return word;
  }

  /** The kind with a top key; log days have none, they are Markdown files. */
  public static Optional<Kind> of(String key) {
    return Optional.ofNullable(BY_KEY.get(key));
  }

  /** All top keys. */
  public static List<String> keys() {
    return Arrays.stream(values()).filter(kind -> kind != LOG).map(Kind::key).toList();
  }
}
