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
}
