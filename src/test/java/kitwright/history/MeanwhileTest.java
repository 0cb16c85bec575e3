package kitwright.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

/** What is asked while something else is done. */
class MeanwhileTest {
  @Test
  void itIsAskedBesideWhatIsDoneHere() throws NoHistory {
    CountDownLatch done = new CountDownLatch(1);
    try (Meanwhile<String> asked =
        Meanwhile.ask(
            () -> {
              done.await();
              return "yes";
            })) {
      done.countDown(); // asked one after the other, nothing would ever come here
      assertThat(asked.answer()).isEqualTo("yes");
    }
  }

  @Test
  void whatCannotBeToldIsThrownToWhoeverWantsTheAnswer() {
    try (Meanwhile<String> asked =
        Meanwhile.ask(
            () -> {
              throw new NoHistory("Nothing was committed yet.", "Commit.");
            })) {
      assertThatThrownBy(asked::answer)
          .isInstanceOfSatisfying(
              NoHistory.class,
              none -> assertThat(none.what()).isEqualTo("Nothing was committed yet."));
    }
  }

  @Test
  void aFaultStaysTheFaultItWas() {
    try (Meanwhile<String> asked =
        Meanwhile.ask(
            () -> {
              throw new IllegalArgumentException("odd");
            })) {
      assertThatThrownBy(asked::answer)
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("odd");
    }
  }

  @Test
  void whoeverGoesOnWithoutTheAnswerWaitsForItsEndAllTheSame() {
    AtomicBoolean ended = new AtomicBoolean();
    CountDownLatch closing = new CountDownLatch(1);
    Meanwhile<String> asked =
        Meanwhile.ask(
            () -> {
              closing.await();
              ended.set(true);
              return "";
            });
    closing.countDown();
    asked.close();
    assertThat(ended).isTrue();
  }
}
