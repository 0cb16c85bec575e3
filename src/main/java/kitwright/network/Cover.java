package kitwright.network;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How a need is met.
 *
 * @param need the need
 * @param draws what it takes, and from where
 * @param missing what nobody has and nobody sends; zero if all is covered
 * @param ordered when an order for what is missing can be there; empty if nothing is missing or
 *     nobody knows how long an order takes
 */
public record Cover(Need need, List<Draw> draws, BigDecimal missing, Optional<LocalDate> ordered) {
  /**
   * A part of a supply, taken for a need.
   *
   * @param supply where it comes from
   * @param amount how much
   */
  public record Draw(Supply supply, BigDecimal amount) {}

  public Cover {
    draws = List.copyOf(draws);
  }

  /** What is not there on the day: missing altogether, or still under way. */
  public BigDecimal shortOnTheDay() {
    return draws.stream()
        .filter(draw -> !draw.supply().isThereOn(need.on()))
        .map(Draw::amount)
        .reduce(missing, BigDecimal::add);
  }

  /** The day on which all of it is there, never before the need; empty if some is missing. */
  public Optional<LocalDate> readyOn() {
    return missing.signum() > 0 ? Optional.empty() : Optional.of(lastArrival());
  }

  /** The same, with an order for what is missing; empty if nobody knows how long that takes. */
  public Optional<LocalDate> readyIfOrdered() {
    return missing.signum() == 0
        ? readyOn()
        : ordered.map(day -> day.isAfter(lastArrival()) ? day : lastArrival());
  }

  private LocalDate lastArrival() {
    return draws.stream()
        .flatMap(draw -> draw.supply().arrives().stream())
        .filter(need.on()::isBefore)
        .max(Comparator.naturalOrder())
        .orElse(need.on());
  }
}
