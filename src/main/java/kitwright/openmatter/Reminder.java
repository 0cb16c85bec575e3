package kitwright.openmatter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.ledger.Build;
import kitwright.ledger.Facts;
import kitwright.ledger.Party;
import kitwright.loan.LoanStanding;
import kitwright.network.Plan;
import kitwright.network.WeatherBound;
import kitwright.value.Days;

/**
 * A day on which a phone shall remind.
 *
 * @param key the same for the same matter of the same record in every telling, so that a calendar
 *     that knows it already moves it
 * @param first the day; of what is overdue, today
 * @param last the last day of it, the same where it is one day
 * @param title a few words
 * @param says what to do, and for what
 */
public record Reminder(String key, LocalDate first, LocalDate last, String title, String says) {

  /** Last days to act, tools to return, deliveries expected, weather, and the launch; by day. */
  public static List<Reminder> all(Facts now) {
    List<Reminder> all = new ArrayList<>();
    List<OpenMatter> matters =
        OpenMatters.on(now).all().stream()
            .filter(OpenMatter::isDated)
            .filter(matter -> matter.sort() != OpenMatter.Sort.WEATHER)
            .toList();
    matters.forEach(matter -> all.add(act(matter, now.day())));
    Set<String> told = matters.stream().map(OpenMatter::record).collect(Collectors.toSet());
    Stream.of(
            tools(now, told), deliveries(now), windows(now), off(now), launch(now.ledger().build()))
        .flatMap(each -> each)
        .forEach(all::add);
    all.sort(Comparator.comparing(Reminder::first).thenComparing(Reminder::key));
    return all;
  }

  private static Reminder on(String key, LocalDate day, String title, String says) {
    return new Reminder(key, day, day, title, says);
  }

  private static Reminder act(OpenMatter matter, LocalDate today) {
    boolean late = matter.lastDay().isBefore(today);
    String stops = matter.stop().map(stop -> " It stops “" + stop.what() + "”.").orElse("");
    return on(
        (matter.sort() == OpenMatter.Sort.COUNT ? "count " : "act ") + matter.record(),
        late ? today : matter.lastDay(),
        (late ? "Overdue: " : "Last day: ")
            + (matter.waitsFor().equals("you") ? "" : matter.waitsFor() + ": ")
            + shortly(matter.next())
            + " ("
            + matter.record()
            + ")",
        matter.what()
            + ". Next: "
            + matter.next()
            + ". Waits for "
            + matter.waitsFor()
            + "."
            + stops);
  }

  /** What stands first of what to do next; a phone shows no more. */
  private static String shortly(String next) {
    int more = next.indexOf("; ");
    return more < 0 ? next : next.substring(0, more);
  }

  /** Of tools that are no open matter yet. */
  private static Stream<Reminder> tools(Facts now, Set<String> told) {
    return LoanStanding.on(now).stream()
        .filter(loan -> !loan.isBack() && !told.contains(loan.loan().named()))
        .flatMap(loan -> loan.loan().due().map(due -> tool(loan, due, now.day())).stream());
  }

  private static Reminder tool(LoanStanding loan, LocalDate due, LocalDate today) {
    String lender = loan.lender().map(Party::name).orElse("the lender");
    String contact = loan.lender().flatMap(Party::contact).map(at -> ", " + at).orElse("");
    return on(
        "due " + loan.loan().named(),
        due.isBefore(today) ? today : due,
        "Give back: " + loan.loan().tool(),
        "To " + lender + contact + ", due on " + Days.named(due) + ".");
  }

  private static Stream<Reminder> deliveries(Facts now) {
    return now.ledger().deliveries().stream()
        .filter(each -> each.received().isEmpty())
        .filter(each -> each.expected().filter(day -> !day.isBefore(now.day())).isPresent())
        .map(
            each ->
                on(
                    "expected " + each.named(),
                    each.expected().orElseThrow(),
                    "Delivery expected: " + each.id(),
                    "Be there, and count it the same day."));
  }

  private static Stream<Reminder> windows(Facts now) {
    LocalDate last = Plan.on(now).horizon();
    return WeatherBound.by(last, now).stream()
        .filter(bound -> bound.window().fits())
        .map(
            bound ->
                new Reminder(
                    "weather " + bound.task().named(),
                    bound.window().first(),
                    bound.until(),
                    "Weather for: " + bound.task().what(),
                    "The first window in the forecast; look at the forecast again before you"
                        + " begin."));
  }

  /** Days off that bear a name, as far as they are not over. */
  private static Stream<Reminder> off(Facts now) {
    return now.ledger().build().off().stream()
        .filter(off -> off.name().isPresent() && !off.days().last().isBefore(now.day()))
        .map(
            off ->
                new Reminder(
                    "off " + off.days().first(),
                    off.days().first(),
                    off.days().last(),
                    "No work: " + off.name().orElseThrow(),
                    "Nothing is planned on these days."));
  }

  private static Stream<Reminder> launch(Build build) {
    return build.launch().stream()
        .map(
            day ->
                on("launch", day, "Launch: " + build.name(), "The day she shall be in the water."));
  }
}
