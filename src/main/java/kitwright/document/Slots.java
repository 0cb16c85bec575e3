package kitwright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.commonmark.node.Code;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;

/**
 * What a document says, by name: sentences, which stand anywhere in a line, and blocks, which stand
 * on lines of their own. A template arranges them; as JSON they are one object, in this order. A
 * slot that says nothing counts as absent in {@code {{#name}}} and {@code {{^name}}}.
 */
public final class Slots {
  private static final String LACKS = "lacks";

  private final Map<String, Slot> slots;

  /**
   * What stands in a slot.
   *
   * @param sentence words or a value, where it is one
   * @param blocks what is shown, where it is none
   * @param meant what other programs read, where that is not simply the blocks one after the other
   */
  record Slot(Optional<Cell> sentence, List<Block> blocks, Optional<Value> meant) {}

  private Slots(Map<String, Slot> slots) {
    this.slots = slots;
  }

  /** No slot yet. */
  public static Slots none() {
    return new Slots(Map.of());
  }

  /** These and a sentence: words of a ledger or of the program, which come out escaped. */
  public Slots sentence(String name, String words) {
    return value(name, Cell.text(words));
  }

  /**
   * These, and before them what all of it lacks: shown below the first heading whatever the
   * template says, and first of all for other programs.
   */
  public Slots lacking(String words) {
    Map<String, Slot> more = new LinkedHashMap<>();
    more.put(LACKS, new Slot(Optional.of(Cell.text(words)), List.of(), Optional.empty()));
    more.putAll(slots);
    return new Slots(more);
  }

  /** What it lacks, as a paragraph of Markdown; empty where nothing is said to be lacking. */
  Optional<String> lacks() {
    return slots.containsKey(LACKS) ? Optional.of(markdown(LACKS)) : Optional.empty();
  }

  /** These and a value within a sentence: shown one way, meant for other programs another. */
  public Slots value(String name, Cell value) {
    return with(name, new Slot(Optional.of(value), List.of(), Optional.empty()));
  }

  /** These and blocks; other programs read a list of what each says. */
  public Slots block(String name, Block... blocks) {
    return with(name, new Slot(Optional.empty(), List.of(blocks), Optional.empty()));
  }

  /** These and a table; one without rows says nothing, and other programs read an empty list. */
  public Slots table(String name, Table table) {
    return table(name, table, table.rows().isEmpty() ? List.of() : List.of(table));
  }

  /** These and a table that people are shown in another form: in parts, or with a word to it. */
  public Slots table(String name, Table meant, List<Block> shown) {
    return block(name, new Value.Rows(meant), shown);
  }

  /** These and blocks, which mean something else for other programs than one after the other. */
  public Slots block(String name, Value meant, List<Block> shown) {
    return with(name, new Slot(Optional.empty(), List.copyOf(shown), Optional.of(meant)));
  }

  /** These and a list; one without items says nothing. */
  public Slots list(String name, List<? extends Inline> items) {
    return list(name, items, items);
  }

  /** These and a list of which people are shown less than other programs read. */
  public Slots list(String name, List<? extends Inline> meant, List<? extends Inline> shown) {
    List<Value> words = new ArrayList<>();
    meant.forEach(item -> words.add(new Value.Text(TerminalBlocks.words(List.of(item)))));
    return block(
        name,
        new Value.Several(words),
        shown.isEmpty() ? List.of() : List.of(Block.bullets(shown)));
  }

  /**
   * These and a list of sentences with the values that they tell; one without items says nothing.
   */
  public Slots said(String name, List<Cell> items) {
    List<Inline> shown = items.stream().map(Cell::shown).toList();
    return block(
        name,
        new Value.Several(items.stream().map(Cell::value).toList()),
        shown.isEmpty() ? List.of() : List.of(Block.bullets(shown)));
  }

  /** As JSON: one object, by the names of the slots and in their order. */
  public String json() {
    return JsonBlocks.of(this);
  }

  /** The names, in alphabetical order. */
  Set<String> names() {
    return new TreeSet<>(slots.keySet());
  }

  Map<String, Slot> all() {
    return slots;
  }

  private Slot slot(String name) {
    return Optional.ofNullable(slots.get(name))
        .orElseThrow(() -> new IllegalArgumentException("no slot " + name));
  }

  boolean isSentence(String name) {
    return slot(name).sentence().isPresent();
  }

  List<Block> blocks(String name) {
    return slot(name).blocks();
  }

  /** Whether a slot says anything. */
  boolean speaks(String name) {
    Slot slot = slot(name);
    return slot.sentence().isPresent()
        ? !TerminalBlocks.words(List.of(slot.sentence().get().shown())).isEmpty()
        : slot.blocks().stream().anyMatch(Speaking::is);
  }

  /** A slot as Markdown. */
  String markdown(String name) {
    Slot slot = slot(name);
    return slot.sentence().isPresent()
        ? escaped(slot.sentence().get().shown())
        : MarkdownText.of(MarkdownBlocks.tree(slot.blocks())).stripTrailing();
  }

  private Slots with(String name, Slot slot) {
    if (!Template.isName(name)) {
      throw new IllegalArgumentException("a slot’s name is kebab-case: " + name);
    }
    Map<String, Slot> more = new LinkedHashMap<>(slots);
    more.put(name, slot);
    return new Slots(more);
  }

  /** Escaped for wherever a template may put it: at a line's start, in a heading, in a cell. */
  private static String escaped(Inline words) {
    var line = new Paragraph();
    Flow.append(line, List.of(words), Flow.Breaks.AS_STROKES);
    StringBuilder escaped = new StringBuilder();
    for (Node node : Flow.children(line)) {
      escaped.append(
          node instanceof Code code
              ? "`" + code.getLiteral() + "`"
              : Escape.inHeading(Escape.text(literal(node), Escape.Where.WITHIN_LINE)));
    }
    return Escape.atLineStart(escaped.toString());
  }

  private static String literal(Node node) {
    return node instanceof Text text ? text.getLiteral() : EveryText.words(node);
  }
}
