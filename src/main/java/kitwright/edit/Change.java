package kitwright.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Entry;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;
import kitwright.ledger.Layouts;
import kitwright.ledger.Meant;
import kitwright.ledger.SourceFile;
import kitwright.value.Misread;
import kitwright.yaml.YamlEdit;

/**
 * A change of one record’s keys, with the smallest difference: outside of what is set, its file
 * stays byte for byte as it is.
 *
 * @param set keys with what they shall hold, as YAML on one line
 * @param added keys of lists with what goes behind the rest, as YAML on one line
 * @param named keys that hold names of the user’s own, each with its names and their values
 * @param line the group of a list that the keys are of; empty where they are the record’s own
 */
public record Change(
    Map<String, String> set,
    Map<String, List<String>> added,
    Map<String, Map<String, String>> named,
    Optional<Line> line) {
  /**
   * A group of a list, by the key that names it: {@code shortages}, {@code shortage}, {@code s1}.
   */
  public record Line(String list, String key, String id) {}

  public Change {
    set = new LinkedHashMap<>(set);
    added = new LinkedHashMap<>(added);
    named = new LinkedHashMap<>(named);
  }

  /** Sets keys, and adds to lists. */
  public Change(Map<String, String> set, Map<String, List<String>> added) {
    this(set, added, Map.of(), Optional.empty());
  }

  /** Sets keys only. */
  public static Change of(Map<String, String> set) {
    return new Change(set, Map.of());
  }

  /** Sets a key, and nothing else. */
  public static Change of(String key, String written) {
    return of(Map.of(key, written));
  }

  /** Adds to a list, and nothing else. */
  public static Change adding(String list, String written) {
    return new Change(Map.of(), Map.of(list, List.of(written)));
  }

  /** The same, of a group of a list. */
  public Change in(Line group) {
    return new Change(set, added, named, Optional.of(group));
  }

  /**
   * Refuses a key that the kind does not have.
   *
   * @throws Misread with the nearest that it has
   */
  public void requireKnown(Kind kind) throws Misread {
    if (line.isPresent()) {
      return;
    }
    List<String> known = new Layouts().of(kind).keys().stream().map(Key::name).toList();
    for (String key : Stream.concat(set.keySet().stream(), added.keySet().stream()).toList()) {
      if (!known.contains(key)) {
        throw new Misread(
            "a " + kind.word() + " has no key “" + key + "”",
            within(key, kind)
                .or(() -> Meant.by(key, known).map(near -> "did you mean “" + near + "”?"))
                .or(() -> elsewhere(key))
                .orElse("use one of: " + String.join(", ", known)));
      }
    }
  }

  /** Where a group of keys of the kind has it: {@code “length” stands within “uses”}. */
  private static Optional<String> within(String key, Kind kind) {
    return new Layouts()
        .of(kind).keys().stream()
            .filter(each -> each.inner().filter(inner -> has(inner, key)).isPresent())
            .findFirst()
            .map(each -> "“" + key + "” stands within “" + each.name() + "”: " + how(each, key));
  }

  private static String how(Key group, String key) {
    return group.form() == Key.Form.GROUPS
        ? "add one with “" + group.name() + "+={…, " + key + ": …}”, or change one by hand"
        : "write all of it, “" + group.name() + "={…, " + key + ": …}”";
  }

  /** Which other kinds have it. */
  private static Optional<String> elsewhere(String key) {
    Layouts layouts = new Layouts();
    List<String> kinds =
        Stream.of(Kind.values())
            .filter(kind -> has(layouts.of(kind), key))
            .map(kind -> "a " + kind.word())
            .toList();
    return kinds.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "it is a key of " + String.join(", ", kinds) + "; “kitwright keys” shows them all");
  }

  private static boolean has(Layout layout, String key) {
    return layout.keys().stream().anyMatch(each -> each.name().equals(key));
  }

  /** The text of the record’s file with the change; empty where it must be made by hand. */
  public Optional<String> in(SourceFile file, Entry entry) {
    return entry.kind() == Kind.LOG
        ? inLog(file.text())
        : made(file.text(), new Finder(entry.kind(), entry.id()));
  }

  private Optional<String> made(String text, Finder finder) {
    Optional<String> now = Optional.of(text);
    if (line.isPresent()) {
      now = now.flatMap(t -> finder.in(t).map(e -> writtenOut(e, t)));
    }
    for (Map.Entry<String, String> each : set.entrySet()) {
      now = now.flatMap(t -> at(t, finder)).flatMap(e -> e.set(each.getKey(), each.getValue()));
    }
    for (Map.Entry<String, List<String>> each : added.entrySet()) {
      for (String item : each.getValue()) {
        now = now.flatMap(t -> at(t, finder)).flatMap(e -> e.add(each.getKey(), item));
      }
    }
    for (Map.Entry<String, Map<String, String>> each : named.entrySet()) {
      for (Map.Entry<String, String> name : each.getValue().entrySet()) {
        now =
            now.flatMap(t -> at(t, finder))
                .flatMap(e -> named(e, each.getKey(), name.getKey(), name.getValue()));
      }
    }
    return now;
  }

  private String writtenOut(YamlEdit edit, String text) {
    return line.flatMap(group -> edit.writtenOut(group.list(), group.key(), group.id()))
        .orElse(text);
  }

  private Optional<YamlEdit> at(String text, Finder finder) {
    return finder
        .in(text)
        .flatMap(
            edit ->
                line.map(group -> edit.item(group.list(), group.key(), group.id()))
                    .orElse(Optional.of(edit)));
  }

  private static Optional<String> named(YamlEdit edit, String key, String name, String value) {
    return edit.has(key)
        ? edit.inner(key).flatMap(inner -> inner.set(name, value))
        : edit.set(key, "{" + name + ": " + value + "}");
  }

  /** Finds a record in a text again after each step. */
  private record Finder(Kind kind, String id) {
    Optional<YamlEdit> in(String text) {
      return switch (kind) {
        case BUILD -> YamlEdit.whole(text, Kind.BUILD.key());
        case BUDGET -> YamlEdit.record(text, Kind.BUDGET.key(), "line", id);
        case FORECAST -> YamlEdit.record(text, Kind.FORECAST.key(), "day", id);
        case LOG -> YamlEdit.whole(text, "");
        default -> YamlEdit.record(text, kind.key(), "id", id);
      };
    }
  }

  /** A day’s keys stand between two lines of hyphens. */
  private Optional<String> inLog(String text) {
    int from = text.indexOf('\n') + 1;
    int to = text.indexOf("\n---", from);
    return from == 0 || to < 0
        ? Optional.empty()
        : made(text.substring(from, to + 1), new Finder(Kind.LOG, ""))
            .map(yaml -> text.substring(0, from) + yaml + text.substring(to + 1));
  }

  /** What it does, in one line. */
  public String told() {
    List<String> all = new ArrayList<>();
    line.ifPresent(group -> all.add(group.key() + " " + group.id()));
    set.forEach((key, value) -> all.add(key + ": " + value));
    added.forEach((key, items) -> items.forEach(item -> all.add(key + ": … " + item)));
    named.forEach((key, names) -> names.forEach((n, v) -> all.add(key + ": … " + n + ": " + v)));
    return String.join(", ", all);
  }
}
