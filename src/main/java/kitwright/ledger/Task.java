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

/**
 * A piece of work.
 *
 * @param takes working time, as one duration or low, likely, high
 * @param after what must be finished before, with a lag where one is asked
 * @param unpacks the deliveries that it unpacks, and waits for
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
 * @param hazards what in it can hurt somebody, as far as it is stated
 * @param publicly what the public reads of it; nothing where nothing is said
 * @param allow words in what is public that look private and may stand
 */
public record Task(
    String id,
    String what,
    Optional<String> phase,
    ThreePoint<Quantity> takes,
    List<Link> after,
    List<Ref> unpacks,
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
    List<Hazard> hazards,
    Optional<String> publicly,
    List<String> allow,
    At at)
    implements Entry {
  /** Where work is done. */
  public enum Where {
    INDOORS,
    OUTDOORS
  }

  private static final String WAITS =
      "The task may not start before this is put right, and dates leave out what it names.";

  /** What must be finished before this task, and how long to wait after it. */
  public record Link(Ref task, Optional<Quantity> lag, At at) {
    static Link read(Keys k) {
      return new Link(
          k.key("task", "the task that must be finished before", "plane-the-hull")
              .unknown(WAITS)
              .ref(Kind.TASKS),
          k.key("lag", "how long to wait after it", "2 d")
              .between("0 d", "52 w")
              .maybeMeasure(Unit.DAY, Dimension.TIME),
          k.at());
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
    static Use read(Keys k) {
      Use use =
          new Use(
              k.key("item", "an item of the kit that it needs", "plank")
                  .unknown(WAITS)
                  .maybeRef(Kind.KIT),
              k.key("stock", "stock that it needs", "oak-plank")
                  .unknown(WAITS)
                  .maybeRef(Kind.STOCK),
              k.key("material", "a material that it needs, wherever it comes from", "epoxy-slow")
                  .unknown(WAITS)
                  .maybeRef(Kind.MATERIALS),
              k.key("qty", "how much of it", "4 each").maybeQuantity(),
              k.key(
                      "section",
                      "a section that is laid over an area or a length, from which the materials"
                          + " are worked out",
                      "hull-skin")
                  .unknown(WAITS)
                  .maybeRef(Kind.SECTIONS),
              k.key("area", "the area it is laid over", "6 m2")
                  .between("0 m2", "1000 m2")
                  .maybeMeasure(Unit.M2, Dimension.AREA),
              k.key("length", "the length it is laid over", "4 m")
                  .between("0 m", "10000 m")
                  .maybeMeasure(Unit.M, Dimension.LENGTH),
              k.key("waste", "the share lost beyond what is needed", "15 %").maybeShare(),
              k.at());
      use.judgeShape(k);
      return use;
    }

    private void judgeShape(Keys k) {
      int named =
          (int)
              List.of(item, stock, material, section).stream().filter(Optional::isPresent).count();
      if (k.isSound() && named != 1) {
        k.fault(
            "value-unreadable",
            at.record(),
            "A use names " + named + " things.",
            "Name exactly one of item, stock, material or section.");
      } else if (k.isSound() && section.isEmpty() && qty.isEmpty()) {
        k.fault(
            "key-missing",
            at.record(),
            "A use says what, but not how much.",
            "Add “qty: …” with its unit.");
      } else if (k.isSound() && section.isPresent() && area.isEmpty() == length.isEmpty()) {
        k.fault(
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
    static Weather read(Keys k) {
      return new Weather(
          k.key("dry", "so many dry days in a row", "2 d")
              .between("0 d", "30 d")
              .maybeMeasure(Unit.DAY, Dimension.TIME),
          k.key("above", "at least this warm, during the work and its cure", "10 C")
              .between("0 C", "40 C")
              .maybeMeasure(Unit.CELSIUS, Dimension.TEMPERATURE),
          k.key("dew-margin", "so far above the dew point", "3 K")
              .between("0 K", "15 K")
              .maybeMeasure(Unit.KELVIN_DIFFERENCE, Dimension.TEMPERATURE_DIFFERENCE),
          k.at());
    }
  }

  static Task read(Keys k) {
    return new Task(
        k.id("lay-sole"),
        k.key("what", "what is to be done", "Lay the cabin sole").text(),
        k.key("phase", "the part of the build it belongs to", "interior").maybeText(),
        k.key("takes", "working time: one duration, or low, likely, high", "[1 d, 2 d, 4 d]")
            .guess(Unit.DAY, Dimension.TIME),
        k.key("after", "tasks that must be finished before", "[plane-the-hull]")
            .each("task", Link::read),
        k.key("unpacks", "deliveries that it unpacks, and waits for", "[delivery-2026-02-09-first]")
            .unknown(WAITS)
            .refs(Kind.DELIVERIES),
        k.key("uses", "what it needs", "[{item: plank, qty: 4 each}]").each(Use::read),
        k.key("tools", "borrowed tools that it needs", "[jigsaw]")
            .unknown(WAITS)
            .refs(Kind.BORROWED),
        k.key("who", "the people it needs", "[me]").unknown(WAITS).refs(Kind.PARTIES),
        k.key("place", "where it is done", "indoors").maybeChoice(Where.class),
        k.key("weather", "what it asks of the weather", "{dry: 2 d, above: 10 C, dew-margin: 3 K}")
            .maybeGroup(Weather::read),
        k.key(
                "wait",
                "time after the work, nights and weekends included, before anything may follow",
                "18 h")
            .between("0 h", "8 w")
            .maybeMeasure(Unit.HOUR, Dimension.TIME),
        k.key("budget", "the budget line that it earns", "timber").maybeRef(Kind.BUDGET),
        k.key("started", "the day it was started on", "2026-02-18").maybeHappened(),
        k.key("finished", "the day it was finished", "2026-02-21")
            .notBefore("started")
            .maybeHappened(),
        k.key("progress", "the share done, where the log does not tell", "40 %").maybeShare(),
        k.key("withdrawn", "the day it was given up", "2026-03-01").maybeHappened(),
        k.key("grade", "how much depends on what it closes up", "structural")
            .maybeChoice(Grade.class),
        k.key(
                "hazards",
                "what in it can hurt somebody; each brings its caution, whatever the task is"
                    + " called",
                "[resin, lifting]")
            .choices(Hazard.class),
        k.key(
                "public",
                "what the public reads of it, such as its title; without this the public is told"
                    + " no words of it",
                "Lay the cabin sole")
            .maybeText(),
        k.key("allow", "words in what is public that look private and may stand", "[Pell]").texts(),
        k.at());
  }

  @Override
  public Kind kind() {
    return Kind.TASKS;
  }
}
