package kitwright.document;

import java.util.List;
import java.util.function.Function;

/** What came of filling a template. */
public sealed interface Filled {
  /** Answers with the function of the case at hand. */
  <R> R match(Function<Text, R> text, Function<Broken, R> broken);

  /**
   * The template was filled.
   *
   * @param markdown ended by a line feed
   */
  record Text(String markdown) implements Filled {
    @Override
    public <R> R match(Function<Text, R> text, Function<Broken, R> broken) {
      return text.apply(this);
    }
  }

  /**
   * The template could not be filled.
   *
   * @param faults at least one, in the order of the template
   */
  record Broken(List<TemplateFault> faults) implements Filled {
    public Broken {
      faults = List.copyOf(faults);
    }

    @Override
    public <R> R match(Function<Text, R> text, Function<Broken, R> broken) {
      return broken.apply(this);
    }
  }
}
