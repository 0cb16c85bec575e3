package kitwright.cutting.verify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import kitwright.Sample;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.saw.Use;
import kitwright.cutting.saw.Way;
import kitwright.ledger.Cut;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** Each way in which a plan could lie is refused. */
class PlanCheckTest {
  private static final String SOUND =
      """
      stock: [{id: s, what: s, size: 1000 x 100 x 20 mm, grain: along FLAW}]
      cuts: [{id: c, from: [s], kerf: 3 mm, parts: [{mark: a, length: 600 mm, width: 100 mm, grain: along MORE}]}]
      """;

  private static final Rect WHOLE = new Rect(0, 0, 10_000, 1_000);

  private static Board sawn(long at, long kerf, boolean turned) {
    return new Board.Sawn(
        WHOLE,
        Way.CROSS,
        at,
        kerf,
        new Board.Piece(new Rect(0, 0, at, 1_000), new Use.Part("a", 1, 1, 1, turned)),
        new Board.Piece(new Rect(at + kerf, 0, 10_000 - at - kerf, 1_000), new Use.Left()));
  }

  private static List<String> faults(
      String yaml, Board board, int number, Map<String, Integer> missing) {
    Ledger ledger = Sample.ledger(yaml.replace("FLAW", "").replace("MORE", ""));
    Cut cut = ledger.cuts().get(0);
    return PlanCheck.faults(
        cut,
        Map.of("s", 1),
        List.of(new PlanCheck.Bench(ledger.stock().get(0), number, board)),
        missing);
  }

  private static List<String> faults(String yaml) {
    return faults(yaml, sawn(6_000, 30, false), 1, Map.of());
  }

  @Test
  void aSoundPlanIsLetThrough() {
    assertThat(faults(SOUND)).isEmpty();
  }

  @Test
  void aPartOfAnotherLengthIsRefused() {
    assertThat(faults(SOUND, sawn(5_990, 30, false), 1, Map.of()))
        .containsExactly("a 1 comes out 5990 tenths long");
  }

  @Test
  void aCutWithoutRoomForTheBladeIsRefused() {
    assertThat(faults(SOUND, sawn(6_000, 20, false), 1, Map.of()))
        .containsExactly("s, piece 1: a cut at 6000 has no room for the blade");
  }

  @Test
  void aTurnedPartIsRefused() {
    assertThat(faults(SOUND, sawn(6_000, 30, true), 1, Map.of()))
        .anyMatch(fault -> fault.contains("lies wrong to the grain"));
  }

  @Test
  void aPieceThatIsNotThereIsRefused() {
    assertThat(faults(SOUND, sawn(6_000, 30, false), 2, Map.of()))
        .containsExactly("there is no free s, piece 2");
  }

  @Test
  void aPartBothMadeAndMissingIsRefused() {
    assertThat(faults(SOUND, sawn(6_000, 30, false), 1, Map.of("a", 1)))
        .containsExactly("a: 1 wanted, 1 made, 1 missing");
  }

  @Test
  void aFlawInAPartOrALeftOverIsRefused() {
    assertThat(faults(SOUND.replace("FLAW", ", flaws: [{from: 599 mm, to: 601 mm, what: knot}]")))
        .containsExactly("s, piece 1: a 1 holds a flaw: knot");
    assertThat(faults(SOUND.replace("FLAW", ", flaws: [{from: 700 mm, to: 710 mm}]")))
        .singleElement()
        .asString()
        .contains("a left-over holds a flaw");
  }

  @Test
  void woodTooThinOrOfUnknownMaterialIsRefused() {
    assertThat(faults(SOUND.replace("MORE", ", thickness: 21 mm")))
        .containsExactly("s, piece 1: a 1 comes from wood too thin, or of unknown thickness");
    assertThat(faults(SOUND.replace("MORE", ", material: sitka-spruce")))
        .containsExactly("s, piece 1: a 1 comes from another material");
  }

  @Test
  void whatLiesInTheTrimIsRefused() {
    assertThat(faults(SOUND.replace("kerf: 3 mm", "kerf: 3 mm, trim: 1 mm, edge-trim: 0 mm")))
        .contains("s, piece 1: a 1 lies in what is trimmed off");
  }

  @Test
  void oversizeIsAskedFor() {
    assertThat(faults(SOUND.replace("MORE", ", oversize: 2 mm")))
        .contains("s, piece 1: a 1 comes out 1000 tenths wide", "a 1 comes out 6000 tenths long");
  }

  @Test
  void whatACutLeavesMustAddUp() {
    Board.Sawn sound = (Board.Sawn) sawn(6_000, 30, false);
    Board wrong = new Board.Sawn(WHOLE, Way.CROSS, 5_000, 30, sound.near(), sound.far());
    assertThat(faults(SOUND, wrong, 1, Map.of()))
        .containsExactly("s, piece 1: the cut at 5000 does not leave what the plan says");
  }
}
