package kitwright.substitution;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Word;

/** Fires where a substitution says a lower grade than what it replaces, holds or loads. */
public final class GradeTooLow implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    SubstitutionStandings.on(day).all().stream()
        .filter(standing -> !standing.isWithdrawn())
        .filter(standing -> !standing.grading().because().isEmpty())
        .forEach(standing -> out.add(finding(standing)));
  }

  private Finding finding(SubstitutionStanding standing) {
    String grade = Word.key(standing.grade());
    return stop(
        standing.substitution().at().of("grade"),
        "The substitution "
            + standing.substitution().id()
            + " calls itself "
            + Word.key(standing.substitution().grade())
            + ", but "
            + String.join(" and ", standing.grading().because())
            + ".",
        "It is judged as " + grade + ": the grade belongs to the part.",
        "Write “grade: "
            + grade
            + (standing.grading().byLook()
                ? "”; or, if nothing structural depends on it, have somebody entitled to structural"
                    + " work, who did not propose it, say so in the assessment: not-structural:"
                    + " {by: …, on: …, why: …}."
                : "”; or correct the grade where it stands, if it is wrong there."),
        List.of(standing.substitution().named()));
  }
}
