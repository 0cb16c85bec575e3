package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.assessment.sheet.Row;
import kitwright.finding.Findings;
import org.junit.jupiter.api.Test;

/**
 * Nothing passes by not being said: whatever key is taken out of an assessment that fails or cannot
 * be told, of its sections or its materials, it does not pass for that.
 */
class DroppedKeyTest {
  private static final Path LEDGER = Path.of("ledger");

  private static String demonstration() throws IOException {
    StringBuilder text = new StringBuilder(Files.readString(LEDGER.resolve("build.yaml")));
    text.append("---\n").append(Files.readString(LEDGER.resolve("materials.yaml")));
    try (Stream<Path> sections = Files.list(LEDGER.resolve("sections"))) {
      for (Path path : sections.sorted().toList()) {
        text.append("---\n").append(Files.readString(path));
      }
    }
    return text.toString();
  }

  private static Optional<Result> result(String yaml) {
    return Sample.read(yaml, new Findings())
        .flatMap(
            ledger ->
                ledger.assessments().stream()
                    .findFirst()
                    .map(one -> Assessments.result(one, ledger)));
  }

  /** Keys whose lacking says that something is not there: nobody can tell what nobody meant. */
  private static final Map<String, String> NOT_THERE =
      Map.ofEntries(
          Map.entry("assessments.knock-downs", "nothing takes from it"),
          Map.entry("assessments.load.bearing", "it is crushed no sooner than as drawn"),
          Map.entry("assessments.load.tip-force", "other loads act alone"),
          Map.entry("assessments.load.torque", "other loads act alone"),
          Map.entry("assessments.load.self-weight", "other loads act alone"),
          Map.entry("assessments.load.force", "other loads act alone"),
          Map.entry("assessments.weak-link", "nothing has to break first"),
          Map.entry("sections.material", "a foil is hollow"),
          Map.entry("sections.skins", "a foil is bare"),
          Map.entry("sections.members", "a foil has no spine"),
          Map.entry("sections.notch", "it is whole"),
          Map.entry("sections.tapers-to", "it does not taper"));

  /** Keys whose lacking has another value taken, and the words in which the sheet tells that. */
  private static final Map<String, String> TOLD =
      Map.ofEntries(
          Map.entry("assessments.knock-downs.layer", " as built; source"),
          Map.entry("assessments.knock-downs.on", " as designed and as built; source"),
          Map.entry("assessments.weak-link.chance", "AT_MOST, value=1.0]"),
          Map.entry("materials.E-across", "E_ACROSS DERIVED"),
          Map.entry("materials.G", "G DERIVED"),
          Map.entry("materials.poisson", "POISSON DERIVED"),
          Map.entry("materials.shear-strength", "SHEAR_STRENGTH DERIVED"),
          Map.entry("sections.glue", "no glue is stated between the layers"),
          Map.entry("sections.layers.angle", "states no angle"),
          Map.entry("sections.skins.angle", "states no angle"),
          Map.entry("sections.layers.grain", "says how its grain runs"),
          Map.entry("sections.members.at", "does not say where it stands"));

  /** Keys of which a verdict does not hang: words, and what a search or a sheet asks. */
  private static final Set<String> BEARS_NOTHING =
      Set.of(
          "assessments.menu.dimension",
          "assessments.menu.step",
          "materials.angles",
          "materials.price",
          "materials.strain-to-failure",
          "materials.unconfirmed",
          "sections.members.height");

  /** Of the key page: {@code ### layers of sections}, then a row a key. */
  @Test
  void everyKeyThatBearsStandsInASample() throws IOException {
    Set<String> stated = new TreeSet<>();
    for (String sample : samples()) {
      YamlTree.of(sample).keys().forEach(path -> stated.add(path.kind()));
    }
    Set<String> lacking = declared();
    lacking.removeAll(stated);
    assertThat(lacking).containsExactlyInAnyOrderElementsOf(BEARS_NOTHING);
  }

  private static Set<String> declared() throws IOException {
    Set<String> declared = new TreeSet<>();
    String group = "";
    for (String line : Files.readAllLines(Path.of("src/docs/records.md"))) {
      if (line.startsWith("#")) {
        List<String> words = new ArrayList<>(List.of(line.replaceAll("#+ ", "").split(" of ")));
        Collections.reverse(words);
        boolean ours = Set.of("materials", "sections", "assessments").contains(words.get(0));
        group = ours ? String.join(".", words) : "";
      } else if (!group.isEmpty() && line.matches("\\| \\**[a-zA-Z-]+\\** \\|.*")) {
        declared.add(group + "." + line.split("\\|")[1].replace("*", "").strip());
      }
    }
    declared.removeIf(key -> key.endsWith(".key") || key.endsWith(".---"));
    return declared;
  }

  private static List<String> samples() throws IOException {
    List<String> samples = new ArrayList<>(Samples.ALL);
    samples.add(demonstration());
    return samples;
  }

  @Test
  void noKeyThatIsLackingLetsSomethingPass() throws IOException {
    Map<String, String> passed = new TreeMap<>();
    int tried = 0;
    for (String sample : samples()) {
      tried += law(YamlTree.of(sample), passed);
    }
    assertThat(tried).isGreaterThan(1000);
    passed.keySet().removeAll(TOLD.keySet());
    assertThat(passed).containsOnlyKeys(NOT_THERE.keySet());
  }

