package kitwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import kitwright.claim.ClaimStandings;
import kitwright.daybook.Week;
import kitwright.ledger.Facts;
import kitwright.ledger.LogDay.Audience;
import kitwright.report.claim.ClaimLetter;
import kitwright.report.strength.DesignerSheet;
import kitwright.report.week.WeekReport;
import kitwright.report.words.Sheet;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.renderer.html.HtmlRenderer;
import org.intellij.markdown.flavours.gfm.GFMFlavourDescriptor;
import org.intellij.markdown.html.HtmlGenerator;
import org.intellij.markdown.parser.MarkdownParser;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every page of the demonstration and of the documentation as two readers of Markdown see it that
 * share no line: the same headings, tables cell by cell, list items, links, pictures and code.
 */
class SecondReaderTest {
  private static final HtmlRenderer FIRST =
      HtmlRenderer.builder().extensions(List.of(TablesExtension.create())).build();

  private static Document first(String markdown) {
    return Jsoup.parse(FIRST.render(Told.tree(markdown)));
  }

  private static Document second(String markdown) {
    GFMFlavourDescriptor forge = new GFMFlavourDescriptor();
    return Jsoup.parse(
        new HtmlGenerator(
                markdown,
                new MarkdownParser(forge).buildMarkdownTreeFromString(markdown),
                forge,
                false)
            .generateHtml(
                new HtmlGenerator.DefaultTagRenderer(
                    (node, tag, attributes) -> attributes, false)));
  }

  static Stream<Map.Entry<String, String>> pages() throws IOException {
    Facts now = Facts.of(Told.demonstration(), Told.SUNDAY);
    List<Sheet> sheets = new ArrayList<>();
    Reports.all().forEach(report -> sheets.addAll(report.sheets(now)));
    ClaimStandings.on(now).all().forEach(claim -> sheets.add(ClaimLetter.of(claim, now)));
    kitwright.assessment.Assessments.on(now)
        .all()
        .forEach(each -> sheets.add(DesignerSheet.of(each, now.ledger())));
    for (Audience audience : Audience.values()) {
      sheets.add(WeekReport.of(now.ledger(), Week.ending(Told.SUNDAY), audience));
    }
    Map<String, String> pages = new TreeMap<>();
    sheets.forEach(sheet -> pages.put(sheet.file(), Told.markdown(sheet)));
    try (Stream<Path> docs =
        Stream.of(Path.of("src/docs"), Path.of("src/test/resources/golden/document"), Path.of("."))
            .flatMap(folder -> Stream.of(folder.toFile().listFiles()))
            .map(java.io.File::toPath)) {
      for (Path page : docs.filter(file -> file.toString().endsWith(".md")).toList()) {
        pages.put(page.toString(), Files.readString(page));
      }
    }
    return pages.entrySet().stream();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void bothSeeTheSame(Map.Entry<String, String> page) {
    List<String> one = seen(first(page.getValue()));
    List<String> other = seen(second(page.getValue()));
    assertThat(one).hasSizeGreaterThan(1);
    for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
      assertThat(other.get(i)).as("sign " + i).isEqualTo(one.get(i));
    }
    assertThat(other).hasSameSizeAs(one);
  }

  /** What counts on a page, in its order. */
  private static List<String> seen(Document page) {
    List<String> seen = new ArrayList<>();
    for (Element each : page.body().getAllElements()) {
      switch (each.tagName()) {
        case "h1", "h2", "h3", "h4", "h5", "h6" -> seen.add(each.tagName() + " " + each.text());
        case "table" -> seen.add("table of " + each.getElementsByTag("tr").size() + " lines");
        case "tr" -> seen.add("line " + each.children().eachText());
        case "th", "td" -> seen.add(each.tagName() + " " + each.text());
        case "a" -> seen.add("link " + each.attr("href") + " " + each.text());
        case "img" -> seen.add("picture " + each.attr("src") + " " + letters(each.attr("alt")));
        case "code" -> seen.add("code " + each.wholeText());
        case "li", "p" -> seen.add(each.tagName() + " " + each.text());
        default -> {}
      }
    }
    return seen;
  }

  /** The second reader leaves commas out of the words of a picture. */
  private static String letters(String words) {
    return words.replaceAll("[^\\p{L}\\p{N} ]", "");
  }
}
