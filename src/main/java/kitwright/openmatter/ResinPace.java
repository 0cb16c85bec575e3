package kitwright.openmatter;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.ForecastDay;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Task;
import kitwright.takeoff.TakeOff;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import kitwright.weather.CureRate;
import kitwright.weather.Outlook;

/**
 * How fast a resin goes off on a day, by the rule of {@link CureRate}.
 *
 * @param stated the temperature to which its times belong, °C
 * @param actual the temperature expected, °C
 * @param cure as stated
 * @param potLife as stated; empty where nothing is
 */
public record ResinPace(
    Material resin, double stated, double actual, Duration cure, Optional<Duration> potLife) {
  /** Farther from its data sheet's temperature the rule says nothing. */
  private static final double REACH = 30;

  /** The resins that a task uses, at the temperature expected where it is done on the day. */
  public static List<ResinPace> of(Task task, LocalDate day, Facts now) {
    OptionalDouble actual = expected(task, day, now);
    if (actual.isEmpty()) {
      return List.of();
    }
    return materials(task, now.ledger()).stream()
        .flatMap(material -> of(material, actual.getAsDouble()).stream())
        .toList();
  }

  /** Indoors what is asked for is kept; elsewhere the middle of what is foretold. */
  private static OptionalDouble expected(Task task, LocalDate day, Facts now) {
    Optional<Quantity> kept =
        task.place()
            .filter(where -> where == Task.Where.INDOORS)
            .flatMap(any -> task.weather())
            .flatMap(Task.Weather::above);
    if (kept.isPresent()) {
      return OptionalDouble.of(kept.get().in(Unit.CELSIUS).amount().doubleValue());
    }
    return Outlook.row(day, now).stream().mapToDouble(ResinPace::middle).findFirst();
  }

  private static double middle(ForecastDay row) {
    return (row.low().doubleValue() + row.high().doubleValue()) / 2;
  }

  private static List<Material> materials(Task task, Ledger ledger) {
    List<Material> all = new ArrayList<>();
    TakeOff.of(task, ledger).lines().stream()
        .flatMap(line -> ledger.material(line.material()).stream())
        .forEach(all::add);
    for (Task.Use use : task.uses()) {
      Stream.concat(
              use.material().stream(),
              use.item().flatMap(ledger::kitItem).flatMap(KitItem::material).stream())
          .flatMap(ref -> ledger.material(ref).stream())
          .forEach(all::add);
    }
    return all.stream().distinct().toList();
  }

  private static Optional<ResinPace> of(Material resin, double actual) {
    Optional<Double> stated =
        property(resin, MaterialProperty.AT_TEMPERATURE)
            .map(q -> q.in(Unit.CELSIUS).amount().doubleValue())
            .filter(at -> Math.abs(at - actual) <= REACH);
    Optional<Duration> cure = time(resin, MaterialProperty.CURE);
    if (stated.isEmpty() || cure.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new ResinPace(
            resin, stated.get(), actual, cure.get(), time(resin, MaterialProperty.POT_LIFE)));
  }

  private static Optional<Quantity> property(Material resin, MaterialProperty property) {
    return Optional.ofNullable(resin.properties().get(property));
  }

  private static Optional<Duration> time(Material resin, MaterialProperty property) {
    return property(resin, property)
        .map(quantity -> Duration.ofMinutes(quantity.in(Unit.MINUTE).amount().longValue()));
  }

  /** The cure at the temperature expected. */
  public Duration cureThen() {
    return CureRate.scaled(cure, stated, actual);
  }

  /** The pot life at the temperature expected. */
  public Optional<Duration> potLifeThen() {
    return potLife.map(life -> CureRate.scaled(life, stated, actual));
  }

  /** Whether it may not go off at all. */
  public boolean mayStop() {
    return CureRate.mayStop(actual);
  }
}
