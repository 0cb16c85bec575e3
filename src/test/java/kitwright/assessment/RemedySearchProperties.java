package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import kitwright.Sample;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.ledger.Assessment;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The quick search against plain judging: every combination of a menu worked out whole by {@link
 * Assessments#result}, the lightest of those that pass picked out.
 */
class RemedySearchProperties {
  private static final String STUFF =
      """
      materials:
        - {id: wood, kind: timber, basis: minimum, scatter: 3 %, density: 500 kg/m3, E: 12 GPa, G: 0.75 GPa, bending-strength: 60 MPa, tensile-strength: 60 MPa, compressive-strength: 40 MPa, shear-strength: 8 MPa, source: test}
        - {id: ash, kind: timber, basis: minimum, scatter: 3 %, density: 680 kg/m3, E: 12 GPa, G: 0.75 GPa, bending-strength: 100 MPa, tensile-strength: 100 MPa, compressive-strength: 50 MPa, shear-strength: 13 MPa, source: test}
        - {id: foam, kind: core, basis: minimum, scatter: 3 %, isotropic: yes, density: 80 kg/m3, E: 70 MPa, G: 20 MPa, tensile-strength: 2 MPa, compressive-strength: 1.2 MPa, shear-strength: 1.0 MPa, source: test}
        - {id: fibre-of-glass, kind: fibre, isotropic: yes, density: 2560 kg/m3, E: 73 GPa, poisson: 0.22, source: test}
        - {id: resin, kind: resin, density: 1200 kg/m3, E: 3 GPa, poisson: 0.35, source: test}
        - {id: straight, kind: cloth, basis: minimum, scatter: 3 %, fibre: fibre-of-glass, resin: resin, weave: biaxial, areal-weight: 600 g/m2, fibre-fraction: 0.5, tensile-strength: 260 MPa, compressive-strength: 220 MPa, shear-strength: 48 MPa, source: test}
        - {id: slant, kind: cloth, basis: minimum, scatter: 3 %, fibre: fibre-of-glass, resin: resin, weave: double-bias, areal-weight: 300 g/m2, fibre-fraction: 0.5, tensile-strength: 260 MPa, compressive-strength: 220 MPa, shear-strength: 48 MPa, source: test}
        - {id: pin-soft, kind: bolt, basis: minimum, scatter: 3 %, tensile-strength: 170 MPa, shear-strength: 100 MPa, proof-stress: 130 MPa, source: test}
        - {id: hearsay, kind: cloth, basis: minimum, scatter: 3 %, fibre: fibre-of-glass, resin: resin, weave: biaxial, areal-weight: 200 g/m2, fibre-fraction: 0.5, tensile-strength: 260 MPa, compressive-strength: 220 MPa, shear-strength: 48 MPa}
      """;

  private static final String BOARDS =
      """
      sections:
        - {id: drawn, width: 200 mm, layers: [{material: straight, plies: 3}, {material: foam, thickness: 28 mm}, {material: straight, plies: 3}]}
        - {id: made, width: 200 mm, layers: [{material: straight, plies: 2}, {material: foam, thickness: 25 mm}, {material: straight, plies: 2}]}
        - {id: stock, width: 80 mm, layers: [{material: ash, thickness: 60 mm}]}
      """;

  private static final String FOILS =
      """
      sections:
        - {id: drawn, shape: foil, dimensions: {chord: 260 mm, thickness-ratio: 0.115}, material: wood, skins: [{material: straight, plies: 1}], members: [{what: spine, material: wood, width: 28 mm, at: 78 mm}]}
        - {id: made, shape: foil, dimensions: {chord: 260 mm, thickness-ratio: 0.115}, material: wood, skins: [{material: slant, plies: 1}], members: [{what: spine, material: ash, width: 20 mm, at: 78 mm}]}
        - {id: stock, shape: rectangle, material: ash, dimensions: {width: 60 mm, height: 45 mm}}
        - {id: pin, shape: bolt, material: pin-soft, dimensions: {diameter: 3 mm}}
      """;

  private static final String PLIES =
      "menu: [{material: straight, faces: 2, most: 2}, {material: slant, faces: 1, most: 2},"
          + " {step: 4 mm, dimension: core, most: 2}, {material: hearsay, faces: 1, most: 1}]";

  private static final String SPINES =
      "menu: [{material: straight, most: 2}, {step: 9 mm, dimension: spine, most: 5}]";

  /** Each with places for what is asked of stiffness, strength, mass and the weak link. */
  private static final List<String> KINDS =
      List.of(
          BOARDS
              + """
              assessments:
                - {id: a, method: section, designed: drawn, built: made, require: {stiffness: %1$s, moment: %2$s, reserve: 1}, allow: {mass: %3$s}, weak-link: {sacrificial: made, protected: stock, margin: %4$s, breaks-at: 50 mm}, load: {shape: elliptic, force: 900 N, factor: 1, span: 0.8 m, self-weight: yes, source: test},
              """
              + PLIES
              + "}",
          BOARDS
              + """
              assessments:
                - {id: a, method: panel, designed: drawn, built: made, require: {stiffness: %1$s, moment: %2$s, reserve: %4$s}, allow: {mass: %3$s}, load: {pressure: 20 kPa, span: 900 mm, breadth: 480 mm, support: simple, factor: 2, self-weight: yes, source: test},
              """
              + PLIES
              + "}",
          BOARDS
              + """
              assessments:
                - {id: a, method: panel, designed: drawn, built: made, require: {stiffness: %1$s, reserve: %4$s}, allow: {thickness: %3$s}, load: {pressure: 20 kPa, factor: 1, span: 900 mm, breadth: 480 mm, support: clamped, source: test},
              """
              + PLIES
              + "}",
          BOARDS
              + """
              assessments:
                - {id: a, method: laminate, designed: drawn, built: made, require: {stiffness: %1$s, shear: %2$s}, allow: {mass: %3$s},
              """
              + PLIES
              + "}",
          FOILS
              + """
              assessments:
                - {id: a, method: section, designed: drawn, built: made, require: {stiffness: %1$s, moment: %2$s, stiffness-across: 0.7}, allow: {mass: %3$s}, weak-link: {sacrificial: made, protected: stock, margin: %4$s, breaks-at: 60 mm}, load: {shape: elliptic, force: 500 N, factor: 1, span: 0.74 m, source: test},
              """
              + SPINES
              + "}",
          FOILS
              + """
              assessments:
                - {id: a, method: section, designed: drawn, built: made, require: {stiffness: %1$s, shear: %2$s}, allow: {mass: %3$s}, weak-link: {sacrificial: pin, protected: made, margin: %4$s, breaks-at: 60 mm}, load: {tip-force: 500 N, factor: 1, span: 0.74 m, source: test},
              """
              + SPINES
              + "}",
          """
          sections:
            - {id: drawn, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm, count: 8}}
            - {id: made, shape: bolt, material: bolt-a4-70, dimensions: {diameter: 8 mm, count: 8}}
          assessments:
            - {id: a, method: bolt, designed: drawn, built: made, require: {strength: %1$s, shear: %2$s}, allow: {proof: %3$s}, menu: [{step: 1 mm, dimension: diameter, most: 12}]}
          """);

  @Property(tries = 40)
  void itFindsWhatPlainJudgingFinds(
      @ForAll @IntRange(min = 0, max = 6) int kind,
      @ForAll @DoubleRange(min = 0.7, max = 1.6) double stiff,
      @ForAll @DoubleRange(min = 0.7, max = 1.6) double strong,
      @ForAll @DoubleRange(min = 0.8, max = 2.5) double most,
      @ForAll @DoubleRange(min = 1, max = 2) double margin) {
    searched(kind, stiff, strong, most, margin);
  }

  /** Without which the property would compare nothing: mild demands that something meets. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6})
  void ofEveryKindSomethingPasses(int kind) {
    assertThat(searched(kind, 0.7, 0.7, 2.5, 1)).isNotEmpty();
  }

  /** Every combination that passes when judged whole, held against what the search answers. */
  private static List<Result> searched(
      int kind, double stiff, double strong, double most, double margin) {
    String text = String.format(Locale.ROOT, KINDS.get(kind), stiff, strong, most, margin);
    Ledger ledger = Sample.ledger(STUFF + text);
    Assessment assessment = ledger.assessments().get(0);
    Section made = ledger.section(assessment.built().orElseThrow()).orElseThrow();
    Variant variant = new Variant(ref -> ledger.material(ref).map(Material::sort));
    Predicate<Section> trials = Assessments.trials(assessment, ledger);
    List<Result> passing = new ArrayList<>();
    for (int[] counts : combinations(assessment.menu())) {
      Section section = Remedies.with(assessment, made, variant, counts);
      Result whole = Assessments.result(assessment, ledger, Assessments.replacing(section, ledger));
      assertThat(trials.test(section) || !whole.verdict().passes()).isTrue();
      if (whole.verdict().passes()) {
        passing.add(whole);
      }
    }
    Remedies.Answer answer = Remedies.of(assessment, ledger, Remedies.Least.MASS);
    assertThat(answer.none().isPresent()).isEqualTo(passing.isEmpty());
    if (!passing.isEmpty()) {
      Result found = answer.result().orElseThrow();
      assertThat(passing).contains(found);
      if (kind < 4) {
        // Of a stack the masses of plies add up exactly; they take room from a foil's filling.
        double least = passing.stream().mapToDouble(RemedySearchProperties::mass).min().orElse(0);
        assertThat(mass(found)).isLessThanOrEqualTo(least * (1 + 1e-9));
      }
    }
    return passing;
  }

  private static double mass(Result result) {
    return result.rows().stream()
        .filter(row -> row.measure() == Measure.MASS || row.measure() == Measure.PLATE_MASS)
        .findFirst()
        .flatMap(Row::built)
        .map(Figure::value)
        .orElse(0.0);
  }

  private static List<int[]> combinations(List<Assessment.Addition> menu) {
    List<int[]> all = List.of(new int[0]);
    for (Assessment.Addition line : menu) {
      all =
          all.stream()
              .flatMap(
                  before ->
                      IntStream.rangeClosed(0, line.most().orElseThrow())
                          .mapToObj(
                              n ->
                                  IntStream.concat(IntStream.of(before), IntStream.of(n))
                                      .toArray()))
              .toList();
    }
    return all;
  }
}
