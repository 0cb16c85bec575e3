package kitwright.ledger;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/** A key while its form is learnt. */
final class Draft {
  private final String name;
  private final String says;
  private final String example;
  private final List<String> notBefore = new ArrayList<>();
  private final Set<Key.Trait> traits = EnumSet.noneOf(Key.Trait.class);
  private Optional<Key.Band> band = Optional.empty();
  private Optional<String> begins = Optional.empty();
  private Optional<String> toldBy = Optional.empty();
  private Optional<String> unknown = Optional.empty();
  private Optional<Layout> inner = Optional.empty();
  private List<Kind> kinds = List.of();
  private String shorthand = "";

  Draft(String name, String says, String example) {
    this.name = name;
    this.says = says;
    this.example = example;
  }

  void notBefore(String earlier) {
    notBefore.add(earlier);
  }

  void trait(Key.Trait trait) {
    traits.add(trait);
  }

  void between(String low, String high) {
    try {
      band = Optional.of(new Key.Band(quantity(low), quantity(high)));
    } catch (Misread wrong) {
      throw new IllegalStateException(name + ": " + wrong.what(), wrong);
    }
  }

  private static Quantity quantity(String text) throws Misread {
    return Quantity.parse(text, Unit.ONE);
  }

  void begins(String value) {
    begins = Optional.of(value);
  }

  void toldBy(String rule) {
    toldBy = Optional.of(rule);
  }

  void unknown(String follows) {
    unknown = Optional.of(follows);
  }

  void kinds(Kind... targets) {
    kinds = List.of(targets);
  }

  void inner(Layout layout, String plain) {
    inner = Optional.of(layout);
    shorthand = plain;
  }

  Key key(Sort<?> sort, Key.Form form, boolean needed) {
    return new Key(
        name, says, example, sort, form, needed, kinds, inner, shorthand, notBefore, band, traits,
        begins, toldBy, unknown);
  }
}
