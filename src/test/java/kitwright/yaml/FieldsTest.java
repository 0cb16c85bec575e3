package kitwright.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.ThreePoint;
import kitwright.value.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Typed values of one record: what is read, what is refused, and how the refusal is told. */
class FieldsTest {
  private static final Currency EURO = Currency.getInstance("EUR");

  private final Findings faults = new Findings();

  enum Wood {
    LARCH,
    DOUGLAS_FIR
  }

  @Test
  void valuesAreReadFromTheirTextOnly() {
    Fields f =
        record("{id: no, qty: 012, amount: 46.20, on: 2026-01-05, share: 60 %, wood: larch}");
    assertThat(f.id()).isEqualTo("no");
    assertThat(f.quantity("qty", Unit.EACH)).isEqualTo(Quantity.of("12", Unit.EACH));
    assertThat(f.money("amount")).isEqualTo(new Money(new BigDecimal("46.20"), EURO));
    assertThat(f.day("on")).isEqualTo(LocalDate.of(2026, 1, 5));
    assertThat(f.maybeShare("share").orElseThrow()).isEqualByComparingTo("0.6");
    assertThat(f.choice("wood", Wood.class, Wood.DOUGLAS_FIR)).isEqualTo(Wood.LARCH);
    f.finish();
    assertThat(f.isSound()).isTrue();
    assertThat(faults.inOrder()).isEmpty();
  }

  /** YAML 1.1 would read 1000, 685230 (sixty by sixty), 31 and 10. */
  @ParameterizedTest
  @ValueSource(strings = {"1_000", "190:20:30", "0x1F", "0o12", "1e3", ".inf", "yes", "5.", "1,5"})
  void whatIsNoPlainNumberIsRefusedNotGuessed(String text) {
    Fields f = record("{id: a, n: '" + text + "'}");
    f.id();
    f.maybeNumber("n");
    assertThat(f.isSound()).isFalse();
    assertThat(told()).containsExactly("value-unreadable x.yaml:2:16");
  }

  @ParameterizedTest
  @CsvSource({"012, 12", ".5, 0.5", "-3, -3", "+2.50, 2.5", "0.0, 0"})
  void aPlainNumberIsDecimal(String text, BigDecimal number) {
    assertThat(record("{n: " + text + "}").number("n")).isEqualByComparingTo(number);
  }

