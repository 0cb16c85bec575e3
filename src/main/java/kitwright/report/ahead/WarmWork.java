package kitwright.report.ahead;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.ForecastDay;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.takeoff.Line;
import kitwright.takeoff.TakeOff;
import kitwright.value.Quantity;
import kitwright.value.Unit;
import kitwright.weather.CureRate;

/** Notes on indoor work that must be kept warm, and how cold slows its resin. */
public final class WarmWork {
  private WarmWork() {}

  public static List<String> all(Outlook outlook) {
    List<String> notes = new ArrayList<>();
    Set<String> resins = new LinkedHashSet<>();
    for (Planned planned : outlook.tasks()) {
      Task task = Plan.on(outlook.now()).task(planned.id()).orElseThrow();
      Optional<Double> above =
          task.weather()
              .flatMap(Task.Weather::above)
              .map(least -> least.in(Unit.CELSIUS).amount().doubleValue());
      if (above.isPresent() && task.place().filter(p -> p == Task.Where.INDOORS).isPresent()) {
        coldest(outlook, planned)
            .filter(low -> low < above.get())
            .ifPresent(low -> notes.add(heat(task, above.get(), low)));
        TakeOff.of(task, outlook.now().ledger()).lines().stream()
            .filter(line -> line.role() == Line.Role.RESIN)
            .flatMap(line -> outlook.now().ledger().material(line.material()).stream())
            .flatMap(resin -> slowed(resin, above.get()).stream())
            .forEach(resins::add);
      }
    }
    notes.addAll(resins);
    if (!resins.isEmpty()) {
      notes.add(CureRate.CAUTION);
    }
    return notes;
  }

  private static Optional<Double> coldest(Outlook outlook, Planned planned) {
    return kitwright.weather.Outlook.rows(outlook.now()).stream()
        .filter(day -> !day.day().isBefore(Plan.on(outlook.now()).workableOn(planned.id())))
        .filter(day -> !day.day().isAfter(planned.ready().toLocalDate()))
        .map(ForecastDay::low)
        .min(BigDecimal::compareTo)
        .map(BigDecimal::doubleValue);
  }

  private static String heat(Task task, double above, double low) {
    return String.format(
        Locale.ROOT,
        "“%s” wants at least %.0f °C indoors through work and cure; outside it falls to %.0f °C:"
            + " keep it heated.",
        task.what(),
        above,
        low);
  }

  private static Optional<String> slowed(Material resin, double actual) {
    Optional<Quantity> stated =
        Optional.ofNullable(resin.properties().get(MaterialProperty.AT_TEMPERATURE));
    Optional<Duration> cure = time(resin, MaterialProperty.CURE);
    Optional<Duration> pot = time(resin, MaterialProperty.POT_LIFE);
    if (stated.isEmpty() || cure.isEmpty()) {
      return Optional.empty();
    }
    double at = stated.get().in(Unit.CELSIUS).amount().doubleValue();
    if (Math.abs(at - actual) > 30) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "%s: cure %s at %.0f °C becomes about %s at %.0f °C%s.",
            resin.what().orElse(resin.id()),
            hours(cure.get()),
            at,
            hours(CureRate.scaled(cure.get(), at, actual)),
            actual,
            pot.map(
                    life ->
                        ", pot life "
                            + life.toMinutes()
                            + " min becomes "
                            + CureRate.scaled(life, at, actual).toMinutes()
                            + " min")
                .orElse("")));
  }

  private static Optional<Duration> time(Material resin, MaterialProperty property) {
    return Optional.ofNullable(resin.properties().get(property))
        .map(quantity -> Duration.ofMinutes(quantity.in(Unit.MINUTE).amount().longValue()));
  }

  static String hours(Duration time) {
    return Math.round(time.toMinutes() / 60.0) + " h";
  }
}
