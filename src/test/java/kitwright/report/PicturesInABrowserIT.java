package kitwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.assessment.Assessments;
import kitwright.cutting.CutPlan;
import kitwright.cutting.solve.Effort;
import kitwright.ledger.Facts;
import kitwright.money.Account;
import kitwright.money.CostRange;
import kitwright.report.ahead.WorkPicture;
import kitwright.report.budget.BudgetPicture;
import kitwright.report.stores.CutPicture;
import kitwright.report.strength.SectionDrawing;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demonstration's pictures as the browser of the Debian package chromium shows them in a column
 * of 860 px, as forges do: letters of at least 12 px, inside the picture, none over another,
 * nothing running through them, and at least 4.5 to 1 from their ground (WCAG 2.2, 1.4.3), all by
 * its pixels. Skipped where the browser is missing or gives no answer.
 */
class PicturesInABrowserIT {
  private static final int PATIENCE = 120;

  @TempDir private Path folder;

  private static Map<String, String> pictures() {
    Facts now = Facts.of(Told.demonstration(), Told.SUNDAY);
    Map<String, String> all = new LinkedHashMap<>();
    all.put("ahead", WorkPicture.of(now).text());
    Account account = Account.on(now);
    all.put("budget", BudgetPicture.of(now, CostRange.of(now.ledger(), account)).text());
    Assessments.on(now).all().stream()
        .filter(each -> !each.sketches().isEmpty())
        .forEach(
            each ->
                all.put(
                    each.assessment().id(), SectionDrawing.of(each.assessment(), each.sketches())));
    now.ledger().cuts().stream()
        .filter(cut -> cut.done().isEmpty())
        .forEach(
            cut -> all.put(cut.id(), CutPicture.of(CutPlan.of(cut, now, Effort.usual())).text()));
    return all;
  }

  private List<String> seen(Map<String, String> pictures) throws Exception {
    StringBuilder page = new StringBuilder("<!DOCTYPE html><meta charset=utf-8><body>\n");
    pictures.forEach(
        (name, svg) ->
            page.append("<div style='width:860px' id='")
                .append(name)
                .append("'>")
                .append(svg)
                .append("</div>\n"));
    Path file = folder.resolve("pictures.html");
    Files.writeString(
        file,
        page.append("<script>")
            .append(Files.readString(Path.of("src/test/resources/kitwright/report/legible.js")))
            .append("</script>"));
    Matcher said = Pattern.compile("(?s)<pre id=\"said\">(.*?)</pre>").matcher(browsed(file));
    Assumptions.assumeTrue(said.find(), "NOT COMPARED: the browser gave no answer.");
    return Parser.unescapeEntities(said.group(1), false).lines().toList();
  }

  private String browsed(Path file) throws IOException, InterruptedException {
    Path out = folder.resolve("said.html");
    Process browser;
    try {
      browser =
          new ProcessBuilder(
                  "chromium",
                  "--headless",
                  "--no-sandbox",
                  "--disable-gpu",
                  "--disable-dev-shm-usage",
                  "--user-data-dir=" + folder.resolve("profile"),
                  "--window-size=1000,1000",
                  "--virtual-time-budget=60000",
                  "--dump-dom",
                  file.toUri().toString())
              .redirectOutput(out.toFile())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
    } catch (IOException missing) {
      return Assumptions.abort(
          "NOT COMPARED: the program chromium is not here. Install the Debian package chromium.");
    }
    if (!browser.waitFor(PATIENCE, TimeUnit.SECONDS)) {
      browser.destroyForcibly().waitFor();
    }
    return Files.readString(out);
  }

  @Test
  void everyLetterCanBeRead() throws Exception {
    Map<String, String> pictures = pictures();
    List<String> seen = seen(pictures);
    assertThat(seen).filteredOn(line -> line.startsWith("seen ")).hasSameSizeAs(pictures.keySet());
    assertThat(seen).filteredOn(line -> !line.startsWith("seen ")).isEmpty();
  }

  @Test
  void whatCannotBeReadIsFound() throws Exception {
    String svg =
        """
        <svg xmlns="http://www.w3.org/2000/svg" width="860" height="200" viewBox="0 0 860 200">
        <rect width="860" height="200" fill="#fff"/>
        <path d="M0 20 H860" stroke="#000"/>
        <text x="10" y="60" font-size="9">small</text>
        <text x="840" y="60" font-size="13">leaves it</text>
        <text x="10" y="100" font-size="13">first label</text>
        <text x="30" y="104" font-size="13">second label</text>
        <text x="10" y="24" font-size="13">struck through</text>
        <text x="10" y="140" font-size="13" fill="#aaa">pale</text>
        <text x="10" y="180" font-size="13">good</text>
        </svg>
        """;
    assertThat(seen(Map.of("bad", svg)))
        .containsExactlyInAnyOrder(
            "bad: small: 9.0 px",
            "bad: leaves it: outside",
            "bad: second label: over first label",
            "bad: struck through: something runs through it",
            "bad: pale: contrast 2.3",
            "seen bad");
  }
}
