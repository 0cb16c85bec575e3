package kitwright.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.ledger.Rule;
import org.junit.jupiter.api.Test;

/** What is found about the ways out that a shortage lists, and the one it is decided for. */
class OptionRulesTest {
  private static List<String> found(Rule rule, String options) {
    String yaml =
        """
        kit: [{id: k, what: k, qty: 9}]
        shortages:
          - {id: s, item: k, qty: 1, found: 2026-01-24, cause: wrong%s}
          - {id: t, item: k, qty: 1, found: 2026-01-24, cause: wrong}
        substitutions:
          - {id: own, for: s, instead-of: {item: k, qty: 1}, grade: finish, why: w}
          - {id: any, instead-of: {item: k, qty: 1}, grade: finish, why: w}
          - {id: other, for: t, instead-of: {item: k, qty: 1}, grade: finish, why: w}
        """
            .formatted(options);
    return Sample.findings(rule, yaml).stream()
        .map(each -> each.what() + " " + each.mend())
        .toList();
  }

  @Test
  void twoWaysOfOneNameCannotBeToldApart() {
    assertThat(found(new OptionTwice(), ", options: [{kind: wait}, {kind: buy}]")).isEmpty();
    assertThat(found(new OptionTwice(), ", options: [{kind: buy}, {id: x, kind: buy}]")).isEmpty();
    assertThat(
            found(
                new OptionTwice(), ", options: [{kind: buy}, {kind: buy}, {id: buy, kind: wait}]"))
        .containsExactly(
            "Two ways out of the shortage s are called “buy”. Give each an “id” of its own.",
            "Two ways out of the shortage s are called “buy”. Give each an “id” of its own.");
  }

  @Test
  void theSameNameIsShownWhereItIsWritten() {
    Finding byKind =
        Sample.findings(
                new OptionTwice(),
                "shortages: [{id: s, item: k, qty: 1, found: 2026-01-24, cause: wrong, options:"
                    + " [{kind: buy}, {kind: buy}]}]")
            .get(0);
    Finding byId =
        Sample.findings(
                new OptionTwice(),
                "shortages: [{id: s, item: k, qty: 1, found: 2026-01-24, cause: wrong, options:"
                    + " [{kind: buy}, {kind: wait, id: buy}]}]")
            .get(0);
    assertThat(byKind.at().column()).isEqualTo(101);
    assertThat(byId.at().column()).isEqualTo(111);
  }

  @Test
  void aDecisionNamesOneOfTheWays() {
    String decided = ", options: [%s], decided: {option: %s, on: 2026-02-01, by: me, why: w}";
    String two = "{kind: wait}, {id: teak, kind: buy}";
    assertThat(found(new DecisionUnknown(), decided.formatted(two, "teak"))).isEmpty();
    assertThat(found(new DecisionUnknown(), decided.formatted(two, "teek")))
        .containsExactly(
            "The shortage s is decided for “teek”, which it does not list. Did you mean “teak”?");
    assertThat(found(new DecisionUnknown(), decided.formatted(two, "substitute")))
        .containsExactly(
            "The shortage s is decided for “substitute”, which it does not list. Name one of:"
                + " wait, teak; or list it under “options”.");
    assertThat(found(new DecisionUnknown(), decided.formatted("", "buy")))
        .containsExactly(
            "The shortage s is decided for “buy”, which it does not list. List it under “options”"
                + " with its kind, cost and day.");
  }

  @Test
  void aWayOutNamesASubstitutionForThisShortage() {
    String option = ", options: [{kind: substitute, substitution: %s}]";
    assertThat(found(new OptionOfOtherShortage(), option.formatted("own"))).isEmpty();
    assertThat(found(new OptionOfOtherShortage(), option.formatted("any"))).isEmpty();
    assertThat(found(new OptionOfOtherShortage(), option.formatted("other")))
        .containsExactly(
            "The way out “substitute” of the shortage s names the substitution other, which is for"
                + " t. Name a substitution for this shortage, or correct “for” of the"
                + " substitution.");
  }
}
