package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Finished work that asked for more than there ever was. Of the staves 6 m were counted good. */
class FinishedWithoutMaterialTest {
  private static final FinishedWithoutMaterial RULE = new FinishedWithoutMaterial();
  private static final String YAML =
      """
      budget: [{line: l, title: L, amount: 900}]
      kit: [{id: stave, what: spruce stave, qty: 14 m}]
      deliveries:
        - {id: d, received: 2026-01-20, from: kit-maker, counted: [{item: stave, qty: 7 m, damaged: 1 m}]}
      stock: [{id: larch, what: larch, size: 2450 x 110 x 32 mm, pieces: 3}]
      shortages: [{id: s, item: stave, qty: 8 m, found: 2026-01-21, cause: not-packed}]
      tasks:
        - {id: mast, what: Glue the mast, takes: 1 d, started: 2026-02-02, finished: 2026-02-03, uses: [%s]}
        - {id: boom, what: Glue the boom, takes: 1 d, started: 2026-02-02, finished: 2026-02-03, uses: [%s]}
      %s
      """;

  private static String yaml(String mast, String boom, String more) {
    return YAML.formatted(mast, boom, more);
  }

  private static String stave(String amount) {
    return "{item: stave, qty: " + amount + "}";
  }

  @Test
  void theUseWithWhichItBecomesTooMuchIsNamed() {
    assertThat(Sample.words(RULE, yaml(stave("4 m"), stave("3 m"), "")))
        .containsExactly(
            """
            WARN finished-without-material 9
            “Glue the boom” is finished, which makes 7 m of “spruce stave” used; only 6 m were \
            ever counted good or got in their place.
            The count is wrong, or the task used less or something else; what is left is told \
            falsely.
            Count the delivery, record the substitution, or correct what the task uses.
            task boom, kit item stave\
            """);
  }

  /** What the log says is done is done, though the task names no day. */
  @Test
  void workThatHasEndedByTheLogUsedItToo() {
    String log = "---\nday: 2026-02-03\ntasks: {boom: %s}\n---\n";
    String open =
        yaml(stave("4 m"), stave("3 m"), "")
            .replace(
                "boom, takes: 1 d, started: 2026-02-02, finished: 2026-02-03", "boom, takes: 1 d");
    assertThat(Sample.words(RULE, open + log.formatted("100 %"))).hasSize(1);
    assertThat(Sample.words(RULE, open + log.formatted("90 %"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "'{item: stave, qty: 6 m}'; 0", // exactly as much
        "'{item: stave, qty: 6.1 m}'; 1",
        "'{item: stave, qty: 19 ft}'; 0", // 5.79 m
        "'{item: stave, qty: 20 ft}'; 1", // 6.10 m
        "'{item: stave, qty: 2 m}, {item: stave, qty: 4 m}'; 0",
        "'{item: stave, qty: 5 m}, {item: stave, qty: 4 m}'; 1",
        "'{item: stave, qty: 5 m, waste: 20 %}'; 0", // with its waste exactly as much
        "'{item: stave, qty: 5 m, waste: 21 %}'; 1",
        "'{item: stave, qty: 9 kg}'; 0", // of it another rule tells
        "'{stock: larch, qty: 9}'; 0" // and of that too
      })
  void asMuchAsThereWasMayHaveBeenUsed(String uses, int findings) {
    assertThat(Sample.words(RULE, yaml(uses, "", ""))).hasSize(findings);
  }

  @Test
  void workThatIsNotFinishedHasUsedNothing() {
    String yaml = yaml(stave("9 m"), "", "").replace(", finished: 2026-02-03", "");
    assertThat(Sample.words(RULE, yaml)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '|',
      value = {
        "spending: [{id: p, on: 2026-01-30, line: l, what: w, amount: 9, state: paid, item: stave,"
            + " qty: 4 m}]; 0",
        "spending: [{id: p, on: 2026-01-30, line: l, what: w, amount: 9, state: paid, item: stave,"
            + " qty: 3 m}]; 1",
        "substitutions: [{id: b, instead-of: {item: stave, qty: 4 m}, use: [{stock: larch, qty:"
            + " 2}], grade: finish, why: w}]; 0",
        "substitutions: [{id: b, for: s, instead-of: {what: staves, qty: 4 m}, use: [{stock: larch,"
            + " qty: 2}], grade: finish, why: w}]; 0",
        "substitutions: [{id: b, instead-of: {item: stave, qty: 3 m}, use: [{stock: larch, qty:"
            + " 2}], grade: finish, why: w}]; 1",
        // Of another thing, or given up.
        "substitutions: [{id: b, instead-of: {what: staves, qty: 4 m}, use: [{stock: larch, qty:"
            + " 2}], grade: finish, why: w}]; 1",
        "substitutions: [{id: b, instead-of: {item: stave, qty: 4 m}, use: [{stock: larch, qty:"
            + " 2}], grade: finish, why: w, withdrawn: 2026-02-01}]; 1",
        // It takes four boards and three are there: three of four metres; or nothing at all.
        "substitutions: [{id: b, instead-of: {item: stave, qty: 4 m}, use: [{stock: larch, qty:"
            + " 4}], grade: finish, why: w}]; 1",
        "substitutions: [{id: b, instead-of: {item: stave, qty: 4 m}, grade: finish, why: w}]; 1",
        "substitutions: [{id: b, instead-of: {item: stave, qty: 4 kg}, use: [{stock: larch, qty:"
            + " 2}], grade: finish, why: w}]; 1"
      })
  void whatWasBoughtOrTookItsPlaceWasThereToo(String more, int findings) {
    assertThat(Sample.words(RULE, yaml(stave("10 m"), "", more))).hasSize(findings);
  }
}
