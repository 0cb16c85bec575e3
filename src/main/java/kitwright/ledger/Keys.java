package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import kitwright.finding.Findings;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Money;
import kitwright.value.Place;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Size;
import kitwright.value.ThreePoint;
import kitwright.value.Unit;
import kitwright.yaml.Node;
import kitwright.yaml.Recall;
import org.jspecify.annotations.Nullable;

/**
 * Reads the keys of one record, one after the other, and is the only place where they are declared:
 * {@code k.key("found", "the day you noticed", "2026-03-02").happened()}. Run once without a record
 * it learns the {@link Layout}; every later record's entries are laid out by that, and the n-th
 * question is answered from slot n. So no {@code if} may stand between questions: what hangs on a
 * value is judged after reading, with {@link #fault}.
 *
 * <p>A missing or faulty value is reported, a harmless stand-in is returned, and {@link #isSound}
 * turns false, so that the record is left out but reading goes on.
 */
public final class Keys {
  private static final LocalDate NO_DAY = LocalDate.EPOCH;
  private static final Place NOWHERE = Place.wholeFile("");

  private final Layout layout;
  private final boolean learning;
  private final Node.Mapping source;
  private final Recall recall;
  private final RecordFaults faults;

  /** What happened later is read as not having happened yet. */
  private final LocalDate until;

  private Currency currency;

  /** What is written for each key of the layout; null where nothing is. */
  private final @Nullable Node[] nodes;

  private final @Nullable Object[] values;

  /** Which key of the layout each entry is; below zero where it is none. */
  private final int[] slots;

  private int slot = -1;
  private int lookedUp;
  private @Nullable Draft draft;
  private @Nullable At at;

  /** Whether the record, or the group, is there only later. */
  private boolean later;

  private Keys(
      Layout layout,
      boolean learning,
      Node.Mapping source,
      Currency currency,
      Recall recall,
      RecordFaults faults,
      LocalDate until) {
    this.layout = layout;
    this.learning = learning;
    this.source = source;
    this.currency = currency;
    this.recall = recall;
    this.faults = faults;
    this.until = until;
    this.nodes = new Node[layout.size()];
    this.values = new Object[layout.size()];
    this.slots = new int[source.entries().size()];
    layOut();
  }

  /** The keys of a record, whenever what it tells happened. */
  static Keys of(
      Layout layout,
      Node.Mapping source,
      String kind,
      Currency currency,
      Recall recall,
      Findings out) {
    return of(layout, source, kind, currency, recall, out, LocalDate.MAX);
  }

  /**
   * The keys of a record as it read at the end of a day.
   *
   * @param kind what the record is called in messages: {@code kit item}
   * @param currency what a bare amount of money is in
   * @param until what happened later is left out
   */
  public static Keys of(
      Layout layout,
      Node.Mapping source,
      String kind,
      Currency currency,
      Recall recall,
      Findings out,
      LocalDate until) {
    return new Keys(
        layout, false, source, currency, recall, new RecordFaults(source, kind, kind, out), until);
  }

  /**
   * Reads values that stand in no record, such as those of a list from elsewhere.
   *
   * @param currency what a bare amount of money is in
   */
  public static Keys ofNoRecord(Currency currency) {
    Keys keys = learning(Layout.of(none -> ""));
    keys.nowIn(currency);
    return keys;
  }

  /** Notes down what is asked. */
  static Keys learning(Layout layout) {
    Node.Mapping nothing = new Node.Mapping(List.of(), NOWHERE);
    return new Keys(
        layout,
        true,
        nothing,
        Currency.getInstance("EUR"),
        new Recall(),
        new RecordFaults(nothing, "", "", new Findings()),
        LocalDate.MAX);
  }

  private void layOut() {
    List<Node.Entry> entries = source.entries();
    for (int i = 0; i < slots.length; i++) {
      Node.Entry entry = entries.get(i);
      slots[i] = layout.slotOf(entry.key().text());
      boolean empty = entry.value() instanceof Node.Scalar scalar && scalar.isEmpty();
      if (slots[i] < 0
          && i > 0
          && slots[i - 1] >= 0
          && CommaCut.of(entries.get(i - 1), entry).isPresent()) {
        nodes[slots[i - 1]] = new Node.Unreadable(entry.key().at()); // told once, as a cut
      }
      if (slots[i] >= 0 && !empty) {
        nodes[slots[i]] = entry.value();
      }
    }
  }

