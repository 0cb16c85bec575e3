package kitwright.assessment;

import java.util.List;
import kitwright.assessment.joint.BoltMethod;
import kitwright.assessment.joint.DrivenMethod;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.part.Parts;
import kitwright.assessment.sheet.Faults;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.RecordRule;
import kitwright.ledger.Section;

/** Fires where a section cannot be built as it is written. */
public final class SectionImpossible implements RecordRule<Section> {
  @Override
  public String name() {
    return Faults.RULE;
  }

  @Override
  public List<Section> records(Facts day) {
    return day.written().sections();
  }

  @Override
  public void examine(Section section, Facts day, Findings out) {
    Materials materials = Materials.of(day.ledger());
    if (DrivenMethod.isDriven(section)) {
      DrivenMethod.of(section, materials, Factors.OnSide.none(), out);
    } else if (section.isBolt()) {
      BoltMethod.of(section, materials, Factors.OnSide.none(), out);
    } else {
      new Parts(materials, Factors.OnSide.none(), out).of(section);
    }
  }
}
