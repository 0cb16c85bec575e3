package kitwright.choice;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.assessment.Assessments;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.ledger.Facts;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.money.Account;
import kitwright.shortage.ShortageStanding;
import kitwright.shortage.ShortageStandings;
import kitwright.substitution.Lack;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * The ways out of one shortage, side by side. The builder decides; this says what each costs.
 *
 * @param standing how the shortage stands
 * @param launchIfHere when the build would end if the missing thing were here today
 * @param neededBy the last day on which the missing thing may come without moving the end of the
 *     plan; empty where no open task lacks it
 * @param ways in the order in which the shortage lists them
 * @param dominated those that another beats in everything that can be compared, with the reason
 * @param turning what would have to change for one way to be ahead of another
 */
public record Choice(
    ShortageStanding standing,
    LocalDate launchIfHere,
    Optional<LocalDate> neededBy,
    List<WayOut> ways,
    List<Dominated> dominated,
    List<Turning> turning) {
  public Choice {
    ways = List.copyOf(ways);
    dominated = List.copyOf(dominated);
    turning = List.copyOf(turning);
  }

  /**
   * Lays out the ways out of a shortage.
   *
   * @return empty where the ledger has no such shortage on that day
   */
  public static Optional<Choice> of(Facts now, Ref shortage) {
    return ShortageStandings.on(now).of(shortage).map(standing -> of(now, standing));
  }

  private static Choice of(Facts now, ShortageStanding standing) {
    Waiting waiting = new Waiting(now, standing);
    Outlays outlays = new Outlays(now, Account.on(now), standing);
    List<WayOut> ways = new ArrayList<>();
    for (Shortage.Option option : standing.shortage().options()) {
      Optional<Substitution> substitution = substitution(option, standing, now);
      ways.add(
          new WayOut(
              option,
              outlays.of(option),
              waiting.timing(option, substitution),
              substitution
                  .map(each -> strength(each, Assessments.on(now)))
                  .or(() -> otherThanDrawn(option).map(any -> Strength.unknown())),
              substitution
                  .map(each -> signing(each, now, waiting))
                  .or(() -> otherThanDrawn(option).map(Signing::withoutRecord))
                  .or(() -> Signing.leavingOut(option, standing.shortage(), waiting, now)),
              substitution.map(each -> Takings.of(now, each)).orElse(List.of())));
    }
    List<Dominated> dominated = Dominated.of(ways);
    return new Choice(
        standing,
        waiting.launchIfHere(),
        waiting.neededBy(),
        ways,
        dominated,
        Turning.of(ways, dominated, now.ledger().build().ownHour()));
  }

  /** What an option would have built otherwise. */
  static Optional<Substitution> substitution(
      Shortage.Option option, ShortageStanding standing, Facts now) {
    return option
        .substitution()
        .flatMap(now.ledger()::substitution)
        .filter(each -> isOf(each, standing.shortage()));
  }

  /** A way out that builds otherwise than drawn, or names a substitution. */
  private static Optional<Shortage.Option> otherThanDrawn(Shortage.Option option) {
    return Optional.of(option)
        .filter(each -> each.way() == Shortage.Way.SUBSTITUTE || each.substitution().isPresent());
  }

  /** A substitution of another shortage is no way out of this one. */
  static boolean isOf(Substitution substitution, Shortage shortage) {
    return substitution.shortage().filter(ref -> !ref.id().equals(shortage.id())).isEmpty();
  }

  private static Strength strength(Substitution substitution, Assessments assessments) {
    Optional<Result> result = substitution.assessment().flatMap(ref -> assessments.of(ref.id()));
    Optional<Row> tightest = result.flatMap(Result::tightest);
    return new Strength(
        result.map(Result::verdict),
        tightest.map(row -> row.measure().words()),
        tightest.map(Row::margin).orElse(OptionalDouble.empty()),
        result.map(Choice::mass).orElse(OptionalDouble.empty()));
  }

  private static OptionalDouble mass(Result result) {
    return result.rows().stream()
        .filter(row -> row.measure() == Measure.MASS || row.measure() == Measure.PLATE_MASS)
        .map(Row::ratio)
        .filter(OptionalDouble::isPresent)
        .findFirst()
        .orElse(OptionalDouble.empty());
  }

  private static Signing signing(Substitution substitution, Facts now, Waiting waiting) {
    Optional<SubstitutionStanding> standing =
        SubstitutionStandings.on(now).of(new Ref(substitution.id(), substitution.at().record()));
    List<String> lacks = standing.map(Choice::lacks).orElse(List.of("it is not proposed yet"));
    List<String> signers =
        lacks.isEmpty()
            ? List.of()
            : standing.stream()
                .flatMap(each -> each.signers().stream())
                .map(signer -> signer.party().name())
                .toList();
    return new Signing(signers, substitution.hold().flatMap(waiting::latestStart), lacks);
  }

  private static List<String> lacks(SubstitutionStanding standing) {
    return standing.isWithdrawn()
        ? List.of("it was withdrawn")
        : standing.lacks().stream().map(Lack::words).toList();
  }

  /** Hours of an option. */
  static BigDecimal hours(Shortage.Option option) {
    return option.hours().map(hours -> hours.in(Unit.HOUR).amount()).orElse(BigDecimal.ZERO);
  }
}