  // --- what is known of a key ----------------------------------------------------------------

  /** The next key, a group whose own keys show how it is written. */
  public Keys key(String name, String says) {
    return key(name, says, "");
  }

  /**
   * The next key. While learning it is noted down; while reading its value lies ready.
   *
   * @param says what it means, one sentence without a full stop
   * @param example how a value of it is written
   */
  public Keys key(String name, String says, String example) {
    slot++;
    if (learning) {
      draft = new Draft(name, says, example);
    } else if (slot >= layout.size() || !layout.key(slot).name().equals(name)) {
      slot = layout.slotOf(name); // asked out of order: slower, but right
      lookedUp++;
    }
    return this;
  }

  /** Its day is no earlier than that of another key. */
  public Keys notBefore(String earlier) {
    if (draft != null) {
      draft.notBefore(earlier);
    }
    return this;
  }

  /** Its day may lie before the build began. */
  public Keys ever() {
    return trait(Key.Trait.EVER);
  }

  /** The record is there only from this day on. */
  public Keys opens() {
    return trait(Key.Trait.OPENS);
  }

  private Keys trait(Key.Trait trait) {
    if (draft != null) {
      draft.trait(trait);
    }
    return this;
  }

  /** Where it plausibly lies, both ends included: what lies outside is told. */
  public Keys between(String low, String high) {
    if (draft != null) {
      draft.between(low, high);
    }
    return this;
  }

  /** What a new record starts with. */
  public Keys begins(String value) {
    if (draft != null) {
      draft.begins(value);
    }
    return this;
  }

  /** Its faults are told by a rule of its own, in place of the general ones. */
  public Keys toldBy(String rule) {
    if (draft != null) {
      draft.toldBy(rule);
    }
    return this;
  }

  /** What follows where nothing has the name that it refers to: one sentence. */
  public Keys unknown(String follows) {
    if (draft != null) {
      draft.unknown(follows);
    }
    return this;
  }

  private void note(Sort<?> sort, Key.Form form, boolean needed) {
    if (draft != null) {
      layout.note(draft.key(sort, form, needed));
    }
  }

  // --- one value -------------------------------------------------------------------------------

  /** A value that must be there. */
  public <T> T need(Sort<T> sort, T standIn) {
    note(sort, Key.Form.ONE, true);
    Node node = node();
    if (node == null) {
      missing();
      return standIn;
    }
    T value = value(node, sort);
    return value == null ? standIn : value;
  }

  /** A value that may be left out. */
  public <T> Optional<T> maybe(Sort<T> sort) {
    note(sort, Key.Form.ONE, false);
    Node node = node();
    return node == null ? Optional.empty() : Optional.ofNullable(value(node, sort));
  }

  private @Nullable Node node() {
    return learning ? null : nodes[slot];
  }

  /** Reports that a key is missing which another might have stood for. */
  void missing(String name) {
    if (!learning) {
      faults.missing(name);
    }
  }

  private void missing() {
    if (!learning) {
      faults.missing(layout.key(slot).name());
    }
  }

  /** Reads one value and keeps it for the rules. */
  private <T> @Nullable T value(Node node, Sort<T> sort) {
    T value = read(node, sort);
    values[slot] = value;
    return value;
  }

  private <T> @Nullable T read(Node node, Sort<T> sort) {
    if (!(node instanceof Node.Scalar scalar)) {
      faults.wrongShape(layout.key(slot).name(), node, "a plain value");
      return null;
    }
    try {
      return sort.read(scalar.text(), this);
    } catch (Misread misread) {
      faults.misread(scalar.at(), misread);
      return null;
    }
  }

  /** The sort that was learnt for the key asked just now, rather than another made each time. */
  @SuppressWarnings("unchecked") // the same question was asked while learning
  private <T> Sort<T> learnt() {
    return (Sort<T>) layout.key(slot).sort();
  }

  public String text() {
    return need(Sorts.TEXT, "");
  }

  public Optional<String> maybeText() {
    return maybe(Sorts.TEXT);
  }

  /** A record's own id. */
  public String id(String example) {
    return key("id", "the name you give it, without spaces, unique within its kind", example)
        .begins("ID")
        .need(Sorts.ID, "");
  }

