package kitwright.loan;

import kitwright.RulesOf;
import org.junit.jupiter.api.Test;

/** The room’s rules, by their words. */
class RulesTest {
  @Test
  void eachSaysOfTheSampleOnItsPageWhatIsWrongWhatFollowsAndHowToMendIt() {
    RulesOf.room(getClass());
  }
}
