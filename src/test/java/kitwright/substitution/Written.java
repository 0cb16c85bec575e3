package kitwright.substitution;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;

/**
 * A ledger as a tree, written out in one of the many ways that mean the same: keys in another
 * order, other white space, quotes and comments, other files.
 */
final class Written {
  /** A value with another one that could stand there and means something else. */
  record Value(String text, String other) {}

  private final Random dice;

  Written(Random dice) {
    this.dice = dice;
  }

  /** Records as written by different hands: files by path. */
  Map<String, String> files(Map<String, List<Map<String, Object>>> kinds) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("build.yaml", "build: {name: Sample, currency: EUR, started: 2026-01-05}\n");
    List<String> names = new ArrayList<>(kinds.keySet());
    Collections.shuffle(names, dice);
    for (String kind : names) {
      List<Map<String, Object>> records = new ArrayList<>(kinds.get(kind));
      Collections.shuffle(records, dice);
      for (Map<String, Object> record : records) {
        String path = "folder-" + dice.nextInt(3) + "/" + dice.nextInt() + ".yaml";
        files.put(path, comment() + kind + ":" + comment() + "\n" + record(record));
      }
    }
    return files;
  }

  private String record(Map<String, Object> record) {
    if (dice.nextBoolean()) {
      return "  - " + flow(record) + comment() + "\n";
    }
    String indent = "  - ";
    StringBuilder out = new StringBuilder();
    for (Map.Entry<String, Object> entry : shuffled(record)) {
      out.append(indent).append(entry.getKey()).append(": ");
      out.append(flow(entry.getValue())).append(comment());
      out.append('\n');
      indent = "    ";
    }
    return out.toString();
  }

  private String flow(Object node) {
    if (node instanceof Map<?, ?> map) {
      return map.isEmpty()
          ? "{}"
          : shuffled(map).stream()
              .map(entry -> entry.getKey() + ":" + space() + flow(entry.getValue()))
              .collect(Collectors.joining("," + space(), "{" + blank(), blank() + "}"));
    }
    if (node instanceof List<?> list) {
      return list.stream()
          .map(this::flow)
          .collect(Collectors.joining("," + space(), "[" + blank(), blank() + "]"));
    }
    return scalar(((Value) node).text());
  }

  private String scalar(String text) {
    String spaced = text.contains(" ") ? text.replace(" ", space()) : text;
    return switch (dice.nextInt(3)) {
      case 0 -> "\"" + spaced + "\"";
      case 1 -> "'" + spaced + "'";
      default -> spaced;
    };
  }

  private List<Map.Entry<String, Object>> shuffled(Map<?, ?> map) {
    List<Map.Entry<String, Object>> entries = new ArrayList<>();
    map.forEach((key, value) -> entries.add(Map.entry((String) key, value)));
    Collections.shuffle(entries, dice);
    return entries;
  }

  private String space() {
    return " ".repeat(1 + dice.nextInt(3));
  }

  private String blank() {
    return " ".repeat(dice.nextInt(2));
  }

  private String comment() {
    return dice.nextInt(3) == 0 ? " # remark " + dice.nextInt(100) + "\n" : "\n";
  }

  /** All values of a tree, in order. */
  static List<Value> values(Object node) {
    List<Value> all = new ArrayList<>();
    if (node instanceof Map<?, ?> map) {
      map.values().forEach(each -> all.addAll(values(each)));
    } else if (node instanceof List<?> list) {
      list.forEach(each -> all.addAll(values(each)));
    } else {
      all.add((Value) node);
    }
    return all;
  }

  /** The tree with one value, told by identity, replaced by its other. */
  static Object changed(Object node, Value which) {
    if (node instanceof Map<?, ?> map) {
      Map<String, Object> copy = new LinkedHashMap<>();
      map.forEach((key, each) -> copy.put((String) key, changed(each, which)));
      return copy;
    }
    if (node instanceof List<?> list) {
      return list.stream().map(each -> changed(each, which)).collect(Collectors.toList());
    }
    return node == which ? new Value(/* text= */ which.other(), /* other= */ which.text()) : node;
  }
}
