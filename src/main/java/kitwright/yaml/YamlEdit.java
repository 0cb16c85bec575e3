package kitwright.yaml;

import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * Changes one value in a text of YAML and leaves every other byte as it is: comments, order,
 * quotes, line ends and indentation. It goes by the marks of the library's nodes; nothing is
 * written anew. What it cannot change so is refused, by an empty answer.
 */
public final class YamlEdit {
  private final String text;
  private final MappingNode record;

  private YamlEdit(String text, MappingNode record) {
    this.text = text;
    this.record = record;
  }

  /**
   * The record below a top key whose key has a value: {@code id: keel}.
   *
   * @return empty where it does not stand there once, or the text cannot be edited by marks
   */
  public static Optional<YamlEdit> record(String text, String top, String idKey, String id) {
    return root(text)
        .flatMap(root -> value(root, top))
        .flatMap(value -> one(value, idKey, id))
        .map(record -> new YamlEdit(text, record));
  }

  /** The one record below a top key, or, where none is named, of the whole text. */
  public static Optional<YamlEdit> whole(String text, String top) {
    Optional<MappingNode> root = root(text);
    return (top.isEmpty() ? root : root.flatMap(r -> value(r, top)).flatMap(YamlEdit::mapping))
        .map(record -> new YamlEdit(text, record));
  }

  private static Optional<MappingNode> root(String text) {
    if (text.codePoints().anyMatch(c -> c == '\u0085' || c == '\u2028' || c == '\u2029')) {
      return Optional.empty(); // line breaks to the library, but to no editor
    }
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    options.setMaxAliasesForCollections(0);
    try {
      Composer composer =
          new Composer(new ParserImpl(new StreamReader(text), options), new Resolver(), options);
      return mapping(composer.getSingleNode());
    } catch (YAMLException | IndexOutOfBoundsException broken) {
      return Optional.empty();
    }
  }

  private static Optional<MappingNode> mapping(Node node) {
    return node instanceof MappingNode mapping ? Optional.of(mapping) : Optional.empty();
  }

  private static Optional<Node> value(MappingNode mapping, String key) {
    return tuple(mapping, key).map(NodeTuple::getValueNode);
  }

