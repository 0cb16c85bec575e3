package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the counts show against what is recorded as short. Ten bolts are promised, at 30 EUR. */
class ShortageRulesTest {
  /** Six found in the first crate. */
  private static String bolts(String ofThese, String more) {
    return """
    kit: [{id: bolt, what: bolt, qty: 10, price: 30 EUR}]
    deliveries:
      - {id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6%s}]}
    """
            .formatted(ofThese)
        + more;
  }

  private static String record(String... shortages) {
    return "shortages: [" + String.join(", ", shortages) + "]\n";
  }

  private static String missing(String id, String qty, String cause) {
    return "{id: "
        + id
        + ", item: bolt, qty: "
        + qty
        + ", found: 2026-01-06, cause: "
        + cause
        + "}";
  }

  private static List<String> told(Rule rule, String yaml) {
    return Sample.findings(rule, yaml).stream().map(Finding::what).toList();
  }

  private static final Rule BEYOND = new ShortageBeyondCount();

  @Test
  void moreIsRecordedThanTheCountShows() {
    assertThat(Sample.words(BEYOND, bolts("", record(missing("b", "5", "not-packed")))))
        .containsExactly(
            """
            STOP shortage-beyond-count 4
            With this, the shortages recorded come to 5 × bolt, but the counts show only 4 (10 \
            promised, 6 counted good).
            A claim for it asks too much, and the supplier can show it.
            Count again: correct the shortage, or the count with its damaged and wrong pieces.
            shortage b, kit item bolt\
            """);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; 4; not-packed; 0", // exactly as many
        "''; 4.5; not-packed; 1",
        "', damaged: 1'; 5; not-packed; 0", // one of the six is no good
        "''; 5; damaged; 1",
        "''; 5; wrong; 1",
        "''; 9; used-up; 0", // what was used up no count shows
        "''; 9; undersize; 0",
        "''; 5 kg; not-packed; 0" // of it another rule tells
      })
  void asMuchAsTheCountShowsMayBeRecorded(String ofThese, String qty, String cause, int findings) {
    assertThat(told(BEYOND, bolts(ofThese, record(missing("b", qty, cause))))).hasSize(findings);
  }

  @Test
  void theShortagesOfAnItemAreAddedUpAndTheOneTooManyIsNamed() {
    String three =
        record(
            missing("a", "2", "used-up"),
            missing("b", "4", "not-packed"),
            missing("c", "1", "not-packed"));
    // Ten and two used up are needed, six are there: six may be recorded.
    assertThat(Sample.words(BEYOND, bolts("", three)))
        .singleElement()
        .asString()
        .contains("come to 7 × bolt, but the counts show only 6 (10 promised, 6 counted good).")
        .endsWith("shortage c, kit item bolt");
    String came =
        "  - {id: e, received: 2026-01-20, from: kit-maker, counted: [{item: bolt, qty: 2}]}\n";
    assertThat(told(BEYOND, bolts("", came + record(missing("b", "4", "not-packed")))))
        .as("what came in answer was missing")
        .isEmpty();
    assertThat(told(BEYOND, bolts("", came + record(missing("b", "5", "not-packed"))))).hasSize(1);
  }

  @Test
  void ofWhatNobodyCountedAllMayBeMissing() {
    String uncounted = "kit: [{id: bolt, what: bolt, qty: 10}]\n";
    assertThat(told(BEYOND, uncounted + record(missing("b", "10", "not-packed")))).isEmpty();
    assertThat(told(BEYOND, uncounted + record(missing("b", "11", "not-packed")))).hasSize(1);
  }

  private static final Rule CAUSE = new ShortageCauseContradicted();

  @Test
  void theCountShowsAnotherCause() {
    assertThat(
            Sample.words(
                CAUSE, bolts(", damaged: 1, undersize: 1", record(missing("b", "3", "damaged")))))
        .containsExactly(
            """
            WARN shortage-cause-contradicted 4
            Recorded as damaged: 3 × bolt; but the count shows 1 of that: 10 promised, 6 found, 1 \
            damaged, 0 wrong, 1 undersize.
            The letter gives the supplier a reason that their own papers contradict.
            Record one shortage a cause, each with its own number; or correct the count.
            shortage b, kit item bolt\
            """);
    assertThat(told(CAUSE, bolts(", wrong: 1", record(missing("b", "2", "wrong")))))
        .containsExactly(
            "Recorded as wrong: 2 × bolt; but the count shows 1 of that: 10 promised, 6 found, 0"
                + " damaged, 1 wrong.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "', damaged: 1'; 1; damaged; 0",
        "', damaged: 1'; 2; damaged; 1", // of four that never came and one that is damaged
        "', damaged: 1'; 5; damaged; 1",
        "', damaged: 1'; 6; damaged; 0", // beyond the count: of it another rule tells
        "', damaged: 1'; 4; not-packed; 0",
        "', damaged: 1'; 5; not-packed; 1",
        "', damaged: 1'; 2; wrong; 1",
        "', damaged: 1'; 2; undersize; 0", // found later, or counted as wrong
        "', damaged: 1'; 2; used-up; 0",
        "', damaged: 1'; 2 kg; damaged; 0"
      })
  void eachCauseIsHeldAgainstTheCount(String ofThese, String qty, String cause, int findings) {
    assertThat(told(CAUSE, bolts(ofThese, record(missing("b", qty, cause))))).hasSize(findings);
  }

  @Test
  void aCauseIsHeldAgainstTheCountOfItsDay() {
    String early = record(missing("b", "2", "damaged")).replace("2026-01-06", "2026-01-04");
    assertThat(told(CAUSE, bolts(", damaged: 1", early))).as("found before it came").isEmpty();
    String later =
        "  - {id: e, received: 2026-01-20, from: kit-maker, counted: [{item: bolt, qty: 2, damaged:"
            + " 1}]}\n";
    assertThat(told(CAUSE, bolts(", damaged: 1", later + record(missing("b", "2", "damaged")))))
        .as("the second was not there that day")
        .hasSize(1);
    String both = record(missing("a", "1", "damaged"), missing("b", "1", "damaged"));
    assertThat(told(CAUSE, bolts(", damaged: 1", both)))
        .as("two of one")
        .singleElement()
        .asString()
        .startsWith("Recorded as damaged: 2 × bolt; but the count shows 1");
    assertThat(
            told(
                CAUSE,
                "kit: [{id: bolt, what: bolt, qty: 10}]\n" + record(missing("b", "2", "damaged"))))
        .as("nobody counted")
        .isEmpty();
  }

  private static final Rule UNRECORDED = new CountedShortUnrecorded();

  @Test
  void whatTheCountLacksIsToBeRecordedCauseByCause() {
    assertThat(Sample.words(UNRECORDED, bolts(", damaged: 1, wrong: 1, undersize: 2", "")))
        .containsExactly(
            """
            WARN counted-short-unrecorded 3
            The kit promised 10 × bolt, 2 came and can be used, but no shortage is recorded.
            Nobody claims the missing 8 or plans for it.
            Record under “shortages:” {id: short-2026-01-05-bolt-damaged, item: bolt, qty: 1 each, \
            found: 2026-01-05, cause: damaged} and {id: short-2026-01-05-bolt-undersize, item: \
            bolt, qty: 2 each, found: 2026-01-05, cause: undersize} and {id: \
            short-2026-01-05-bolt-wrong, item: bolt, qty: 1 each, found: 2026-01-05, cause: wrong} \
            and {id: short-2026-01-05-bolt-not-packed, item: bolt, qty: 4 each, found: 2026-01-05, \
            cause: not-packed}; or correct the count, or name what a later delivery will bring \
            under its “packed”.
            delivery d, kit item bolt\
            """);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        // Four never came, one is damaged, one is wrong.
        "damaged; 1; wrong 1, not-packed 4",
        "wrong; 1; damaged 1, not-packed 4",
        "not-packed; 4; damaged 1, wrong 1",
        "not-packed; 3; damaged 1, wrong 1, not-packed 1",
        // An undersize piece was counted as wrong.
        "undersize; 1; damaged 1, not-packed 4",
        // Two damaged ones are recorded: only five are left to record.
        "damaged; 2; wrong 1, not-packed 3"
      })
  void whatIsRecordedAlreadyIsNotRecordedAgain(String cause, String qty, String parts) {
    String yaml = bolts(", damaged: 1, wrong: 1", record(missing("b", qty, cause)));
    Facts day = Facts.of(Sample.ledger(yaml), Sample.TODAY);
    assertThat(Causes.of(ShortageStandings.on(day).balances().get(0)))
        .extracting(part -> Causes.word(part.cause()) + " " + part.qty().told())
        .containsExactly(parts.split(", "));
    assertThat(told(UNRECORDED, yaml))
        .containsExactly(
            "The kit promised 10 × bolt, 4 came and can be used, but the shortages recorded come to"
                + " only "
                + qty
                + ".");
  }

  @Test
  void whatIsRecordedInFullOrStillToComeIsNotTold() {
    assertThat(told(UNRECORDED, bolts("", record(missing("b", "4", "not-packed"))))).isEmpty();
    String coming =
        "  - {id: e, expected: 2026-04-01, from: kit-maker, packed: [{item: bolt, qty: %d}]}\n";
    assertThat(told(UNRECORDED, bolts("", coming.formatted(4)))).isEmpty();
    assertThat(Sample.words(UNRECORDED, bolts("", coming.formatted(3))))
        .singleElement()
        .asString()
        .contains("Nobody claims the missing 1 or");
    assertThat(told(UNRECORDED, "kit: [{id: bolt, what: bolt, qty: 10}]")).isEmpty();
  }

  private static final Rule UNCLAIMED = new ShortageUnclaimed();

  private static String claims(String... claims) {
    return "claims: [" + String.join(", ", claims) + "]\n";
  }

  private static String claim(String id, String sent, String lines) {
    return "{id: "
        + id
        + ", against: kit-maker, remedy: replacement, shortages: ["
        + lines
        + "]"
        + (sent.isEmpty() ? "" : ", sent: " + sent)
        + "}";
  }

  private static final String FOUR = record(missing("b", "4", "not-packed"));

  @Test
  void aShortageInNoClaimIsTold() {
    // 6 January to 2 March: 25 and 28 and 2 days.
    assertThat(Sample.words(UNCLAIMED, bolts("", FOUR)))
        .containsExactly(
            """
            WARN shortage-unclaimed 4
            Found short 55 days ago and in no claim: 4 × bolt (worth 120.00 EUR).
            The supplier does not know, and the right to have it may run out. How long that may \
            wait depends on contract and country.
            Write a claim that names b, or add it to one that is not sent yet.
            shortage b\
            """);
    assertThat(told(UNCLAIMED, bolts("", FOUR).replace(", price: 30 EUR", "")))
        .containsExactly("Found short 55 days ago and in no claim: 4 × bolt.");
  }

  @Test
  void aPartThatNoClaimNamesIsToldAsWell() {
    assertThat(
            Sample.words(
                UNCLAIMED,
                bolts("", FOUR + claims(claim("c", "2026-01-10", "{shortage: b, qty: 3}")))))
        .containsExactly(
            """
            WARN shortage-unclaimed 4
            Found short 55 days ago and in no claim: 1 of 4 × bolt (worth 30.00 EUR).
            The supplier does not know, and the right to have it may run out. How long that may \
            wait depends on contract and country.
            Write a claim that names b, with its “qty: 1 each”, or add it to one that is not sent \
            yet.
            shortage b\
            """);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "b; ''; ''",
        "'{shortage: b, qty: 3}, {shortage: b, qty: 1}'; ''; ''",
        "'{shortage: b, qty: 3}'; '{shortage: b, qty: 1}'; ''",
        "'{shortage: b, qty: 1}'; '{shortage: b, qty: 1}'; 2 of 4 × bolt",
        "'{shortage: b, qty: 1 kg}'; ''; 4 × bolt", // nobody knows how many these are
        "b2; ''; 4 × bolt" // of another
      })
  void claimsAreAddedUp(String lines, String second, String told) {
    String other = missing("b2", "1", "used-up");
    String yaml =
        bolts("", record(missing("b", "4", "not-packed"), other))
            + (second.isEmpty()
                ? claims(claim("c", "2026-01-10", lines))
                : claims(claim("c", "2026-01-10", lines), claim("c2", "", second)));
    assertThat(told(UNCLAIMED, yaml))
        .containsExactlyElementsOf(
            told.isEmpty()
                ? List.of()
                : List.of(
                    "Found short 55 days ago and in no claim: "
                        + told
                        + (told.startsWith("2") ? " (worth 60.00 EUR)." : " (worth 120.00 EUR).")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "2; 2026-01-25; 2; 0", // two came by themselves, the other two are claimed
        "2; 2026-01-20; 2; 0", // on the day itself
        "2; ''; 2; 0", // a draft
        "2; 2026-01-15; 2; 1", // what came is what was claimed
        "2; 2026-01-15; 4; 0",
        "4; 2026-01-15; 2; 0", // all of it came
        "1; 2026-01-25; 2; 1"
      })
  void whatCameBeforeTheClaimIsNoneOfIt(int came, String sent, int claimed, int findings) {
    String later =
        "  - {id: e, received: 2026-01-20, from: kit-maker, counted: [{item: bolt, qty: %d}]}\n"
            .formatted(came);
    assertThat(
            told(
                UNCLAIMED,
                bolts("", later + FOUR)
                    + claims(claim("c", sent, "{shortage: b, qty: " + claimed + "}"))))
        .hasSize(findings);
  }

  @Test
  void whatWasUsedUpNobodyOwes() {
    assertThat(told(UNCLAIMED, bolts("", record(missing("b", "4", "used-up"))))).isEmpty();
  }

  private static final String NOTICE =
      """
      parties:
        - {id: first, name: First, role: supplier}
        - {id: second, name: Second, role: supplier, notice: 3 w}
        - {id: kit-maker, name: Redshank, role: supplier, notice: 2 w}
        - {id: mill, name: Mill, role: supplier, notice: 36 h}
        - {id: nora, name: Nora, role: builder, notice: 1 d}
      """;

  private static String notice(String yaml, String today) {
    Ledger ledger = Sample.ledger(NOTICE + yaml);
    LocalDate day = LocalDate.parse(today);
    return Notice.of(ledger.shortages().get(0), ShortageStandings.on(Facts.of(ledger, day)), ledger)
        .map(each -> each.told(day))
        .orElse("none");
  }

  @Test
  void theSupplierWantsToBeToldWithinHisTime() {
    // Received on 5 January: two weeks later is the 19th.
    String yaml = bolts("", FOUR);
    assertThat(notice(yaml, "2026-01-17"))
        .isEqualTo("Redshank wants to be told by 19\u00a0January\u00a02026, in 2 days");
    assertThat(notice(yaml, "2026-01-19"))
        .isEqualTo("Redshank wants to be told by 19\u00a0January\u00a02026, which is today");
    assertThat(notice(yaml, "2026-01-20"))
        .isEqualTo("Redshank wants to be told by 19\u00a0January\u00a02026, which was 1 day ago");
    assertThat(Sample.words(UNCLAIMED, NOTICE + yaml))
        .singleElement()
        .asString()
        .contains(
            "may run out. Redshank wants to be told by 19 January 2026, which was 42 days"
                + " ago.\n");
  }

  @Test
  void itRunsFromTheLastCountBeforeItWasFound() {
    String later =
        "  - {id: e, received: 2026-01-20, from: mill, counted: [{item: bolt, qty: 1}]}\n";
    assertThat(notice(bolts("", later + FOUR), "2026-01-17"))
        .contains("by 19\u00a0January\u00a02026");
    // 36 hours are a day and a half: a whole day is sure.
    assertThat(notice(bolts("", later + FOUR.replace("2026-01-06", "2026-01-20")), "2026-01-20"))
        .isEqualTo("Mill wants to be told by 21\u00a0January\u00a02026, in 1 day");
  }

  @Test
  void whoSentItOrIsNamedByTheItemIsAsked() {
    assertThat(notice(bolts("", FOUR).replace("qty: 10,", "qty: 10, from: second,"), "2026-01-19"))
        .isEqualTo("Second wants to be told by 26\u00a0January\u00a02026, in 7 days");
    assertThat(notice(bolts("", FOUR).replace("from: kit-maker", "from: first"), "2026-01-19"))
        .as("he names no time")
        .isEqualTo("none");
    // Nothing was counted: from the day on which it was found, the first who names a time.
    assertThat(notice("kit: [{id: bolt, what: bolt, qty: 10}]\n" + FOUR, "2026-01-19"))
        .isEqualTo("Second wants to be told by 27\u00a0January\u00a02026, in 8 days");
  }

  @Test
  void nothingIsRecordedOfACountThatCannotBeTrue() {
    assertThat(Sample.words(new CountedShortUnrecorded(), bolts(", damaged: 7", "")).get(0))
        .contains("Correct the count first")
        .doesNotContain("Record under");
  }

  /** What went back was packed: a letter that says otherwise is shown to be wrong. */
  @Test
  void whatWasCountedGoodAndSentBackIsNotCalledNotPacked() {
    String yaml =
        """
        kit: [{id: bolt, what: bolt, qty: 10, price: 30 EUR}]
        deliveries:
          - {id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: %s}], sent-back: [{on: 2026-01-09, item: bolt, qty: 4}]}
        """;
    CountedShortUnrecorded rule = new CountedShortUnrecorded();
    String none = Sample.words(rule, yaml.formatted("10, wrong: 4")).get(0);
    assertThat(none)
        .contains("qty: 4 each, found: 2026-01-05, cause: wrong")
        .doesNotContain("sent");
    String some = Sample.words(rule, yaml.formatted("9, wrong: 1")).get(0);
    assertThat(some)
        .contains(
            "Counted good, and sent back all the same: 3. Say at the count what was wrong",
            "qty: 1 each, found: 2026-01-05, cause: wrong",
            "qty: 1 each, found: 2026-01-05, cause: not-packed")
        .doesNotContain("qty: 4 each");
    assertThat(Sample.words(rule, yaml.formatted("10")).get(0))
        .contains("Counted good, and sent back all the same: 4.")
        .doesNotContain("Record under", "not-packed");
  }

  /** Ten keel bolts, six of which came: who builds does not decide that six will do. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "''; ''; nora; 0 each",
        ", grade: finish; ''; nora; 0 each",
        ", grade: structural; ''; nora; 4 each",
        ", grade: systems; ''; nora; 4 each",
        "''; ', grade: structural'; nora; 4 each", // what the work closes up
        "''; ', grade: structural, withdrawn: 2026-02-01'; nora; 0 each",
        ", grade: structural; ''; office; 0 each",
        ", grade: structural; ''; nobody; 4 each"
      })
  void whatMuchDependsOnIsDoneWithoutOnlyWhereSomebodyEntitledSaysSo(
      String item, String task, String by, String open) {
    String yaml =
        """
        kit: [{id: bolt, what: bolt, qty: 10%s}]
        deliveries: [{id: d, received: 2026-01-05, from: kit-maker, counted: [{item: bolt, qty: 6}]}]
        tasks: [{id: keel, what: Keel, takes: 1 d, uses: [{item: bolt, qty: 10}]%s}]
        shortages: [{id: s, item: bolt, qty: 4, found: 2026-01-05, cause: not-packed, options: [{kind: do-without}], decided: {option: do-without, on: 2026-02-02, by: %s}}]
        """
            .formatted(item, task, by);
    Facts day = Facts.of(Sample.read(yaml, new Findings()).orElseThrow(), Sample.TODAY);
    assertThat(ShortageStandings.on(day).balances().get(0).open()).hasToString(open);
    Findings found = new Findings();
    new LeftOutUnreleased().examine(day, found);
    assertThat(found.inOrder()).hasSize(open.equals("0 each") ? 0 : 1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "3; 1; ', sign-offs: [{by: nora, on: 2026-02-10}]'; 0",
        "4; 4; ', sign-offs: [{by: nora, on: 2026-02-10}]'; 1",
        "4; 1; ', sign-offs: [{by: nora, on: 2026-02-10}]'; 1",
        "4; 4; ', sign-offs: [{by: nora, on: 2026-02-10}], withdrawn: 2026-02-20'; 0",
        "4; 4; ''; 0",
      })
  void nothingIsReplacedByTwo(int oak, int elm, String other, int findings) {
    String yaml =
        """
        kit: [{id: rail, what: rail, qty: 4}]
        shortages: [{id: s, item: rail, qty: 4, found: 2026-02-02, cause: damaged}]
        substitutions:
          - {id: a, for: s, instead-of: {item: rail, qty: %d}, grade: finish, why: w, sign-offs: [{by: nora, on: 2026-02-10}]}
          - {id: b, for: s, instead-of: {item: rail, qty: %d}, grade: finish, why: w%s}
        """
            .formatted(oak, elm, other);
    List<String> words = Sample.words(new ReplacedTwice(), yaml);
    assertThat(words).hasSize(findings);
    assertThat(words).allSatisfy(each -> assertThat(each).contains("With b, ", "which lacks 4."));
  }

  /** What is only a way out, or was decided against, replaces nothing. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "options: [{kind: substitute, substitution: b}]",
        "options: [{kind: substitute, substitution: b}], decided: {option: substitute, on:"
            + " 2026-02-11, by: nora}",
        "options: [{kind: substitute, substitution: a}], decided: {option: substitute, on:"
            + " 2026-02-11, by: nora}",
      })
  void whatIsNotTakenReplacesNothing(String ways) {
    String yaml =
        """
        kit: [{id: rail, what: rail, qty: 4}]
        shortages: [{id: s, item: rail, qty: 4, found: 2026-02-02, cause: damaged, %s}]
        substitutions:
          - {id: a, for: s, instead-of: {item: rail, qty: 4}, grade: finish, why: w, sign-offs: [{by: nora, on: 2026-02-10}]}
          - {id: b, instead-of: {item: rail, qty: 4}, grade: finish, why: w, sign-offs: [{by: nora, on: 2026-02-10}]}
        """;
    assertThat(Sample.words(new ReplacedTwice(), yaml.formatted(ways))).isEmpty();
  }
}
