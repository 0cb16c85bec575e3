package kitwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Section;
import kitwright.ledger.Substitution;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** Judges the condition of a sign-off against the section that it names. */
public final class Conditions {
  private Conditions() {}

  /**
   * Fails where a measure of the section is below what the signer asks; cannot tell where the
   * condition is words only, or the section does not state the measure.
   */
  public static Verdict verdict(Substitution.Condition condition, Ledger ledger) {
    if (condition.section().isEmpty()) {
      return Verdict.cannotTell(List.of("it is words only, for a person to check"));
    }
    Optional<Section> section = ledger.section(condition.section().get());
    if (section.isEmpty()) {
      return Verdict.cannotTell(
          List.of(ledger.noSuch(Kind.SECTIONS, condition.section().get().id())));
    }
    List<String> failing = new ArrayList<>();
    List<String> lacking = new ArrayList<>();
    for (Map.Entry<Ref, Quantity> asked : condition.atLeast().entrySet()) {
      Optional<Quantity> built =
          SectionMeasure.of(section.get(), asked.getKey().id())
              .filter(measure -> measure.convertsTo(asked.getValue()));
      if (built.isEmpty()) {
        lacking.add(section.get().named() + " does not state its " + asked.getKey());
      } else if (built.get().compareAmount(asked.getValue()) < 0) {
        failing.add(
            asked.getKey()
                + " of "
                + section.get().named()
                + " is "
                + built.get()
                + ", where at least "
                + asked.getValue()
                + " is required");
      }
    }
    if (!failing.isEmpty()) {
      return Verdict.fail(failing);
    }
    return lacking.isEmpty() ? Verdict.pass() : Verdict.cannotTell(lacking);
  }
}
