package kitwright.report.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Verdict;
import kitwright.choice.Choice;
import kitwright.choice.Dominated;
import kitwright.choice.Strength;
import kitwright.choice.Taken;
import kitwright.choice.Timing;
import kitwright.choice.Turning;
import kitwright.choice.WayOut;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.value.Decimal;
import kitwright.value.Money;
import kitwright.value.ThreePoint;

/** The ways out of a shortage in words: a row a measure, then what does not fit into a table. */
public final class WaysTold {
  /**
   * A row of the table.
   *
   * @param cells one a way out, in their order
   */
  public record Line(String name, List<String> cells) {
    public Line {
      cells = List.copyOf(cells);
    }
  }

  private final Choice choice;

  private final Ledger ledger;

  private WaysTold(Choice choice, Ledger ledger) {
    this.choice = choice;
    this.ledger = ledger;
  }

  public static WaysTold of(Choice choice, Ledger ledger) {
    return new WaysTold(choice, ledger);
  }

  /** What is compared, side by side. */
  public List<Line> lines() {
    return List.of(
        line("cash now", way -> way.outlay().now().map(Say::money).orElse("not said")),
        line("cost in all", way -> way.outlay().cost().map(WaysTold::range).orElse("not said")),
        line("total forecast", way -> way.outlay().forecast().map(Say::money).orElse("not known")),
        line("may be claimed", way -> unlessNone(way.outlay().claimable())),
        line("own hours", way -> hours(way)),
        line(
            "own hours valued at",
            way ->
                way.outlay().hoursWorth().map(WaysTold::unlessNone).orElse("no value of an hour")),
        line("arrives", WaysTold::here),
        line("delays the work by", way -> timed(way, held -> Say.days(held.days()))),
        line("float used", way -> timed(way, held -> days(held.floatUsed()))),
        line(
            "work ends",
            way -> way.timing().launch().map(day -> day.on().toString()).orElse("not known")),
        line(
            "ends later by",
            way -> way.timing().launch().map(day -> Say.days(day.later())).orElse("not known")),
        line("strength", WaysTold::strength),
        line("weight, built over drawn", WaysTold::mass),
        line("signatures", WaysTold::signatures));
  }

  private Line line(String name, Function<WayOut, String> cell) {
    return new Line(name, choice.ways().stream().map(cell).toList());
  }

  private static String range(ThreePoint<Money> cost) {
    return cost.isFixed()
        ? Say.money(cost.likely())
        : Say.amount(cost.low()) + "–" + Say.money(cost.high());
  }

  private static String unlessNone(Money money) {
    return money.signum() == 0 ? Cells.NONE : Say.money(money);
  }

  private static String hours(WayOut way) {
    return way.outlay().hours().signum() == 0 ? Cells.NONE : Decimal.print(way.outlay().hours());
  }

  private static String timed(WayOut way, Function<Timing.Held, String> say) {
    return way.timing().launch().isEmpty()
        ? "not known"
        : way.timing().held().map(say).orElse(Cells.NONE);
  }

  private static String here(WayOut way) {
    return way.option().way() == Shortage.Way.DO_WITHOUT
        ? "nothing has to come"
        : way.timing().arrives().map(Object::toString).orElse("not known");
  }

  private static String days(double days) {
    return String.format(Locale.ROOT, "%.1f d", days);
  }

  private static String strength(WayOut way) {
    if (way.option().way() == Shortage.Way.DO_WITHOUT) {
      return "nothing in its place";
    }
    return way.strength()
        .map(
            strength ->
                strength.verdict().map(WaysTold::verdict).orElse("not assessed")
                    + (strength.margin().isPresent()
                        ? " " + Print.margin(strength.margin().getAsDouble())
                        : ""))
        .orElse(way.option().substitution().isPresent() ? "not known" : "as drawn");
  }

  private static String verdict(Verdict verdict) {
    return switch (verdict.outcome()) {
      case PASS -> "passes";
      case FAIL -> "fails";
      case CANNOT_TELL -> "cannot be told";
    };
  }

  private static String mass(WayOut way) {
    return way.strength()
        .map(Strength::mass)
        .filter(mass -> mass.isPresent())
        .map(mass -> String.format(Locale.ROOT, "%.2f", mass.getAsDouble()))
        .orElse(Cells.NONE);
  }

  private static String signatures(WayOut way) {
    return way.signing()
        .map(signing -> signing.isDone() ? agreed(way) : "not signed")
        .orElse(Cells.NONE);
  }

  private static String agreed(WayOut way) {
    return way.option().way() == Shortage.Way.DO_WITHOUT ? "agreed" : "signed";
  }

