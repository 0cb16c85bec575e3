package kitwright.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Entry;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layouts;
import kitwright.ledger.SourceFile;
import kitwright.value.Misread;
import kitwright.value.Nearest;
import kitwright.yaml.YamlEdit;

/**
 * A change of one record’s keys, with the smallest difference: outside of what is set, its file
 * stays byte for byte as it is.
 *
 * @param set keys with what they shall hold, as YAML on one line
 * @param added keys of lists with what goes behind the rest, as YAML on one line
 */
public record Change(Map<String, String> set, Map<String, List<String>> added) {
  public Change {
    set = new LinkedHashMap<>(set);
    added = new LinkedHashMap<>(added);
  }

  /** Sets keys only. */
  public static Change of(Map<String, String> set) {
    return new Change(set, Map.of());
  }

  /**
   * Refuses a key that the kind does not have.
   *
   * @throws Misread with the nearest that it has
   */
  public void requireKnown(Kind kind) throws Misread {
    List<String> known = new Layouts().of(kind).keys().stream().map(Key::name).toList();
    for (String key : Stream.concat(set.keySet().stream(), added.keySet().stream()).toList()) {
      if (!known.contains(key)) {
        throw new Misread(
            "a " + kind.word() + " has no key “" + key + "”",
            Nearest.to(key, known)
                .map(near -> "did you mean “" + near + "”?")
                .orElse("use one of: " + String.join(", ", known)));
      }
    }
  }

  /** The text of the record’s file with the change; empty where it must be made by hand. */
  public Optional<String> in(SourceFile file, Entry entry) {
    return entry.kind() == Kind.LOG ? inLog(file.text()) : inYaml(file.text(), entry);
  }

  private Optional<String> inYaml(String text, Entry entry) {
    Optional<String> now = Optional.of(text);
    for (Map.Entry<String, String> each : set.entrySet()) {
      now =
          now.flatMap(t -> at(t, entry)).flatMap(edit -> edit.set(each.getKey(), each.getValue()));
    }
    for (Map.Entry<String, List<String>> each : added.entrySet()) {
      for (String item : each.getValue()) {
        now = now.flatMap(t -> at(t, entry)).flatMap(edit -> edit.add(each.getKey(), item));
      }
    }
    return now;
  }

  private static Optional<YamlEdit> at(String text, Entry entry) {
    return switch (entry.kind()) {
      case BUILD -> YamlEdit.whole(text, Kind.BUILD.key());
      case BUDGET -> YamlEdit.record(text, Kind.BUDGET.key(), "line", entry.id());
      case FORECAST -> YamlEdit.record(text, Kind.FORECAST.key(), "day", entry.id());
      case LOG -> YamlEdit.whole(text, "");
      default -> YamlEdit.record(text, entry.kind().key(), "id", entry.id());
    };
  }

  /** A day’s keys stand between two lines of hyphens. */
  private Optional<String> inLog(String text) {
    int from = text.indexOf('\n') + 1;
    int to = text.indexOf("\n---", from);
    if (from == 0 || to < 0) {
      return Optional.empty();
    }
    Optional<String> now = Optional.of(text.substring(from, to + 1));
    for (Map.Entry<String, String> each : set.entrySet()) {
      now =
          now.flatMap(t -> YamlEdit.whole(t, ""))
              .flatMap(e -> e.set(each.getKey(), each.getValue()));
    }
    for (Map.Entry<String, List<String>> each : added.entrySet()) {
      for (String item : each.getValue()) {
        now = now.flatMap(t -> YamlEdit.whole(t, "")).flatMap(e -> e.add(each.getKey(), item));
      }
    }
    return now.map(yaml -> text.substring(0, from) + yaml + text.substring(to + 1));
  }
}
