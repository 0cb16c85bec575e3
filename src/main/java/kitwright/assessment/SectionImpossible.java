package kitwright.assessment;

import java.time.LocalDate;
import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.ledger.Section;

/** Fires where a section cannot be built as it is written. */
public final class SectionImpossible implements Rule {
  @Override
  public String name() {
    return Faults.RULE;
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    for (Section section : ledger.sections()) {
      Stuffs stuffs = new Stuffs(ledger, Factors.none(), List.of());
      if (section.shape().filter(shape -> shape == Section.Shape.BOLT).isPresent()) {
        BoltMethod.of(section, stuffs, out);
      } else {
        new Parts(stuffs, out).of(section);
      }
    }
  }
}
