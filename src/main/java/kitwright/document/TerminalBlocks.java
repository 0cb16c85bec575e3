package kitwright.document;

import java.util.ArrayList;
import java.util.List;
import kitwright.finding.Wrapping;
import kitwright.value.ScreenWidth;
import kitwright.value.Visible;

/**
 * Blocks as lines of a terminal: what stands under a heading is set in below it, no line is wider
 * than the terminal unless one word is, and hidden characters are written out.
 */
final class TerminalBlocks implements Block.Cases<Void> {
  private static final int STEP = 2;

  private final List<String> lines = new ArrayList<>();
  private final int width;
  private final boolean tight;
  private int indent;
  private boolean gap;

  /**
   * A writer.
   *
   * @param tight whether no line stays empty between blocks
   */
  private TerminalBlocks(int width, boolean tight) {
    this.width = width;
    this.tight = tight;
  }

  /** The text, each line ended by a line feed. */
  static String text(List<Block> blocks, int width) {
    StringBuilder out = new StringBuilder();
    for (String line : lines(blocks, width, false)) {
      out.append(Visible.line(line).stripTrailing()).append('\n');
    }
    return out.toString();
  }

  /** Words as they are shown: blanks drawn together, hidden characters written out. */
  static String words(List<Inline> parts) {
    return Wording.shown(PlainWords.of(parts)).strip();
  }

  private static List<String> lines(List<Block> blocks, int width, boolean tight) {
    TerminalBlocks writer = new TerminalBlocks(width, tight);
    blocks.forEach(block -> block.match(writer));
    return writer.lines;
  }

  /** Lines with an empty one before them, save right below a heading. */
  private Void put(List<String> block) {
    if (!block.isEmpty()) {
      space();
      block.forEach(line -> lines.add(" ".repeat(indent) + line));
      gap = true;
    }
    return null;
  }

  private void space() {
    if (gap && !tight && !lines.isEmpty()) {
      lines.add("");
    }
  }

  private int room() {
    return Math.max(1, width - indent);
  }

  @Override
  public Void heading(Block.Heading heading) {
    String words = words(heading.text());
    if (!words.isEmpty()) {
      indent = Math.max(0, Math.min(heading.level(), 4) - 2) * STEP;
      gap = true;
      put(Wrapping.at(room(), words));
      gap = heading.level() == 1;
      indent = Math.min(heading.level() - 1, 3) * STEP;
    }
    return null;
  }

  @Override
  public Void paragraph(Block.Paragraph paragraph) {
    List<String> all = new ArrayList<>();
    List<Inline> line = new ArrayList<>();
    for (Inline part : paragraph.text()) {
      if (part instanceof Inline.NewLine) {
        add(line, all);
        line.clear();
      } else {
        line.add(part);
      }
    }
    add(line, all);
    return put(all);
  }

  private void add(List<Inline> line, List<String> lines) {
    String words = words(line);
    if (!words.isEmpty()) {
      lines.addAll(Wrapping.at(room(), words));
    }
  }

  @Override
  public Void code(Block.Code code) {
    return put(code.text().lines().map(Visible::lines).toList());
  }

  @Override
  public Void quote(Block.Quote quote) {
    return put(set("| ", "| ", quote.blocks(), false));
  }

  @Override
  public Void rule() {
    return put(List.of("-".repeat(Math.min(room(), 40))));
  }

  @Override
  public Void table(Table table) {
    return put(TerminalTable.lines(table, room()));
  }

  @Override
  public Void prose(Prose prose) {
    int before = indent;
    new ReadMarkdown().blocks(prose.tree()).forEach(block -> block.match(this));
    indent = before;
    return null;
  }

  @Override
  public Void items(Items items) {
    int number = 1;
    for (List<Block> item : items.items()) {
      String mark = items.kind() == Items.Kind.DOTS ? "- " : number++ + ". ";
      List<String> lines = set(mark, " ".repeat(ScreenWidth.of(mark)), item, items.isTight());
      boolean first = item.equals(items.items().get(0));
      gap = gap && (first || !items.isTight());
      put(lines);
    }
    return null;
  }

  /** Blocks behind a mark, their further lines behind another of the same width. */
  private List<String> set(String mark, String further, List<Block> blocks, boolean tight) {
    List<String> inner = lines(blocks, Math.max(1, room() - mark.length()), tight);
    List<String> out = new ArrayList<>();
    for (String line : inner) {
      out.add((out.isEmpty() ? mark : further) + line);
    }
    return out;
  }
}
