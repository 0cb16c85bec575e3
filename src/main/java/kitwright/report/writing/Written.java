package kitwright.report.writing;

import java.nio.file.Path;
import java.util.function.Function;
import kitwright.finding.Finding;

/** What came of writing a document. */
public sealed interface Written {
  /** Answers with the function of the case at hand. */
  <R> R match(
      Function<Done, R> done, Function<Unchanged, R> unchanged, Function<Refused, R> refused);

  /**
   * The file holds the new text, and that text is on the disk.
   *
   * @param file the file
   */
  record Done(Path file) implements Written {
    @Override
    public <R> R match(Function<Done, R> d, Function<Unchanged, R> u, Function<Refused, R> r) {
      return d.apply(this);
    }
  }

  /**
   * The file held this text already and was left alone.
   *
   * @param file the file
   */
  record Unchanged(Path file) implements Written {
    @Override
    public <R> R match(Function<Done, R> d, Function<Unchanged, R> u, Function<Refused, R> r) {
      return u.apply(this);
    }
  }

  /**
   * Nothing was written and nothing was lost.
   *
   * @param why what stood in the way
   */
  record Refused(Finding why) implements Written {
    @Override
    public <R> R match(Function<Done, R> d, Function<Unchanged, R> u, Function<Refused, R> r) {
      return r.apply(this);
    }
  }
}
