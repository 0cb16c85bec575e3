package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A page for a browser holds the rows of the page in Markdown, each cell with the same words, read
 * by a reader that shares no line with either.
 */
class PagesAlikeTest {
  static Stream<String> tellings() {
    return Stream.of(
        "open",
        "ahead",
        "tomorrow",
        "kit",
        "kit ply-9",
        "claim",
        "claim claim-2026-02-20",
        "claim claim-2026-02-20 --since",
        "claim claim-2026-02-20 --reminder",
        "options",
        "options short-2026-03-20-board-winch",
        "budget",
        "budget --line tools",
        "cut",
        "cut berth-bearers",
        "cut bowsprit-staves",
        "materials",
        "assess",
        "week",
        "week --audience public",
        "report tools",
        "report shortages",
        "report substitutions",
        "report sheets",
        "report count-sheet");
  }

  @ParameterizedTest
  @MethodSource("tellings")
  void aPageForABrowserHoldsTheSameRows(String telling) {
    List<String> markdown = new ArrayList<>();
    for (String line : told(telling, "markdown").lines().toList()) {
      if (line.startsWith("|") && !line.matches("[|:\\- ]+")) {
        markdown.add(plain(line.replace("\\|", "¦").replace("|", " ")));
      }
    }
    List<String> html = new ArrayList<>();
    for (Element row : Jsoup.parse(told(telling, "html")).select("tr")) {
      html.add(plain(String.join(" ", row.select("th, td").eachText()).replace("|", "¦")));
    }
    html.removeIf(String::isEmpty); // a head without words
    for (int i = 0; i < Math.min(html.size(), markdown.size()); i++) {
      assertThat(html.get(i)).isEqualTo(markdown.get(i));
    }
    assertThat(html).hasSameSizeAs(markdown);
  }

  /** No number, day or word that says that something inside was not told. */
  @ParameterizedTest
  @MethodSource("tellings")
  void nothingIsToldInTheWordsOfAProgram(String telling) throws IOException {
    assertThat(told(telling, "text"))
        .doesNotContainPattern("\\bnull\\b|\\bNaN\\b|Optional|Infinity|\\[\\]|\\{\\{|\\}\\}")
        .doesNotContainPattern("(?<![\\d.\\-–‑])-0\\b|−0(\\.0+)?(?![.\\d])")
        .doesNotContainPattern(
            "(?<![\\d.])1[ \u00a0](days|hours|pieces|tools|claims|things|sheets)\\b");
    for (JsonNode node : new ObjectMapper().readTree(json(telling))) {
      assertThat(node.isNull()).isFalse();
    }
  }

  /** Several sheets are printed one after the other. */
  private static String json(String telling) {
    return "[" + told(telling, "json").strip().replaceAll("(?m)^}\\s*^\\{", "},{") + "]";
  }

  private static String told(String telling, String format) {
    String[] words = (telling + " --today 2026-03-29 --format " + format).split(" ", -1);
    return Run.in(Path.of(""), words).out();
  }

  private static String plain(String words) {
    return words
        .replaceAll("[*`\\\\]", "")
        .replaceAll("&lt;", "<")
        .replaceAll("&amp;", "&")
        .replace('\u2011', '-')
        .replaceAll("[\\s\u00a0]+", " ")
        .strip();
  }
}
