package kitwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
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
import org.junit.jupiter.api.Test;

/**
 * The demonstration's pictures where a page shows them 860 px wide: no letters below 12 px, none
 * outside the picture, no two words over each other, measured with the sans-serif letters that are
 * here. Colours that carry words keep a contrast of 4.5 to 1 (WCAG 2.2, 1.4.3) on what they stand
 * on.
 */
class PicturesLegibleTest {
  private static final Pattern SIZE =
      Pattern.compile("<svg[^>]*?width=\"([\\d.]+)\"[^>]*?height=\"([\\d.]+)\"");
  private static final Pattern TEXT = Pattern.compile("<text ([^>]*)>([^<]*)</text>");
  private static final FontRenderContext PAPER = new FontRenderContext(null, true, true);

  private record Word(String words, Rectangle2D box) {}

  private static void isLegible(String svg) {
    Matcher size = SIZE.matcher(svg);
    assertThat(size.find()).isTrue();
    double width = Double.parseDouble(size.group(1));
    Rectangle2D sheet = new Rectangle2D.Double(0, 0, width, Double.parseDouble(size.group(2)));
    List<Word> all = new ArrayList<>();
    Matcher text = TEXT.matcher(svg);
    while (text.find()) {
      double letter = number("font-size", text.group(1));
      assertThat(letter * 860 / width).as(text.group(2)).isGreaterThanOrEqualTo(12);
      Word word = word(text.group(2), letter, text.group(1));
      assertThat(sheet.contains(word.box())).as("inside: " + word).isTrue();
      for (Word other : all) {
        assertThat(other.box().intersects(word.box())).as(other + " over " + word).isFalse();
      }
      all.add(word);
    }
    assertThat(all).hasSizeGreaterThan(4);
  }

  private static Word word(String words, double letter, String attributes) {
    String plain = words.replace("&amp;", "&").replace("&lt;", "<").replace("&quot;", "\"");
    int style = attributes.contains("bold") ? Font.BOLD : Font.PLAIN;
    double wide =
        new Font(Font.SANS_SERIF, style, 100).getStringBounds(plain, PAPER).getWidth()
            * letter
            / 100;
    double x = number("x", attributes);
    double left =
        attributes.contains("\"end\"")
            ? x - wide
            : attributes.contains("\"middle\"") ? x - wide / 2 : x;
    double foot = number("y", attributes);
    if (attributes.contains("rotate(-90")) {
      double middle = number("x", attributes);
      return new Word(
          words,
          new Rectangle2D.Double(middle - letter * 0.72, foot - wide / 2, letter * 0.9, wide));
    }
    return new Word(words, new Rectangle2D.Double(left, foot - letter * 0.72, wide, letter * 0.9));
  }

  private static double number(String name, String attributes) {
    Matcher value = Pattern.compile("(?<![\\w-])" + name + "=\"([\\d.]+)\"").matcher(attributes);
    assertThat(value.find()).as(name + " in " + attributes).isTrue();
    return Double.parseDouble(value.group(1));
  }

  private static Facts now() {
    return Facts.of(Told.demonstration(), Told.SUNDAY);
  }

  @Test
  void theWorkAhead() {
    isLegible(WorkPicture.of(now()).text());
  }

  @Test
  void theMoney() {
    CostRange range = CostRange.of(Told.demonstration(), Account.on(now()));
    isLegible(BudgetPicture.of(now(), range).text());
  }

  @Test
  void everySheetsSections() {
    Assessments.on(now()).all().stream()
        .filter(result -> !result.sketches().isEmpty())
        .forEach(result -> isLegible(SectionDrawing.of(result.assessment(), result.sketches())));
  }

  @Test
  void aCut() {
    Facts now = now();
    now.ledger().cuts().stream()
        .filter(cut -> cut.done().isEmpty())
        .forEach(cut -> isLegible(CutPicture.of(CutPlan.of(cut, now, Effort.usual())).text()));
  }

  @Test
  void wordsStandOutFromTheirGround() {
    double white = 1;
    assertThat((white + 0.05) / (luminance(0x9a3412) + 0.05)).isGreaterThan(4.5);
    assertThat((white + 0.05) / (luminance(0x5a5a5a) + 0.05)).isGreaterThan(4.5);
    assertThat((white + 0.05) / (luminance(0x1a1a1a) + 0.05)).isGreaterThan(4.5);
  }

  /** Relative luminance by WCAG 2.2. */
  private static double luminance(int colour) {
    return 0.2126 * linear(colour >> 16) + 0.7152 * linear(colour >> 8) + 0.0722 * linear(colour);
  }

  private static double linear(int channel) {
    double value = (channel & 0xFF) / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
