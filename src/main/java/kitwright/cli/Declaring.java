package kitwright.cli;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.IGetter;
import picocli.CommandLine.Model.ISetter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * What a command takes and says of itself, declared by calls: the library could find annotations by
 * reflection, which took an eighth of a short run. Names of one option are parted by a space.
 */
record Declaring(CommandSpec spec) {
  /** What the help says of the command, a paragraph each. */
  void says(String... paragraphs) {
    spec.usageMessage().description(paragraphs);
  }

  /** An option without a value; one may write {@code =false} behind it all the same. */
  void flag(String names, Runnable given, String says) {
    Consumer<Boolean> to =
        on -> {
          if (on) {
            given.run();
          }
        };
    add(option(names, says).type(boolean.class).paramLabel(names), new Bound<>(to));
  }

  /** An option with one text. */
  void option(String names, String label, Consumer<String> given, String says) {
    option(names, label, String.class, given, says);
  }

  /** An option with one value. */
  <T> void option(String names, String label, Class<T> type, Consumer<T> given, String says) {
    add(option(names, says).paramLabel(label).type(type), new Bound<>(given));
  }

  /** An option that may stand several times. */
  void options(String names, String label, Consumer<List<String>> given, String says) {
    add(
        option(names, says).paramLabel(label).type(List.class).auxiliaryTypes(String.class),
        new Bound<>(given));
  }

  /** An option of names and values, parted by commas. */
  void pairs(String names, String label, Consumer<Map<String, String>> given, String says) {
    add(
        option(names, says)
            .paramLabel(label)
            .hideParamSyntax(true) // the label says that several may stand behind one another
            .splitRegex(",")
            .type(Map.class)
            .auxiliaryTypes(String.class, String.class),
        new Bound<>(given));
  }

  private static OptionSpec.Builder option(String names, String says) {
    return OptionSpec.builder(names.split(" ", -1)).description(says);
  }

  private void add(OptionSpec.Builder option, Bound<?> bound) {
    spec.addOption(option.getter(bound).setter(bound).build());
  }

  /** A word without an option that must be there, by its place from 0 on. */
  void place(int index, String label, Consumer<String> given, String says) {
    place(index, "1", label, String.class, given, says);
  }

  /** The same where it is one of a few. */
  <T> void place(int index, String label, Class<T> type, Consumer<T> given, String says) {
    place(index, "1", label, type, given, says);
  }

  /** A first word that may be left out. */
  void mayPlace(String label, Consumer<String> given, String says) {
    place(0, "0..1", label, String.class, given, says);
  }

  private <T> void place(
      int index, String arity, String label, Class<T> type, Consumer<T> given, String says) {
    Bound<T> bound = new Bound<>(given);
    spec.addPositional(
        PositionalParamSpec.builder()
            .index(String.valueOf(index))
            .arity(arity)
            .required(!arity.startsWith("0"))
            .paramLabel(label)
            .type(type)
            .description(says)
            .getter(bound)
            .setter(bound)
            .build());
  }

  /** All words from a place on. */
  void places(int index, String arity, String label, Consumer<List<String>> given, String says) {
    Bound<List<String>> bound = new Bound<>(given);
    spec.addPositional(
        PositionalParamSpec.builder()
            .index(index + "..*")
            .arity(arity)
            .required(!arity.startsWith("0"))
            .paramLabel(label)
            .type(List.class)
            .auxiliaryTypes(String.class)
            .description(says)
            .getter(bound)
            .setter(bound)
            .build());
  }

  /** Hands a value on, and keeps it for the library, which fills lists bit by bit. */
  private static final class Bound<T> implements IGetter, ISetter {
    private final Consumer<T> given;
    private @Nullable Object value;

    Bound(Consumer<T> given) {
      this.given = given;
    }

    @Override
    @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"}) // as the library has it
    public <V> @Nullable V get() {
      return (V) value;
    }

    @Override
    @SuppressWarnings("unchecked") // the type was given with it
    public <V> @Nullable V set(@Nullable V now) {
      value = now;
      if (now != null) {
        given.accept((T) now);
      }
      return now;
    }
  }
}