  /** The id of another record, of one of these kinds. */
  public Ref ref(Kind... kinds) {
    kinds(kinds);
    note(Sorts.ID, Key.Form.ONE, true);
    Node node = node();
    if (node == null) {
      missing();
      return new Ref("", place());
    }
    return ref(node).orElseGet(() -> new Ref("", node.at()));
  }

  /** The id of another record, of one of these kinds. */
  public Optional<Ref> maybeRef(Kind... kinds) {
    kinds(kinds);
    note(Sorts.ID, Key.Form.ONE, false);
    Node node = node();
    return node == null ? Optional.empty() : ref(node);
  }

  private Optional<Ref> ref(Node node) {
    String id = read(node, Sorts.ID);
    Optional<Ref> ref = id == null ? Optional.empty() : Optional.of(new Ref(id, node.at()));
    values[slot] = ref.orElse(null);
    return ref;
  }

  private void kinds(Kind... kinds) {
    if (draft != null) {
      draft.kinds(kinds);
    }
  }

  /** A day that has come. */
  public LocalDate happened() {
    LocalDate day = need(Sorts.HAPPENED, NO_DAY);
    later |= day.isAfter(until);
    return day;
  }

  /** A day that has come. */
  public Optional<LocalDate> maybeHappened() {
    Optional<LocalDate> day = maybe(Sorts.HAPPENED);
    if (day.isEmpty() || !day.get().isAfter(until)) {
      return day;
    }
    later |= layout.key(slot).traits().contains(Key.Trait.OPENS);
    values[slot] = null;
    return Optional.empty();
  }

  /** A day that may lie ahead. */
  public LocalDate planned() {
    return need(Sorts.PLANNED, NO_DAY);
  }

  /** A day that may lie ahead. */
  public Optional<LocalDate> maybePlanned() {
    return maybe(Sorts.PLANNED);
  }

  public Money money() {
    return need(Sorts.MONEY, Money.zero(currency));
  }

  public Optional<Money> maybeMoney() {
    return maybe(Sorts.MONEY);
  }

  public Optional<Price> maybePrice() {
    return maybe(Sorts.PRICE);
  }

  /** A quantity of any dimension; a bare number counts pieces. */
  public Quantity quantity() {
    return need(measure(Unit.EACH, Optional.empty()), Quantity.none(Unit.EACH));
  }

  /** The same where it may be left out. */
  public Optional<Quantity> maybeQuantity() {
    return maybe(measure(Unit.EACH, Optional.empty()));
  }

  /** A part of another quantity of this record, whose unit a bare number has. */
  public Optional<Quantity> maybePartOf(Quantity whole) {
    return maybe(new Sorts.Measure(whole.unit(), Optional.empty()));
  }

  /** A quantity of one dimension. */
  public Quantity measure(Unit bare, Dimension dimension) {
    return need(measure(bare, Optional.of(dimension)), Quantity.none(bare));
  }

  /** A quantity of one dimension. */
  public Optional<Quantity> maybeMeasure(Unit bare, Dimension dimension) {
    return maybe(measure(bare, Optional.of(dimension)));
  }

  private Sort<Quantity> measure(Unit bare, Optional<Dimension> dimension) {
    return learning ? new Sorts.Measure(bare, dimension) : learnt();
  }

  public BigDecimal number() {
    return need(Sorts.NUMBER, BigDecimal.ONE);
  }

  public Optional<BigDecimal> maybeNumber() {
    return maybe(Sorts.NUMBER);
  }

  /** A whole number, zero or more. */
  public Optional<Integer> maybeCount() {
    return maybe(Sorts.COUNT);
  }

  public Optional<Size> maybeSize() {
    return maybe(Sorts.SIZE);
  }

  /** A share: {@code 60 %} or {@code 0.6}, as a number of 1. */
  public Optional<BigDecimal> maybeShare() {
    return maybe(Sorts.SHARE);
  }

  /** One word of a closed list, written in kebab-case. */
  public <E extends Enum<E>> E choice(Class<E> words, E standIn) {
    return need(choice(words), standIn);
  }

  public <E extends Enum<E>> Optional<E> maybeChoice(Class<E> words) {
    return maybe(choice(words));
  }

  private <E extends Enum<E>> Sort<E> choice(Class<E> words) {
    return learning ? new Sorts.Choice<>(words) : learnt();
  }

  /** {@code yes}, {@code no}, {@code true} or {@code false}; false where it is not written. */
  public boolean flag() {
    return maybe(Sorts.FLAG).orElse(false);
  }

