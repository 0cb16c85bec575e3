package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Dimension;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.ThreePoint;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * A piece of work.
 *
 * @param takes working time, as one duration or low, likely, high
 * @param after what must be finished before, with a lag where one is asked
 * @param uses what it needs: materials by quantity, or a section over an area or a length
 * @param tools borrowed tools it needs
 * @param who the people it needs
 * @param place where it is done
 * @param weather what it asks of the weather
 * @param cure elapsed time after the work, nights and weekends included, before anything may follow
 * @param budget the budget line that it earns
 * @param progress share done, 0 to 1, as last written in the task itself
 * @param withdrawn the day it was given up
 * @param grade how much hangs on what it closes up
 */
public record Task(
    String id,
    String what,
    Optional<String> phase,
    ThreePoint<Quantity> takes,
    List<Link> after,
    List<Use> uses,
    List<Ref> tools,
    List<Ref> who,
    Optional<Where> place,
    Optional<Weather> weather,
    Optional<Quantity> cure,
    Optional<Ref> budget,
    Optional<LocalDate> started,
    Optional<LocalDate> finished,
    Optional<BigDecimal> progress,
    Optional<LocalDate> withdrawn,
    Optional<Grade> grade,
    At at)
    implements Entry {
  /** Where work is done. */
  public enum Where {
    INDOORS,
    OUTDOORS
  }

  /** What must be finished before this task, and how long to wait after it. */
  public record Link(Ref task, Optional<Quantity> lag, At at) {
    static Link read(Fields f) {
      return new Link(f.ref("task"), f.maybeMeasure("lag", Unit.DAY, Dimension.TIME), At.of(f));
    }
  }

  /**
   * What a task needs. Either an item, stock or material with a quantity, or a section that is laid
   * over an area or a length, from which the materials are worked out.
   *
   * @param waste share lost beyond the net need, 0 to 1
   */
  public record Use(
      Optional<Ref> item,
      Optional<Ref> stock,
      Optional<Ref> material,
      Optional<Quantity> qty,
      Optional<Ref> section,
      Optional<Quantity> area,
      Optional<Quantity> length,
      Optional<BigDecimal> waste,
      At at) {
    static Use read(Fields f) {
      Use use =
          new Use(
              f.maybeRef("item"),
              f.maybeRef("stock"),
              f.maybeRef("material"),
              f.maybeQuantity("qty", Unit.EACH),
              f.maybeRef("section"),
              f.maybeMeasure("area", Unit.M2, Dimension.AREA),
              f.maybeMeasure("length", Unit.M, Dimension.LENGTH),
              f.maybeShare("waste"),
              At.of(f));
      use.judgeShape(f);
      return use;
    }

    private void judgeShape(Fields f) {
      int named =
          (int)
              List.of(item, stock, material, section).stream().filter(Optional::isPresent).count();
      if (f.isSound() && named != 1) {
        f.fault(
            "value-unreadable",
            at.record(),
            "A use names " + named + " things.",
            "Name exactly one of item, stock, material or section.");
      } else if (f.isSound() && section.isEmpty() && qty.isEmpty()) {
        f.fault(
            "key-missing",
            at.record(),
            "A use says what, but not how much.",
            "Add “qty: …” with its unit.");
      } else if (f.isSound() && section.isPresent() && area.isEmpty() == length.isEmpty()) {
        f.fault(
            "key-missing",
            at.record(),
            "A section is used over an area or over a length.",
            "Give exactly one: “area: 6 m2” or “length: 4 m”.");
      }
    }

    /** How much is used and wasted of what it names. */
    public Optional<Quantity> gross() {
      return qty.map(net -> net.times(BigDecimal.ONE.add(waste.orElse(BigDecimal.ZERO))));
    }

    /** What is used, by name, if it is not a section. */
    public Optional<Ref> thing() {
      return item.or(() -> stock).or(() -> material);
    }
  }

  /**
   * What the work asks of the weather.
   *
   * @param dry so many dry days in a row
   * @param above at least this warm during work and cure
   * @param dewMargin so far above the dew point
   */
  public record Weather(
      Optional<Quantity> dry, Optional<Quantity> above, Optional<Quantity> dewMargin, At at) {
    static Weather read(Fields f) {
      return new Weather(
          f.maybeMeasure("dry", Unit.DAY, Dimension.TIME),
          f.maybeMeasure("above", Unit.CELSIUS, Dimension.TEMPERATURE),
          f.maybeMeasure("dew-margin", Unit.KELVIN_DIFFERENCE, Dimension.TEMPERATURE_DIFFERENCE),
          At.of(f));
    }
  }

  private static ThreePoint<Quantity> takes(Fields f) {
    if (!f.has("takes")) {
      return ThreePoint.fixed(f.measure("takes", Unit.DAY, Dimension.TIME));
    }
    return f.maybeThreePoint("takes", text -> Quantity.parse(text, Unit.DAY, Dimension.TIME))
        .orElse(ThreePoint.fixed(Quantity.none(Unit.DAY)));
  }

  static Task read(Fields f) {
    return new Task(
        f.id(),
        f.text("what"),
        f.maybeText("phase"),
        takes(f),
        f.each("after", Link::read, "task"),
        f.each("uses", Use::read),
        f.refs("tools"),
        f.refs("who"),
        f.maybeChoice("place", Where.class),
        f.maybeGroup("weather", Weather::read),
        f.maybeMeasure("wait", Unit.HOUR, Dimension.TIME),
        f.maybeRef("budget"),
        f.maybeDay("started"),
        f.maybeDay("finished"),
        f.maybeShare("progress"),
        f.maybeDay("withdrawn"),
        f.maybeChoice("grade", Grade.class),
        At.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.TASKS;
  }
}
