package kitwright.document;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.commonmark.node.Code;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;

/**
 * What a template may name: sentences, which stand anywhere in a line, and blocks, which stand on
 * lines of their own. One that is empty counts as absent in {@code {{#name}}} and {@code
 * {{^name}}}.
 */
public final class Slots {
  private final Map<String, String> texts;

  private Slots(Map<String, String> texts) {
    this.texts = texts;
  }

  /** No slot yet. */
  public static Slots none() {
    return new Slots(Map.of());
  }

  /** These and a sentence: words of a ledger or of the program, which come out escaped. */
  public Slots sentence(String name, String words) {
    return with(name, escaped(words));
  }

  /** These and blocks. */
  public Slots block(String name, Block... blocks) {
    return with(name, Document.of(blocks).markdown().stripTrailing());
  }

  /** The names, in alphabetical order. */
  Set<String> names() {
    return texts.keySet();
  }

  /** Markdown by name. */
  Map<String, String> texts() {
    return texts;
  }

  private Slots with(String name, String markdown) {
    if (!Tags.isName(name)) {
      throw new IllegalArgumentException("a slot's name is kebab-case: " + name);
    }
    var more = new TreeMap<>(texts);
    more.put(name, markdown);
    return new Slots(Collections.unmodifiableMap(more));
  }

  /** Escaped for wherever a template may put it: at a line's start, in a heading, in a cell. */
  private static String escaped(String words) {
    var line = new Paragraph();
    Flow.append(line, List.of(Inline.text(words)), Flow.Breaks.AS_STROKES);
    String escaped =
        Flow.children(line).stream()
            .map(
                node ->
                    node instanceof Code code
                        ? "`" + code.getLiteral() + "`"
                        : Escape.inHeading(
                            Escape.text(((Text) node).getLiteral(), Escape.Where.WITHIN_LINE)))
            .collect(Collectors.joining());
    return Escape.atLineStart(escaped);
  }
}
