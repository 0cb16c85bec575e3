package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.function.Function;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Typed values of one record: what is read, what is refused, and how the refusal is told. */
class KeysTest {
  private static final Currency EURO = Currency.getInstance("EUR");

  private final Findings faults = new Findings();
  private boolean sound;

  enum Wood {
    LARCH,
    DOUGLAS_FIR
  }

  @Test
  void valuesAreReadFromTheirTextOnly() {
    List<Object> read =
        read(
            "{id: no, qty: 012, amount: 46.20, on: 2026-01-05, share: 60 %, wood: larch}",
            k ->
                List.of(
                    k.id(""),
                    k.key("qty", "").quantity(),
                    k.key("amount", "").money(),
                    k.key("on", "").happened(),
                    k.key("share", "").maybeShare().orElse(BigDecimal.ZERO),
                    k.key("wood", "").choice(Wood.class, Wood.DOUGLAS_FIR)));
    assertThat(read)
        .containsExactly(
            "no",
            Quantity.of("12", Unit.EACH),
            new Money(new BigDecimal("46.20"), EURO),
            LocalDate.of(2026, 1, 5),
            new BigDecimal("0.6"),
            Wood.LARCH);
    assertThat(sound).isTrue();
    assertThat(faults.inOrder()).isEmpty();
  }

  /** YAML 1.1 would read 1000, 685230 (sixty by sixty), 31 and 10. */
  @ParameterizedTest
  @ValueSource(strings = {"1_000", "190:20:30", "0x1F", "0o12", "1e3", ".inf", "yes", "5.", "1,5"})
  void whatIsNoPlainNumberIsRefusedNotGuessed(String text) {
    read("{id: a, n: '" + text + "'}", k -> k.id("") + k.key("n", "").maybeNumber());
    assertThat(sound).isFalse();
    assertThat(told()).containsExactly("value-unreadable x.yaml:2:16");
  }

  @ParameterizedTest
  @CsvSource({"012, 12", ".5, 0.5", "-3, -3", "+2.50, 2.5", "0.0, 0"})
  void aPlainNumberIsDecimal(String text, BigDecimal number) {
    BigDecimal read = read("{n: " + text + "}", k -> k.key("n", "").number());
    assertThat(read).isEqualByComparingTo(number);
  }

  @ParameterizedTest
  @CsvSource({"yes, true", "true, true", "no, false", "false, false"})
  void aFlagIsYesOrNo(String text, boolean on) {
    Function<Keys, Boolean> loud = k -> k.key("loud", "").flag();
    assertThat(read("{loud: " + text + "}", loud)).isEqualTo(on);
    assertThat(read("{}", loud)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"on", "y", "True", "1"})
  void otherWordsForYesAreRefused(String text) {
    read("{loud: " + text + "}", k -> k.key("loud", "").flag());
    assertThat(told()).containsExactly("value-unreadable x.yaml:2:12");
  }

  @Test
  void aWordOfAClosedListIsWrittenWithHyphensAndItsNearestIsOffered() {
    Function<Keys, Wood> wood = k -> k.key("wood", "").choice(Wood.class, Wood.LARCH);
    assertThat(read("{wood: douglas-fir}", wood)).isEqualTo(Wood.DOUGLAS_FIR);
    read("{wood: lurch}", wood);
    read("{wood: Larch}", wood);
    assertThat(faults.inOrder())
        .hasSize(2)
        .allSatisfy(fault -> assertThat(fault.mend()).contains("Did you mean “larch”?"));
  }

