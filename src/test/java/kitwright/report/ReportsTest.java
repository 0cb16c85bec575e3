package kitwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.claim.ClaimStandings;
import kitwright.daybook.Week;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay.Audience;
import kitwright.report.claim.ClaimLetter;
import kitwright.report.week.WeekReport;
import kitwright.report.words.Report;
import kitwright.report.words.Sheet;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every report: laid out, read back, whole, and the same each time. */
class ReportsTest {
  private static final Ledger DEMONSTRATION = Told.demonstration();

  private static final String NASTY = "a | b *c* <script>x</script> `d` [e](http://f)\n# g";

  static Stream<Report> reports() {
    Report letters =
        new Report(
            "letters",
            "letters",
            now -> ClaimStandings.on(now).all().stream().map(c -> ClaimLetter.of(c, now)).toList());
    Report weeks =
        new Report(
            "weeks",
            "weeks",
            now ->
                Stream.of(Audience.values())
                    .map(each -> WeekReport.of(now.ledger(), Week.ending(now.day()), each))
                    .toList());
    return Stream.concat(Reports.all().stream(), Stream.of(letters, weeks));
  }

  @Test
  void areFoundByName() {
    assertThat(Reports.all())
        .allSatisfy(report -> assertThat(Reports.named(report.name())).containsSame(report));
    assertThat(Reports.named("novel")).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("reports")
  void readBackAsTablesOfEvenRows(Report report) {
    for (Sheet sheet : report.sheets(Facts.of(DEMONSTRATION, Told.SUNDAY))) {
      String markdown = Told.markdown(sheet);
      assertThat(Told.tables(markdown)).as(sheet.file()).isNotEmpty();
      assertThat(Told.tables(markdown))
          .allSatisfy(
              table -> assertThat(table).extracting(List::size).containsOnly(table.get(0).size()));
      assertThat(markdown).doesNotContain("{{").doesNotContain("Optional");
    }
  }

  @ParameterizedTest
  @MethodSource("reports")
  void sayTheSameEachTime(Report report) {
    List<String> once = texts(report, DEMONSTRATION);
    assertThat(texts(report, Told.demonstration())).isEqualTo(once);
  }

  @ParameterizedTest
  @MethodSource("reports")
  void tellOfAnEmptyLedgerInASentence(Report report) {
    for (String text : texts(report, Sample.ledger("tasks: []"))) {
      assertThat(Told.words(text)).isNotBlank();
    }
  }

  @ParameterizedTest
  @MethodSource("reports")
  void showHostileWordsAndObeyNone(Report report) {
    List<String> plain = texts(report, ledger("words"));
    List<String> nasty = texts(report, ledger(NASTY));
    assertThat(nasty).hasSameSizeAs(plain);
    for (int i = 0; i < plain.size(); i++) {
      assertThat(shape(nasty.get(i))).isEqualTo(shape(plain.get(i)));
      assertThat(Told.below(Told.tree(nasty.get(i))))
          .noneMatch(
              node ->
                  node instanceof HtmlBlock || node instanceof HtmlInline || node instanceof Link);
    }
  }

  private static List<String> texts(Report report, Ledger ledger) {
    return report.sheets(Facts.of(ledger, Told.SUNDAY)).stream().map(Told::markdown).toList();
  }

  /** Tables with their sizes, where pictures lie, and every block that is no text. */
  private static Map<String, Object> shape(String markdown) {
    return Map.of(
        "tables",
        Told.tables(markdown).stream()
            .map(table -> table.stream().map(List::size).toList())
            .toList(),
        "pictures",
        Told.below(Told.tree(markdown))
            .filter(Image.class::isInstance)
            .map(node -> ((Image) node).getDestination())
            .toList(),
        "blocks",
        Told.children(Told.tree(markdown)).stream().map(Node::getClass).toList());
  }

  /** One of everything, with the given words wherever a record has words. */
  private static Ledger ledger(String words) {
    String quoted = '"' + words.replace("\n", "\\n") + '"';
    return Sample.ledger(
        """
        build: {name: W, currency: EUR, started: 2026-01-05, contract: W}
        parties:
          - {id: kit-maker, name: W, role: supplier, contact: W}
          - {id: office, name: W, role: designer, may-sign: [structural]}
          - {id: nora, name: W, role: builder}
        budget: [{line: spars, title: W, amount: 10}]
        kit: [{id: stave, what: W, qty: 4, crate: W, price: 3}, {id: pin, what: W, qty: 9, price: 1 NZD}]
        rates: [{on: 2026-01-05, from: NZD, to: EUR, rate: 0.5}]
        deliveries: [{id: d1, received: 2026-02-23, from: kit-maker, note: W, counted: [{item: stave, qty: 2, damaged: 1, remark: W}]}]
        shortages:
          - {id: s1, item: stave, qty: 2, found: 2026-02-24, cause: not-packed, remark: W,
             options: [{kind: wait, note: W}], decided: {option: wait, on: 2026-03-01, by: nora, why: W}, evidence: [{file: W, says: W}]}
          - {id: s2, item: pin, qty: 1, found: 2026-02-02, cause: not-packed}
        claims:
          - {id: c1, against: kit-maker, shortages: [s1], sent: 2026-02-25, by: W, remedy: replacement, reply-by: 2026-03-11, costs: [p1],
             then: W, events: [{on: 2026-02-27, what: answered, text: W, evidence: [{file: W, says: W}]}]}
          - {id: c2, against: kit-maker, shortages: [s2], sent: 2026-02-03, remedy: credit, settled: {on: 2026-02-28, how: credited, amount: 3}}
        assessments: [{id: a1, method: external, by: office, on: 2026-02-01, numbers: {stiffness: 2}, require: {stiffness: 1}, sources: [W], remark: W}]
        stock: [{id: plank, what: W, qty: 3}]
        substitutions:
          - id: u1
            for: s1
            instead-of: {item: stave, qty: 1}
            use: [{stock: plank, qty: 1}]
            grade: structural
            why: W
            proposed: {by: nora, on: 2026-02-23}
            assessment: a1
            hold: t1
            sign-offs: [{by: office, on: 2026-02-26, conditions: [W]}]
        spending:
          - {id: p1, on: 2026-02-23, line: spars, what: W, amount: 40, state: paid, to: W, because: s1}
          - {id: p2, on: 2026-02-23, line: spars, what: W, amount: 4, state: paid, to: W, cause: price}
        borrowed:
          - {id: saw, tool: W, from: kit-maker, on: 2026-02-23, due: 2026-03-06, condition: W, hire-rate: 4}
          - {id: plane, tool: W, from: nora, on: 2026-02-01, returned: 2026-02-27, condition: W, back: W}
        tasks: [{id: t1, what: W, phase: W, takes: 1 d, started: 2026-03-24}]
        """
            .replaceAll("\\bW\\b", java.util.regex.Matcher.quoteReplacement(quoted)));
  }
}