  /** What does not fit into the table, each a sentence that begins with a way's name. */
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    for (WayOut way : choice.ways()) {
      details(way).forEach(detail -> notes.add(way.name() + ": " + detail + "."));
    }
    choice.dominated().forEach(each -> notes.add(beaten(each)));
    return notes;
  }

  private List<String> details(WayOut way) {
    List<String> details = new ArrayList<>();
    way.option().from().ifPresent(from -> details.add("from " + ledger.nameOf(from.id())));
    way.option().note().ifPresent(details::add);
    way.option()
        .arrives()
        .filter(day -> way.timing().arrives().isEmpty())
        .map(day -> "the day that it says, " + Say.day(day) + ", has passed; ask for a new one")
        .ifPresent(details::add);
    way.timing()
        .rest()
        .map(rest -> "leaves " + Say.qty(rest) + " missing, and nobody says when that comes")
        .ifPresent(details::add);
    way.timing().held().map(WaysTold::held).ifPresent(details::add);
    way.strength()
        .flatMap(Strength::governing)
        .ifPresent(measure -> details.add("nearest to its limit is the " + measure));
    signing(way).ifPresent(details::add);
    way.taken().forEach(taken -> details.add(taken(taken)));
    return details;
  }

  private static String held(Timing.Held held) {
    return "delays “"
        + held.what()
        + "” by "
        + Say.days(held.days())
        + ", uses "
        + String.format(Locale.ROOT, "%.1f", held.floatUsed())
        + " working days of its float and leaves "
        + String.format(Locale.ROOT, "%.1f", held.floatLeft());
  }

  private static Optional<String> signing(WayOut way) {
    return way.signing()
        .filter(signing -> !signing.isDone())
        .map(
            signing ->
                (signing.signers().isEmpty()
                        ? "nobody may sign it yet"
                        : "must be signed by " + String.join(" or ", signing.signers()))
                    + signing.by().map(day -> " by " + day).orElse("")
                    + "; "
                    + String.join(", ", signing.lacks()));
  }

  private static String taken(Taken taken) {
    return "takes "
        + Say.so(taken.qty(), taken.what())
        + taken
            .left()
            .map(
                left ->
                    taken
                        .lacking()
                        .map(lack -> ", of which " + Say.qty(lack) + " are not here")
                        .orElse(", which leaves " + Say.qty(left)))
            .orElse(", and it is not known how much is here")
        + (taken.losers().isEmpty()
            ? ""
            : "; it was meant for " + Say.list(quoted(taken.losers())));
  }

  private static List<String> quoted(List<String> names) {
    return names.stream().map(name -> "“" + name + "”").toList();
  }

  private static String beaten(Dominated each) {
    return each.way()
        + " is beaten by "
        + each.by()
        + ", which is nowhere worse and "
        + each.reason()
        + ".";
  }

  /** What would have to change for a way to be ahead of the cheapest one, each a sentence. */
  public List<String> turning() {
    List<String> sentences = new ArrayList<>();
    choice
        .neededBy()
        .ifPresent(
            day ->
                sentences.add(
                    "What comes by "
                        + Say.day(day)
                        + " does not move the end of the work by itself."));
    choice.turning().stream()
        .filter(each -> !ifs(each).isEmpty())
        .forEach(each -> sentences.add(turning(each)));
    List<Turning> never = choice.turning().stream().filter(each -> ifs(each).isEmpty()).toList();
    if (!never.isEmpty()) {
      sentences.add(
          Say.list(never.stream().map(Turning::way).toList())
              + " would not beat "
              + never.get(0).against()
              + " even as a gift, in money and own hours.");
    }
    return sentences;
  }

  private static List<String> ifs(Turning each) {
    List<String> ifs = new ArrayList<>();
    each.lessCost()
        .ifPresent(money -> ifs.add("it were more than " + Say.money(money) + " cheaper"));
    each.belowHour()
        .ifPresent(money -> ifs.add("an hour of yours were worth less than " + Say.money(money)));
    each.aboveHour()
        .ifPresent(money -> ifs.add("an hour of yours were worth more than " + Say.money(money)));
    each.dayWorth()
        .ifPresent(
            money -> ifs.add("a day sooner at the end were worth more than " + Say.money(money)));
    return ifs;
  }

  private static String turning(Turning each) {
    return each.way()
        + " would beat "
        + each.against()
        + " if "
        + String.join(", or if ", ifs(each))
        + each.daysSooner()
            .map(days -> "; it would have to end " + Say.days(days) + " sooner to be no later")
            .orElse("")
        + ".";
  }

  /** What the builder has decided, or how to write it down. */
  public String decision() {
    return choice
        .standing()
        .shortage()
        .decided()
        .map(
            made ->
                "Decided on "
                    + Say.day(made.on())
                    + " by "
                    + made.by().id()
                    + ": "
                    + made.option()
                    + made.why().map(why -> ", since " + why).orElse("")
                    + ".")
        .orElse(
            "Not decided. The builder decides, and writes into the shortage: decided: {option: …,"
                + " on: …, by: …, why: …}");
  }
}