  // --- several ---------------------------------------------------------------------------------

  /** A list of plain values; one alone may stand without brackets. */
  public <T> List<T> list(Sort<T> sort) {
    note(sort, Key.Form.LIST, false);
    List<T> all = new ArrayList<>();
    for (Node item : items()) {
      T value = read(item, sort);
      if (value != null) {
        all.add(value);
      }
    }
    return kept(List.copyOf(all));
  }

  public List<String> texts() {
    return list(Sorts.TEXT);
  }

  public <E extends Enum<E>> List<E> choices(Class<E> words) {
    return list(choice(words));
  }

  /** Ids of other records, each of one of these kinds. */
  public List<Ref> refs(Kind... kinds) {
    kinds(kinds);
    note(Sorts.ID, Key.Form.LIST, false);
    List<Ref> all = new ArrayList<>();
    for (Node item : items()) {
      String id = read(item, Sorts.ID);
      if (id != null) {
        all.add(new Ref(id, item.at()));
      }
    }
    return kept(List.copyOf(all));
  }

  private <T> T kept(T value) {
    if (node() != null) {
      values[slot] = value;
    }
    return value;
  }

  private List<Node> items() {
    Node node = node();
    if (node == null) {
      return List.of();
    }
    return node instanceof Node.Listing list ? list.items() : List.of(node);
  }

  /** One amount, or low, likely and high. */
  public Optional<ThreePoint<Money>> maybeGuess() {
    note(Sorts.MONEY, Key.Form.RANGE, false);
    return range(Sorts.MONEY);
  }

  /** One measure, or low, likely and high. */
  public ThreePoint<Quantity> guess(Unit bare, Dimension dimension) {
    Sort<Quantity> sort = measure(bare, Optional.of(dimension));
    note(sort, Key.Form.RANGE, true);
    if (node() == null) {
      missing();
    }
    return range(sort).orElseGet(() -> ThreePoint.fixed(Quantity.none(bare)));
  }

  private <T> Optional<ThreePoint<T>> range(Sort<T> sort) {
    Node node = node();
    if (node == null) {
      return Optional.empty();
    }
    if (!(node instanceof Node.Listing list)) {
      T value = read(node, sort);
      return value == null ? Optional.empty() : Optional.of(kept(ThreePoint.fixed(value)));
    }
    List<T> all = new ArrayList<>();
    for (Node item : list.items()) {
      T value = read(item, sort);
      if (value != null) {
        all.add(value);
      }
    }
    if (list.items().size() != 3) {
      faults.notThree(layout.key(slot).name(), list);
    }
    return list.items().size() == 3 && all.size() == 3
        ? Optional.of(kept(new ThreePoint<>(all.get(0), all.get(1), all.get(2))))
        : Optional.empty();
  }

  /** Keys of the user's own choice, each with a plain value, in the order written. */
  public <T> Map<Ref, T> named(Sort<T> sort) {
    return by(sort);
  }

  /** Ids of records of these kinds, each with a plain value, in the order written. */
  public <T> Map<Ref, T> by(Sort<T> sort, Kind... kinds) {
    kinds(kinds);
    note(sort, Key.Form.NAMED, false);
    Map<Ref, T> all = new LinkedHashMap<>();
    Node node = node();
    if (node instanceof Node.Mapping inner) {
      for (int i = 0; i < inner.entries().size(); i++) {
        Node.Entry entry = inner.entries().get(i);
        Optional<CommaCut> cut =
            i == 0 ? Optional.empty() : CommaCut.of(inner.entries().get(i - 1), entry);
        if (cut.isPresent()) {
          faults.cut(cut.get());
          continue;
        }
        T value = read(entry.value(), sort);
        if (value != null) {
          all.put(new Ref(Sorts.composed(entry.key().text()), entry.key().at()), value);
        }
      }
    } else if (node != null) {
      Key key = layout.key(slot);
      faults.wrongShape(key.name(), node, "a group of keys, such as " + key.example());
    }
    return kept(Collections.unmodifiableMap(all));
  }

  // --- groups ----------------------------------------------------------------------------------

  /** A list of groups of keys; one alone may stand without brackets. */
  public <T> List<T> each(Function<Keys, T> form) {
    return each("", form);
  }

