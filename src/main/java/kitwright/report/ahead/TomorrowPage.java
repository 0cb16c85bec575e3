package kitwright.report.ahead;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.document.Cell;
import kitwright.document.Inline;
import kitwright.document.Slots;
import kitwright.document.Value;
import kitwright.ledger.ForecastDay;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Task;
import kitwright.loan.Clash;
import kitwright.network.Plan;
import kitwright.openmatter.OpenMatter;
import kitwright.openmatter.Readiness;
import kitwright.openmatter.ResinPace;
import kitwright.openmatter.WorkDay;
import kitwright.report.words.Cautions;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.shortage.LookAhead;
import kitwright.shortage.Wanted;
import kitwright.value.Ref;
import kitwright.value.Unit;
import kitwright.value.Word;
import kitwright.weather.CureRate;

/** One page for a working day: what to do first, what can go on, whom to ring, what must wait. */
public final class TomorrowPage {
  private static final int MOST_READY = 2;
  private static final int MOST_ACTS = 3;
  private static final int MOST_WAITING = 2;
  private static final int MOST_THINGS = 3;

  private final WorkDay day;
  private final Ledger ledger;
  private final Plan plan;

  private TomorrowPage(WorkDay day) {
    this.day = day;
    this.ledger = day.facts().ledger();
    this.plan = Plan.on(day.facts());
  }

  /** The page of a working day. */
  public static Sheet of(WorkDay day) {
    return new Sheet("tomorrow.md", "tomorrow", new TomorrowPage(day).slots());
  }

  private Slots slots() {
    Slots slots =
        Slots.none()
            .sentence("build", ledger.build().name())
            .value("day", Cells.spoken(day.day()))
            .value("weather", weather())
            .sentence("first", first());
    slots = list(slots, "ready", day.ready().stream().skip(1).map(this::ready), MOST_READY);
    slots = list(slots, "acts", acts(), MOST_ACTS);
    slots = list(slots, "waiting", day.waiting().stream().map(this::waiting), MOST_WAITING);
    return slots.list("cautions", Inline.texts(cautions()));
  }

  private static Slots list(Slots slots, String name, Stream<Inline> items, int most) {
    List<Inline> all = items.toList();
    List<Inline> shown = new ArrayList<>(all.subList(0, Math.min(most, all.size())));
    if (all.size() > most) {
      shown.add(Inline.text("and " + (all.size() - most) + " more"));
    }
    return slots.list(name, all, shown);
  }

  private Cell weather() {
    return day.forecast()
        .map(
            row ->
                Cell.text(
                        row.low().stripTrailingZeros().toPlainString()
                            + " to "
                            + row.high().stripTrailingZeros().toPlainString()
                            + " °C, "
                            + rain(row)
                            + ".")
                    .with("low", new Value.Figure(row.low()))
                    .with("high", new Value.Figure(row.high()))
                    .with("rain", Value.of(row.rain())))
        .orElseGet(() -> Cell.text("No forecast for the day."));
  }

  private static String rain(ForecastDay row) {
    return row.rain().isNone() ? "dry" : row.rain() + " of rain";
  }

  private String first() {
    if (day.ready().isEmpty()) {
      return "nothing can go on; see what must wait, and settle the first of it.";
    }
    Readiness first = day.ready().get(0);
    long left = plan.schedule().of(first.task().id()).total().wholeDays();
    String why =
        left <= 0
            ? "Each day it loses moves the end."
            : "Of what can go on it has the least float, " + Say.days(left) + ".";
    return first.task().what() + details(first) + ". " + why;
  }

  private Inline ready(Readiness each) {
    long left = plan.schedule().of(each.task().id()).total().wholeDays();
    return Inline.text(each.task().what() + details(each) + "; float " + Say.days(left));
  }

  /** People, place, material and tools, as far as the records tell. */
  private String details(Readiness each) {
    Task task = each.task();
    List<String> parts = new ArrayList<>();
    task.place()
        .filter(where -> where == Task.Where.OUTDOORS)
        .ifPresent(any -> parts.add("outdoors"));
    if (!each.people().isEmpty()) {
      parts.add("with " + Say.list(each.people().stream().map(this::reached).toList()));
    }
    List<Wanted> wanted =
        LookAhead.on(day.facts()).ofTask(task.id()).stream()
            .filter(want -> !want.itself().isNone())
            .toList();
    if (!wanted.isEmpty()) {
      String more = wanted.size() > MOST_THINGS ? " and more" : "";
      parts.add(
          "take "
              + wanted.stream()
                  .limit(MOST_THINGS)
                  .map(this::taken)
                  .collect(Collectors.joining(", "))
              + more);
    }
    if (!task.tools().isEmpty()) {
      parts.add(
          "tool "
              + task.tools().stream()
                  .flatMap(tool -> ledger.loan(tool).stream())
                  .map(loan -> tool(loan.tool(), each))
                  .distinct()
                  .collect(Collectors.joining(", ")));
    }
    warmth(task).ifPresent(parts::add);
    task.cure().ifPresent(wait -> parts.add("then " + wait + " to cure"));
    return parts.isEmpty() ? "" : ": " + String.join("; ", parts);
  }

