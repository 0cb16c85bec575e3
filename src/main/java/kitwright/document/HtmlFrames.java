package kitwright.document;

import java.util.Map;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlWriter;

/**
 * A frame round each table of a page, so that it scrolls by itself where the screen is narrower.
 */
final class HtmlFrames implements NodeRenderer {
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
    html.line();
    html.tag("div", Map.of("class", "table"));
    html.tag("table");
    Flow.children(table).forEach(context::render);
    html.tag("/table");
    html.tag("/div");
    html.line();
  }
}
