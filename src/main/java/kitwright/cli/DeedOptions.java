package kitwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Answers;
import kitwright.edit.Deed;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.value.Word;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The options of a deed, one a key as it is declared, and what was said with them. */
final class DeedOptions {
  private static final String ON = "on";

  private final Deed deed;
  private final Map<String, OptionSpec> byKey = new LinkedHashMap<>();
  private @Nullable PositionalParamSpec places;

  DeedOptions(Deed deed) {
    this.deed = deed;
  }

  void declare(CommandSpec spec) {
    spec.usageMessage()
        .description(formatted(deed.does()), formatted("For example: " + deed.example()));
    places = places();
    spec.addPositional(places);
    for (Key key : deed.keys()) {
      add(key.name(), key.says(), key, spec);
    }
    if (deed.word().equals("settle")) {
      add("of", "the shortage whose line ended; all of the claim where none is named", null, spec);
    }
    if (deed.kind() == Kind.LOG) {
      add("words", "what there is to tell of the day, in your own words", null, spec);
    }
  }

  private PositionalParamSpec places() {
    List<String> names = new ArrayList<>();
    if (!deed.begins()) {
      names.add(deed.kind().word());
    }
    ties().ifPresent(kind -> names.add(kind.word()));
    names.addAll(deed.given());
    return PositionalParamSpec.builder()
        .index("0..*")
        .arity("0..*")
        .hidden(names.isEmpty())
        .type(List.class)
        .auxiliaryTypes(String.class)
        .paramLabel(String.join(" ", names).toUpperCase(Locale.ROOT))
        .description("These, in this order; asked for at a terminal.")
        .build();
  }

  private void add(String name, String says, @Nullable Key key, CommandSpec spec) {
    boolean many =
        key != null
            && (key.form() == Key.Form.LIST
                || key.form() == Key.Form.GROUPS
                || key.form() == Key.Form.NAMED);
    String[] names =
        isDay(name) ? new String[] {"--" + ON, "--" + name} : new String[] {"--" + name};
    OptionSpec option =
        OptionSpec.builder(names)
            .arity("1")
            .paramLabel(key == null ? "TEXT" : label(key))
            .type(many ? List.class : String.class)
            .auxiliaryTypes(String.class)
            .description(formatted(sentence(says) + (key == null ? "" : such(key))))
            .build();
    byKey.put(name, option);
    spec.addOption(option);
  }

  /** The day of the deed goes by --on, whatever its key is called. */
  private boolean isDay(String name) {
    boolean own = deed.once().equals(name) && !deed.word().equals("settle");
    boolean found = deed.begins() && (name.equals("found") || name.equals("day"));
    return own || found;
  }

  private static String label(Key key) {
    return switch (key.form()) {
      case GROUPS, GROUP -> key.shorthand().equals("file") ? "FILE" : "KEY=VALUE,…";
      case NAMED -> "NAME=VALUE";
      default -> {
        String sort = key.sort().word();
        boolean plain = key.kinds().isEmpty() && sort.indexOf(' ') < 0;
        yield !key.sort().words().isEmpty()
            ? "WORD"
            : key.isDay() ? "DATE" : plain ? sort.toUpperCase(Locale.ROOT) : "ID";
      }
    };
  }

  private static String such(Key key) {
    return key.inner().isPresent()
        ? " Such as " + Answers.example(key) + "."
        : key.sort().words().isEmpty()
            ? ""
            : " One of: " + String.join(", ", key.sort().words()) + ".";
  }

  /** The library formats what it is told. */
  private static String formatted(String text) {
    return text.replace("%", "%%");
  }

  private static String sentence(String says) {
    return Word.capital(says) + ".";
  }

  /** What was said for each key, on the command line. */
  Map<String, List<String>> said() {
    List<String> words = words();
    Map<String, List<String>> said = new LinkedHashMap<>();
    byKey.forEach((key, option) -> put(key, option.getValue(), said));
    List<String> rest =
        deed.begins() && ties().isEmpty()
            ? words
            : words.subList(Math.min(1, words.size()), words.size());
    List<String> places = deed.given();
    for (int i = 0; i < rest.size(); i++) {
      if (places.isEmpty()) {
        throw new Refusal(
            "“" + rest.get(i) + "” is a word too many.",
            "See “kitwright " + deed.word() + " --help”.");
      }
      String key = places.get(Math.min(i, places.size() - 1));
      if (i < places.size()) {
        said.put(key, new ArrayList<>(List.of(rest.get(i))));
      } else if (isList(key)) {
        said.computeIfAbsent(key, any -> new ArrayList<>()).add(rest.get(i));
      } else {
        said.merge(key, List.of(rest.get(i)), (a, b) -> List.of(a.get(0) + " " + b.get(0)));
      }
    }
    return said;
  }

  private static void put(String key, @Nullable Object value, Map<String, List<String>> said) {
    List<String> texts = texts(value);
    if (!texts.isEmpty()) {
      said.put(key, texts);
    }
  }

  @SuppressWarnings("unchecked") // the option was built with this type
  private static List<String> texts(@Nullable Object value) {
    return value instanceof List<?> list
        ? new ArrayList<>((List<String>) list)
        : value == null ? List.of() : List.of(value.toString());
  }

  private boolean isList(String name) {
    return deed.keys().stream()
        .anyMatch(key -> key.name().equals(name) && key.form() != Key.Form.ONE);
  }

  /** The words without an option. */
  List<String> words() {
    return texts(places == null ? null : places.getValue());
  }

  /** The kind whose record is named first and then names the new one. */
  Optional<Kind> ties() {
    return deed.word().equals("calculate") ? Optional.of(Kind.SUBSTITUTIONS) : Optional.empty();
  }
}
