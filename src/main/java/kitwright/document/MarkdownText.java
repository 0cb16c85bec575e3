package kitwright.document;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.markdown.MarkdownNodeRendererContext;
import org.commonmark.renderer.markdown.MarkdownNodeRendererFactory;
import org.commonmark.renderer.markdown.MarkdownRenderer;
import org.commonmark.renderer.markdown.MarkdownWriter;

/** A commonmark tree as Markdown, with text and tables written our own way. */
final class MarkdownText {
  private static final MarkdownRenderer RENDERER =
      MarkdownRenderer.builder()
          .nodeRendererFactory(factory(TextWriting::new))
          .nodeRendererFactory(factory(TableWriting::new))
          .extensions(List.of(TablesExtension.create()))
          .build();

  private MarkdownText() {}

  static String of(Node tree) {
    return tree.getFirstChild() == null ? "" : RENDERER.render(tree);
  }

  private static MarkdownNodeRendererFactory factory(
      Function<MarkdownNodeRendererContext, NodeRenderer> renderer) {
    return new MarkdownNodeRendererFactory() {
      @Override
      public NodeRenderer create(MarkdownNodeRendererContext context) {
        return renderer.apply(context);
      }

      @Override
      public Set<Character> getSpecialCharacters() {
        return Set.of();
      }
    };
  }

  /** Stands in for the library's own, which lets a leading plus sign become a list. */
  private static final class TextWriting implements NodeRenderer {
    private final MarkdownWriter writer;

    TextWriting(MarkdownNodeRendererContext context) {
      this.writer = context.getWriter();
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
      return Set.of(Text.class);
    }

    @Override
    public void render(Node node) {
      String literal = ((Text) node).getLiteral();
      if (literal.isEmpty()) {
        return;
      }
      String escaped =
          Escape.text(
              literal, writer.isAtLineStart() ? Escape.Where.LINE_START : Escape.Where.WITHIN_LINE);
      if (node.getParent() instanceof Heading) {
        escaped = Escape.inHeading(escaped);
      }
      boolean readsAsPicture = escaped.endsWith("!") && node.getNext() instanceof Link;
      writer.raw(readsAsPicture ? escaped.substring(0, escaped.length() - 1) + "\\!" : escaped);
    }
  }
}
