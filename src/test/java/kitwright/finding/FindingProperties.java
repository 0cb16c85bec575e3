package kitwright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDate;
import java.util.List;
import kitwright.value.Place;
import kitwright.value.Visible;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class FindingProperties {
  @Property(tries = 500, seed = "7")
  void anExcerptNeverFailsAndNeverExceedsItsWidth(
      @ForAll List<String> source,
      @ForAll @IntRange(min = 1, max = 6) int line,
      @ForAll @IntRange(min = 1, max = 60) int column,
      @ForAll @IntRange(min = 0, max = 4) int lines,
      @ForAll @IntRange(min = 1, max = 60) int endColumn,
      @ForAll @IntRange(min = 34, max = 90) int width) {
    var at = new Place("f", line, column, line + lines, endColumn);
    assertThat(Excerpt.of(at, new Excerpt.Source(source), Marks.DOUBLED_BRACKETS, Ink.PLAIN, width))
        .allSatisfy(
            quoted -> {
              assertThat(quoted.codePointCount(0, quoted.length())).isLessThanOrEqualTo(width);
              assertThat(Visible.line(quoted)).isEqualTo(quoted);
            });
  }

  @Property(tries = 500, seed = "7")
  void jsonGivesBackEveryText(@ForAll String what, @ForAll String record) throws Exception {
    var finding =
        new Finding(
            "r", Severity.NOTE, Place.wholeFile("f"), what, "follows", "mend", List.of(record));
    String json =
        JsonFindings.render(
            new Examination("0.1.0", LocalDate.of(2026, 3, 2), "."), List.of(finding));
    var read = new ObjectMapper().readTree(json).at("/findings/0");
    assertThat(read.get("message").asText()).isEqualTo(what);
    assertThat(read.at("/records/0").asText()).isEqualTo(record);
    assertThat(json.codePoints().filter(c -> c != '\n')).noneMatch(Visible::isHidden);
  }
}
