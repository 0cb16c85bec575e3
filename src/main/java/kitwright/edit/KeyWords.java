package kitwright.edit;

import java.util.List;
import java.util.stream.Collectors;
import kitwright.ledger.Key;
import kitwright.value.Word;

/** What is said of a key, from its declaration alone. */
final class KeyWords {
  private KeyWords() {}

  /** What it holds: {@code money, or low, likely and high}. */
  static String holds(Key key) {
    return switch (key.form()) {
      case ONE -> one(key);
      case LIST -> "list: " + one(key);
      case RANGE -> one(key) + "; or [low, likely, high]";
      case GROUP -> "group of keys";
      case GROUPS ->
          key.shorthand().isEmpty()
              ? "list of groups"
              : "list of groups; a plain value is its “" + key.shorthand() + "”";
      case NAMED ->
          key.kinds().isEmpty()
              ? "names of your own, each with: " + one(key)
              : "ids of " + kinds(key, " or ") + ", each with: " + key.sort().word();
    };
  }

  private static String one(Key key) {
    if (!key.kinds().isEmpty()) {
      return "id of " + kinds(key, " or ");
    }
    return key.sort().words().isEmpty()
        ? key.sort().word()
        : key.sort().words().equals(List.of("yes", "no", "true", "false"))
            ? key.sort().word()
            : String.join(" · ", key.sort().words());
  }

  private static String kinds(Key key, String or) {
    return key.kinds().stream()
        .map(kind -> Word.withArticle(kind.word()))
        .collect(Collectors.joining(or));
  }

  /** What it means, with its order among days and its bounds. */
  static String says(Key key) {
    String order =
        key.notBefore().stream()
            .map(earlier -> "; not before “" + earlier.replace(".", "” → “") + "”")
            .collect(Collectors.joining());
    String band = key.band().map(b -> "; plausibly " + b.low() + " to " + b.high()).orElse("");
    String ever = key.traits().contains(Key.Trait.EVER) ? "; may lie before the build began" : "";
    return key.says() + order + band + ever;
  }

  /** How it is written; of a group, its keys that must be there, or its first. */
  static String example(Key key) {
    if (!key.example().isEmpty()) {
      return key.example();
    }
    if (key.inner().isPresent()) {
      List<Key> keys = key.inner().get().keys();
      List<Key> shown = keys.stream().filter(Key::needed).toList();
      String group =
          (shown.isEmpty() ? keys.subList(0, Math.min(2, keys.size())) : shown)
              .stream()
                  .map(inner -> inner.name() + ": " + example(inner))
                  .collect(Collectors.joining(", ", "{", "}"));
      return key.form() == Key.Form.GROUPS ? "[" + group + "]" : group;
    }
    return key.sort().words().isEmpty() ? "" : key.sort().words().get(0);
  }
}
