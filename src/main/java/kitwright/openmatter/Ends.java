package kitwright.openmatter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.loan.Clash;
import kitwright.network.Crates;
import kitwright.network.Plan;
import kitwright.network.Schedule;
import kitwright.network.WeatherBound;
import kitwright.network.Weathered;
import kitwright.shortage.LookAhead;
import kitwright.value.Days;
import kitwright.weather.Outlook;

/**
 * When the build ends, and what each of the dates leaves out. The text of the look-ahead and its
 * report ask here.
 *
 * @param alone by the order of work, with the crates that it unpacks and the days on which its
 *     people can come
 * @param paced with material as promised, or ordered today where nobody sends it
 * @param weather the same with the weather; empty where no open task asks anything of it, or
 *     nothing is known of the weather of any
 * @param leftOut what is in none of these dates, each a sentence without its full stop
 */
public record Ends(
    Schedule alone, Schedule paced, Optional<Weathered> weather, List<String> leftOut) {
  private static final Facts.Fact<Ends> FACT = Ends::work;

  public Ends {
    leftOut = List.copyOf(leftOut);
  }

  /** The ends as seen from the day. */
  public static Ends on(Facts day) {
    return FACT.on(day);
  }

  private static Ends work(Facts day) {
    Schedule paced = LookAhead.on(day).paced();
    Optional<Weathered> weather = weather(paced, day);
    return new Ends(
        Plan.on(day).schedule(),
        paced,
        weather.filter(each -> !each.byForecast().isEmpty() || !each.byClimate().isEmpty()),
        leftOut(day, weather));
  }

  /** The dates with all in them that is known. */
  public Schedule last() {
    return weather.map(Weathered::schedule).orElse(paced);
  }

  /** The last day, by all that is known; empty where work that nobody can read may come later. */
  public Optional<LocalDate> told(Facts day) {
    return unread(day).isEmpty() ? Optional.of(last().lastDay()) : Optional.empty();
  }

  /** Other dates, such as those of a way out, with the weather in them as it is in these. */
  public static Schedule weathered(Schedule dry, Facts day) {
    return weather(dry, day).map(Weathered::schedule).orElse(dry);
  }

  /** The weather laid over some dates; empty where no open task asks anything of it. */
  private static Optional<Weathered> weather(Schedule dry, Facts day) {
    boolean asked =
        Plan.on(day).ahead().stream()
            .flatMap(planned -> Plan.on(day).task(planned.id()).stream())
            .anyMatch(task -> WeatherBound.need(task).isPresent());
    return asked ? Optional.of(Weathered.of(dry, day)) : Optional.empty();
  }

  private static List<String> leftOut(Facts day, Optional<Weathered> weather) {
    List<String> out = new ArrayList<>(unread(day));
    int stopped = LookAhead.on(day).stopped().size();
    if (stopped > 0) {
      out.add(
          tasks(stopped, "lacks", "lack")
              + " something that nobody sends and whose time to get it nobody has written down");
    }
    long crates =
        Plan.on(day).ahead().stream()
            .flatMap(planned -> Plan.on(day).task(planned.id()).stream())
            .filter(task -> Crates.isForNoDay(task, day))
            .count();
    if (crates > 0) {
      out.add(
          tasks((int) crates, "unpacks", "unpack")
              + " a delivery of which nobody says when it comes");
    }
    Clash.on(day).forEach(clash -> out.add(clash.words(day)));
    int unreckoned = weather.map(each -> each.leftOut().size()).orElse(0);
    if (unreckoned > 0) {
      out.add(
          "weather not reckoned for "
              + tasks(unreckoned, "", "").strip()
              + forecast(day)
              + " the build states no “climate” for "
              + (unreckoned == 1 ? "its" : "their")
              + " months");
    }
    return out;
  }

  private static String forecast(Facts day) {
    Optional<LocalDate> last = Outlook.on(day).lastDay();
    if (last.isEmpty()) {
      return ", since nothing is foretold and";
    }
    return last.get().isBefore(day.day())
        ? ", since the forecast ended on " + Days.named(last.get()) + " and"
        : " beyond the forecast, since";
  }

  /** The work that nobody can read, each a sentence without its full stop. */
  public static List<String> unread(Facts day) {
    return day.ledger().unread().stream()
        .filter(each -> each.mayBe(Kind.TASKS))
        .map(
            each ->
                each.kind().isPresent()
                    ? each.named() + " cannot be read"
                    : each.named() + " cannot be read, and may hold tasks")
        .toList();
  }

  private static String tasks(int count, String one, String many) {
    return count == 1 ? "1 task " + one : count + " tasks " + many;
  }
}
