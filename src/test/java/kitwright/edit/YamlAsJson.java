package kitwright.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import kitwright.finding.Findings;
import kitwright.yaml.Node;
import kitwright.yaml.Recall;
import kitwright.yaml.YamlText;

/** A ledger file as the JSON that a validator sees: plain scalars by YAML 1.2.2’s core schema. */
final class YamlAsJson {
  private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

  private YamlAsJson() {}

  static JsonNode of(String yaml) {
    ObjectNode file = MAKE.objectNode();
    YamlText.readOne(
        "x.yaml",
        yaml,
        0,
        new Recall(),
        (key, node) -> file.set(key.text(), json(node)),
        new Findings());
    return file;
  }

  /** What stands between a log day’s lines of hyphens. */
  static JsonNode frontMatter(String markdown) {
    return of(markdown.split("(?m)^---\\s*$\\n?", 3)[1]);
  }

  static JsonNode parsed(String json) {
    try {
      return new ObjectMapper().readTree(json);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static JsonNode json(Node node) {
    if (node instanceof Node.Mapping mapping) {
      ObjectNode object = MAKE.objectNode();
      mapping.entries().forEach(entry -> object.set(entry.key().text(), json(entry.value())));
      return object;
    }
    if (node instanceof Node.Listing list) {
      ArrayNode array = MAKE.arrayNode();
      list.items().forEach(item -> array.add(json(item)));
      return array;
    }
    return node instanceof Node.Scalar scalar ? json(scalar) : MAKE.textNode("unreadable");
  }

  private static JsonNode json(Node.Scalar scalar) {
    String text = scalar.text();
    if (scalar.quoted()) {
      return MAKE.textNode(text);
    }
    if (text.matches("~|null|Null|NULL|")) {
      return MAKE.nullNode();
    }
    if (text.matches("true|True|TRUE|false|False|FALSE")) {
      return MAKE.booleanNode(text.equalsIgnoreCase("true"));
    }
    if (text.matches("[-+]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][-+]?[0-9]{1,3})?")) {
      return MAKE.numberNode(new BigDecimal(text));
    }
    return MAKE.textNode(text);
  }
}
