package kitwright.yaml;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Decimal;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Money;
import kitwright.value.Nearest;
import kitwright.value.Place;
import kitwright.value.Price;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Size;
import kitwright.value.ThreePoint;
import kitwright.value.Unit;

/**
 * Reads the typed values of one record. A missing or faulty value is reported, a harmless stand-in
 * is returned, and {@link #isSound} turns false, so that the record is left out but reading goes
 * on. Every key that was never asked for is reported by {@link #finish}.
 */
public final class Fields {
  /** Reads one value from its text. */
  @FunctionalInterface
  public interface Reading<T> {
    T read(String text) throws Misread;
  }

  private static final LocalDate NO_DAY = LocalDate.EPOCH;

  private final Node.Mapping mapping;
  private final String kind;
  private final String owner;
  private Currency currency;
  private final Recall recall;
  private final Findings out;
  private final List<String> known = new ArrayList<>(24);
  private final boolean[] asked;
  private final long hashes;
  private boolean sound = true;

  /**
   * @param kind what the record is called in messages: {@code kit item}
   * @param currency what a bare amount of money is in
   */
  public Fields(Node.Mapping mapping, String kind, Currency currency, Recall recall, Findings out) {
    this(mapping, kind, kind, currency, recall, out);
  }

  private Fields(
      Node.Mapping mapping,
      String kind,
      String owner,
      Currency currency,
      Recall recall,
      Findings out) {
    this.mapping = mapping;
    this.asked = new boolean[mapping.entries().size()];
    this.hashes = hashes(mapping);
    this.kind = kind;
    this.owner = owner;
    this.currency = currency;
    this.recall = recall;
    this.out = out;
  }

  /** Whether every value so far could be read. */
  public boolean isSound() {
    return sound;
  }

  /** The record as it was written. */
  public Node.Mapping source() {
    return mapping;
  }

  /** What a bare amount of money is in. */
  public Currency currency() {
    return currency;
  }

  /** From here on, bare amounts are in another currency. */
  public void nowIn(Currency other) {
    currency = other;
  }

  // --- one value ---------------------------------------------------------------------------

  /** A value that must be there. */
  public <T> T need(String key, Reading<T> reading, T standIn) {
    Optional<T> value = maybe(key, reading);
    if (value.isEmpty() && node(key).isEmpty()) {
      missing(key);
    }
    return value.orElse(standIn);
  }

  /** A value that may be left out. */
  public <T> Optional<T> maybe(String key, Reading<T> reading) {
    return ask(key).flatMap(node -> value(key, node, reading));
  }

  private <T> Optional<T> value(String key, Node node, Reading<T> reading) {
    if (!(node instanceof Node.Scalar scalar)) {
      wrongShape(key, node, "a plain value");
      return Optional.empty();
    }
    try {
      return Optional.of(reading.read(scalar.text()));
    } catch (Misread misread) {
      fault("value-unreadable", scalar.at(), sentence(misread.what()), sentence(misread.mend()));
      return Optional.empty();
    }
  }

  public String text(String key) {
    return need(key, Fields::someText, "");
  }

  public Optional<String> maybeText(String key) {
    return maybe(key, Fields::someText);
  }

  /** A record's own id. */
  public String id() {
    return need("id", Fields::anId, "");
  }

  public Ref ref(String key) {
    return new Ref(need(key, Fields::anId, ""), placeOf(key));
  }

  public Optional<Ref> maybeRef(String key) {
    Optional<String> id = maybe(key, Fields::anId);
    return id.map(text -> new Ref(text, placeOf(key)));
  }

  public LocalDate day(String key) {
    return need(key, recall::day, NO_DAY);
  }

  public Optional<LocalDate> maybeDay(String key) {
    return maybe(key, recall::day);
  }

  public Money money(String key) {
    return need(key, text -> Money.parse(text, currency), Money.zero(currency));
  }

  public Optional<Money> maybeMoney(String key) {
    return maybe(key, text -> Money.parse(text, currency));
  }

  public Optional<Price> maybePrice(String key) {
    return maybe(key, text -> Price.parse(text, currency));
  }

  public Quantity quantity(String key, Unit fallback) {
    return need(key, text -> recall.quantity(text, fallback), Quantity.none(fallback));
  }

  public Optional<Quantity> maybeQuantity(String key, Unit fallback) {
    return maybe(key, text -> recall.quantity(text, fallback));
  }

