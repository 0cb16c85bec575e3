package kitwright.document;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A page to send on, read as the HTML standard says that browsers do. */
class HtmlPageTest {
  private static final byte[] PHOTO = {1, 2, 3};
  private static final Set<String> HARMLESS =
      Set.of(
          ("body h1 h2 h3 h4 h5 h6 p ul ol li blockquote pre code em strong a br hr div table thead"
                  + " tbody tr th td img span")
              .split(" "));
  private static final Set<String> PLAIN =
      Set.of("align", "class", "start", "rel", "href", "src", "alt", "data-label");

  private static String page(String template, Slots slots) {
    return new Templates(name -> Optional.of(template), name -> Optional.empty())
        .fill("page", slots)
        .match(
            page -> page.html(Map.of("photo.jpg", PHOTO, "plan.svg", PHOTO)),
            broken -> {
              throw new AssertionError(broken.faults());
            });
  }

  private static org.jsoup.nodes.Document prose(String markdown) {
    return read(
        page(
            "{{words}}\n",
            Slots.none()
                .block(
                    "words",
                    Block.prose(
                        markdown, 2, Map.of("photo.jpg", "photo.jpg", "plan.svg", "plan.svg")))));
  }

  private static org.jsoup.nodes.Document read(String page) {
    org.jsoup.nodes.Document read = Jsoup.parse(page);
    assertThat(page).startsWith("<!DOCTYPE html>\n<html lang=\"en\">");
    assertThat(read.head().children())
        .extracting(Element::tagName)
        .containsExactly("meta", "meta", "meta", "meta", "title", "style");
    assertThat(read.head().getElementsByAttribute("http-equiv").attr("content"))
        .isEqualTo("default-src 'none'; img-src data:; style-src 'unsafe-inline'");
    read.body().getAllElements().forEach(HtmlPageTest::isHarmless);
    return read;
  }

  private static void isHarmless(Element element) {
    assertThat(HARMLESS).as(element.outerHtml()).contains(element.tagName());
    for (Attribute attribute : element.attributes()) {
      assertThat(PLAIN).as(element.outerHtml()).contains(attribute.getKey());
    }
    if (element.hasAttr("href")) {
      assertThat(element.attr("href")).matches("(?i)(https?|mailto):.*");
      assertThat(element.attr("rel")).isEqualTo("noopener noreferrer");
    }
    if (element.hasAttr("src")) {
      assertThat(element.attr("src")).matches("data:image/(jpeg|svg\\+xml);base64,AQID");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "<SCRIPT SRC=//x.example/a.js></SCRIPT>",
        "x <img src=x onerror=alert(1)> y",
        "<style>body{background:url(//x.example)}</style>",
        "</style><script>1</script>",
        "</title><script>1</script>",
        "<!-- a --><b>bold</b>",
        "<!--><script>1</script>-->",
        "<?php 1 ?>",
        "<![CDATA[<script>1</script>]]>",
        "<iframe src=\"//x.example\"></iframe>",
        "<svg onload=alert(1)>",
        "<a href=\"javascript:alert(1)\">x</a>",
        "[x](javascript:alert(1))",
        "[x](JaVaScRiPt:alert(1))",
        "[x](data:text/html,<script>1</script>)",
        "[x](vbscript:1)",
        "[x](//x.example/a)",
        "[x](../ledger/spending/2026.yaml)",
        "[x](https://x.example/?a=\"onclick=1)",
        "[x](https://x.example \"title\\\" onclick=1\")",
        "![x](https://x.example/pixel.gif)",
        "![x](//x.example/pixel.gif)",
        "![x](data:image/svg+xml;base64,PHN2Zz4=)",
        "![x\" onerror=\"1](photo.jpg)",
        "![x](../evidence/secret.jpg)",
        "<https://x.example/\"onclick=1>",
        "| <b>a</b> | b |\n|---|---|\n| <script>1</script> | `<i>` |",
        "```html\n<script>1</script>\n```",
        "``` \" onclick=1\nx\n```",
        "    <script>1</script>",
        "# <script>1</script>",
        "> <form action=//x.example><input></form>",
        "- <base href=//x.example>\n- <link rel=stylesheet href=//x.example>",
        "&lt;script&gt;1&lt;/script&gt;",
        "&#60;script&#62;1&#60;/script&#62;",
        "\\<script>1\\</script>",
        "<div\nonclick=1\n>x",
        "<p/onclick=1>",
        "a\u0000<script>1</script>",
        "\ufeff<script>1</script>"
      })
  void htmlOfAnAuthorIsWords(String markdown) {
    org.jsoup.nodes.Document page = prose(markdown);
    if (markdown.contains("cript>1") && !markdown.startsWith("[")) {
      assertThat(page.body().text()).contains("cript>1");
    }
  }

