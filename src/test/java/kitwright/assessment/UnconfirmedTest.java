package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.assessment.sheet.Verdict.Outcome;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What stands in the built-in table from memory lets nothing structural pass. */
class UnconfirmedTest {
  private static final String FACE =
      """
      materials:
        - {id: face-x, kind: laminate, isotropic: yes, poisson: 0.3, density: 1700 kg/m3, E: 14 GPa, G: 5 GPa, tensile-strength: 235 MPa, compressive-strength: 205 MPa, shear-strength: 48 MPa, scatter: 10 %, source: t, basis: mean}
      sections:
        - {id: s, width: 1 m, layers: [LAYERS]}
        - {id: stub, width: 1 m, layers: [{material: face-x, thickness: 200 mm}]}
      assessments:
        - {id: a, ASKED}
      """;

  private static final String PANEL =
      "method: panel, designed: s, built: s, require: {stiffness: 1, moment: 1, shear: 1}, allow:"
          + " {mass: 1}, load: {pressure: 1 kPa, span: 1 m, breadth: 0.5 m, source: t}";

  private static final String LINK =
      "method: section, designed: s, built: s, load: {tip-force: 1 N, span: 1 m, source: t},"
          + " weak-link: {sacrificial: s, protected: stub, margin: 1.1}";

  @TestFactory
  Stream<DynamicTest> noVerdictLeansOnWhatNobodyRead() {
    List<DynamicTest> tests = new ArrayList<>();
    for (Material material : Sample.ledger("").builtInMaterials()) {
      for (MaterialProperty property : material.properties().keySet()) {
        boolean open =
            material.unconfirmed().contains("all")
                || material.unconfirmed().contains(property.key());
        if (open && bears(material.sort())) {
          tests.add(
              DynamicTest.dynamicTest(
                  material.id() + " " + property.key(), () -> isOpen(material, property)));
        }
      }
    }
    assertThat(tests).hasSizeGreaterThan(50);
    return tests.stream();
  }

  private static boolean bears(Material.Sort sort) {
    return switch (sort) {
      case TIMBER, PLYWOOD, CORE, METAL, LAMINATE -> true;
      case FIBRE, RESIN, CLOTH, GLUE, BOLT, OTHER -> false;
    };
  }

  private static void isOpen(Material material, MaterialProperty property) {
    boolean core = material.sort() == Material.Sort.CORE;
    String one = "{material: %s, thickness: 12 mm}".formatted(material.id());
    String layers =
        core
            ? "{material: face-x, thickness: 2 mm}, "
                + one
                + ", {material: face-x, thickness: 2 mm}"
            : one;
    String asked = property == MaterialProperty.SCATTER ? LINK : PANEL;
    Result result = Assessed.of(FACE.replace("LAYERS", layers).replace("ASKED", asked)).result();
    assertThat(result.verdict().outcome()).isEqualTo(Outcome.CANNOT_TELL);
    if (!result.verdict().because().contains("does not state its")) {
      assertThat(result.verdict().because()).contains(property.key() + " of " + material.id());
    }
  }

  /** Rolling shear, across values of four woods, end-grain balsa: read by nobody as yet. */
  @Test
  void whatTheReferenceMarksAsMemoryIsUnconfirmed() {
    for (String wood :
        List.of("sitka-spruce", "western-redcedar", "port-orford-cedar", "alaska-yellow-cedar")) {
      assertThat(unconfirmed(wood))
          .contains("compressive-strength-across", "tensile-strength-across");
    }
    assertThat(unconfirmed("balsa-end-grain-148")).contains("all");
    assertThat(unconfirmed("okoume-plywood")).contains("all");
  }

  private static List<String> unconfirmed(String id) {
    return Sample.ledger("").builtInMaterials().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow()
        .unconfirmed();
  }
}
