package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import org.junit.jupiter.api.Test;

class SectionImpossibleTest {
  private static List<Finding> found(int layers) {
    return Sample.findings(
        new SectionImpossible(),
        """
        materials: [{id: spruce, what: spruce, kind: timber, basis: mean, density: 415 kg/m3, E: 10.9 GPa, G: 0.7 GPa, bending-strength: 69 MPa, source: invented}]
        sections:
          - id: deep
            width: 40 mm
            layers: [%s]
        """
            .formatted(
                String.join(
                    ", ", Collections.nCopies(layers, "{material: spruce, thickness: 1 mm}"))));
  }

  @Test
  void moreLayersThanAnythingHasAreRefusedBeforeTheyAreWorkedOut() {
    assertThat(found(500)).isEmpty();
    assertThat(found(501))
        .extracting(Finding::what)
        .containsExactly("A section has 501 layers, more than can be worked out (section deep).");
  }

  private static List<String> laid(String layer) {
    return Sample.findings(
            new SectionImpossible(),
            """
            materials:
              - {id: glass, kind: fibre, isotropic: yes, density: 2550 kg/m3, E: 73 GPa, poisson: 0.22, source: t}
              - {id: resin, kind: resin, density: 1150 kg/m3, E: 3 GPa, poisson: 0.35, source: t}
              - {id: cloth, kind: cloth, fibre: glass, resin: resin, weave: woven, areal-weight: 300 g/m2, fibre-fraction: 50 %%, tensile-strength: 240 MPa, compressive-strength: 200 MPa, shear-strength: 48 MPa, source: t}
            sections: [{id: skin, width: 100 mm, layers: [{material: cloth, %s}]}]
            """
                .formatted(layer))
        .stream()
        .map(Finding::what)
        .toList();
  }

  @Test
  void nobodyLaysHalfAPly() {
    assertThat(laid("plies: 4.5, angle: 0 deg"))
        .containsExactly("A layer has 4.5 plies (section skin).");
    assertThat(laid("plies: 4.0, angle: 0 deg")).isEmpty();
  }

  @Test
  void nothingIsTurnedByMoreThanHalfATurn() {
    assertThat(laid("plies: 4, angle: 400 deg"))
        .containsExactly("A layer lies at 400 degrees (section skin).");
    assertThat(laid("plies: 4, angle: -180 deg")).isEmpty();
  }
}
