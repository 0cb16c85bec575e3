package kitwright.report.strength;

import java.util.ArrayList;
import java.util.List;
import kitwright.assessment.Result;
import kitwright.assessment.material.Bases;
import kitwright.ledger.Assessment.Method;

/** What a method of assessment takes for granted, and where it ceases to hold. */
public final class Validity {
  private Validity() {}

  public static List<String> of(Result result) {
    List<String> all = new ArrayList<>(own(result.assessment().method()));
    all.add(
        "not looked at: grounding, slamming, fatigue, creep, heat, impact, and holes, notches,"
            + " fittings and joints other than those named");
    switch (result.assessment().method()) {
      case SECTION, TIMBER -> all.addAll(atItsSupports(result));
      case PANEL ->
          all.add(
              "not looked at either: crushing of its edges on what they lie on, so see that it is"
                  + " wide enough for the wood or core");
      case LAMINATE, BOLT, EXTERNAL -> {}
    }
    if (!Bases.of(result.inputs()).mixed()) {
      all.add(Bases.of(result.inputs()).words());
    }
    return all;
  }

  private static List<String> atItsSupports(Result result) {
    boolean borne = result.assessment().load().filter(one -> one.bearing().isPresent()).isPresent();
    return List.of(
        borne
            ? "wood or core is crushed where it bears at its strength across, on all of the"
                + " bearing stated (NDS 3.10.2, 3.10.4); how it is built in is not looked at"
            : "not looked at either: crushing at supports and under a load at one place, as the"
                + " load states no bearing: see that they are wide enough for the wood or core",
        "solid timber judged by means is held to what its size leaves of them (Wood Handbook,"
            + " equations 9-18 to 9-20), other wood is not");
  }

  private static List<String> own(Method method) {
    return switch (method) {
      case SECTION, TIMBER ->
          List.of(
              "plane sections stay plane, every material is linear up to its limit, the glue lines"
                  + " are whole (Goodno and Gere, Mechanics of Materials, 9th ed., 2018, 6.2–6.3)",
              "shear spreads by the shear-flow formula, shared at each level in proportion to G·b",
              "each piece is judged by its own tension and compression; solid timber by its modulus"
                  + " of rupture (Wood Handbook, chapter 5)",
              "faces on a core wrinkle at 0.5·(E_f·E_c·G_c)^⅓ (Lloyd’s Register, Special Service"
                  + " Craft, July 2022, Part 8, Chapter 7, 3.2.2)",
              "a face over a gap of b buckles at 2·(π/b)²·(√(D₁₁·D₂₂) + D₁₂ + 2·D₆₆)/t, D₁₁ ="
                  + " E·t³/12/(1 − ν²·E₂/E), D₂₂ and D₁₂ with E₂ and ν·E₂ in place of E, D₆₆ ="
                  + " G·t³/12; a flange of wood at 0.044·E·(t/b)², another at G·(t/b)²; the wall of"
                  + " a tube by NASA SP-8007; webs are held to the proportions of ISO 12215-5,"
                  + " table 20, and to where they buckle in shear",
              "a section whose axes are not its own is free to bend sideways",
              "torsion: a box by its walls, a foil by its closed skin alone (Bredt), each where it"
                  + " is told",
              "the part is three times as long as deep (a cantilever half of that); what may tip"
                  + " over sideways is worked out, or not told");
      case PANEL ->
          List.of(
              "a flat plate, deflection small against its thickness, first-order shear (Reddy,"
                  + " Mechanics of Laminated Composite Plates and Shells, 2nd ed., 2004, 7.2)",
              "a strip in each direction bears the plate’s own moment there; what one direction"
                  + " lends the other through Poisson’s ratio is in the moments, not in the limits",
              "faces on a core wrinkle at 0.5·(E_f·E_c·G_c)^⅓ (Lloyd’s Register, Special Service"
                  + " Craft, July 2022, Part 8, Chapter 7, 3.2.2)");
      case LAMINATE ->
          List.of(
              "classical laminate theory, no curvature; first ply failure, not the last (Kaw,"
                  + " Mechanics of Composite Materials, 2nd ed., 2006, chapter 4)",
              "thickness from areal weight and fibre content, no voids; moduli by Halpin and Tsai",
              "a stitched cloth counts as one layer with its directions mixed through it; a single"
                  + " ply of it warps a little",
              "thin skins in compression also buckle, which depends on what holds them");
      case BOLT ->
          List.of(
              "least values of the class, no safety factor (ISO 898-1, ISO 3506-1; EN 1993-1-8,"
                  + " table 3.4)",
              "wood under bolts where the section lists the two pieces they go through: the yield"
                  + " modes of NDS 12.3, distances of EN 1995-1-1, table 8.4",
              "metals that differ corrode each other where wet: name what the bolts touch"
                  + " (“against”), and each pair is compared");
      case EXTERNAL -> List.of("the numbers are those of the document named; only compared here");
    };
  }
}
