package kitwright.openmatter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Loan;
import kitwright.ledger.Party;
import kitwright.loan.AtHand;
import kitwright.loan.LoanStanding;
import kitwright.loan.Need;
import kitwright.network.Plan;
import kitwright.network.Planned;
import kitwright.network.WeatherBound;
import kitwright.value.Days;
import kitwright.weather.Outlook;
import kitwright.weather.Window;

/**
 * Tools that work needs and that are not here, or longer than agreed, and work that waits for the
 * weather.
 */
final class GroundMatters {
  private final Facts now;
  private final Needed needed;

  GroundMatters(Facts now, Needed needed) {
    this.now = now;
    this.needed = needed;
  }

  Stream<OpenMatter> tools() {
    return LoanStanding.on(now).stream()
        .map(loan -> Need.of(loan, Plan.on(now)))
        .filter(Need::isTooLong)
        .map(this::tool);
  }

  private OpenMatter tool(Need need) {
    LoanStanding loan = need.loan();
    LocalDate due = loan.loan().due().orElseThrow();
    boolean late = loan.state() == LoanStanding.State.OVERDUE;
    String lender = loan.lender().map(Party::name).orElse("the lender");
    String until =
        need.until()
            .map(day -> ", needed until " + Days.named(day) + " at the earliest")
            .orElse("");
    return new OpenMatter(
        OpenMatter.Sort.TOOL,
        loan.loan().named(),
        loan.loan().tool() + ": due " + Days.named(due) + (late ? ", overdue" : "") + until,
        needed.of(need.beyondDue(Plan.on(now))),
        late && need.tasks().isEmpty() ? "you" : lender,
        need.tasks().isEmpty()
            ? "give it back"
            : "ask "
                + lender
                + " to leave it with you until "
                + Days.named(need.until().orElseThrow())
                + ", or do the work sooner",
        Optional.of(late ? now.day() : due),
        Optional.empty());
  }

  /** Tools that went back, or that nobody has written down, each with the work that needs them. */
  Stream<OpenMatter> absent() {
    Map<String, List<String>> tasks = new LinkedHashMap<>();
    for (Planned planned : Plan.on(now).ahead()) {
      Plan.on(now).task(planned.id()).stream()
          .flatMap(task -> AtHand.lacking(task, now).stream())
          .forEach(tool -> tasks.computeIfAbsent(tool, any -> new ArrayList<>()).add(planned.id()));
    }
    return tasks.entrySet().stream().map(each -> absent(each.getKey(), each.getValue()));
  }

  private OpenMatter absent(String tool, List<String> tasks) {
    Optional<Loan> last = AtHand.last(tool, now);
    return new OpenMatter(
        OpenMatter.Sort.TOOL,
        last.map(Loan::named).orElse("task " + tasks.get(0)),
        tool + ": not here",
        needed.of(tasks),
        "you",
        last.map(
                loan ->
                    "ask "
                        + now.ledger().nameOf(loan.from().id())
                        + " for it once more, or get another")
            .orElse("get one and write it down under “borrowed”, or correct its name"),
        Optional.empty(),
        Optional.empty());
  }

  /** Damage to a borrowed tool that is owed to its lender. */
  Stream<OpenMatter> repairs() {
    return now.ledger().borrowed().stream()
        .flatMap(loan -> loan.repair().stream().map(repair -> repair(loan, repair)))
        .flatMap(Optional::stream);
  }

  private Optional<OpenMatter> repair(Loan loan, Loan.Repair repair) {
    if (!repair.isOwed()) {
      return Optional.empty();
    }
    String cost = repair.cost().map(range -> ", about " + range.likely()).orElse("");
    return Optional.of(
        new OpenMatter(
            OpenMatter.Sort.TOOL,
            loan.named(),
            loan.tool()
                + ": "
                + repair.what()
                + ", owed to "
                + now.ledger().nameOf(loan.from().id()),
            Optional.empty(),
            "you",
            "make it good" + cost + ", and write the day under “done”",
            repair.by().or(loan::due),
            Optional.empty()));
  }

  Stream<OpenMatter> weather() {
    LocalDate last = Outlook.on(now).lastDay().orElse(now.day());
    return WeatherBound.by(last, now).stream().filter(bound -> !bound.isFree()).map(this::weather);
  }

  private OpenMatter weather(WeatherBound bound) {
    Window window = bound.window();
    return new OpenMatter(
        OpenMatter.Sort.WEATHER,
        bound.task().named(),
        window.fits()
            ? "no weather for it before " + Days.named(window.first())
            : "no weather for it in the forecast; the best window lacks "
                + Days.told(window.lacking()),
        needed.of(List.of(bound.task().id())),
        "the weather",
        window.fits()
            ? "keep "
                + Days.named(window.first())
                + " to "
                + Days.named(window.last())
                + " free for it"
            : "do indoor work, and look at the next forecast",
        Optional.empty(),
        window.fits() ? Optional.of(window.first()) : Optional.empty());
  }
}
