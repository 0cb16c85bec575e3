package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.Sample;
import kitwright.check.Check;
import kitwright.edit.KeyReference;
import kitwright.edit.KeySchema;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.value.Dimension;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.ThreePoint;
import kitwright.value.Unit;
import kitwright.yaml.Node;
import kitwright.yaml.Recall;
import kitwright.yaml.YamlText;
import org.junit.jupiter.api.Test;

/**
 * A kind of record that the program has never heard of: a reference, days, money, a measure, a file
 * and a group. What is declared in its {@code read} is all there is, and every check, the page and
 * the schema follow from it.
 */
class MadeUpKindTest {
  /** A mould, hired from somebody. */
  record Mould(
      String id,
      Ref from,
      LocalDate came,
      Optional<LocalDate> due,
      Optional<ThreePoint<Money>> hire,
      Optional<Quantity> length,
      List<Evidence> pictures,
      Optional<Wax> wax,
      At at)
      implements Entry {
    record Wax(Ref by, LocalDate on) {
      static Wax read(Keys k) {
        return new Wax(
            k.key("by", "who waxed it", "me").ref(Kind.PARTIES),
            k.key("on", "when", "2026-02-03").notBefore("came").happened());
      }
    }

    static Mould read(Keys k) {
      return new Mould(
          k.id("sheer-mould"),
          k.key("from", "who hires it out", "yard").ref(Kind.PARTIES),
          k.key("came", "the day it came", "2026-02-02").happened(),
          k.key("due", "the day it goes back", "2026-04-02").notBefore("came").maybePlanned(),
          k.key("hire", "what it costs", "40 EUR").maybeGuess(),
          k.key("length", "how long it is", "2 m")
              .between("100 mm", "20 m")
              .maybeMeasure(Unit.ONE, Dimension.LENGTH),
          k.key("pictures", "files that show it", "[evidence/mould.jpg]")
              .each("file", Evidence::read),
          k.key("wax", "when it was waxed").maybeGroup(Wax::read),
          k.at());
    }

    @Override
    public Kind kind() {
      return Kind.STOCK; // any: a kind of its own would need a word in the list of kinds
    }
  }

  private static final Layout MOULDS = Layout.of(Mould::read);

  @Test
  void aSoundOneIsSilent() {
    assertThat(told("{id: m, from: pell, came: 2026-02-02, due: 2026-04-02, hire: 40}")).isEmpty();
  }

  @Test
  void everyCheckFollowsFromItsDeclaration() {
    assertThat(
            told(
                "{id: m, from: peel, came: 2026-03-30, due: 2062-01-02, hire: [40, 30, -5],"
                    + " length: 2 mm, pictures: gone.jpg, wax: {by: nobody, on: 2026-03-01}}"))
        .containsExactlyInAnyOrder(
            "reference-dangling from",
            "date-impossible came",
            "date-impossible due",
            "three-point-disordered hire",
            "measure-implausible length",
            "evidence-absent file",
            "reference-dangling by",
            "dates-disordered on");
    assertThat(told("{id: m, from: pell, came: 1926-03-30, hire: -5}"))
        .containsExactlyInAnyOrder("date-impossible came", "money-negative hire");
  }

  @Test
  void misspeltAndMissingKeysAreTold() {
    Findings faults = new Findings();
    read("{id: m, form: pell, came: 2026-02-02}", faults);
    assertThat(faults.inOrder())
        .extracting(Finding::rule)
        .containsExactlyInAnyOrder("key-missing", "key-unknown");
    assertThat(faults.inOrder()).extracting(Finding::mend).contains("Did you mean “from”?");
  }

  @Test
  void thePageAndTheSchemaShowIt() {
    assertThat(KeyReference.of("moulds", "moulds on hire", MOULDS))
        .contains("| **from** | who hires it out | id of a party | `yard` |")
        .contains("| due | the day it goes back; not before “came” | day | `2026-04-02` |")
        .contains("### wax of moulds");
    assertThat(KeySchema.of(Map.of("moulds", MOULDS)))
        .contains("\"$ref\": \"#/$defs/moulds\"")
        .contains("who hires it out; such as from: yard");
  }

  private static List<String> told(String yaml) {
    Findings out = new Findings();
    Mould mould = read(yaml, out).orElseThrow();
    Facts day = Facts.of(ledger(mould), Sample.TODAY);
    Check.rules().stream()
        .filter(MadeUpKindTest::looksAtAllKinds)
        .forEach(r -> r.examine(day, out));
    return out.inOrder().stream()
        .map(finding -> finding.rule() + " " + key(mould.at(), finding))
        .toList();
  }

  /**
   * The rules of the form ask a record only what is declared; others know the kind they look at.
   */
  private static boolean looksAtAllKinds(Rule rule) {
    return rule.getClass().getPackage().equals(Check.class.getPackage());
  }

  /** The key at whose value a finding stands. */
  private static String key(At at, Finding finding) {
    StringBuilder found = new StringBuilder();
    at.each(
        (within, key, value) -> {
          if (within.get(0).of(key.name()).equals(finding.at())) {
            found.append(key.name());
          }
        });
    return found.toString();
  }

  private static Ledger ledger(Mould mould) {
    Ledger plain = Sample.ledger("");
    Ledger.Gathering all = new Ledger.Gathering();
    plain.all().forEach(all::add);
    all.add(mould);
    return all.close(plain.build(), new SeenFiles(paths -> Map.of()));
  }

  private static Optional<Mould> read(String yaml, Findings faults) {
    Recall recall = new Recall();
    List<Mould> all = new java.util.ArrayList<>();
    YamlText.read(
        "x.yaml",
        "moulds:\n  - " + yaml + "\n",
        recall,
        (key, node) -> {
          Keys keys =
              Keys.of(
                  MOULDS,
                  (Node.Mapping) node,
                  "mould",
                  Currency.getInstance("EUR"),
                  recall,
                  faults);
          Mould mould = Mould.read(keys);
          keys.finish();
          all.add(mould);
        },
        faults);
    return all.stream().findFirst();
  }
}