  /** A quantity of one dimension. */
  public Quantity measure(String key, Unit fallback, Dimension dimension) {
    return need(key, text -> Quantity.parse(text, fallback, dimension), Quantity.none(fallback));
  }

  public Optional<Quantity> maybeMeasure(String key, Unit fallback, Dimension dimension) {
    return maybe(key, text -> Quantity.parse(text, fallback, dimension));
  }

  public BigDecimal number(String key) {
    return need(key, Decimal::parse, BigDecimal.ONE);
  }

  public Optional<BigDecimal> maybeNumber(String key) {
    return maybe(key, Decimal::parse);
  }

  /** A whole number, zero or more. */
  public Optional<Integer> maybeCount(String key) {
    return maybe(key, Fields::count);
  }

  public Optional<Size> maybeSize(String key) {
    return maybe(key, Size::parse);
  }

  /** A share: {@code 60 %} or {@code 0.6}, as a number of 1. */
  public Optional<BigDecimal> maybeShare(String key) {
    return maybe(key, Fields::share);
  }

  /** One word of a closed list, written in kebab-case. */
  public <E extends Enum<E>> E choice(String key, Class<E> words, E standIn) {
    return need(key, text -> oneOf(text, words), standIn);
  }

  public <E extends Enum<E>> Optional<E> maybeChoice(String key, Class<E> words) {
    return maybe(key, text -> oneOf(text, words));
  }

  /** {@code yes}, {@code no}, {@code true} or {@code false}; false where it is not written. */
  public boolean flag(String key) {
    return maybe(key, Fields::yesOrNo).orElse(false);
  }

  /** One value, or {@code [low, likely, high]}. */
  public <T> Optional<ThreePoint<T>> maybeThreePoint(String key, Reading<T> reading) {
    Optional<Node> node = ask(key);
    if (node.isPresent() && node.get() instanceof Node.Listing list) {
      List<T> all = new ArrayList<>();
      list.items().forEach(item -> value(key, item, reading).ifPresent(all::add));
      if (list.items().size() == 3 && all.size() == 3) {
        return Optional.of(new ThreePoint<>(all.get(0), all.get(1), all.get(2)));
      }
      if (list.items().size() != 3) {
        fault(
            "value-unreadable",
            list.at(),
            "“" + key + "” holds " + list.items().size() + " values, not three.",
            "Write one value, or [low, likely, high].");
      }
      return Optional.empty();
    }
    return node.flatMap(found -> value(key, found, reading)).map(ThreePoint::fixed);
  }

  // --- several -----------------------------------------------------------------------------

  /** A list of plain values; one alone may stand without brackets. */
  public <T> List<T> list(String key, Reading<T> reading) {
    List<T> all = new ArrayList<>();
    for (Node item : items(key)) {
      value(key, item, reading).ifPresent(all::add);
    }
    return List.copyOf(all);
  }

  /** A list of ids of other records. */
  public List<Ref> refs(String key) {
    List<Ref> all = new ArrayList<>();
    for (Node item : items(key)) {
      value(key, item, Fields::anId).ifPresent(id -> all.add(new Ref(id, item.at())));
    }
    return List.copyOf(all);
  }

  public <E extends Enum<E>> List<E> choices(String key, Class<E> words) {
    return list(key, text -> oneOf(text, words));
  }

  /** A list of groups of keys; one alone may stand without brackets. */
  public <T> List<T> each(String key, Function<Fields, T> reading) {
    return each(key, reading, "");
  }

  /**
   * A list of groups of keys, where a plain value stands for a group with that one key.
   *
   * @param shorthand the key that a plain value gives; empty where there is none
   */
  public <T> List<T> each(String key, Function<Fields, T> reading, String shorthand) {
    List<T> all = new ArrayList<>();
    for (Node item : items(key)) {
      group(key, item, shorthand).flatMap(g -> inside(g, key, reading)).ifPresent(all::add);
    }
    return List.copyOf(all);
  }

  /** One group of keys. */
  public <T> Optional<T> maybeGroup(String key, Function<Fields, T> reading) {
    return ask(key)
        .flatMap(node -> group(key, node, ""))
        .flatMap(group -> inside(group, key, reading));
  }

