package kitwright.shortage;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Kind;
import kitwright.network.Cover;
import kitwright.network.Supply;
import kitwright.value.Quantity;

/**
 * What a task needs of a thing, and what serves it.
 *
 * @param task id of the task
 * @param sums how a take-off came to it; empty where the task itself says how much
 */
public record Wanted(String task, Thing thing, Cover cover, List<String> sums) {
  public Wanted {
    sums = List.copyOf(sums);
  }

  /** The day on which the task can use it. */
  public LocalDate on() {
    return cover.need().on();
  }

  public Quantity qty() {
    return thing.qty(cover.need().amount());
  }

  /**
   * What it takes of the thing itself, not of what was put in its place; nor what it does without.
   */
  public Quantity itself() {
    BigDecimal others =
        cover.draws().stream()
            .filter(draw -> !isItself(draw.supply()))
            .map(Cover.Draw::amount)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return thing.qty(cover.need().amount().subtract(others));
  }

  /** Whether a supply is the thing: what a substitution takes for it has a name of its own. */
  static boolean isItself(Supply supply) {
    return supply.sureness() != Supply.Sureness.WAIVED
        && !supply.id().startsWith(Kind.SUBSTITUTIONS.word() + " ");
  }

  /** What nobody has and nobody sends. */
  public Quantity missing() {
    return thing.qty(cover.missing());
  }

  /** What is not there on the day: missing, or still under way. */
  public Quantity shortOnTheDay() {
    return thing.qty(cover.shortOnTheDay());
  }

  public boolean isShort() {
    return !shortOnTheDay().isNone();
  }

  /** What it takes of supplies that are still to come. */
  public List<Cover.Draw> toCome() {
    return cover.draws().stream().filter(draw -> draw.supply().arrives().isPresent()).toList();
  }

  /** What it takes of supplies that nobody has counted. */
  public Quantity uncounted() {
    return thing.qty(
        cover.draws().stream()
            .filter(draw -> draw.supply().sureness() == Supply.Sureness.UNCOUNTED)
            .map(Cover.Draw::amount)
            .reduce(BigDecimal.ZERO, BigDecimal::add));
  }

  /** Whether it takes something that this record brings, such as {@code delivery d-fourth}. */
  public boolean leansOn(String record) {
    return cover.draws().stream().anyMatch(draw -> draw.supply().id().equals(record));
  }

  /** The day on which all of it is there, ordered today where it must be; empty if nobody knows. */
  public Optional<LocalDate> readyOn() {
    return cover.missing().signum() > 0 && missing().isNone()
        ? Optional.of(on())
        : cover.readyIfOrdered();
  }
}
