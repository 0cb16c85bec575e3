package kitwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CourseDrawingTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

  private static Course.Piece piece(String id, int from, int days, long slack) {
    LocalDate first = TODAY.plusDays(from);
    LocalDate last = first.plusDays(days - 1L);
    return new Course.Piece(
        id,
        "Work " + id,
        first,
        last,
        last,
        slack,
        last.plusDays(slack),
        Course.Kind.INDOORS,
        slack == 0);
  }

  private static Course course(List<Course.Piece> pieces, List<Course.Pin> pins) {
    return new Course(
        "Work",
        "All of it.",
        TODAY,
        TODAY.plusDays(60),
        Optional.of(TODAY.plusDays(50)),
        List.of(new Course.Band("hull", pieces)),
        List.of(new Course.Link("a", "b"), new Course.Link("a", "nobody")),
        pins,
        List.of(new Course.Sky(TODAY, true, "rain")),
        List.of(new Course.Window(TODAY.plusDays(1), TODAY.plusDays(2), "dry")));
  }

  @Test
  void everyPieceAndPinIsSpokenOf() {
    String text =
        CourseDrawing.of(
                course(
                    List.of(piece("a", 0, 3, 0), piece("b", 3, 2, 4)),
                    List.of(new Course.Pin(1, "b", "Cleat missing"))))
            .text();
    assertThat(text)
        .contains("<title>Work a: 2026-03-02 to 2026-03-04, float 0 working days</title>")
        .contains("<title>Work b: 2026-03-05 to 2026-03-06, float 4 working days</title>")
        .contains("<title>Cleat missing</title>")
        .contains("<title>Today, 2026-03-02</title>")
        .contains("<title>Launch wanted on 21\u00a0April\u00a02026</title>")
        .contains("<title>dry</title>");
  }

  @Test
  void piecesThatWouldCoverEachOtherStandInRowsOfTheirOwn() {
    String apart =
        CourseDrawing.of(course(List.of(piece("a", 0, 2, 0), piece("b", 30, 2, 0)), List.of()))
            .text();
    String together =
        CourseDrawing.of(course(List.of(piece("a", 0, 2, 0), piece("b", 1, 2, 0)), List.of()))
            .text();
    assertThat(height(together)).isGreaterThan(height(apart));
  }

  private static double height(String svg) {
    return Double.parseDouble(svg.replaceFirst("(?s).*?height=\"([\\d.]+)\".*", "$1"));
  }

  @Test
  void aPlanWithoutWorkIsAnEmptySheet() {
    assertThat(CourseDrawing.of(course(List.of(), List.of())).text()).contains("<svg");
  }
}
