package kitwright.edit;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kitwright.finding.PlainJson;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layout;
import kitwright.ledger.Layouts;

/**
 * A JSON Schema (draft 2020-12) of a ledger’s files, for editors and other programs. It says what a
 * file may hold by its form; what hangs on other records, on days or on the calendar is left to the
 * program. Nothing is required of a file, since a ledger is many of them.
 */
public final class KeySchema {
  private final JsonGenerator json;

  /** The definition of each group of keys; groups alike in several records share one. */
  private final IdentityHashMap<Layout, String> names = new IdentityHashMap<>();

  private final Map<String, Layout> groups = new LinkedHashMap<>();
  private final Map<String, String> alike = new HashMap<>();

  private KeySchema(JsonGenerator json) {
    this.json = json;
  }

  /** The schema of every kind; that of a log day’s keys stands among the definitions. */
  public static String text() {
    Layouts layouts = new Layouts();
    Map<String, Layout> all = new LinkedHashMap<>();
    for (Kind kind : Kind.values()) {
      all.put(kind.key(), layouts.of(kind));
    }
    return of(all);
  }

  /** The schema of files whose top keys are these. */
  public static String of(Map<String, Layout> kinds) {
    return PlainJson.of(json -> new KeySchema(json).write(kinds));
  }

  private void name(String path, Layout layout) {
    for (Key key : layout.keys()) {
      if (key.inner().isPresent()) {
        Layout inner = key.inner().get();
        String name = path + "." + key.name();
        String told =
            inner.keys().stream()
                .map(each -> each.name() + "\n" + each.says())
                .collect(Collectors.joining("\n"));
        String known = alike.putIfAbsent(told, name);
        names.put(inner, known == null ? name : known);
        if (known == null) {
          groups.put(name, inner);
        }
        name(name, inner);
      }
    }
  }

