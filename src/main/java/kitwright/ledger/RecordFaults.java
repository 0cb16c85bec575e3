package kitwright.ledger;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Misread;
import kitwright.value.Place;
import kitwright.value.Word;
import kitwright.yaml.Node;

/** What is wrong with the form of one record, in a builder's words. */
final class RecordFaults {
  private final Node.Mapping source;
  private final String kind;
  private final String owner;
  private final Findings out;
  private boolean none = true;

  /**
   * @param kind what the group is called: the record's own word, or “key” of a record
   * @param owner what the record is called
   */
  RecordFaults(Node.Mapping source, String kind, String owner, Findings out) {
    this.source = source;
    this.kind = kind;
    this.owner = owner;
    this.out = out;
  }

  /** The faults of a group in it. */
  RecordFaults inside(Node.Mapping group, String key) {
    return new RecordFaults(group, "“" + key + "” of a " + owner, owner, out);
  }

  /** A record is faulty where a group in it is. */
  void also(RecordFaults inner) {
    none &= inner.none;
  }

  boolean areNone() {
    return none;
  }

  void add(String rule, Place at, String what, String mend) {
    none = false;
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

  void misread(Place at, Misread misread) {
    add("value-unreadable", at, sentence(misread.what()), sentence(misread.mend()));
  }

  void missing(String key) {
    Optional<Node> empty = source.get(key);
    add(
        "key-missing",
        empty.or(() -> source.get("id")).map(Node::at).orElse(source.at()),
        empty.isPresent()
            ? "“" + key + "” is still empty."
            : sentence((kind.equals(owner) ? "this " + kind : kind) + " has no “" + key + "”"),
        empty.isPresent() ? "Write its value." : "Add “" + key + ": …”.");
  }

  /** A group is shown by its own keys, those that must be there, or else all of them. */
  void wrongShape(Key key, Node node) {
    List<Key> keys = key.inner().map(Layout::keys).orElse(List.of());
    boolean needed = keys.stream().anyMatch(Key::needed);
    String shown =
        keys.stream()
            .filter(each -> each.needed() || !needed)
            .map(each -> each.name() + ": " + (each.example().isEmpty() ? "…" : each.example()))
            .collect(Collectors.joining(", "));
    wrongShape(key.name(), node, "a group of keys, such as {" + shown + "}");
  }

  void wrongShape(String key, Node node, String wanted) {
    if (node instanceof Node.Unreadable) {
      none = false;
      return;
    }
    add(
        "value-unreadable",
        node.at(),
        "“"
            + key
            + "” is "
            + node.word()
            + ", not "
            + wanted.replaceFirst(", such as .*", "")
            + ".",
        "Write there " + wanted + "; a text with a colon, a comma or brackets needs quotes.");
  }

  void notThree(String key, Node.Listing list) {
    add(
        "value-unreadable",
        list.at(),
        "“" + key + "” holds " + list.items().size() + " values, not three.",
        "Write one value, or [low, likely, high].");
  }

  void unknown(Node.Entry entry, Optional<CommaCut> cut, Layout form) {
    none = false;
    out.add(cut.map(text -> text.finding(owner, records())).orElseGet(() -> unknown(entry, form)));
  }

  void cut(CommaCut text) {
    none = false;
    out.add(text.finding(owner, records()));
  }

  private Finding unknown(Node.Entry entry, Layout form) {
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
        Meant.mend(key, form, near -> source.get(near).isPresent()),
        records());
  }

  private List<String> records() {
    return source
        .get("id")
        .filter(Node.Scalar.class::isInstance)
        .map(id -> List.of(owner + " " + ((Node.Scalar) id).text()))
        .orElse(List.of());
  }

  private static String sentence(String text) {
    String start = Word.capital(text);
    return start.endsWith("?") || start.endsWith(".") ? start : start + ".";
  }
}