  @ParameterizedTest
  @CsvSource({"yes, true", "true, true", "no, false", "false, false"})
  void aFlagIsYesOrNo(String text, boolean on) {
    assertThat(record("{loud: " + text + "}").flag("loud")).isEqualTo(on);
    assertThat(record("{}").flag("loud")).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"on", "y", "True", "1"})
  void otherWordsForYesAreRefused(String text) {
    record("{loud: " + text + "}").flag("loud");
    assertThat(told()).containsExactly("value-unreadable x.yaml:2:12");
  }

  @Test
  void aWordOfAClosedListIsWrittenWithHyphensAndItsNearestIsOffered() {
    assertThat(record("{wood: douglas-fir}").choice("wood", Wood.class, Wood.LARCH))
        .isEqualTo(Wood.DOUGLAS_FIR);
    record("{wood: lurch}").choice("wood", Wood.class, Wood.LARCH);
    record("{wood: Larch}").choice("wood", Wood.class, Wood.LARCH);
    assertThat(faults.inOrder())
        .hasSize(2)
        .allSatisfy(fault -> assertThat(fault.mend()).contains("Did you mean “larch”?"));
  }

  @Test
  void aKeyThatIsMissingIsToldAtTheRecord() {
    Fields f = record("{id: a}");
    f.id();
    f.text("what");
    assertThat(f.isSound()).isFalse();
    assertThat(told()).containsExactly("key-missing x.yaml:2:10");
    assertThat(only().what()).isEqualTo("This plank has no “what”.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "~", "null"})
  void aKeyWithoutAValueIsMissing(String nothing) {
    record("{id: a, what: " + nothing + "}").text("what");
    assertThat(only().rule()).isEqualTo("key-missing");
  }

  @Test
  void aKeyThatNobodyKnowsIsToldWithTheNearest() {
    Fields f = record("{id: a, lenght: 3 m}");
    f.id();
    f.maybeQuantity("length", Unit.M);
    f.maybeText("what");
    f.finish();
    assertThat(f.isSound()).isFalse();
    assertThat(told()).containsExactly("key-unknown x.yaml:2:13");
    assertThat(only().mend()).isEqualTo("Did you mean “length”?");
    assertThat(only().records()).containsExactly("plank a");
  }

  @Test
  void aKeyFarFromAllIsToldWithTheListOfThem() {
    Fields f = record("{id: a, xyzzy: 3}");
    f.maybeText("what");
    f.id();
    f.finish();
    assertThat(only().mend()).isEqualTo("The keys here are: id, what.");
  }

  @Test
  void aCommaThatCutsATextIsNamedAsSuch() {
    Fields f = record("{id: a, what: frame 3, port side}");
    f.id();
    f.text("what");
    f.finish();
    assertThat(only().rule()).isEqualTo("text-cut-by-comma");
    assertThat(only().mend()).contains("what: \"frame 3, port side\"");
  }

  @Test
  void groupsStandInGroupsAndTheirFaultsMakeTheRecordUnsound() {
    Fields f = record("{id: a, strips: [{of: larch, qty: 2}, {of: ash, qtty: 2}]}");
    f.id();
    List<String> strips =
        f.each(
            "strips",
            inner -> {
              inner.maybeQuantity("qty", Unit.EACH);
              return inner.text("of");
            });
    f.finish();
    assertThat(strips).containsExactly("larch");
    assertThat(f.isSound()).isFalse();
    assertThat(only().at()).hasToString("x.yaml:2:53");
    assertThat(only().what()).isEqualTo("“strips” of a plank has no key “qtty”.");
  }

  @Test
  void oneAloneNeedsNoBrackets() {
    assertThat(record("{ends: stem}").refs("ends")).extracting(Ref::id).containsExactly("stem");
    assertThat(record("{ends: [stem, transom]}").refs("ends"))
        .extracting(Ref::toString)
        .containsExactly("stem", "transom");
    assertThat(record("{}").refs("ends")).isEmpty();
  }

  @Test
  void threePointsAreOneValueOrThree() {
    Fields.Reading<String> text = word -> word;
    assertThat(record("{takes: 2 d}").maybeThreePoint("takes", text))
        .contains(ThreePoint.fixed("2 d"));
    assertThat(record("{takes: [1 d, 2 d, 4 d]}").maybeThreePoint("takes", text))
        .contains(new ThreePoint<>("1 d", "2 d", "4 d"));
    assertThat(faults.inOrder()).isEmpty();
    record("{takes: [1 d, 2 d]}").maybeThreePoint("takes", text);
    assertThat(only().what()).isEqualTo("“takes” holds 2 values, not three.");
  }

  @Test
  void aReferenceKnowsWhereItWasWritten() {
    assertThat(record("{id: a, from: pell}").ref("from").at()).hasToString("x.yaml:2:19");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a b", "a/b", "a\\b", "a\u202eb", "a\u200bb"})
  void anIdHoldsNothingThatHides(String id) {
    record("{id: '" + id + "'}").id();
    assertThat(only().rule()).isEqualTo("value-unreadable");
  }

  @Test
  void anIdMayHoldAnyLetter() {
    assertThat(record("{id: blåkrabbe-⛵-3.1}").id()).isEqualTo("blåkrabbe-⛵-3.1");
    assertThat(faults.inOrder()).isEmpty();
  }

  /** Keys whose hashes share their last six bits must still be told apart. */
  @Test
  void keysOfEqualHashAreDifferentKeys() {
    assertThat("Aa".hashCode()).isEqualTo("BB".hashCode());
    Fields f = record("{Aa: 1}");
    assertThat(f.maybeText("BB")).isEmpty();
    assertThat(f.unasked()).containsExactly("Aa");
    assertThat(f.maybeText("Aa")).contains("1");
    assertThat(f.unasked()).isEmpty();
  }

  private Fields record(String yaml) {
    List<Fields> all = new ArrayList<>();
    Recall recall = new Recall();
    YamlText.read(
        "x.yaml",
        "planks:\n  - " + yaml + "\n",
        recall,
        (key, node) -> all.add(new Fields((Node.Mapping) node, "plank", EURO, recall, faults)),
        faults);
    return all.get(0);
  }

  private List<String> told() {
    return faults.inOrder().stream().map(fault -> fault.rule() + " " + fault.at()).toList();
  }

  private Finding only() {
    assertThat(faults.inOrder()).hasSize(1);
    return faults.inOrder().get(0);
  }
}
