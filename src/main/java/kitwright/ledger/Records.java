package kitwright.ledger;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Nearest;
import kitwright.yaml.Node;
import kitwright.yaml.Recall;

/** Turns placed values into records of a kind. */
final class Records {
  private final Layouts layouts;
  private final Map<Kind, Layout> known = new EnumMap<>(Kind.class);
  private final Currency currency;
  private final Recall recall;
  private final Ledger.Gathering into;
  private final Findings out;

  Records(Layouts layouts, Currency currency, Recall recall, Ledger.Gathering into, Findings out) {
    this.layouts = layouts;
    this.currency = currency;
    this.recall = recall;
    this.into = into;
    this.out = out;
  }

  /** Takes one record below a top key. */
  void take(Node.Scalar key, Node node) {
    Optional<Kind> kind = Kind.of(key.text());
    if (kind.isEmpty()) {
      out.add(unknownKind(key));
      into.addUnread(Unread.under(key, node));
    } else if (node instanceof Node.Mapping mapping) {
      read(kind.get(), mapping, "");
    } else if (!(node instanceof Node.Unreadable) && !isNothing(node)) {
      out.add(notARecord(kind.get(), node));
      into.addUnread(Unread.under(key, node));
    }
  }

  /** Takes the front matter of a log day. */
  void takeLogDay(Node node, String body) {
    if (node instanceof Node.Mapping mapping) {
      read(Kind.LOG, mapping, body);
    }
  }

  private void read(Kind kind, Node.Mapping mapping, String body) {
    Keys k = Keys.of(layout(kind), mapping, kind.word(), currency, recall, out);
    Entry entry = Layouts.read(kind, k, body);
    k.finish();
    if (k.isSound()) {
      into.add(entry);
      return;
    }
    into.addUnsound(kind, entry.id());
    into.addUnread(Unread.record(kind, entry, mapping));
    if (entry instanceof Build build) {
      into.addFaulty(build);
    }
  }

  /** A record as it read at the end of a day that cuts it; empty where it was not there yet. */
  static Optional<Entry> asOf(LocalDate day, Entry entry, Currency currency) {
    return entry.at().source().flatMap(written -> asOf(day, entry, written, currency));
  }

  private static Optional<Entry> asOf(
      LocalDate day, Entry entry, Node.Mapping written, Currency currency) {
    Kind kind = entry.kind();
    Layout layout = entry.at().layout();
    Keys k = Keys.of(layout, written, kind.word(), currency, new Recall(), new Findings(), day);
    Entry then = Layouts.read(kind, k, entry instanceof LogDay log ? log.body() : "");
    return k.isLater() ? Optional.empty() : Optional.of(then);
  }

  /** Layouts are shared between threads; each thread asks for one once. */
  private Layout layout(Kind kind) {
    return known.computeIfAbsent(kind, layouts::of);
  }

  private static boolean isNothing(Node node) {
    return node instanceof Node.Scalar scalar && scalar.isEmpty();
  }

  private static Finding unknownKind(Node.Scalar key) {
    return new Finding(
        "kind-unknown",
        Severity.STOP,
        key.at(),
        "“" + key.text() + "” names no kind of record.",
        "Nothing below it is read.",
        Meant.by(key.text(), Kind.keys())
            .or(() -> byOne(key.text()))
            .map(near -> "Did you mean “" + near + "”?")
            .or(() -> ofLog(key.text()))
            .orElse("The kinds are: " + String.join(", ", Kind.keys()) + "."),
        List.of());
  }

  /** What tells of a day has a file of its own. */
  private static Optional<String> ofLog(String text) {
    return LOG.contains(text)
        ? Optional.of(
            "A day of the log is a file that ends in .md: its keys stand between two lines of three"
                + " hyphens, the first of them the first line, and your own words below.")
        : Optional.empty();
  }

  private static final Set<String> LOG = Set.of("day", "hours", "used", "photos", "audience");

  /** Some write of one: {@code task}. */
  private static Optional<String> byOne(String text) {
    return Arrays.stream(Kind.values())
        .filter(kind -> Nearest.ofWords(text, List.of(kind.word())).isPresent())
        .map(Kind::key)
        .findFirst();
  }

  private static Finding notARecord(Kind kind, Node node) {
    return new Finding(
        "value-unreadable",
        Severity.STOP,
        node.at(),
        String.format(
            Locale.ROOT,
            "Below “%s” stands %s where a %s should be.",
            kind.key(),
            node.word(),
            kind.word()),
        "It is not read.",
        "Write the record as keys and values, such as {id: …, what: …}.",
        List.of());
  }
}
