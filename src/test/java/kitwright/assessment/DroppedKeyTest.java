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

  /**
   * Keys whose lacking says something else, not less: what is not said of a load or of a part is
   * not there, what a published rule gives is taken from it, and the defaults are those of the key
   * page.
   */
  private static final Map<String, String> SAYS_OTHERWISE =
      Map.ofEntries(
          Map.entry("assessments.knock-downs", "nothing takes from it"),
          Map.entry("assessments.knock-downs.layer", "every layer is knocked down"),
          Map.entry("assessments.knock-downs.on", "key page: both where not said"),
          Map.entry("assessments.factors", "nothing takes from it"),
          Map.entry("assessments.factors.duration", "nothing takes from it"),
          Map.entry("assessments.load.force", "other loads act alone"),
          Map.entry("assessments.load.tip-force", "other loads act alone"),
          Map.entry("assessments.load.thrust", "other loads act alone"),
          Map.entry("assessments.load.torque", "other loads act alone"),
          Map.entry("assessments.load.self-weight", "other loads act alone"),
          Map.entry("assessments.load.shape", "key page: a force is spread over the span"),
          Map.entry("assessments.weak-link", "nothing has to break first"),
          Map.entry("assessments.weak-link.chance", "key page: 1 % where not said"),
          Map.entry("assessments.weak-link.breaks-at", "it is meant to break at the support"),
          Map.entry("materials.E-across", "EN 338: E/30 of wood"),
          Map.entry("materials.G", "E/16 of wood, E/(2(1 + ν)) of what is the same every way"),
          Map.entry("materials.poisson", "Wood Handbook, EN 1993-1-1"),
          Map.entry("materials.shear-strength", "von Mises of a metal"),
          Map.entry("sections.glue", "the bond bears what the weaker of both sides bears"),
          Map.entry("sections.layers.angle", "a woven cloth lies along and across"),
          Map.entry("sections.skins.angle", "a woven cloth lies along and across"),
          Map.entry("sections.layers.grain", "wood alone runs along"),
          Map.entry("sections.material", "a foil is hollow"),
          Map.entry("sections.skins", "a foil is bare"),
          Map.entry("sections.members", "a foil has no spine"),
          Map.entry("sections.members.at", "key page: three tenths of the chord"),
          Map.entry("sections.notch", "it is whole"),
          Map.entry("sections.notch.slope", "key page: square where not said"),
          Map.entry("sections.tapers-to", "it does not taper"));

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
    passed.keySet().removeAll(SAYS_OTHERWISE.keySet());
    assertThat(passed).isEmpty();
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
    if (!plain.verdict().passes()
        && result(alone.without(path)).filter(one -> one.verdict().passes()).isPresent()) {
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
    return result(strained.without(without)).filter(one -> one.verdict().passes()).isPresent();
  }
}
