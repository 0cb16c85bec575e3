package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;
import kitwright.ledger.Layouts;
import org.junit.jupiter.api.Test;

/**
 * What a message or a page tells somebody to type exists: each command, each option of it, and each
 * key.
 */
class NamedInMessagesTest {
  private static final Pattern COMMAND = Pattern.compile("[“`]kitwright ([^”`]+)[”`]");
  private static final Pattern OPTION = Pattern.compile("(?<![\\w-])--[a-z][a-z0-9-]*");

  /** “key: value”, as a builder shall write it, and {key: value, key: value}. */
  private static final Pattern WRITTEN = Pattern.compile("“([a-z][A-Za-z0-9-]*):[ ”]");

  private static final Pattern GROUP = Pattern.compile("\\{([a-z0-9-]+: [^{}]*)");
  private static final Pattern IN_GROUP = Pattern.compile("(?:^|, )([a-z0-9-]+): ");

  /** In what a mend asks for, a word between quotes. */
  private static final Pattern WORD = Pattern.compile("“([a-z][a-z0-9-]*)”");

  /** Names of the user’s own, or of a measure, in groups that hold such. */
  private static final Set<String> OWN =
      Set.of("diameter", "larch", "lay-sole", "mass", "me", "moment", "verdict");

  private static final Set<String> KEYS = keys();

  @Test
  void eachCommandAndItsOptionsExist() {
    List<String> wrong = new ArrayList<>();
    texts()
        .forEach(
            text -> {
              Matcher named = COMMAND.matcher(text.words());
              while (named.find()) {
                missing(named.group(1)).forEach(each -> wrong.add(text.file() + ": " + each));
              }
            });
    assertThat(wrong).isEmpty();
  }

  @Test
  void aWrongOneIsSeen() {
    assertThat(missing("chek --all")).containsExactly("chek");
    assertThat(missing("check --al")).containsExactly("check --al");
    assertThat(missing("check --all")).isEmpty();
    assertThat(unknown("Write “sate: paid” or {on: 2026-01-01, form: EUR}."))
        .containsExactly("sate", "form");
  }

  /** The words that are missing, each with its command. */
  private static List<String> missing(String line) {
    String word = line.split(" ")[0];
    if (word.equals("help")
        || word.startsWith("-")
        || word.equals(word.toUpperCase(java.util.Locale.ROOT))) {
      return List.of();
    }
    if (Commands.named(word).isEmpty()) {
      return List.of(word);
    }
    Set<String> known = new TreeSet<>(List.of("--help"));
    CommandLineRun.line(Commands.named(word).get(), 80)
        .getCommandSpec()
        .options()
        .forEach(option -> known.addAll(Arrays.asList(option.names())));
    return OPTION
        .matcher(line)
        .results()
        .map(found -> found.group())
        .filter(option -> !known.contains(option))
        .map(option -> word + " " + option)
        .toList();
  }

  @Test
  void eachKeyThatAMessageWritesOutExists() {
    List<String> wrong = new ArrayList<>();
    sources()
        .forEach(text -> unknown(text.words()).forEach(key -> wrong.add(text.file() + ": " + key)));
    assertThat(wrong).isEmpty();
  }

  private static List<String> unknown(String words) {
    List<String> keys = new ArrayList<>();
    WRITTEN.matcher(words).results().forEach(found -> keys.add(found.group(1)));
    GROUP
        .matcher(words)
        .results()
        .flatMap(group -> IN_GROUP.matcher(group.group(1)).results())
        .forEach(found -> keys.add(found.group(1)));
    keys.removeAll(KEYS);
    keys.removeAll(OWN);
    return keys;
  }

  /** A key, a word of a closed list, or something of the rule’s own sample. */
  @Test
  void eachWordThatAMendQuotesExists() throws IOException {
    List<String> wrong = new ArrayList<>();
    try (Stream<Path> rooms = Files.list(Path.of("src/test/resources/golden/rules"))) {
      for (Path room : rooms.sorted().toList()) {
        for (String finding : Files.readString(room).split("\n\n")) {
          List<String> lines = finding.strip().lines().toList();
          String rule = lines.get(0).split(",")[0];
          String page = text(Path.of("src/main/resources/kitwright/rules", rule + ".md"));
          WORD.matcher(lines.get(3))
              .results()
              .map(found -> found.group(1))
              .filter(word -> !KEYS.contains(word) && !page.contains(word))
              .forEach(word -> wrong.add(rule + ": " + word));
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  private record Text(Path file, String words) {}

  private static Stream<Text> texts() {
    return Stream.concat(
        sources(),
        Stream.of("README.md", "src/docs", "src/main/resources/kitwright/rules", "templates")
            .flatMap(each -> files(Path.of(each)))
            .filter(file -> file.toString().endsWith(".md"))
            .map(file -> new Text(file, text(file))));
  }

  /** The texts of the program’s classes, each sentence in one piece; what is put in is NAME. */
  private static Stream<Text> sources() {
    return files(Path.of("src/main/java"))
        .filter(file -> file.toString().endsWith(".java"))
        .map(
            file ->
                new Text(
                    file,
                    text(file)
                        .replaceAll("\"\\s*\\+\\s*\"", "")
                        .replaceAll("\"\\s*\\+\\s*[\\w.()]+\\s*\\+\\s*\"", "NAME")));
  }

  private static Stream<Path> files(Path below) {
    try (Stream<Path> all = Files.walk(below)) {
      return all.filter(Files::isRegularFile).sorted().toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> keys() {
    Set<String> keys = new TreeSet<>();
    Layouts layouts = new Layouts();
    for (Kind kind : Kind.values()) {
      keys.add(kind.key());
      add(layouts.of(kind), keys);
    }
    return keys;
  }

  private static void add(Layout layout, Set<String> keys) {
    for (Key key : layout.keys()) {
      keys.add(key.name());
      keys.addAll(key.sort().words());
      key.inner().ifPresent(inner -> add(inner, keys));
    }
  }
}