  /** A tool, when it shall be back, and what else wants it. */
  private String tool(String tool, Readiness each) {
    String due =
        each.dueWhileAtWork(day.facts()).stream()
            .filter(back -> back.loan().tool().equals(tool))
            .map(back -> " (due back " + Say.dayAndMonth(back.due()) + ")")
            .collect(Collectors.joining());
    List<String> others =
        Clash.on(day.facts()).stream()
            .filter(clash -> clash.tool().equals(tool) && clash.tasks().contains(each.task().id()))
            .flatMap(clash -> clash.tasks().stream())
            .filter(task -> !task.equals(each.task().id()))
            .distinct()
            .map(task -> "“" + plan.name(task) + "”")
            .toList();
    return tool + due + also(others);
  }

  private static String also(List<String> others) {
    return switch (others.size()) {
      case 0 -> "";
      case 1 -> ", which " + others.get(0) + " needs too";
      default -> ", which " + others.size() + " other tasks need too";
    };
  }

  private static Optional<String> warmth(Task task) {
    return task.place()
        .filter(where -> where == Task.Where.INDOORS)
        .flatMap(any -> task.weather())
        .flatMap(Task.Weather::above)
        .map(
            least ->
                "keep it at "
                    + least.in(Unit.CELSIUS).amount().stripTrailingZeros().toPlainString()
                    + " °C or warmer, nights too");
  }

  private String taken(Wanted wanted) {
    String record = wanted.thing().record();
    Ref ref = new Ref(record.substring(record.lastIndexOf(' ') + 1), ledger.build().at().record());
    Optional<String> crate = ledger.kitItem(ref).flatMap(KitItem::crate);
    return wanted.thing().so(wanted.itself())
        + crate.map(name -> " (crate " + name + ")").orElse("");
  }

  private Stream<Inline> acts() {
    Stream<Inline> coming =
        day.deliveries().stream()
            .map(
                each ->
                    Inline.text(
                        "be there: delivery " + each.id() + " is expected; count it the same day"));
    Stream<Inline> back =
        day.due().stream()
            .map(
                each ->
                    Inline.text(
                        reached(each.lender().map(Party::name).orElse("the lender"))
                            + ": give back the "
                            + each.loan().tool()
                            + ", due "
                            + Say.dayAndMonth(each.loan().due().orElseThrow())));
    return Stream.of(coming, back, day.acts().stream().map(this::act)).flatMap(each -> each);
  }

  private Inline act(OpenMatter matter) {
    String id = matter.record().substring(matter.record().lastIndexOf(' ') + 1);
    boolean ours = matter.waitsFor().equals("you");
    String late =
        matter.lastDay().isBefore(day.day())
            ? " (late since " + Say.dayAndMonth(matter.lastDay()) + ")"
            : "";
    return Inline.together(
        Inline.text(
            (ours ? subject(matter) : reached(matter.waitsFor()))
                + ": "
                + firstThing(matter)
                + late
                + ", "),
        Inline.code(id));
  }

  /** What to do, without what else could be done: “open” tells that. */
  private static String firstThing(OpenMatter matter) {
    int other = matter.next().indexOf("; bought it instead?");
    return other < 0 ? matter.next() : matter.next().substring(0, other);
  }

  /** What it is about, without why. */
  private static String subject(OpenMatter matter) {
    int colon = matter.what().indexOf(':');
    return colon < 0 ? Word.capital(matter.sort().word()) : matter.what().substring(0, colon);
  }

  /** A name with how to reach whoever bears it. */
  private String reached(String name) {
    return ledger.parties().stream()
        .filter(party -> party.name().equals(name))
        .flatMap(party -> party.contact().stream())
        .findFirst()
        .map(contact -> name + ", " + contact)
        .orElse(name);
  }

  private Inline waiting(Readiness each) {
    return Inline.text(each.task().what() + ": " + each.lacks().get(0).words());
  }

  /** How fast resin goes off, and what the work at hand is never told without. */
  private List<String> cautions() {
    List<Task> shown = day.ready().stream().limit(MOST_READY + 1L).map(Readiness::task).toList();
    Set<String> lines = new LinkedHashSet<>();
    shown.stream()
        .flatMap(task -> ResinPace.of(task, day.day(), day.facts()).stream())
        .map(TomorrowPage::pace)
        .forEach(lines::add);
    if (!lines.isEmpty()) {
      lines.add(CureRate.CAUTION);
    }
    lines.addAll(Cautions.of(shown, ledger));
    return List.copyOf(lines);
  }

  private static String pace(ResinPace each) {
    return Word.capital(each.resin().what().orElse(each.resin().id()))
        + " at "
        + Math.round(each.actual())
        + " °C: "
        + each.potLifeThen().map(life -> "pot life about " + life.toMinutes() + " min, ").orElse("")
        + "cure about "
        + WarmWork.hours(each.cureThen())
        + (each.mayStop() ? ", and it may not cure at all" : "")
        + ".";
  }
}