  /** A group of keys that must be there; the stand-in is never seen by a sound record. */
  public <T> T group(String key, Function<Fields, T> reading, T standIn) {
    Optional<T> value = maybeGroup(key, reading);
    if (node(key).isEmpty()) {
      missing(key);
    }
    return value.orElse(standIn);
  }

  /** Keys of the user's own choice, each with a plain value, in the order written. */
  public <T> Map<Ref, T> map(String key, Reading<T> reading) {
    Map<Ref, T> all = new LinkedHashMap<>();
    Optional<Node> node = ask(key);
    if (node.isPresent() && node.get() instanceof Node.Mapping inner) {
      for (Node.Entry entry : inner.entries()) {
        value(key, entry.value(), reading)
            .ifPresent(v -> all.put(new Ref(entry.key().text(), entry.key().at()), v));
      }
    } else {
      node.ifPresent(found -> wrongShape(key, found, "a group of keys"));
    }
    return java.util.Collections.unmodifiableMap(all);
  }

  /** Whether the key was written with a value. */
  public boolean has(String key) {
    return node(key).isPresent();
  }

  /** The place of a key's value, of the record where there is none. */
  public Place placeOf(String key) {
    return mapping.get(key).map(Node::at).orElse(mapping.at());
  }

  /** The keys written that nobody asked for so far: for records with keys of a table. */
  public List<String> unasked() {
    return IntStream.range(0, asked.length)
        .filter(i -> !asked[i])
        .mapToObj(i -> mapping.entries().get(i).key().text())
        .toList();
  }

  // --- faults ------------------------------------------------------------------------------

  /** Reports a value that reads well but cannot be. */
  public void fault(String rule, Place at, String what, String mend) {
    sound = false;
    out.add(
        new Finding(
            rule,
            Severity.STOP,
            at,
            what,
            "The " + owner + " is left out of every sum and report.",
            mend,
            records()));
  }

  private void missing(String key) {
    Optional<Node> empty = mapping.get(key);
    fault(
        "key-missing",
        empty.or(() -> mapping.get("id")).map(Node::at).orElse(mapping.at()),
        empty.isPresent()
            ? "“" + key + "” is still empty."
            : sentence((kind.equals(owner) ? "this " + kind : kind) + " has no “" + key + "”"),
        empty.isPresent() ? "Write its value." : "Add “" + key + ": …”.");
  }

  private void wrongShape(String key, Node node, String wanted) {
    if (node instanceof Node.Unreadable) {
      sound = false;
      return;
    }
    fault(
        "value-unreadable",
        node.at(),
        "“" + key + "” is " + node.word() + ", not " + wanted + ".",
        "Write " + wanted + " there; a text with a colon, a comma or brackets needs quotes.");
  }

  /** Reports each key that was never asked for, with the nearest that was. */
  public void finish() {
    List<Node.Entry> entries = mapping.entries();
    for (int i = 0; i < asked.length; i++) {
      if (!asked[i]) {
        Node.Entry entry = entries.get(i);
        Optional<CutText> cut = i == 0 ? Optional.empty() : CutText.of(entries.get(i - 1), entry);
        sound = false;
        out.add(cut.map(text -> text.finding(owner, records())).orElseGet(() -> unknown(entry)));
      }
    }
  }

  private Finding unknown(Node.Entry entry) {
    String key = entry.key().text();
    return new Finding(
        "key-unknown",
        Severity.STOP,
        entry.key().at(),
        (kind.equals(owner) ? "A " + kind : sentence(kind).replaceFirst("\\.$", ""))
            + " has no key “"
            + key
            + "”.",
        "The " + owner + " is left out of every sum and report.",
        Nearest.to(key, known)
            .map(near -> "Did you mean “" + near + "”?")
            .orElse("The keys here are: " + String.join(", ", new TreeSet<>(known)) + "."),
        records());
  }

  private List<String> records() {
    return mapping
        .get("id")
        .filter(Node.Scalar.class::isInstance)
        .map(id -> List.of(owner + " " + ((Node.Scalar) id).text()))
        .orElse(List.of());
  }

  private <T> Optional<T> inside(Node.Mapping group, String key, Function<Fields, T> reading) {
    Fields inner = new Fields(group, "“" + key + "” of a " + owner, owner, currency, recall, out);
    T value = reading.apply(inner);
    inner.finish();
    sound &= inner.sound;
    return inner.sound ? Optional.of(value) : Optional.empty();
  }