  @Property(tries = 200)
  @Domain(NastyText.class)
  void noTextIsAnythingButText(@ForAll String words, @ForAll String more) {
    read(
        page(
            "# {{title}}\n\n{{words}}\n",
            Slots.none()
                .sentence("title", words)
                .block(
                    "words",
                    Block.prose(more, 2),
                    Block.table(
                        Column.columns(Column.left(words)), List.of(Row.row(Cell.text(more)))))));
  }

  @Test
  void itIsCalledByItsFirstHeading() {
    String page =
        page("# {{title}} *now*\n\n## Then\n", Slots.none().sentence("title", "A & <b> of “C”"));
    assertThat(page).contains("<title>A &amp; &lt;b&gt; of “C” now</title>");
    assertThat(page("Words.\n", Slots.none())).contains("<title></title>");
  }

  @Test
  void aPictureIsInIt() {
    List<Element> pictures =
        prose("![the *stem* & \"keel\"](photo.jpg)\n\n![](plan.svg)")
            .body()
            .getElementsByTag("img");
    String data = Base64.getEncoder().encodeToString(PHOTO);
    assertThat(pictures.get(0).attr("src")).isEqualTo("data:image/jpeg;base64," + data);
    assertThat(pictures.get(0).attr("alt")).isEqualTo("the stem & \"keel\"");
    assertThat(pictures.get(1).attr("src")).isEqualTo("data:image/svg+xml;base64," + data);
  }

  @Test
  void aPictureAmongWordsStaysThere() {
    assertThat(prose("see ![it](photo.jpg) there").body().child(0).html())
        .startsWith("see <img src=\"data:")
        .endsWith("alt=\"it\"> there");
  }

  @Test
  void whatIsNotInItIsToldInWords() {
    assertThat(prose("![the stem](other.jpg) and [the list](list.md)").body().html())
        .isEqualTo("<p>the stem and the list</p>");
  }

  @Test
  void aTableMayScrollByItself() {
    Element frame = prose("| a | b |\n|---|--:|\n| 1 | 2 |").body().child(0);
    assertThat(frame.className()).isEqualTo("table");
    assertThat(frame.child(0).getElementsByTag("td")).extracting(Element::text).contains("1", "2");
    assertThat(frame.getElementsByTag("th").get(1).attr("align")).isEqualTo("right");
  }

  @Test
  void aRemarkOfATemplateIsPassedOver() {
    assertThat(
            read(page("<!-- mine -->\n\n<div>words\n</div>\n\nplain\n", Slots.none()))
                .body()
                .html())
        .isEqualTo("<p>plain</p>");
  }

  @Test
  void noLineEndsWithinTheHyphensOfAnOption() {
    assertThat(
            prose("“kitwright buy … --replaces gudgeon-2” <b> -- no--where -x --9").body().html())
        .isEqualTo(
            "<p>“kitwright buy … <span class=\"option\">--replaces</span> gudgeon-2” &lt;b&gt; --"
                + " no--where -x --9</p>");
  }

  @Test
  void whatIsToBeTickedHasABox() {
    org.jsoup.nodes.Document page =
        prose("1. [ ] rip at 12 mm\n2. [x] turn it\n\n- so [ ] not\n- *a* [ ] b\n\n[ ] nor here");
    assertThat(page.getElementsByTag("li"))
        .extracting(Element::wholeText)
        .containsExactly("☐ rip at 12\u00a0mm", "☑ turn it", "so [ ] not", "a [ ] b");
    assertThat(page.body().text()).endsWith("[ ] nor here");
  }

  @Test
  void noLineEndsBetweenANumberAndItsUnit() {
    org.jsoup.nodes.Document page =
        prose("Kerf 3 mm. From 300 x 100 mm (at 5 °C, 40 %) 2 boards `9 mm`, 7 h");
    assertThat(page.body().wholeText().strip())
        .isEqualTo(
            "Kerf 3\u00a0mm. From 300 x 100\u00a0mm (at 5\u00a0°C, 40\u00a0%) 2 boards 9 mm,"
                + " 7\u00a0h");
  }

  @Test
  void itsStyleLoadsNothing() {
    assertThat(PageStyle.SHEET).doesNotContain("url(", "@import", "<", "http");
    assertThat(PageStyle.SHEET.getBytes(UTF_8)).hasSizeLessThan(4000);
  }
}
