package kitwright.assessment.method;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Row;
import kitwright.mechanics.beam.BeamMaterial;

/**
 * Solid timber is judged by its modulus of rupture, a mixed or hollow part by tension and
 * compression of each piece at its edge, which comes out lower for the same wood. Two parts judged
 * unlike are told, with what the solid one bears when it is judged like the other; what reaches
 * what is asked in one way only cannot be told.
 *
 * @see "Wood Handbook, chapter 5: modulus of rupture is no true stress"
 */
public final class Unlike {
  private static final Set<Measure> BENT =
      EnumSet.of(
          Measure.MOMENT_SAGGING,
          Measure.MOMENT_HOGGING,
          Measure.MOMENT_ACROSS,
          Measure.PLATE_MOMENT,
          Measure.FIRST_FAILURE);

  private Unlike() {}

  /** Whether one of them is solid timber and the other is not. */
  public static boolean are(Part one, Part other) {
    return one.beam().solidTimber() != other.beam().solidTimber();
  }

  /** By tension and compression over by modulus of rupture; empty where a strength is unknown. */
  public static OptionalDouble share(Part part) {
    BeamMaterial wood = part.beam().wood().orElse(part.beam().regions().get(0).material());
    OptionalDouble push = wood.strength().compression();
    OptionalDouble pull = wood.tensionLimit();
    OptionalDouble rupture = wood.strength().bending();
    if (!part.beam().solidTimber() || push.isEmpty() || pull.isEmpty() || rupture.isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        Math.min(push.getAsDouble(), pull.getAsDouble()) / rupture.getAsDouble());
  }

  /** Why a solid part cannot be set beside a mixed one that it must be as strong as. */
  public static Optional<String> untold(Part measure, Part solid) {
    return are(measure, solid) && solid.beam().solidTimber() && share(solid).isEmpty()
        ? Optional.of(
            solid.id()
                + " has no known strength in tension and compression, by which "
                + measure.id()
                + " is judged")
        : Optional.empty();
  }

  /**
   * Sets beside each moment that is asked for what it is with both parts judged alike. A load at
   * first failure may be set by shear, and is then the same in both ways.
   */
  public static void judge(Part designed, Part built, List<Row> rows, List<String> lacking) {
    if (!are(designed, built)) {
      return;
    }
    boolean drawn = designed.beam().solidTimber();
    Part solid = drawn ? designed : built;
    double share = share(solid).orElse(1);
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      if (BENT.contains(row.measure()) && row.ratio().isPresent() && asksForMore(row)) {
        untold(drawn ? built : designed, solid).ifPresent(lacking::add);
        double ratio = row.ratio().getAsDouble();
        rows.set(i, row.judgedAlike(drawn ? ratio / share : ratio * share));
      }
    }
  }

  private static boolean asksForMore(Row row) {
    return row.limit().filter(limit -> limit.side() == Row.Limit.Side.AT_LEAST).isPresent();
  }

  /** The caution about a part as designed and as built. */
  public static Optional<String> caution(Part designed, Part built, Row moment) {
    if (!are(designed, built) || moment.ratio().isEmpty()) {
      return Optional.empty();
    }
    boolean drawn = designed.beam().solidTimber();
    Part solid = drawn ? designed : built;
    String told = words(solid, drawn ? built : designed);
    OptionalDouble share = share(solid);
    if (share.isEmpty()) {
      return Optional.of(told + ": their moments are not of one kind");
    }
    Figure bears = (drawn ? moment.designed() : moment.built()).orElseThrow();
    double alike = moment.ratio().getAsDouble() * Math.pow(share.getAsDouble(), drawn ? -1 : 1);
    return Optional.of(
        told
            + "; judged like the other, "
            + solid.id()
            + " bears "
            + Print.with(bears.value() * share.getAsDouble(), "N·m")
            + ", and built over designed is "
            + Print.ratio(alike));
  }

  /** How the two are judged. */
  public static String words(Part solid, Part mixed) {
    return solid.id()
        + " is judged by its modulus of rupture, "
        + mixed.id()
        + " by tension and compression of each piece, which is lower for the same wood";
  }
}
