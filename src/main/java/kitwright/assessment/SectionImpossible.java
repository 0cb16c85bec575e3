package kitwright.assessment;

import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Section;

/** Fires where a section cannot be built as it is written. */
public final class SectionImpossible implements Rule {
  @Override
  public String name() {
    return Faults.RULE;
  }

  @Override
  public void examine(Facts day, Findings out) {
    for (Section section : day.ledger().sections()) {
      Materials materials = Materials.of(day.ledger());
      if (section.shape().filter(shape -> shape == Section.Shape.BOLT).isPresent()) {
        BoltMethod.of(section, materials, Factors.OnSide.none(), out);
      } else {
        new Parts(materials, Factors.OnSide.none(), out).of(section);
      }
    }
  }
}