  @Test
  void aKeyThatIsMissingIsToldAtTheRecord() {
    read("{id: a}", k -> k.id("") + k.key("what", "").text());
    assertThat(sound).isFalse();
    assertThat(told()).containsExactly("key-missing x.yaml:2:10");
    assertThat(only().what()).isEqualTo("This plank has no “what”.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "~", "null"})
  void aKeyWithoutAValueIsMissing(String nothing) {
    read("{id: a, what: " + nothing + "}", k -> k.id("") + k.key("what", "").text());
    assertThat(only().rule()).isEqualTo("key-missing");
    assertThat(only().what()).isEqualTo("“what” is still empty.");
  }

  @Test
  void aKeyThatNobodyKnowsIsToldWithTheNearest() {
    read(
        "{id: a, lenght: 3 m}",
        k -> k.id("") + k.key("length", "").maybeQuantity() + k.key("what", "").maybeText());
    assertThat(sound).isFalse();
    assertThat(told()).containsExactly("key-unknown x.yaml:2:13");
    assertThat(only().mend()).isEqualTo("Did you mean “length”?");
    assertThat(only().records()).containsExactly("plank a");
  }

  @Test
  void aKeyFarFromAllIsToldWithTheListOfThem() {
    read("{id: a, xyzzy: 3}", k -> k.key("what", "").maybeText() + k.id(""));
    assertThat(only().mend()).isEqualTo("The keys here are: id, what.");
  }

  @Test
  void aCommaThatCutsATextIsNamedAsSuch() {
    read("{id: a, what: frame 3, port side}", k -> k.id("") + k.key("what", "").text());
    assertThat(only().rule()).isEqualTo("text-cut-by-comma");
    assertThat(only().mend()).contains("what: \"frame 3, port side\"");
  }

  @Test
  void groupsStandInGroupsAndTheirFaultsMakeTheRecordUnsound() {
    List<String> strips =
        read(
            "{strips: [{of: larch, qty: 2}, {of: ash, qtty: 2}]}",
            k ->
                k.key("strips", "")
                    .each(
                        inner -> {
                          inner.key("qty", "").maybeQuantity();
                          return inner.key("of", "").text();
                        }));
    assertThat(strips).containsExactly("larch");
    assertThat(sound).isFalse();
    assertThat(only().at()).hasToString("x.yaml:2:46");
    assertThat(only().what()).isEqualTo("“strips” of a plank has no key “qtty”.");
  }

  @Test
  void oneAloneNeedsNoBrackets() {
    Function<Keys, List<Ref>> ends = k -> k.key("ends", "").refs(Kind.KIT);
    assertThat(read("{ends: stem}", ends)).extracting(Ref::id).containsExactly("stem");
    assertThat(read("{ends: [stem, transom]}", ends))
        .extracting(Ref::toString)
        .containsExactly("stem", "transom");
    assertThat(read("{}", ends)).isEmpty();
  }

  @Test
  void threePointsAreOneValueOrThree() {
    Function<Keys, ThreePoint<Quantity>> takes =
        k -> k.key("takes", "").guess(Unit.DAY, Dimension.TIME);
    assertThat(read("{takes: 2}", takes)).isEqualTo(ThreePoint.fixed(Quantity.of("2", Unit.DAY)));
    assertThat(read("{takes: [1, 2, 4]}", takes).high()).isEqualTo(Quantity.of("4", Unit.DAY));
    assertThat(faults.inOrder()).isEmpty();
    read("{takes: [1, 2]}", takes);
    assertThat(only().what()).isEqualTo("“takes” holds 2 values, not three.");
  }

  @Test
  void aReferenceKnowsWhereItWasWritten() {
    Ref from = read("{from: pell}", k -> k.key("from", "").ref(Kind.PARTIES));
    assertThat(from.at()).hasToString("x.yaml:2:12");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a b", "a/b", "a\\b", "a\u202eb", "a\u200bb"})
  void anIdHoldsNothingThatHides(String id) {
    read("{id: '" + id + "'}", k -> k.id(""));
    assertThat(only().rule()).isEqualTo("value-unreadable");
  }

  @Test
  void anIdMayHoldAnyLetter() {
    String id = read("{id: blåkrabbe-⛵-3.1}", k -> k.id(""));
    assertThat(id).isEqualTo("blåkrabbe-⛵-3.1");
    assertThat(faults.inOrder()).isEmpty();
  }

  @Test
  void anIdIsTheSameHoweverItsAccentsAreTyped() {
    assertThat(
            List.of(read("{id: cle\u0301}", k -> k.id("")), read("{id: cl\u00e9}", k -> k.id(""))))
        .containsExactly("cl\u00e9", "cl\u00e9");
  }

  @Test
  void aCommaInANumberIsToldOnceWithTheNumberMeant() {
    read("{amount: 1.312,40 EUR}", k -> k.key("amount", "").money());
    assertThat(only().mend()).isEqualTo("Write a decimal with a full stop: amount: 1312.40 EUR");
  }

  @Test
  void aCommaInANumberOfAMapIsToldToo() {
    read("{hours: {me: 6,5}}", k -> k.key("hours", "").by(Sorts.RATIO, Kind.PARTIES));
    assertThat(only().mend()).isEqualTo("Write a decimal with a full stop: me: 6.5");
  }

  /** Slower, since each key is looked up by name, but never wrong. */
  @Test
  void keysAskedOutOfOrderAreStillRead() {
    boolean[] turned = {false};
    Function<Keys, String> form =
        k -> {
          String first = k.key(turned[0] ? "b" : "a", "").text();
          String second = k.key(turned[0] ? "a" : "b", "").text();
          turned[0] = true;
          return first + second;
        };
    assertThat(read("{a: 1, b: 2}", form)).isEqualTo("21");
  }

  @Test
  void aKeyIsDeclaredOnce() {
    assertThatThrownBy(() -> Layout.of(k -> k.id("") + k.id("")))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("“id” is declared twice");
  }

  private <T> T read(String yaml, Function<Keys, T> form) {
    Layout layout = Layout.of(form);
    List<T> all = new ArrayList<>();
    Recall recall = new Recall();
    YamlText.read(
        "x.yaml",
        "planks:\n  - " + yaml + "\n",
        recall,
        (key, node) -> {
          Keys keys = Keys.of(layout, (Node.Mapping) node, "plank", EURO, recall, faults);
          all.add(form.apply(keys));
          keys.finish();
          sound = keys.isSound();
        },
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