  private void write(Map<String, Layout> kinds) throws IOException {
    kinds.forEach(this::name);
    json.writeStartObject();
    json.writeStringField("$schema", "https://json-schema.org/draft/2020-12/schema");
    json.writeStringField("title", "A file of a ledger");
    types("object", "null");
    json.writeObjectFieldStart("properties");
    for (String kind : kinds.keySet()) {
      if (!kind.equals(Kind.LOG.key())) {
        json.writeObjectFieldStart(kind);
        Kind.of(kind).ifPresent(known -> description(known.says()));
        orList(() -> reference(kind), true);
        json.writeEndObject();
      }
    }
    json.writeEndObject();
    json.writeBooleanField("additionalProperties", false);
    json.writeObjectFieldStart("$defs");
    Map<String, Layout> all = new LinkedHashMap<>(kinds);
    all.putAll(groups);
    for (Map.Entry<String, Layout> each : all.entrySet()) {
      json.writeObjectFieldStart(each.getKey());
      record(each.getValue());
      json.writeEndObject();
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  /** Writes some members of an object. */
  private interface Part {
    void write() throws IOException;
  }

  private void reference(String kind) throws IOException {
    json.writeStringField("$ref", "#/$defs/" + kind);
  }

  private void record(Layout layout) throws IOException {
    types("object");
    json.writeObjectFieldStart("properties");
    for (Key key : layout.keys()) {
      json.writeObjectFieldStart(key.name());
      description(KeyWords.says(key) + example(key));
      value(key);
      json.writeEndObject();
    }
    json.writeEndObject();
    List<String> needed = layout.keys().stream().filter(Key::needed).map(Key::name).toList();
    if (!needed.isEmpty()) {
      json.writeArrayFieldStart("required");
      for (String name : needed) {
        json.writeString(name);
      }
      json.writeEndArray();
    }
    json.writeBooleanField("additionalProperties", false);
  }

  private static String example(Key key) {
    String example = KeyWords.example(key);
    return example.isEmpty() ? "" : "; such as " + key.name() + ": " + example;
  }

  private void description(String text) {
    try {
      json.writeStringField("description", text);
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private void value(Key key) throws IOException {
    boolean empty = !key.needed();
    switch (key.form()) {
      case ONE -> one(key, empty);
      case LIST -> orList(() -> one(key, false), empty);
      case RANGE -> range(key, empty);
      case GROUP -> group(key, empty);
      case GROUPS -> orList(() -> groupOrShort(key), empty);
      case NAMED -> named(key);
    }
  }

  /** One, or a list of it; and nothing, where it may be left empty. */
  private void orList(Part one, boolean empty) throws IOException {
    json.writeArrayFieldStart("anyOf");
    object(one);
    object(
        () -> {
          types("array");
          json.writeObjectFieldStart("items");
          one.write();
          json.writeEndObject();
        });
    if (empty) {
      object(() -> types("null"));
    }
    json.writeEndArray();
  }

  private void object(Part body) throws IOException {
    json.writeStartObject();
    body.write();
    json.writeEndObject();
  }

  private void range(Key key, boolean empty) throws IOException {
    json.writeArrayFieldStart("anyOf");
    object(() -> one(key, empty));
    object(
        () -> {
          types("array");
          json.writeObjectFieldStart("items");
          one(key, false);
          json.writeEndObject();
          json.writeNumberField("minItems", 3);
          json.writeNumberField("maxItems", 3);
        });
    json.writeEndArray();
  }

  private void group(Key key, boolean empty) throws IOException {
    if (empty) {
      json.writeArrayFieldStart("anyOf");
      object(() -> reference(key));
      object(() -> types("null"));
      json.writeEndArray();
    } else {
      reference(key);
    }
  }

  private void reference(Key key) throws IOException {
    reference(names.getOrDefault(key.inner().orElseThrow(), ""));
  }

  /** A group, or the plain value that stands for it. */
  private void groupOrShort(Key key) throws IOException {
    if (key.shorthand().isEmpty()) {
      reference(key);
      return;
    }
    json.writeArrayFieldStart("anyOf");
    object(() -> reference(key));
    for (Key plain : key.inner().orElseThrow().keys()) {
      if (plain.name().equals(key.shorthand())) {
        object(() -> one(plain, false));
      }
    }
    json.writeEndArray();
  }

  private void named(Key key) throws IOException {
    types("object", "null");
    json.writeObjectFieldStart("additionalProperties");
    one(key, false);
    json.writeEndObject();
  }

  private void one(Key key, boolean empty) throws IOException {
    if (!key.sort().words().isEmpty()) {
      words(key.sort().words(), empty);
      return;
    }
    List<String> types = new ArrayList<>();
    types.add("string");
    if (key.sort().mayLookLikeNumber()) {
      types.add(key.sort().isWhole() ? "integer" : "number");
      if (key.sort().bare().isEmpty()) {
        types.add("boolean"); // a text, or an id, may be “true”
      }
    }
    if (empty) {
      types.add("null");
    }
    types(types.toArray(String[]::new));
    if (!key.sort().pattern().isEmpty()) {
      json.writeStringField("pattern", key.sort().pattern());
    }
    if (key.sort().mayLookLikeNumber() && key.sort().isNeverNegative()) {
      json.writeNumberField("minimum", 0);
    }
  }

  /** Words; “yes” is one in YAML 1.2, but a truth in 1.1. */
  private void words(List<String> words, boolean empty) throws IOException {
    json.writeArrayFieldStart("enum");
    for (String word : words) {
      json.writeString(word);
    }
    if (words.contains("true")) {
      json.writeBoolean(true);
      json.writeBoolean(false);
    }
    if (empty) {
      json.writeNull();
    }
    json.writeEndArray();
  }

  private void types(String... names) throws IOException {
    if (names.length == 1) {
      json.writeStringField("type", names[0]);
      return;
    }
    json.writeArrayFieldStart("type");
    for (String name : names) {
      json.writeString(name);
    }
    json.writeEndArray();
  }
}
