package kitwright.edit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Key;
import kitwright.ledger.Keys;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;
import kitwright.ledger.Ledger;
import kitwright.ledger.Meant;
import kitwright.value.Misread;
import kitwright.value.Nearest;

/**
 * What a person answers for a key, as YAML on one line: by the key’s declaration alone. Names of
 * other records must be there; a file of evidence gets its hash; a day that is not said is today.
 */
public final class Answers {
  /** So many names are listed where one is wrong. */
  private static final int FEW = 8;

  private final Ledger ledger;
  private final Keys reader;
  private final String today;
  private final UnaryOperator<String> fromRoot;
  private final Function<List<String>, Map<String, EvidenceFile>> evidence;

  /**
   * @param fromRoot a path as a person gives it, as one from the ledger’s folder
   * @param evidence what stands at such paths
   */
  public Answers(
      Ledger ledger,
      LocalDate today,
      UnaryOperator<String> fromRoot,
      Function<List<String>, Map<String, EvidenceFile>> evidence) {
    this.ledger = ledger;
    this.reader = Keys.ofNoRecord(ledger.build().currency());
    this.today = today.toString();
    this.fromRoot = fromRoot;
    this.evidence = evidence;
  }

  /** The day that is meant where none is said. */
  public String today() {
    return today;
  }

  /**
   * What was answered to one key.
   *
   * @param written its value
   * @param items of a key that holds several, each
   * @param named of a key that holds names, each with its value
   */
  public record Answer(String written, List<String> items, Map<String, String> named) {
    static Answer one(String written) {
      return new Answer(written, List.of(), Map.of());
    }

    /** Several, in brackets. */
    public static Answer several(List<String> items) {
      return new Answer("[" + String.join(", ", items) + "]", items, Map.of());
    }

    /** A group of keys, each as it is written. */
    public static Answer group(Map<String, String> keys) {
      return new Answer("{" + pairs(keys) + "}", List.of(), keys);
    }
  }

  /**
   * The answers to one key as its value.
   *
   * @param texts one, or several where the key holds several
   * @throws Misread with what is wrong and how to mend it
   */
  public Answer answer(Key key, List<String> texts) throws Misread {
    String first = texts.get(0).strip();
    return switch (key.form()) {
      case ONE -> Answer.one(one(key, first));
      case RANGE -> Answer.one(range(key, first));
      case NAMED ->
          isBracketed(first)
              ? Answer.one(NewRecord.written(first))
              : Answer.group(named(key, texts));
      case GROUP -> Answer.one(group(key, first));
      case LIST, GROUPS ->
          first.startsWith("[") && isBracketed(first)
              ? Answer.one(NewRecord.written(first))
              : Answer.several(items(key, texts));
    };
  }

  private List<String> items(Key key, List<String> texts) throws Misread {
    List<String> all = new ArrayList<>();
    for (String text : texts) {
      if (key.form() == Key.Form.GROUPS) {
        all.add(group(key, text.strip()));
      } else {
        for (String part : parts(text)) {
          all.add(one(key, part));
        }
      }
    }
    return all;
  }

  private Map<String, String> named(Key key, List<String> texts) throws Misread {
    Map<String, String> all = new LinkedHashMap<>();
    for (String text : texts) {
      for (String part : parts(text)) {
        int equals = part.indexOf('=');
        if (equals < 1) {
          throw new Misread("“" + part + "” says no value", "write NAME=VALUE");
        }
        String name = part.substring(0, equals).strip();
        if (!key.kinds().isEmpty()) {
          requireThere(key, name);
        }
        String value = part.substring(equals + 1).strip();
        key.requireReads(value, reader);
        all.put(Scalar.of(name), Scalar.of(value));
      }
    }
    return all;
  }

  private String one(Key key, String text) throws Misread {
    if (!key.kinds().isEmpty()) {
      requireThere(key, text);
    }
    key.requireReads(text, reader);
    return Scalar.of(text);
  }

  private void requireThere(Key key, String id) throws Misread {
    List<String> known = new ArrayList<>();
    for (Kind kind : key.kinds()) {
      if (ledger.knows(kind, id)) {
        return;
      }
      known.addAll(ledger.ids(kind));
    }
    String kind = key.kinds().get(0).word();
    throw new Misread(
        "there is no " + kind + " “" + id + "”",
        Nearest.to(id, known)
            .map(near -> "did you mean “" + near + "”?")
            .orElse(
                (known.isEmpty() || known.size() > FEW
                        ? ""
                        : "name one of: " + String.join(", ", known) + "; or ")
                    + "“kitwright new "
                    + kind.replace(' ', '-')
                    + "” begins one"));
  }

