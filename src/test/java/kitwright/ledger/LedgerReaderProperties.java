package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import kitwright.Sample;
import kitwright.value.Place;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What a record says does not depend on how it is laid out. */
class LedgerReaderProperties {
  private static final Map<String, String> LARCH =
      Map.of(
          "id", "larch-of-ours",
          "what", "\"Larch, planed\"",
          "kind", "timber",
          "density", "560 kg/m3",
          "E", "11.8 GPa",
          "price", "12.50 EUR/m",
          "unconfirmed", "[E, density]",
          "angles", "[0, 45, -45]",
          "moisture", "12 %",
          "source", "tested by us");

  /** Order of keys, flow or block style, quotes, comments, blank lines, and the file's name. */
  @Property(tries = 300)
  void layoutDoesNotMatter(@ForAll Random random) {
    Material plain =
        larch(Map.of("t.yaml", "materials:\n  - " + flow(List.copyOf(LARCH.keySet()))));
    List<String> keys = new ArrayList<>(LARCH.keySet());
    Collections.shuffle(keys, random);
    String record = random.nextBoolean() ? flow(keys) : block(keys, random);
    String file = random.nextBoolean() ? "deep/down/z.yaml" : "a.yml";
    Material other = larch(Map.of(file, comment(random) + "materials:\n  - " + record));
    assertThat(other)
        .usingRecursiveComparison()
        .ignoringFieldsOfTypes(Written.class, Place.class)
        .isEqualTo(plain);
    assertThat(other.at().canonical(Set.of())).isEqualTo(plain.at().canonical(Set.of()));
  }

  /** A change of any one value changes the canonical form. */
  @Property(tries = 60)
  void everyValueMatters(@ForAll Random random) {
    List<String> keys = List.copyOf(LARCH.keySet());
    Material plain = larch(Map.of("t.yaml", "materials:\n  - " + flow(keys)));
    String left = keys.get(random.nextInt(keys.size()));
    String without = plain.at().canonical(Set.of(left));
    assertThat(without).isNotEqualTo(plain.at().canonical(Set.of()));
  }

  private static Material larch(Map<String, String> file) {
    Map<String, String> files = new LinkedHashMap<>(file);
    files.put("build.yaml", "build: {name: Wherry, currency: EUR, started: 2026-01-05}\n");
    var faults = new kitwright.finding.Findings();
    Ledger ledger = Sample.read(files, faults).orElseThrow();
    assertThat(faults.inOrder()).isEmpty();
    assertThat(ledger.materials()).hasSize(1);
    return ledger.materials().get(0);
  }

  private static String flow(List<String> keys) {
    return "{"
        + String.join(", ", keys.stream().map(k -> k + ": " + LARCH.get(k)).toList())
        + "}\n";
  }

  private static String block(List<String> keys, Random random) {
    StringBuilder out = new StringBuilder();
    for (String key : keys) {
      String written = random.nextBoolean() ? key : "\"" + key + "\"";
      out.append(out.isEmpty() ? "" : comment(random) + "    ")
          .append(written)
          .append(": ")
          .append(LARCH.get(key))
          .append(random.nextBoolean() ? "   # so drawn\n" : "\n");
    }
    return out.toString();
  }

  private static String comment(Random random) {
    return switch (random.nextInt(3)) {
      case 0 -> "\n";
      case 1 -> "  # id: other, {not: this}\n";
      default -> "";
    };
  }
}
