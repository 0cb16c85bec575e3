package kitwright.assessment.material;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.material.Factors.Factor;
import kitwright.assessment.material.Factors.Side;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Sources;
import kitwright.ledger.Assessment;
import kitwright.ledger.KnockDown;
import kitwright.mechanics.timber.LoadDuration;
import kitwright.mechanics.timber.TimberFactors;
import kitwright.value.Nearest;
import kitwright.value.Ref;
import kitwright.value.Word;

/**
 * The factors that an assessment states, each with its source; what is lacking or wrong is told.
 *
 * @param lacking told to it
 */
record StatedFactors(Assessment assessment, List<String> lacking) {
  private static final String LASTING = "k_mod, EN 1995-1-1, table 3.1";

  private static final String SCARF =
      "65 % at 4 to 1, 95 % at 20 to 1: Birmingham, Boat Building Techniques Illustrated, quoted";

  /** Those that can be. */
  List<Factor> all() {
    List<Factor> all = new ArrayList<>();
    assessment.factors().forEach((name, value) -> ofBoth(name, value).ifPresent(all::add));
    assessment.knockDowns().forEach(one -> ofOne(one).ifPresent(all::add));
    twice(all);
    if (assessment.designed().isPresent() && assessment.built().isPresent()) {
      onBoth(all);
    }
    return all;
  }

  /** One cause takes once: a second factor for it is a slip, or takes back what the first took. */
  private void twice(List<Factor> all) {
    for (int i = 0; i < all.size(); i++) {
      for (Factor later : all.subList(i + 1, all.size())) {
        if (all.get(i).meets(later)) {
          lacking.add(
              "there are two factors for " + later.words() + ": keep the one that is meant");
        }
      }
    }
  }

  /**
   * A load lasts as long on one part as on the other, and a share of the design stress is taken of
   * both or of none.
   */
  private void onBoth(List<Factor> all) {
    for (KnockDown.For on : List.of(KnockDown.For.DURATION, KnockDown.For.DESIGN_STRESS)) {
      List<Factor> some = all.stream().filter(one -> one.on() == on).toList();
      for (Side side : Side.values()) {
        if (!some.isEmpty()
            && some.stream().noneMatch(one -> one.side().filter(s -> s != side).isEmpty())) {
          lacking.add(
              "the factor for "
                  + on.word()
                  + " is on one part alone, and what it is for acts on both: state it on the part"
                  + " as "
                  + Word.key(side)
                  + " too");
        }
      }
      if (on == KnockDown.For.DURATION
          && some.stream().mapToDouble(Factor::value).distinct().count() > 1) {
        lacking.add("the load lasts as long on both parts, and their factors for duration differ");
      }
    }
    List<Factor> heat = all.stream().filter(one -> one.on() == KnockDown.For.TEMPERATURE).toList();
    if (!heat.isEmpty()
        && heat.stream().allMatch(one -> one.side().filter(Side.DESIGNED::equals).isPresent())) {
      lacking.add(
          "the factor for temperature is on the part as drawn alone, and what stands in its place"
              + " is as hot: state it on the part as built too");
    }
  }

  /** {@code factors: {moisture: 0.9}}: on both parts, its source among those of the assessment. */
  private Optional<Factor> ofBoth(Ref name, BigDecimal value) {
    Optional<KnockDown.For> on = KnockDown.For.of(name.id());
    if (on.isEmpty()) {
      lacking.add(
          "“"
              + name
              + "” is no factor"
              + Nearest.ofWords(name.id(), KnockDown.For.words())
                  .map(near -> ": did you mean “" + near + "”?")
                  .orElse("; there are " + String.join(", ", KnockDown.For.words())));
      return Optional.empty();
    }
    Optional<String> source = Sources.of(assessment).about(name.id());
    if (source.isEmpty()) {
      lacking.add(
          "the factor “"
              + name
              + "” has no source: write it as “"
              + name
              + ": where it comes from” in “sources”, or under “knock-downs” with its source");
    }
    return possible(on.get(), value.doubleValue())
        .map(
            factor ->
                new Factor(
                    on.get(), factor, Optional.empty(), Optional.empty(), source.orElse("none")));
  }

