package kitwright.history;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * What Git is asked while something else is done: its programs run beside this one, and waiting for
 * them was half of what a look back took. To be closed, so that no program outlives the question.
 *
 * @param <T> what it answers
 */
public final class Meanwhile<T> implements AutoCloseable {
  private final FutureTask<T> question;
  private final Thread asking;

  private Meanwhile(Callable<T> question) {
    this.question = new FutureTask<>(question);
    this.asking = new Thread(this.question, "git");
    asking.start();
  }

  /** Begins to ask. */
  public static <T> Meanwhile<T> ask(Callable<T> question) {
    return new Meanwhile<>(question);
  }

  /** The answer, once it is there; what broke on the way is thrown here. */
  public T answer() throws NoHistory {
    try {
      return question.get();
    } catch (ExecutionException broken) {
      if (broken.getCause() instanceof NoHistory none) {
        throw none;
      }
      if (broken.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(broken.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }

  @Override
  public void close() {
    try {
      asking.join();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