  private String range(Key key, String text) throws Misread {
    List<String> all = new ArrayList<>();
    for (String part : parts(text)) {
      all.add(one(key, part));
    }
    if (all.size() != 1 && all.size() != 3) {
      throw new Misread("“" + text + "” is no range", "write one, or low,likely,high");
    }
    return all.size() == 1 ? all.get(0) : "[" + String.join(", ", all) + "]";
  }

  private String group(Key key, String text) throws Misread {
    if (isBracketed(text)) {
      return NewRecord.written(text);
    }
    Layout inner = key.inner().orElseThrow();
    Map<String, String> said = said(key, inner, text);
    Map<String, String> written = new LinkedHashMap<>();
    for (Key each : inner.keys()) {
      if (said.containsKey(each.name())) {
        Answer answer = answer(each, List.of(said.getOrDefault(each.name(), "")));
        written.put(each.name(), answer.written());
      } else if (each.needed() && each.isHappened()) {
        written.put(each.name(), today);
      } else if (each.needed()) {
        throw new Misread(
            "“" + text + "” says no “" + each.name() + "”", "write “" + example(key) + "”");
      }
    }
    hash(inner, said, written);
    return "{" + pairs(written) + "}";
  }

  /** {@code item=plank,qty=4 each}; the first may stand for a key alone. */
  private static Map<String, String> said(Key key, Layout inner, String text) throws Misread {
    Map<String, String> said = new LinkedHashMap<>();
    List<String> names = inner.keys().stream().map(Key::name).toList();
    String last = "";
    for (String part : parts(text)) {
      int equals = part.indexOf('=');
      String name = equals < 1 ? "" : part.substring(0, equals).strip();
      if (names.contains(name)) {
        said.put(name, part.substring(equals + 1).strip());
        last = name;
      } else if (!last.isEmpty() && name.isEmpty()) {
        said.merge(last, ", " + part, String::concat); // a comma within a text
      } else if (said.isEmpty() && name.isEmpty() && !key.shorthand().isEmpty()) {
        last = key.shorthand();
        said.put(last, part);
      } else {
        throw new Misread(
            "“" + part + "” says no key of “" + key.name() + "”",
            Meant.by(name, names)
                .map(near -> "did you mean “" + near + "=…”?")
                .orElse("write such as “" + example(key) + "”"));
      }
    }
    return said;
  }

  /** How the answer to a group is written on one line. */
  public static String example(Key key) {
    String brackets = KeyWords.example(key);
    return brackets.replaceAll("^[\\[{]+|[\\]}]+$", "").replace(": ", "=").replace(", ", ",");
  }

  private void hash(Layout inner, Map<String, String> said, Map<String, String> written)
      throws Misread {
    for (Key key : inner.keys()) {
      if (key.isFile() && said.containsKey(key.name())) {
        String path = fromRoot.apply(said.getOrDefault(key.name(), ""));
        Optional<String> sha =
            Optional.ofNullable(evidence.apply(List.of(path)).get(path))
                .flatMap(EvidenceFile::sha256);
        if (sha.isEmpty()) {
          throw new Misread(
              "there is no file “" + path + "” in the ledger’s folder",
              "copy it there first, such as into “evidence”, and name it from there");
        }
        written.put(key.name(), Scalar.of(path));
        written.putIfAbsent("sha256", sha.get());
      }
    }
  }

  private static String pairs(Map<String, String> values) {
    return values.entrySet().stream()
        .map(each -> each.getKey() + ": " + each.getValue())
        .collect(Collectors.joining(", "));
  }

  /** Split at commas; those within brackets or quotes part nothing. */
  private static List<String> parts(String text) {
    List<String> all = new ArrayList<>();
    int depth = 0;
    boolean quoted = false;
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      quoted ^= c == '"';
      depth += c == '[' || c == '{' ? 1 : c == ']' || c == '}' ? -1 : 0;
      if (c == ',' && depth == 0 && !quoted) {
        all.add(text.substring(from, i).strip());
        from = i + 1;
      }
    }
    all.add(text.substring(from).strip());
    all.removeIf(String::isEmpty);
    return all;
  }

  private static boolean isBracketed(String text) {
    return (text.startsWith("[") && text.endsWith("]"))
        || (text.startsWith("{") && text.endsWith("}"));
  }
}
