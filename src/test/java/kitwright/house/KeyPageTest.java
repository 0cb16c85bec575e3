package kitwright.house;

import kitwright.Golden;
import kitwright.edit.KeyReference;
import org.junit.jupiter.api.Test;

/** Whoever declares a key reads what its page then says, and accepts it. */
class KeyPageTest {
  @Test
  void thePageInTheRepositoryIsWhatTheProgramReadsBy() {
    Golden.checkPage("records.md", KeyReference.page());
  }
}
