package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** Of what nobody can say how much is left, and why. */
class DoubtsTest {
  private static final String RACK =
      """
      kit:
        - {id: stave, what: spruce stave, qty: 14 m}
        - {id: cleat, what: mooring cleat, qty: 4}
      stock:
        - {id: larch, what: larch, qty: 6, size: 2400 x 120 x 28 mm}
        - {id: glue, what: glue, qty: 3 kg}
      """;

  private static Positions positions(String yaml) {
    Ledger ledger = Sample.read(RACK + yaml, new Findings()).orElseThrow();
    return Positions.on(Facts.of(ledger, Sample.TODAY));
  }

  private static List<String> items(Positions positions) {
    return positions.all().stream().flatMap(each -> each.doubts().stream()).toList();
  }

  private static List<String> stock(Positions positions) {
    return positions.allStock().stream().flatMap(each -> each.doubts().stream()).toList();
  }

  private static String log(String used) {
    return "---\nday: 2026-02-20\nused: [" + used + "]\n---\n";
  }

  @Test
  void aUnitThatDoesNotConvertLeavesInDoubtWhatItTakesOf() {
    assertThat(items(positions(log("{item: stave, qty: 2 m}")))).isEmpty();
    assertThat(items(positions(log("{item: stave, qty: 2 kg}"))))
        .containsExactly("log day 2026-02-20 takes 2 kg of it, which does not convert");
    assertThat(stock(positions(log("{stock: larch, qty: 2 kg}"))))
        .containsExactly("log day 2026-02-20 takes 2 kg of it, which does not convert");
    assertThat(
            items(
                positions(
                    "tasks: [{id: a, what: A, takes: 1 d, uses: [{item: stave, qty: 1 kg}]}]")))
        .containsExactly("task a takes 1 kg of it, which does not convert");
  }

  private static final String SUB =
      "substitutions: [{id: s, instead-of: {what: oak, qty: 1 m}, use: [{stock: larch, qty: 2 kg}],"
          + " grade: finish, why: w%s}]";
  private static final String CUT =
      "cuts: [{id: c, from: [glue], kerf: 3 mm%s, used: [{stock: glue, pieces: 1}], parts: [{mark:"
          + " P, length: 1 m, qty: 1}]}]";

  @Test
  void onlyWorkThatIsStillMeantOrACutThatWasMadeTakesAnything() {
    assertThat(stock(positions(SUB.formatted(""))))
        .containsExactly("substitution s takes 2 kg of it, which does not convert");
    assertThat(stock(positions(SUB.formatted(", withdrawn: 2026-02-20")))).isEmpty();
    assertThat(stock(positions(CUT.formatted(", done: 2026-02-20"))))
        .containsExactly("cut c takes 1 each of it, which does not convert");
    assertThat(stock(positions(CUT.formatted("")))).isEmpty();
    String givenUp = "tasks: [{id: a, what: A, takes: 1 d, withdrawn: 2026-02-20, uses: [%s]}]";
    assertThat(items(positions(givenUp.formatted("{item: stave, qty: 1 kg}")))).isEmpty();
  }

  @Test
  void oneReasonIsGivenOnce() {
    assertThat(items(positions(log("{item: stave, qty: 2 kg}, {item: stave, qty: 2 kg}"))))
        .hasSize(1);
  }

  @Test
  void whatIsNoGoodOrWentBackInAnotherUnitLeavesItInDoubt() {
    String count = "deliveries: [{id: d, received: 2026-02-20, from: kit-maker, %s}]";
    for (String key : List.of("damaged", "wrong", "undersize")) {
      String line = "counted: [{item: stave, qty: 14 m, " + key + ": 1 kg}]";
      assertThat(items(positions(count.formatted(line)))).as(key).hasSize(1);
      assertThat(items(positions(count.formatted(line.replace("1 kg", "1 m"))))).isEmpty();
    }
    String back =
        "counted: [{item: stave, qty: 14 m}], sent-back: [{item: stave, qty: 1 kg, on:"
            + " 2026-02-21}]";
    assertThat(items(positions(count.formatted(back)))).hasSize(1);
  }

  @Test
  void aNameOfNothingMayMeanWhatHasALikeName() {
    assertThat(items(positions(log("{item: stav, qty: 2 m}"))))
        .containsExactly("log day 2026-02-20 takes 2 m of “stav”, which is not there");
    assertThat(items(positions(log("{item: cleet, qty: 2 m}"))))
        .as("not the staves, though they are reckoned in metres")
        .containsExactly("log day 2026-02-20 takes 2 m of “cleet”, which is not there");
    assertThat(stock(positions(log("{stock: larhc, qty: 2 kg}"))))
        .as("not the glue, though it is weighed")
        .containsExactly("log day 2026-02-20 takes 2 kg of “larhc”, which is not there");
    assertThat(stock(positions(log("{item: larch, qty: 2}"))))
        .as("an item by the name of stock")
        .hasSize(1);
  }

  @Test
  void aNameLikeNothingMayMeanWhateverIsCountedSo() {
    Positions metres = positions(log("{item: zzzzzz, qty: 2 m}"));
    assertThat(items(metres)).hasSize(1);
    assertThat(metres.all().get(0).doubts()).hasSize(1);
    assertThat(stock(metres)).isEmpty();
    assertThat(stock(positions(log("{stock: zzzzzz, qty: 2 kg}")))).hasSize(1);
  }

  @Test
  void aNameLikeNothingInAUnitOfNothingMayMeanAnything() {
    Positions litres = positions(log("{stock: zzzzzz, qty: 2 l}"));
    assertThat(items(litres)).hasSize(2);
    assertThat(stock(litres)).hasSize(2);
    String material = "log day 2026-02-20 takes 2 kg of “zzzzzz”, which is not there";
    assertThat(stock(positions(log("{material: zzzzzz, qty: 2 kg}")))).containsExactly(material);
    assertThat(stock(positions(log("{material: larch, qty: 2 kg}"))))
        .as("a material of the table, of which no stock is said to be")
        .isEmpty();
  }

  @Test
  void whatTakesAndCannotBeReadLeavesInDoubtWhatItNames() {
    String unread = log("{item: stave, qty: lots}");
    assertThat(items(positions(unread)))
        .containsExactly("log day 2026-02-20, which names it, cannot be read");
    assertThat(stock(positions(unread))).isEmpty();
    assertThat(
            stock(
                positions(
                    "tasks: [{id: a, what: A, takes: ages, uses: [{stock: glue, qty: 1 kg}]}]")))
        .containsExactly("task a, which names it, cannot be read");
    assertThat(stock(positions("taks: [{id: a, what: A, uses: [{stock: glue, qty: 1 kg}]}]")))
        .containsExactly("“taks” in sample.yaml on line 7, which names it, cannot be read");
    assertThat(
            items(
                positions(
                    "spending: [{id: s, on: 2026-02-20, what: w, amount: many, item: stave}]")))
        .as("a payment takes nothing")
        .isEmpty();
  }

  @Test
  void aFileThatBreaksOffLeavesInDoubtWhatItNamesFromThereOn() {
    assertThat(stock(positions("tasks:\n  - {id: a, what: A, uses: [{stock: glue, qty: 1 kg}]\n")))
        .containsExactly("sample.yaml from line 6 on, which names it, cannot be read");
  }
}
