package kitwright.assessment;

import java.util.List;
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
      Stuffs stuffs = new Stuffs(day.ledger(), Factors.none(), List.of());
      if (section.shape().filter(shape -> shape == Section.Shape.BOLT).isPresent()) {
        BoltMethod.of(section, stuffs, out);
      } else {
        new Parts(stuffs, out).of(section);
      }
    }
  }
}
