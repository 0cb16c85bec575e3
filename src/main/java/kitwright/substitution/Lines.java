package kitwright.substitution;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Size;
import kitwright.value.Word;

/** Writes a statement: headings, and a line a value, in the order in which they are asked for. */
final class Lines {
  private final StringBuilder out = new StringBuilder();
  private String indent = "";

  Lines heading(String words) {
    out.append('\n').append(words).append('\n');
    indent = "  ";
    return this;
  }

  /** What stands under a line of its own, further in. */
  Lines within(String words, Runnable inner) {
    out.append(indent).append(words).append('\n');
    String before = indent;
    indent = before + "  ";
    inner.run();
    indent = before;
    return this;
  }

  Lines words(String name, String text) {
    return line(name, Plain.words(text));
  }

  Lines words(String name, Optional<String> text) {
    text.ifPresent(there -> words(name, there));
    return this;
  }

  Lines name(String name, Ref ref) {
    return line(name, Plain.name(ref.id()));
  }

  Lines name(String name, Optional<Ref> ref) {
    ref.ifPresent(there -> name(name, there));
    return this;
  }

  Lines names(String name, List<Ref> refs) {
    return refs.isEmpty()
        ? this
        : line(name, refs.stream().map(r -> Plain.name(r.id())).collect(Collectors.joining(", ")));
  }

  Lines word(String name, Enum<?> constant) {
    return line(name, Word.key(constant));
  }

  Lines word(String name, Optional<? extends Enum<?>> constant) {
    constant.ifPresent(there -> word(name, there));
    return this;
  }

  Lines quantity(String name, Quantity quantity) {
    return line(name, Plain.quantity(quantity));
  }

  Lines quantity(String name, Optional<Quantity> quantity) {
    quantity.ifPresent(there -> quantity(name, there));
    return this;
  }

  Lines number(String name, Optional<BigDecimal> number) {
    number.ifPresent(there -> line(name, Plain.number(there)));
    return this;
  }

  Lines size(String name, Optional<Size> size) {
    size.ifPresent(there -> line(name, Plain.size(there)));
    return this;
  }

  Lines day(String name, Optional<LocalDate> day) {
    day.ifPresent(there -> line(name, there.toString()));
    return this;
  }

  /** A line an entry, by the names, so that their order in the file does not count. */
  <T> Lines each(String name, Map<Ref, T> map, Function<T, String> value) {
    map.entrySet().stream()
        .sorted(Comparator.comparing(entry -> entry.getKey().id()))
        .forEach(
            entry ->
                line(name + " " + Plain.name(entry.getKey().id()), value.apply(entry.getValue())));
    return this;
  }

  Lines line(String name, String value) {
    out.append(indent).append(name).append(": ").append(value).append('\n');
    return this;
  }

  Lines bare(String words) {
    out.append(indent).append(words).append('\n');
    return this;
  }

  String text() {
    return out.toString();
  }
}
