package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeantTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "width; STOCK; Did you mean “size”?",
        "length; STOCK; Did you mean “size”?",
        "thickness; KIT; Did you mean “size”?",
        "date; SPENDING; Did you mean “on”?",
        "price; SPENDING; Did you mean “amount”?",
        "supplier; KIT; Did you mean “from”?",
        "quantity; KIT; Did you mean “qty”?",
        "photo; SHORTAGES; Did you mean “evidence”?",
        "name; TASKS; Did you mean “what”?"
      })
  void aWordThatMeansTheSameNamesTheKey(String word, Kind kind, String mend) {
    assertThat(mend(word, kind)).isEqualTo(mend);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "wroth; STOCK; Did you mean “worth”?",
        "duw; BORROWED; Did you mean “due”?",
        "recieved; DELIVERIES; Did you mean “received”?",
        "form; KIT; Did you mean “from”?",
        "tool; TASKS; Did you mean “tools”?"
      })
  void aMisspeltOneNamesTheKeyItMisspells(String word, Kind kind, String mend) {
    assertThat(mend(word, kind)).isEqualTo(mend);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "length; CUTS; Write it inside “parts”, where that key belongs.",
        "material; TASKS; Write it inside “uses”, where that key belongs.",
        "diameter; SECTIONS; Write it inside “dimensions”, where that key belongs.",
        "wall; SECTIONS; Write it inside “dimensions” or “outline”, where that key belongs."
      })
  void aKeyOfAGroupIsSentThere(String word, Kind kind, String mend) {
    assertThat(mend(word, kind)).isEqualTo(mend);
  }

  @ParameterizedTest
  @CsvSource({
    "crate, SPENDING",
    "lead, CLAIMS",
    "rain, KIT",
    "contact, BUILD",
    "structural, ASSESSMENTS"
  })
  void aWordThatIsRightInItselfMisspellsNone(String word, Kind kind) {
    assertThat(mend(word, kind)).startsWith("The keys here are: ");
  }

  @Test
  void aKeyThatStandsThereAlreadyIsNotWrittenTwice() {
    assertThat(mends("stock: [{id: a, what: oak, qty: 3, quantity: 3}]"))
        .containsExactly("“qty” says that, and stands here already: leave one of them out.");
  }

  @Test
  void aGroupIsShownAsItIsWritten() {
    assertThat(mends("tasks: [{id: t, what: T, takes: 1 d, weather: dry}]"))
        .containsExactly(
            "Write there a group of keys, such as {dry: 2 d, above: 10 C, dew-margin: 3 K}; a text"
                + " with a colon, a comma or brackets needs quotes.");
    assertThat(mends("assessments: [{id: a, method: external, require: 1}]"))
        .containsExactly(
            "Write there a group of keys, such as {stiffness: 1.0, moment: 1.0, shear: 1.0}; a text"
                + " with a colon, a comma or brackets needs quotes.");
    assertThat(mends("deliveries: [{id: d, from: kit-maker, packed: [plank]}]"))
        .containsExactly(
            "Write there a group of keys, such as {item: plank, qty: 12 each}; a text with a colon,"
                + " a comma or brackets needs quotes.");
  }

  @Test
  void aTemperatureInOtherDegreesIsNotTakenForCelsius() {
    assertThat(mends("forecast: [{day: 2026-03-03, rain: 0 mm, low: 41 F, high: 12}]"))
        .containsExactly("Convert it, and write degrees Celsius, such as 12 or -3.");
  }

  @Test
  void aKindOfRecordIsKnownByWhatItHolds() {
    assertThat(mends("tool: []\norders: []\nsuppliers: []\nsutck: []"))
        .containsExactly(
            "Did you mean “borrowed”?",
            "Did you mean “spending”?",
            "Did you mean “parties”?",
            "The kinds are: " + String.join(", ", Kind.keys()) + ".");
  }

  @Test
  void eachWordOfTheTableLeadsToAKeyThatSomeRecordHas() {
    List<String> all = new ArrayList<>(Kind.keys());
    Layouts layouts = new Layouts();
    for (Kind kind : Kind.values()) {
      collect(layouts.of(kind), all);
    }
    assertThat(all).containsAll(Meant.all());
  }

  private static void collect(Layout layout, List<String> all) {
    all.addAll(layout.names());
    layout.keys().forEach(key -> key.inner().ifPresent(inner -> collect(inner, all)));
  }

  private static String mend(String word, Kind kind) {
    return Meant.mend(word, new Layouts().of(kind), any -> false);
  }

  private static List<String> mends(String yaml) {
    Findings out = new Findings();
    assertThat(Sample.read(yaml, out)).isPresent();
    return out.inOrder().stream().map(Finding::mend).toList();
  }
}