  private static Optional<NodeTuple> tuple(MappingNode mapping, String key) {
    return mapping.getValue().stream()
        .filter(each -> each.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key))
        .findFirst();
  }

  private static Optional<MappingNode> one(Node value, String idKey, String id) {
    List<Node> all = value instanceof SequenceNode list ? list.getValue() : List.of(value);
    List<MappingNode> found =
        all.stream()
            .filter(MappingNode.class::isInstance)
            .map(MappingNode.class::cast)
            .filter(
                each ->
                    value(each, idKey)
                        .filter(name -> name instanceof ScalarNode n && n.getValue().equals(id))
                        .isPresent())
            .toList();
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  /** The group that a key holds; empty where it holds none. */
  public Optional<YamlEdit> inner(String key) {
    return value(record, key).flatMap(YamlEdit::mapping).map(group -> new YamlEdit(text, group));
  }

  /** The one group of a list whose key has a value. */
  public Optional<YamlEdit> item(String list, String idKey, String id) {
    return value(record, list)
        .flatMap(all -> one(all, idKey, id))
        .map(group -> new YamlEdit(text, group));
  }

  /** The text with a plain value of a list written out as a group: {@code {shortage: s1}}. */
  public Optional<String> writtenOut(String list, String idKey, String id) {
    return value(record, list)
        .flatMap(
            all ->
                (all instanceof SequenceNode items ? items.getValue() : List.of(all))
                    .stream()
                        .filter(each -> each instanceof ScalarNode s && s.getValue().equals(id))
                        .findFirst())
        .map(
            node -> {
              String plain = text.substring(start(node), end(node));
              return spliced(start(node), end(node), "{" + idKey + ": " + plain + "}");
            });
  }

  /** Whether the key stands there with a value. */
  public boolean has(String key) {
    return value(record, key).filter(node -> !isEmpty(node)).isPresent();
  }

  /**
   * The text with a key set to a value.
   *
   * @param written the value as YAML, on one line
   * @return empty where a value of several lines stands there
   */
  public Optional<String> set(String key, String written) {
    Optional<Node> old = value(record, key);
    if (old.isEmpty()) {
      return added(key, written);
    }
    if (isEmpty(old.get())) {
      int at = start(old.get());
      return Optional.of(spliced(at, at, " " + written));
    }
    boolean whole =
        old.get() instanceof ScalarNode scalar
            ? scalar.getStartMark().getLine() == scalar.getEndMark().getLine()
            : isFlow(old.get());
    return whole
        ? Optional.of(spliced(start(old.get()), end(old.get()), written))
        : Optional.empty();
  }

  /**
   * The text with one more item in a list.
   *
   * @param written the item as YAML, on one line
   */
  public Optional<String> add(String key, String written) {
    Optional<Node> old = value(record, key).filter(node -> !isEmpty(node));
    if (old.isEmpty()) {
      return set(key, "[" + written + "]");
    }
    if (!(old.get() instanceof SequenceNode list)) {
      int from = start(old.get());
      int to = end(old.get());
      boolean oneLine = isFlow(old.get()) || old.get() instanceof ScalarNode;
      return oneLine
          ? Optional.of(spliced(from, to, "[" + text.substring(from, to) + ", " + written + "]"))
          : Optional.empty();
    }
    if (list.getValue().isEmpty()) {
      return Optional.of(spliced(start(list), end(list), "[" + written + "]"));
    }
    Node last = list.getValue().get(list.getValue().size() - 1);
    return isFlow(list)
        ? Optional.of(spliced(end(last), end(last), ", " + written))
        : below(last, column(list) + "- " + written);
  }

  private Optional<String> added(String key, String written) {
    List<NodeTuple> entries = record.getValue();
    if (entries.isEmpty()) {
      return Optional.of(spliced(start(record), end(record), "{" + key + ": " + written + "}"));
    }
    Node last = entries.get(entries.size() - 1).getValueNode();
    if (isFlow(record)) {
      int at = end(last);
      return Optional.of(spliced(at, at, ", " + key + ": " + written));
    }
    return below(last, column(entries.get(0).getKeyNode()) + key + ": " + written);
  }

  /** A new line below the one on which a node ends; behind a comment on that line. */
  private Optional<String> below(Node last, String line) {
    Node leaf = leaf(last);
    int at = end(leaf);
    boolean startsLine = at > 0 && (text.charAt(at - 1) == '\n' || text.charAt(at - 1) == '\r');
    if (startsLine && !isEmpty(leaf)) {
      return Optional.of(spliced(at, at, line + lineEnd())); // behind a text of several lines
    }
    int close = at;
    while (close < text.length() && text.charAt(close) != '\n' && text.charAt(close) != '\r') {
      close++;
    }
    return Optional.of(spliced(close, close, lineEnd() + line));
  }

  /** The last thing that is written of a node: the ends of block lists lie further down. */
  private static Node leaf(Node node) {
    if (node instanceof MappingNode mapping && !isFlow(node) && !mapping.getValue().isEmpty()) {
      return leaf(mapping.getValue().get(mapping.getValue().size() - 1).getValueNode());
    }
    if (node instanceof SequenceNode list && !isFlow(node) && !list.getValue().isEmpty()) {
      return leaf(list.getValue().get(list.getValue().size() - 1));
    }
    return node;
  }

  /** What stands before a node on its line, as spaces: its column. */
  private String column(Node node) {
    return " ".repeat(node.getStartMark().getColumn());
  }

  private String lineEnd() {
    int feed = text.indexOf('\n');
    return feed > 0 && text.charAt(feed - 1) == '\r' ? "\r\n" : "\n";
  }

  private static boolean isEmpty(Node node) {
    return node instanceof ScalarNode scalar
        && scalar.isPlain()
        && scalar.getStartMark().getIndex() == scalar.getEndMark().getIndex();
  }

  private static boolean isFlow(Node node) {
    return node instanceof MappingNode mapping
        ? mapping.getFlowStyle() == FlowStyle.FLOW
        : node instanceof SequenceNode list && list.getFlowStyle() == FlowStyle.FLOW;
  }

  private int start(Node node) {
    return offset(node.getStartMark());
  }

  private int end(Node node) {
    return offset(node.getEndMark());
  }

  private int offset(Mark mark) {
    return text.offsetByCodePoints(0, mark.getIndex());
  }

  private String spliced(int from, int to, String with) {
    return text.substring(0, from) + with + text.substring(to);
  }
}
