package kitwright.substitution;

import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** Fires where a substitution takes or replaces other stuff than its assessment works out. */
public final class AssessedOtherwise implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (SubstitutionStanding standing : SubstitutionStandings.on(day).all()) {
      if (!standing.isWithdrawn()) {
        OtherStuff.of(standing.substitution(), day.ledger())
            .forEach(fault -> add(fault, standing, out));
      }
    }
  }

  private void add(OtherStuff.Fault fault, SubstitutionStanding standing, Findings out) {
    String assessment = standing.substitution().assessment().orElseThrow().id();
    out.add(
        stop(
            fault.at(),
            "The assessment "
                + assessment
                + " of "
                + standing.substitution().id()
                + " is of another part: "
                + fault.what()
                + ".",
            "A pass says nothing of what is not in the section, so it does not count.",
            "Correct whichever is not so: the material, size or number of what is taken or"
                + " replaced, or the section. What is glued up from thinner pieces has a layer for"
                + " each.",
            List.of("assessment " + assessment, standing.substitution().named())));
  }
}
