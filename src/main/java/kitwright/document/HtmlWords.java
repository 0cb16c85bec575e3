package kitwright.document;

import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlWriter;

/**
 * Words of a page, in which no line ends within the hyphens of an option: a browser would, and a
 * sign that forbids it would be copied into the command.
 */
final class HtmlWords implements NodeRenderer {
  private static final Pattern OPTION = Pattern.compile("(?<!\\S)--\\p{L}\\S*");

  private final HtmlWriter html;

  HtmlWords(HtmlNodeRendererContext context) {
    this.html = context.getWriter();
  }

  @Override
  public Set<Class<? extends Node>> getNodeTypes() {
    return Set.of(Text.class);
  }

  @Override
  public void render(Node text) {
    String words = ((Text) text).getLiteral();
    Matcher option = OPTION.matcher(words);
    int told = 0;
    while (option.find()) {
      html.text(words.substring(told, option.start()));
      html.tag("span", Map.of("class", "option"));
      html.text(option.group());
      html.tag("/span");
      told = option.end();
    }
    html.text(words.substring(told));
  }
}
