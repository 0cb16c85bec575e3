package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A condition of a sign-off is held against the section that it names. */
class ConditionsTest {
  private static final String SECTIONS =
      """
      sections:
        - id: box
          width: 96 mm
          layers:
            - {material: larch, thickness: 20 mm}
            - {thickness: 56 mm, strips: [{material: larch, width: 18 mm}, {void: 60 mm}, {material: larch, width: 18 mm}]}
            - {material: larch, thickness: 20 mm}
        - {id: pipe, shape: tube, dimensions: {diameter: 60 mm, wall: 3 mm}}
        - {id: skin, layers: [{material: glass, plies: 2}, {material: foam, thickness: 12 mm}, {material: glass, plies: 3}]}
      tasks: [{id: close, what: Close it, takes: 1 d}]
      substitutions:
        - id: sub
          instead-of: {what: spruce, qty: 8 m}
          grade: structural
          why: here
          hold: close
          sign-offs: [{by: office, on: 2026-02-12, conditions: [%s]}]
      materials:
        - {id: larch, kind: timber}
        - {id: glass, kind: cloth}
        - {id: foam, kind: core}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{section: pipe, at-least: {wall: 3 mm}} | PASS",
        "{section: pipe, at-least: {wall: 0.12 in}} | FAIL", // 3.048 mm
        "{section: pipe, at-least: {diameter: 60 mm, wall: 4 mm}} | FAIL",
        "{section: box, at-least: {thickness: 96 mm}} | PASS",
        "{section: box, at-least: {wall: 18 mm}} | PASS",
        "{section: box, at-least: {wall: 20 mm}} | FAIL", // the sides are thinner
        "{section: skin, at-least: {plies: 5}} | PASS",
        "{section: skin, at-least: {plies: 6}} | FAIL",
        "{section: skin, at-least: {thickness: 12 mm}} | CANNOT_TELL", // the glass has none stated
        "{section: pipe, at-least: {web: 3 mm}} | CANNOT_TELL",
        "{section: pipe, at-least: {wall: 3 kg}} | CANNOT_TELL",
        "seal the end grain | CANNOT_TELL",
      })
  void aConditionIsComparedWithWhatIsBuilt(String condition, String outcome) {
    Ledger ledger = Sample.ledger(SECTIONS.formatted(condition));
    Verdict verdict =
        Judging.on(Facts.of(ledger, Sample.TODAY))
            .conditions()
            .apply(ledger.substitutions().get(0).signOffs().get(0).conditions().get(0));
    assertThat(verdict.outcome()).hasToString(outcome);
  }
}
