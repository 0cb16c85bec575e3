package kitwright.report.writing;

import java.util.List;
import kitwright.document.Filled;
import kitwright.document.TemplateFault;
import kitwright.finding.Finding;
import kitwright.finding.Severity;

/** Faults of templates as findings of the rule {@code template-broken}. */
public final class TemplateFindings {
  /** The rule's name. */
  public static final String RULE = "template-broken";

  private TemplateFindings() {}

  /** One a fault. */
  public static List<Finding> of(Filled.Broken broken) {
    return broken.faults().stream().map(TemplateFindings::one).toList();
  }

  private static Finding one(TemplateFault fault) {
    return new Finding(
        RULE,
        Severity.STOP,
        fault.at(),
        fault.what(),
        "The document is not written.",
        fault.mend(),
        List.of());
  }
}