  private static final YamlTree.Path ALL = new YamlTree.Path(List.of("assessments"));
  private static final YamlTree.Path ONE = ALL.with(0);

  private static int law(YamlTree tree, Map<String, String> passed) {
    int tried = 0;
    for (Object assessment : (List<?>) tree.at(ALL)) {
      YamlTree alone = tree.turned(ALL, List.of(assessment)).pruned();
      Result plain = result(alone.toString()).orElseThrow();
      YamlTree lax = lax(alone, plain);
      Result base = result(lax.toString()).orElseThrow();
      for (YamlTree.Path path : firstAndLast(lax.keys())) {
        tried++;
        dropped(alone, lax, path, plain, base, passed);
      }
    }
    return tried;
  }

  /** Of each kind the first and the last: those of the part as designed and as built. */
  private static Set<YamlTree.Path> firstAndLast(List<YamlTree.Path> keys) {
    Map<String, YamlTree.Path> first = new TreeMap<>();
    Map<String, YamlTree.Path> last = new TreeMap<>();
    for (YamlTree.Path path : keys) {
      if (!asks(path)) {
        first.putIfAbsent(path.kind(), path);
        last.put(path.kind(), path);
      }
    }
    Set<YamlTree.Path> both = new LinkedHashSet<>(first.values());
    both.addAll(last.values());
    return both;
  }

  private static boolean asks(YamlTree.Path path) {
    return !path.kind().contains(".")
        || path.kind().matches("(assessments\\.(require|allow|on)|build|parties)\\b.*");
  }

  private static void dropped(
      YamlTree alone,
      YamlTree lax,
      YamlTree.Path path,
      Result plain,
      Result base,
      Map<String, String> passed) {
    if (!plain.verdict().passes() && passes(alone, path)) {
      passed.put(path.kind(), plain.assessment().id());
    }
    for (Row row : result(lax.without(path)).map(Result::rows).orElse(List.of())) {
      base.rows().stream()
          .filter(before -> before.measure() == row.measure() && isBetter(row, before))
          .filter(before -> passes(lax, path, before))
          .forEach(
              before ->
                  passed.merge(
                      path.kind(),
                      base.assessment().id() + ": " + row.measure(),
                      (a, b) -> a + ", " + b));
    }
  }

  /** Whether it passes without a key; what is taken for that then stands on its sheet. */
  private static boolean passes(YamlTree tree, YamlTree.Path without) {
    Optional<Result> passing = result(tree.without(without)).filter(one -> one.verdict().passes());
    String words = TOLD.get(without.kind());
    if (words != null && passing.isPresent()) {
      assertThat(told(passing.get()))
          .as(without + " of " + passing.get().assessment().id())
          .contains(words);
    }
    return passing.isPresent();
  }

  private static String told(Result result) {
    List<String> told = new ArrayList<>(result.notes());
    told.addAll(result.factors());
    result.rows().forEach(row -> told.add(row.limit().toString()));
    result.inputs().forEach(input -> told.add(input.property() + " " + input.trust()));
    return String.join("\n", told);
  }

  private static boolean isBetter(Row row, Row before) {
    if (row.compared().isEmpty() || !row.lacking().isEmpty()) {
      return false;
    }
    if (before.compared().isEmpty()) {
      return true;
    }
    double now = row.compared().getAsDouble();
    double then = before.compared().getAsDouble();
    return most(row) ? now < 0.999 * then : now > 1.001 * then;
  }

  private static boolean most(Row row) {
    return row.measure().key().equals("mass") || row.measure().key().equals("thickness");
  }

  /** The same asking for so little of everything that nothing is missed. */
  private static YamlTree lax(YamlTree tree, Result result) {
    Map<String, Object> least = new TreeMap<>();
    Map<String, Object> greatest = new TreeMap<>();
    for (Row row : result.rows()) {
      if (row.compared().isEmpty() || !row.lacking().isEmpty()) {
        continue;
      }
      if (most(row)) {
        greatest.put(row.measure().key(), "1000");
      } else if (!row.measure().key().startsWith("weak-link")
          && !row.measure().key().equals("deflection")) {
        least.put(row.measure().key(), "0.000001");
      }
    }
    return tree.turned(ONE.with("require"), least).turned(ONE.with("allow"), greatest);
  }

  /** Asked for a little more than it was, and without the key: whether it passes. */
  private static boolean passes(YamlTree tree, YamlTree.Path without, Row row) {
    if (row.measure().key().startsWith("weak-link")
        || row.measure().key().equals("deflection")
        || row.compared().isEmpty()) {
      return false;
    }
    double limit = row.compared().getAsDouble() * (most(row) ? 0.999 : 1.001);
    Map<String, Object> asked =
        Map.of(row.measure().key(), String.format(Locale.ROOT, "%.9f", limit));
    YamlTree strained =
        most(row)
            ? tree.turned(ONE.with("allow"), asked)
            : YamlTree.of(tree.turned(ONE.with("require"), asked).without(ONE.with("allow")));
    return passes(strained, without);
  }
}
