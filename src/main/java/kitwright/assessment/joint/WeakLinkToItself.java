package kitwright.assessment.joint;

import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.WeakLink;

/** Fires where a weak link protects a section from itself. */
public final class WeakLinkToItself implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Assessment assessment : day.ledger().assessments()) {
      assessment
          .weakLink()
          .filter(WeakLink::isToItself)
          .ifPresent(
              link ->
                  out.add(
                      stop(
                          link.at().of("protected"),
                          "The weak link of assessment "
                              + assessment.id()
                              + " protects section "
                              + link.sacrificial()
                              + " from itself.",
                          "Which part breaks first cannot be worked out.",
                          "Name the part that shall break under “sacrificial”, and the one that"
                              + " shall not under “protected”.",
                          List.of(assessment.named()))));
    }
  }
}