  private Optional<Factor> ofOne(KnockDown stated) {
    String name = stated.on().word();
    if (stated.on() == KnockDown.For.DESIGN_STRESS
        && stated.value().isEmpty()
        && stated.source().filter(DesignStress::isNamedBy).isPresent()) {
      lacking.add(DesignStress.SECOND_HAND);
      return Optional.of(
          new Factor(
              stated.on(), 1, side(stated), stated.layer(), stated.source().orElseThrow(), true));
    }
    Optional<Double> value =
        stated
            .value()
            .map(BigDecimal::doubleValue)
            .or(() -> scarf(stated))
            .or(() -> lasting(stated));
    if (value.isEmpty()) {
      lacking.add("the knock-down “" + name + "” states no value, and none follows for it");
      return Optional.empty();
    }
    stated
        .slope()
        .filter(slope -> stated.on() == KnockDown.For.SCARF)
        .filter(slope -> slope.doubleValue() < TimberFactors.STEEPEST)
        .ifPresent(
            slope ->
                lacking.add(
                    "a scarf of "
                        + slope.toPlainString()
                        + " to 1 is steeper than any is trusted, whatever its factor: 4 to 1 at the"
                        + " steepest"));
    if (isMixed(stated)) {
      lacking.add(
          "the knock-down “"
              + name
              + "” states more than its value asks for: a slope is of a scarf, lasts and"
              + " service-class of a duration without a value");
    }
    boolean ruled = stated.value().isEmpty() && stated.on() == KnockDown.For.DURATION;
    boolean sourced = ruled || stated.source().filter(Sources::isOne).isPresent();
    if (!sourced) {
      lacking.add(
          stated.value().isEmpty()
              ? "the knock-down for a scarf by its slope is not confirmed in its source ("
                  + SCARF
                  + "): state its value with a source"
              : "the knock-down “" + name + "” has no source");
    }
    return possible(stated.on(), value.get())
        .map(
            factor ->
                new Factor(
                    stated.on(),
                    factor,
                    side(stated),
                    stated.layer(),
                    ruled
                        ? LASTING
                        : stated.source().orElse(stated.value().isEmpty() ? SCARF : "none")));
  }

  private static boolean isMixed(KnockDown stated) {
    boolean lasting = stated.lasts().isPresent() || stated.serviceClass().isPresent();
    return (stated.slope().isPresent() && stated.on() != KnockDown.For.SCARF)
        || (lasting && (stated.on() != KnockDown.For.DURATION || stated.value().isPresent()));
  }

  private static Optional<Double> lasting(KnockDown stated) {
    return stated.on() == KnockDown.For.DURATION
        ? stated
            .lasts()
            .flatMap(
                lasts ->
                    stated
                        .serviceClass()
                        .filter(wet -> wet >= 1 && wet <= 3)
                        .map(LoadDuration.valueOf(lasts.name())::factor))
        : Optional.empty();
  }

  private static Optional<Double> scarf(KnockDown stated) {
    return stated.on() == KnockDown.For.SCARF
        ? stated
            .slope()
            .filter(slope -> slope.doubleValue() >= TimberFactors.STEEPEST)
            .map(slope -> TimberFactors.scarf(slope.doubleValue()))
        : Optional.empty();
  }

  private static Optional<Side> side(KnockDown stated) {
    return switch (stated.side()) {
      case BOTH -> Optional.empty();
      case DESIGNED -> Optional.of(Side.DESIGNED);
      case BUILT -> Optional.of(Side.BUILT);
    };
  }

  private Optional<Double> possible(KnockDown.For on, double value) {
    double most = most(on);
    if (value > 0 && value <= most) {
      return Optional.of(value);
    }
    lacking.add("the factor “" + on.word() + "” lies outside 0 to " + Print.number(most));
    return Optional.empty();
  }

  /**
   * Only time, drought and cold make wood stronger: NDS table 2.3.2 has 2 for an impact; Wood
   * Handbook, equation 5-3 and table 5-16, less than 1.4 for dry and for cold wood.
   */
  private static double most(KnockDown.For on) {
    return switch (on) {
      case DURATION -> 2;
      case MOISTURE, TEMPERATURE, STIFFNESS -> 1.4;
      case GRADE, SCARF, SLOPE_OF_GRAIN, LAMINATE, CORE, METAL, DESIGN_STRESS -> 1;
    };
  }
}
