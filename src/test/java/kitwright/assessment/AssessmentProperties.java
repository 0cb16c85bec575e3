package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import kitwright.Sample;
import kitwright.assessment.sheet.Row;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Whatever a ledger says, no figure is anything but a number. */
class AssessmentProperties {
  private static final List<String> AMOUNTS =
      List.of("0", "0.000001", "1", "12", "999999", "1000000000");
  private static final List<String> METHODS =
      List.of("section", "panel", "laminate", "timber", "bolt", "external");

  @Property(tries = 400)
  void noFigureIsNotANumber(
      @ForAll @IntRange(min = 0, max = 5) int thickness,
      @ForAll @IntRange(min = 0, max = 5) int width,
      @ForAll @IntRange(min = 0, max = 5) int modulus,
      @ForAll @IntRange(min = 0, max = 5) int strength,
      @ForAll @IntRange(min = 0, max = 5) int force,
      @ForAll @IntRange(min = 0, max = 5) int method,
      @ForAll @IntRange(min = 0, max = 5) int span) {
    String text =
        String.format(
            Locale.ROOT,
            """
            materials:
              - {id: stuff, kind: timber, density: %1$s kg/m3, E: %3$s MPa, bending-strength: %4$s MPa, compressive-strength: %4$s MPa, shear-strength: 5 MPa, source: test}
              - {id: core, kind: core, isotropic: yes, density: 80 kg/m3, E: %3$s MPa, G: %3$s MPa, shear-strength: 1 MPa, tensile-strength: 2 MPa, compressive-strength: 1 MPa, source: test}
            sections:
              - {id: one, width: %2$s mm, layers: [{material: stuff, thickness: %1$s mm}, {material: core, thickness: 20 mm}, {material: stuff, thickness: 3 mm}]}
              - {id: bolt, shape: bolt, material: bolt-8-8, dimensions: {diameter: %1$s mm}}
            assessments:
              - {id: a, method: %6$s, designed: one, built: one, require: {stiffness: 1, reserve: 1, moment: 1, shear: 1, strength: 1}, load: {tip-force: %5$s N, pressure: %5$s Pa, span: %7$s mm, breadth: %2$s mm}}
              - {id: b, method: %6$s, designed: bolt, built: bolt, require: {strength: 1}}
            """,
            AMOUNTS.get(thickness),
            AMOUNTS.get(width),
            AMOUNTS.get(modulus),
            AMOUNTS.get(strength),
            AMOUNTS.get(force),
            METHODS.get(method),
            AMOUNTS.get(span));
    Ledger ledger = Sample.read(text, new Findings()).orElseThrow();
    for (Result result : Assessments.on(Facts.of(ledger, Sample.TODAY)).all()) {
      for (Row row : result.rows()) {
        row.built().ifPresent(figure -> assertThat(figure.value()).isFinite());
        row.ratio().ifPresent(ratio -> assertThat(ratio).isFinite());
        row.margin().ifPresent(margin -> assertThat(margin).isFinite());
      }
      result
          .working()
          .forEach(
              working ->
                  assertThat(working.toString()).doesNotContain("NaN").doesNotContain("Infinity"));
      assertThat(result.verdict().because()).doesNotContain("NaN").doesNotContain("Infinity");
    }
  }
}