  private Optional<Node.Mapping> group(String key, Node node, String shorthand) {
    if (node instanceof Node.Mapping group) {
      return Optional.of(group);
    }
    if (node instanceof Node.Scalar scalar && !shorthand.isEmpty()) {
      Node.Scalar name = Node.Scalar.at(scalar.at(), shorthand);
      return Optional.of(new Node.Mapping(List.of(new Node.Entry(name, scalar)), scalar.at()));
    }
    wrongShape(key, node, "a group of keys");
    return Optional.empty();
  }

  private List<Node> items(String key) {
    Optional<Node> node = ask(key);
    if (node.isEmpty()) {
      return List.of();
    }
    return node.get() instanceof Node.Listing list ? list.items() : List.of(node.get());
  }

  /** The value of a key that is part of the record's form. */
  private Optional<Node> ask(String key) {
    known.add(key);
    int index = indexOf(key);
    if (index < 0) {
      return Optional.empty();
    }
    asked[index] = true;
    return written(mapping.entries().get(index).value());
  }

  private Optional<Node> node(String key) {
    int index = indexOf(key);
    return index < 0 ? Optional.empty() : written(mapping.entries().get(index).value());
  }

  /** Most keys of a form are left out, and the hashes of those written tell so at once. */
  private int indexOf(String key) {
    return (hashes & bit(key)) == 0 ? -1 : mapping.indexOf(key);
  }

  private static long hashes(Node.Mapping mapping) {
    long all = 0;
    for (Node.Entry entry : mapping.entries()) {
      all |= bit(entry.key().text());
    }
    return all;
  }

  private static long bit(String key) {
    return 1L << key.hashCode();
  }

  private static Optional<Node> written(Node node) {
    return node instanceof Node.Scalar scalar && scalar.isEmpty()
        ? Optional.empty()
        : Optional.of(node);
  }

  // --- readings ----------------------------------------------------------------------------

  private static String someText(String text) throws Misread {
    String stripped = text.strip();
    if (stripped.isEmpty()) {
      throw new Misread("the text is empty", "write something, or leave the key out");
    }
    return stripped;
  }

  private static String anId(String text) throws Misread {
    if (text.isBlank() || text.length() > 120) {
      throw new Misread("an id has 1 to 120 characters", "write a short name without spaces");
    }
    boolean odd = false;
    for (int i = 0; i < text.length(); i++) {
      odd |= isOddInId(text.codePointAt(i));
    }
    if (odd) {
      throw new Misread(
          "the id “" + text + "” holds a space, a slash or an invisible character",
          "use letters, digits, full stops and hyphens");
    }
    return text;
  }

  private static boolean isOddInId(int c) {
    return Character.isWhitespace(c)
        || Character.getType(c) == Character.FORMAT
        || Character.isISOControl(c)
        || c == '/'
        || c == '\\';
  }

  private static Integer count(String text) throws Misread {
    if (!text.matches("\\d{1,6}")) {
      throw new Misread("“" + text + "” is not a whole number", "write digits only, such as 4");
    }
    return Integer.valueOf(text);
  }

  private static BigDecimal share(String text) throws Misread {
    return Quantity.parse(text, Unit.ONE, Dimension.RATIO)
        .amount()
        .multiply(text.strip().endsWith("%") ? Unit.PERCENT.factor() : BigDecimal.ONE);
  }

  private static Boolean yesOrNo(String text) throws Misread {
    return switch (text) {
      case "yes", "true" -> true;
      case "no", "false" -> false;
      default -> throw new Misread("“" + text + "” is neither yes nor no", "write yes or no");
    };
  }

  private static <E extends Enum<E>> E oneOf(String text, Class<E> words) throws Misread {
    for (E constant : words.getEnumConstants()) {
      if (constant.name().length() == text.length() && word(constant).equals(text)) {
        return constant;
      }
    }
    List<String> all = Arrays.stream(words.getEnumConstants()).map(Fields::word).toList();
    throw new Misread(
        "“" + text + "” is not one of the words known here",
        Nearest.to(text, all)
            .map(near -> "did you mean “" + near + "”? The words are: " + String.join(", ", all))
            .orElse("use one of: " + String.join(", ", all)));
  }

  /** How a word of a closed list is written in a ledger. */
  public static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String sentence(String text) {
    String start = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    return start.endsWith("?") || start.endsWith(".") ? start : start + ".";
  }
}
