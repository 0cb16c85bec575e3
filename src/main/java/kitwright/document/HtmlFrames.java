package kitwright.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlWriter;

/**
 * A table of a page in a frame, so that it scrolls by itself where the screen is narrower. One too
 * wide for a telephone is read there as on a narrow terminal: each row as lines of label and value.
 */
final class HtmlFrames implements NodeRenderer {
  /** Letters of a table in a row of 390 px, less the gaps between columns. */
  private static final int TELEPHONE = 46;

  private static final int GAP = 2;

  /** A column of words is read well from so many letters on. */
  private static final int WORDS = 24;

  private final HtmlNodeRendererContext context;
  private final HtmlWriter html;

  HtmlFrames(HtmlNodeRendererContext context) {
    this.context = context;
    this.html = context.getWriter();
  }

  @Override
  public Set<Class<? extends Node>> getNodeTypes() {
    return Set.of(TableBlock.class);
  }

  @Override
  public void render(Node table) {
    List<Node> lines = new ArrayList<>();
    Flow.children(table).forEach(part -> lines.addAll(Flow.children(part)));
    List<String> titles = words(lines.get(0));
    html.line();
    html.tag("div", Map.of("class", isWide(lines, titles.size()) ? "table wide" : "table"));
    html.tag("table");
    html.tag("thead");
    line(lines.get(0), "th", titles);
    html.tag("/thead");
    if (lines.size() > 1) {
      html.tag("tbody");
      lines.stream().skip(1).forEach(line -> line(line, "td", titles));
      html.tag("/tbody");
    }
    html.tag("/table");
    html.tag("/div");
    html.line();
  }

  private static List<String> words(Node line) {
    return Flow.children(line).stream().map(EveryText::words).toList();
  }

  private static boolean isWide(List<Node> lines, int columns) {
    int wide =
        IntStream.range(0, columns)
            .map(
                column ->
                    lines.stream()
                        .map(HtmlFrames::words)
                        .filter(cells -> column < cells.size())
                        .mapToInt(cells -> Math.min(WORDS, cells.get(column).length()))
                        .max()
                        .orElse(0))
            .sum();
    return wide + GAP * (columns - 1) > TELEPHONE;
  }

  private void line(Node line, String tag, List<String> titles) {
    html.line();
    html.tag("tr");
    List<Node> cells = Flow.children(line);
    for (int i = 0; i < cells.size(); i++) {
      html.tag(tag, attributes((TableCell) cells.get(i), tag.equals("td") ? titles.get(i) : ""));
      Flow.children(cells.get(i)).forEach(context::render);
      html.tag("/" + tag);
    }
    html.tag("/tr");
    html.line();
  }

  private static Map<String, String> attributes(TableCell cell, String title) {
    Map<String, String> attributes = new LinkedHashMap<>();
    if (cell.getAlignment() != null) {
      attributes.put("align", cell.getAlignment().name().toLowerCase(Locale.ROOT));
    }
    if (!title.isEmpty()) {
      attributes.put("data-label", title);
    }
    return attributes;
  }
}
