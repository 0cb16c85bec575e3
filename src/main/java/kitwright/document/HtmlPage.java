package kitwright.document;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Unit;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * Markdown as one file for a browser, to be sent on: its pictures are in it, it has no program, and
 * it loads nothing from anywhere, which it also tells the browser to see to (Content Security
 * Policy Level 3, W3C).
 *
 * <p>HTML is passed over, as on a terminal: what a person of the ledger wrote has become words
 * before, so that only a template’s own remark is left.
 */
final class HtmlPage {
  private static final HtmlRenderer RENDERER =
      HtmlRenderer.builder()
          .escapeHtml(true)
          .sanitizeUrls(true)
          .nodeRendererFactory(HtmlFrames::new) // what is named first is asked first
          .nodeRendererFactory(HtmlWords::new)
          .extensions(List.of(TablesExtension.create()))
          .attributeProviderFactory(
              context ->
                  (node, tag, attributes) -> {
                    if (node instanceof Link) {
                      attributes.put("rel", "noopener noreferrer");
                    }
                  })
          .build();

  private static final String PAGE =
      """
      <!DOCTYPE html>
      <html lang="en">
      <head>
      <meta charset="utf-8">
      <meta name="viewport" content="width=device-width, initial-scale=1">
      <meta name="referrer" content="no-referrer">
      <meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">
      <title>%s</title>
      <style>
      %s</style>
      </head>
      <body>
      %s</body>
      </html>
      """;

  private HtmlPage() {}

  /**
   * The page.
   *
   * @param pictures by the name that the Markdown gives them; one that is not here is told in words
   */
  static String of(String markdown, Map<String, byte[]> pictures) {
    Node tree = Prose.parse(markdown);
    tree.accept(new Closed(pictures));
    return PAGE.formatted(title(tree), PageStyle.SHEET, RENDERER.render(tree));
  }

  private static String title(Node tree) {
    List<String> titles = new ArrayList<>();
    tree.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Heading heading) {
            titles.add(PlainWords.of(ReadMarkdown.parts(heading)));
          }
        });
    return titles.isEmpty() ? "" : RENDERER.render(new Text(titles.get(0)));
  }

  /**
   * Puts the pictures in, takes out what leads to other files, and sets words as print has them:
   * boxes to tick, and no line that ends between a number and its unit.
   */
  private static final class Closed extends AbstractVisitor {
    private final Map<String, byte[]> pictures;

    Closed(Map<String, byte[]> pictures) {
      this.pictures = pictures;
    }

    @Override
    public void visit(Text text) {
      boolean isFirst = text.getPrevious() == null && text.getParent().getPrevious() == null;
      boolean begins = isFirst && text.getParent().getParent() instanceof ListItem;
      text.setLiteral(joined(begins ? boxed(text.getLiteral()) : text.getLiteral()));
    }

    /** As in a task list of GitHub Flavored Markdown (section 5.3). */
    private static String boxed(String words) {
      return words.startsWith("[ ] ")
          ? "☐" + words.substring(3)
          : words.matches("(?s)\\[[xX]\\] .*") ? "☑" + words.substring(3) : words;
    }

    private static String joined(String words) {
      StringBuilder out = new StringBuilder();
      String before = "";
      for (String word : words.split(" ", -1)) {
        out.append(Unit.belongsTo(before, word) ? "\u00a0" : " ").append(word);
        before = word;
      }
      return out.substring(1);
    }

    @Override
    public void visit(HtmlBlock html) {
      html.unlink();
    }

    @Override
    public void visit(HtmlInline html) {
      html.unlink();
    }

    @Override
    public void visit(Link link) {
      visitChildren(link);
      if (!link.getDestination().matches("(?i)(?:https?|mailto):.*")) {
        SafeTree.unwrap(link);
      }
    }

    @Override
    public void visit(Image image) {
      visitChildren(image);
      Optional.ofNullable(pictures.get(image.getDestination()))
          .ifPresentOrElse(
              bytes -> image.setDestination(data(image.getDestination(), bytes)),
              () -> SafeTree.unwrap(image));
    }

    private static String data(String name, byte[] bytes) {
      return "data:"
          + (name.endsWith(".svg") ? "image/svg+xml" : "image/jpeg")
          + ";base64,"
          + Base64.getEncoder().encodeToString(bytes);
    }
  }
}
