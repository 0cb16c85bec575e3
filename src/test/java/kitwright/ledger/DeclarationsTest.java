package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitwright.finding.Findings;
import kitwright.value.Misread;
import kitwright.yaml.Node;
import kitwright.yaml.Recall;
import kitwright.yaml.YamlText;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the declarations of all kinds say holds together. */
class DeclarationsTest {
  private static final Layouts LAYOUTS = new Layouts();
  private static final Pattern PLACE =
      Pattern.compile("\\bat\\(\\)\\s*\\.(?:of|has)\\(\"([^\"]+)\"\\)");

  @ParameterizedTest
  @EnumSource(Kind.class)
  void everyKeySaysWhatItMeansInOneSentence(Kind kind) {
    each(
        LAYOUTS.of(kind),
        key ->
            assertThat(key.says())
                .as(key.name())
                .isNotBlank()
                .doesNotEndWith(".")
                .hasSizeLessThan(200));
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void everyExampleIsReadBySort(Kind kind) {
    each(LAYOUTS.of(kind), DeclarationsTest::readExample);
  }

  private static void readExample(Key key) {
    boolean plain = key.inner().isEmpty() && key.form() != Key.Form.NAMED;
    if (plain && key.sort().words().isEmpty()) {
      assertThat(key.example()).as("example of " + key.name()).isNotBlank();
      String items = key.example().replaceAll("^\\[|\\]$", "");
      for (String item : key.example().startsWith("[") ? items.split(", ") : new String[] {items}) {
        read(key, item);
      }
    } else if (plain && !key.example().isEmpty()) {
      assertThat(key.sort().words())
          .containsAll(List.of(key.example().replaceAll("^\\[|\\]$", "").split(", ")));
    }
  }

  private static void read(Key key, String text) {
    try {
      key.sort().read(text, Keys.learning(Layout.of(k -> "")));
      if (!key.sort().pattern().isEmpty()) {
        assertThat(text).as(key.name()).matches(Pattern.compile(key.sort().pattern()));
      }
    } catch (Misread misread) {
      fail(key.name() + ": " + misread.what());
    }
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void everyDayStandsBehindOneThatThereIs(Kind kind) {
    ordered(LAYOUTS.of(kind), List.of());
  }

  private static void ordered(Layout layout, List<Layout> around) {
    List<Layout> within = new ArrayList<>(List.of(layout));
    within.addAll(around);
    for (Key key : layout.keys()) {
      for (String path : key.notBefore()) {
        assertThat(within)
            .as(key.name() + " not before " + path)
            .anyMatch(group -> leadsToADay(group, path));
      }
      key.inner().ifPresent(inner -> ordered(inner, within));
    }
  }

  private static boolean leadsToADay(Layout layout, String path) {
    String[] names = path.split("\\.", 2);
    int slot = layout.slotOf(names[0]);
    if (slot < 0 || names.length == 1) {
      return slot >= 0 && layout.key(slot).isDay();
    }
    Key key = layout.key(slot);
    return key.inner().filter(inner -> leadsToADay(inner, names[1])).isPresent()
        || key.kinds().stream().anyMatch(kind -> leadsToADay(LAYOUTS.of(kind), names[1]));
  }

  /** A place asked of a key that no record declares would silently be the record’s own. */
  @Test
  void everyPlaceAskedIsOfAKeyThatThereIs() throws IOException {
    Set<String> declared = new TreeSet<>();
    for (Kind kind : Kind.values()) {
      each(LAYOUTS.of(kind), key -> declared.add(key.name()));
    }
    Set<String> asked = new TreeSet<>();
    try (Stream<Path> sources = Files.walk(Path.of("src/main/java"))) {
      for (Path source : sources.filter(file -> file.toString().endsWith(".java")).toList()) {
        PLACE
            .matcher(Files.readString(source))
            .results()
            .map(found -> found.group(1))
            .forEach(asked::add);
      }
    }
    assertThat(asked).hasSizeGreaterThan(20).isSubsetOf(declared);
  }

  /** Questions come in the order in which they were learnt, whatever a record holds. */
  @Property(tries = 200)
  void noQuestionIsAskedOutOfOrder(@ForAll Random random) {
    for (Kind kind : Kind.values()) {
      Layout layout = LAYOUTS.of(kind);
      String yaml = "x:\n  - " + record(layout, random) + "\n";
      Recall recall = new Recall();
      Findings faults = new Findings();
      YamlText.read(
          "x.yaml",
          yaml,
          recall,
          (key, node) -> {
            Keys keys =
                Keys.of(
                    layout,
                    (Node.Mapping) node,
                    kind.word(),
                    Currency.getInstance("EUR"),
                    recall,
                    faults);
            Layouts.read(kind, keys, "");
            assertThat(keys.lookedUp()).as(yaml).isZero();
          },
          faults);
    }
  }

  private static String record(Layout layout, Random random) {
    StringBuilder out = new StringBuilder("{");
    for (Key key : layout.keys()) {
      if (random.nextBoolean()) {
        String value = key.example().isEmpty() || random.nextInt(5) == 0 ? "" : key.example();
        if (!value.isEmpty()) {
          out.append(out.length() > 1 ? ", " : "").append(key.name()).append(": ").append(value);
        }
      }
    }
    return out.append('}').toString();
  }

  private static void each(Layout layout, Consumer<Key> looker) {
    for (Key key : layout.keys()) {
      looker.accept(key);
      key.inner().ifPresent(inner -> each(inner, looker));
    }
  }
}
