package kitwright.mechanics.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import org.junit.jupiter.api.Test;

/**
 * Hollow polygons of staves. Area 0.82843·D² and I 0.0547379·D⁴ of a regular octagon across flats D
 * (closed form); torsion by Bredt, J = 4·A²·t/s and τ = T/(2·A·t) along the middle of the wall (TU
 * Delft, Mechanics BSc, thin-walled sections, read 2026-11-29), beside the exact J of a round tube.
 */
class StavesPublishedTest {
  private static final BeamMaterial WOOD =
      BeamMaterial.of("spruce", Kind.TIMBER, 415, 10.9e9, 0.7e9, Made.strength(72e6, 38e6, 7.7e6));

  private static Loop regular(int sides, double acrossFlats) {
    List<Point> corners = new ArrayList<>();
    double r = acrossFlats / 2 / Math.cos(Math.PI / sides);
    for (int i = 0; i < sides; i++) {
      double turn = (2 * i + 1) * Math.PI / sides;
      corners.add(new Point(r * Math.cos(turn), r * Math.sin(turn)));
    }
    return new Loop(corners);
  }

  /** Outside 100, inside 60 mm: A 5302 mm², I 4.7644e6 mm⁴. */
  @Test
  void anOctagonalMast() {
    Section mast = Shapes.staves(WOOD, regular(8, 0.100), 0.020);
    assertThat(mast.regions().get(0).moments().area()).isCloseTo(5302e-6, within(1e-6));
    assertThat(Bending.of(mast).stiffness() / 10.9e9).isCloseTo(4.7644e-6, within(1e-10));
    assertThat(mast.solidTimber()).isFalse();
  }

  /** A wall as thick as that is no thin wall: (20/80)² of a round tube are 6 %. */
  @Test
  void ofAThickWallTheTorsionIsNotTold() {
    Section thick = Shapes.staves(WOOD, regular(8, 0.100), 0.020);
    assertThat(thick.torsion()).isEmpty();
    assertThat(thick.torque().limits()).isEmpty();
    assertThat(Shapes.staves(WOOD, regular(8, 0.100), 0.014).torsion()).isPresent();
  }

  /** Across flats 100, wall 10: A = 0.82843·90², s = 8·90·tan 22.5°. */
  @Test
  void torsionByBredt() {
    Section mast = Shapes.staves(WOOD, regular(8, 0.100), 0.010);
    double cell = 0.8284271 * 0.090 * 0.090;
    double round = 8 * 0.090 * Math.tan(Math.PI / 8);
    assertThat(mast.torsion().orElseThrow() / 0.7e9)
        .isCloseTo(4 * cell * cell * 0.010 / round, within(1e-10));
    assertThat(mast.torque().value().orElseThrow())
        .isCloseTo(7.7e6 * 2 * cell * 0.010, within(0.1));
  }

  /** With very many sides it is a round tube: π/32·(d⁴ − d_i⁴), 1.2 % above Bredt at t/d = 0.1. */
  @Test
  void withManySidesItIsATube() {
    double exact = Shapes.tube(WOOD, 0.100, 0.010).torsion().orElseThrow();
    double bredt = Shapes.staves(WOOD, regular(180, 0.100), 0.010).torsion().orElseThrow();
    assertThat(exact / bredt).isCloseTo(1 + 1 / 81.0, within(2e-3));
  }

  @Test
  void aFlatSideMayBuckle() {
    Section mast = Shapes.staves(WOOD, regular(6, 0.100), 0.010);
    assertThat(mast.skins()).hasSize(1);
    Support.OverGap side = (Support.OverGap) mast.skins().get(0).support();
    assertThat(side.width()).isCloseTo(0.080 * Math.tan(Math.PI / 6), within(1e-12));
  }