  /**
   * A list of groups of keys, where a plain value stands for a group with that one key.
   *
   * @param shorthand the key that a plain value gives; empty where there is none
   */
  public <T> List<T> each(String shorthand, Function<Keys, T> form) {
    learn(form, shorthand, Key.Form.GROUPS, false);
    List<T> all = new ArrayList<>();
    List<At> places = new ArrayList<>();
    for (Node item : items()) {
      T value = group(item, shorthand, form, places);
      if (value != null) {
        all.add(value);
      }
    }
    keep(places);
    return List.copyOf(all);
  }

  /** One group of keys. */
  public <T> Optional<T> maybeGroup(Function<Keys, T> form) {
    learn(form, "", Key.Form.GROUP, false);
    return group(form);
  }

  /** A group of keys that must be there; the stand-in is never seen by a sound record. */
  public <T> T group(Function<Keys, T> form, T standIn) {
    learn(form, "", Key.Form.GROUP, true);
    if (node() == null) {
      missing();
    }
    return group(form).orElse(standIn);
  }

  private <T> Optional<T> group(Function<Keys, T> form) {
    Node node = node();
    if (node == null) {
      return Optional.empty();
    }
    List<At> places = new ArrayList<>(1);
    T value = group(node, "", form, places);
    keep(places);
    return Optional.ofNullable(value);
  }

  private void keep(List<At> places) {
    if (!places.isEmpty()) {
      values[slot] = List.copyOf(places);
    }
  }

  private <T> void learn(Function<Keys, T> form, String shorthand, Key.Form shape, boolean needed) {
    if (draft != null) {
      draft.inner(Layout.of(form), shorthand);
      note(Sorts.TEXT, shape, needed);
    }
  }

  private <T> @Nullable T group(
      Node node, String shorthand, Function<Keys, T> form, List<At> places) {
    Key key = layout.key(slot);
    Node.Mapping group;
    if (node instanceof Node.Mapping mapping) {
      group = mapping;
    } else if (node instanceof Node.Scalar scalar && !shorthand.isEmpty()) {
      group = Node.Mapping.ofOne(shorthand, scalar);
    } else {
      faults.wrongShape(key, node);
      return null;
    }
    Layout within = key.inner().orElseThrow();
    Keys inner =
        new Keys(within, false, group, currency, recall, faults.inside(group, key.name()), until);
    T value = form.apply(inner);
    inner.finish();
    faults.also(inner.faults);
    if (inner.later) {
      later |= within.opens();
      return null;
    }
    places.add(inner.at());
    return inner.isSound() ? value : null;
  }

  // --- the record as a whole -------------------------------------------------------------------

  /** Whether every value so far could be read. */
  public boolean isSound() {
    return faults.areNone();
  }

  /** Whether it is there only later than what is looked at. */
  boolean isLater() {
    return later;
  }

  /** What a bare amount of money is in. */
  public Currency currency() {
    return currency;
  }

  /** From here on, bare amounts are in another currency. */
  void nowIn(Currency other) {
    currency = other;
  }

  Recall recall() {
    return recall;
  }

  /** The place of the last key's value; of the record where there is none. */
  private Place place() {
    return learning ? NOWHERE : source.at();
  }

  /** The place of a key's value; of the record where there is none. */
  public Place placeOf(String name) {
    return source.get(name).map(Node::at).orElse(source.at());
  }

  /** Reports a value that reads well but cannot be. */
  public void fault(String rule, Place where, String what, String mend) {
    if (!learning) {
      faults.add(rule, where, what, mend);
    }
  }

  /** Where the record and its values stand, and what they are: asked last. */
  public At at() {
    if (at == null) {
      at = new At(source, layout, slots, values);
    }
    return at;
  }

  /** The same, of a record that can be signed for. */
  Written written() {
    Written written = new Written(source, layout, slots, values);
    at = written;
    return written;
  }

  /** How many questions came out of the order in which they were learnt. */
  int lookedUp() {
    return lookedUp;
  }

  /** Reports each key that the form does not have, with the nearest that it has. */
  public void finish() {
    List<Node.Entry> entries = source.entries();
    for (int i = 0; i < slots.length; i++) {
      if (slots[i] < 0) {
        Optional<CommaCut> cut =
            i == 0 ? Optional.empty() : CommaCut.of(entries.get(i - 1), entries.get(i));
        faults.unknown(entries.get(i), cut, layout);
      }
    }
  }
}
