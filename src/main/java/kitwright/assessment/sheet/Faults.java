package kitwright.assessment.sheet;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Section;
import kitwright.value.Place;

/** What makes a section one that cannot be built, each as a finding with its place. */
public final class Faults {
  public static final String RULE = "section-impossible";

  private final Section section;
  private final Findings out;
  private boolean any;

  public Faults(Section section, Findings out) {
    this.section = section;
    this.out = out;
  }

  public boolean any() {
    return any;
  }

  public void add(Place at, String what, String mend) {
    any = true;
    out.add(
        new Finding(
            RULE,
            Severity.STOP,
            at,
            what + " (" + section.named() + ").",
            "Nothing can be worked out of this section, and no assessment that names it can pass.",
            mend,
            List.of(section.named())));
  }

  public void add(String key, String what, String mend) {
    add(section.at().of(key), what, mend);
  }
}
