package kitwright.ledger;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of record: the top key of each in a file, and what a person calls one of them. */
public enum Kind {
  BUILD("build", "build"),
  PARTIES("parties", "party"),
  RATES("rates", "rate"),
  BUDGET("budget", "budget line"),
  KIT("kit", "kit item"),
  DELIVERIES("deliveries", "delivery"),
  STOCK("stock", "stock"),
  TASKS("tasks", "task"),
  SHORTAGES("shortages", "shortage"),
  CLAIMS("claims", "claim"),
  SUBSTITUTIONS("substitutions", "substitution"),
  MATERIALS("materials", "material"),
  SECTIONS("sections", "section"),
  ASSESSMENTS("assessments", "assessment"),
  SPENDING("spending", "spend"),
  BORROWED("borrowed", "loan"),
  CUTS("cuts", "cut"),
  FORECAST("forecast", "forecast day"),
  LOG("log", "log day");

  private static final Map<String, Kind> BY_KEY =
      Arrays.stream(values())
          .filter(kind -> kind != LOG)
          .collect(Collectors.toUnmodifiableMap(Kind::key, kind -> kind));

  private final String key;
  private final String word;

  Kind(String key, String word) {
    this.key = key;
    this.word = word;
  }

  /** The top key in a file. */
  public String key() {
    return key;
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