  @Test
  void wallsLeaveAHollow() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Shapes.staves(WOOD, regular(8, 0.100), 0.051))
        .withMessageContaining("leave no hollow");
  }

  /**
   * Box girder with two sloping sides: top 26.51 by 0.56, bottom 21.05 by 0.48, 5.48 between their
   * middles, sides 1.0: J 656.6 (Bridge STRUDL manual, 1973, p. C-17, by way of xcfem/xc
   * test_box_girder_torsional_stiffness, read 2026-11-29).
   */
  @Test
  void aBoxWithSlopingSides() {
    double slope = (26.51 - 21.05) / 2 / 5.48;
    double beside = 0.5 * Math.hypot(1, slope); // half a sloping side, measured level
    double low = -0.24;
    double high = 5.48 + 0.28;
    double bottom = 21.05 / 2 + beside + slope * low;
    double top = 21.05 / 2 + beside + slope * high;
    List<Point> round =
        List.of(
            new Point(-bottom, low),
            new Point(bottom, low),
            new Point(top, high),
            new Point(-top, high));
    Section box = Shapes.walled(WOOD, round, List.of(0.48, 1.0, 0.56, 1.0));
    assertThat(box.torsion().orElseThrow() / 0.7e9).isCloseTo(656.6, within(0.15));
    List<Point> otherWay = List.of(round.get(3), round.get(2), round.get(1), round.get(0));
    Section turned = Shapes.walled(WOOD, otherWay, List.of(0.56, 1.0, 0.48, 1.0));
    assertThat(turned.torsion().orElseThrow()).isCloseTo(656.7 * 0.7e9, within(0.1e9));
    double cell = (26.51 + 21.05) / 2 * 5.48;
    assertThat(box.twisted()).hasSize(1);
    assertThat(box.twisted().get(0).perUnit()).isCloseTo(1 / (2 * cell * 0.48), within(1e-6));
  }

  /** Walls of one thickness: as staves. */
  @Test
  void wallsAlikeAreStaves() {
    Loop eight = regular(8, 0.100);
    Section staves = Shapes.staves(WOOD, eight, 0.010);
    Section walled = Shapes.walled(WOOD, eight.points(), java.util.Collections.nCopies(8, 0.010));
    assertThat(Bending.of(walled).stiffness())
        .isCloseTo(Bending.of(staves).stiffness(), within(1e-6));
    assertThat(walled.torsion().orElseThrow())
        .isCloseTo(staves.torsion().orElseThrow(), within(1e-6));
    assertThat(walled.torque().value().orElseThrow())
        .isCloseTo(staves.torque().value().orElseThrow(), within(1e-6));
    assertThat(walled.skins()).hasSize(8);
    assertThat(((Support.OverGap) walled.skins().get(0).support()).width())
        .isCloseTo(0.080 * Math.tan(Math.PI / 8), within(1e-9));
  }

  /** 60 by 40 outside, walls 4, 6, 8 and 6: the hollow is 48 by 28, shifted down by 2. */
  @Test
  void aBoxOfUnlikeWalls() {
    var round =
        List.of(new Point(0, 0), new Point(0.06, 0), new Point(0.06, 0.04), new Point(0, 0.04));
    Section box = Shapes.walled(WOOD, round, List.of(0.004, 0.006, 0.008, 0.006));
    assertThat(box.regions().get(0).moments().area())
        .isCloseTo(0.06 * 0.04 - 0.048 * 0.028, within(1e-12));
    double middle = (0.0024 * 0.02 - 0.048 * 0.028 * 0.018) / (0.0024 - 0.048 * 0.028);
    assertThat(Bending.of(box).neutralAxis()).isCloseTo(middle, within(1e-9));
    assertThat(box.torsion()).isEmpty(); // 8 mm of wall against so small a cell
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Shapes.walled(WOOD, round, List.of(0.02, 0.006, 0.02, 0.006)))
        .withMessageContaining("leave no hollow");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Shapes.walled(
                    WOOD,
                    List.of(
                        new Point(0, 0),
                        new Point(0.06, 0),
                        new Point(0.01, 0.01),
                        new Point(0, 0.06)),
                    List.of(0.001, 0.001, 0.001, 0.001)))
        .withMessageContaining("turns one way");
  }

  /** An upright bolt hole of 10 in 60: what is left bends as 50 of 60 mm, 5/6 of all. */
  @Test
  void woodLeftAndRightOfAnUprightHole() {
    Section holed =
        LayeredSection.ofWidth(0.060)
            .strips(0.090, List.of(Strip.of(0.025, WOOD), Strip.gap(0.010), Strip.of(0.025, WOOD)))
            .section();
    Section whole = Shapes.rectangle(WOOD, 0.060, 0.090);
    assertThat(Bending.of(holed).stiffness() / Bending.of(whole).stiffness())
        .isCloseTo(5 / 6.0, within(1e-9));
    assertThat(Bending.of(holed).shear().value().orElseThrow())
        .isCloseTo(2 / 3.0 * 7.7e6 * 0.050 * 0.090, within(1e-3));
    assertThat(holed.parted()).isTrue();
    assertThat(whole.parted()).isFalse();
    assertThat(holed.torsion()).isEmpty();
  }

  /** Parts that are not built alike would bend each its own way. */
  @Test
  void partsThatAreNotAlikeDoNotStandSideBySide() {
    BeamMaterial other =
        BeamMaterial.of("ash", Kind.TIMBER, 600, 13e9, 0.8e9, Made.strength(90e6, 50e6, 10e6));
    LayeredSection unlike =
        LayeredSection.ofWidth(0.060)
            .strips(
                0.090, List.of(Strip.of(0.025, WOOD), Strip.gap(0.010), Strip.of(0.025, other)));
    assertThatIllegalArgumentException().isThrownBy(unlike::section);
    LayeredSection lower =
        LayeredSection.ofWidth(0.060)
            .strips(0.040, List.of(Strip.of(0.025, WOOD), Strip.gap(0.035)))
            .strips(0.040, List.of(Strip.gap(0.035), Strip.of(0.025, WOOD)));
    assertThatIllegalArgumentException().isThrownBy(lower::section);
  }
}
