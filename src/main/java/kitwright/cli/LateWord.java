package kitwright.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.network.Crates;
import kitwright.network.Estimate;
import kitwright.network.Plan;
import kitwright.network.Schedule;
import kitwright.network.WorkTime;
import kitwright.report.ahead.Suppose;
import kitwright.shortage.Late;
import kitwright.shortage.LookAhead;
import kitwright.value.Dimension;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/** What the command line says comes late: goods and work, by id. */
final class LateWord {
  private static final int MOST_DAYS = 36_600;
  private static final List<Kind> GOODS =
      List.of(Kind.DELIVERIES, Kind.CLAIMS, Kind.SHORTAGES, Kind.SPENDING);

  private LateWord() {}

  static Suppose of(List<String> said, Facts now) {
    Map<String, Integer> goods = new HashMap<>();
    Map<String, Long> work = new HashMap<>();
    for (String each : said) {
      int equals = each.lastIndexOf('=');
      if (equals < 1) {
        throw new Refusal(
            "After --late: “" + each + "”.",
            "Write what comes late and by how much: d-second=14d.");
      }
      String id = each.substring(0, equals);
      Quantity time = time(each.substring(equals + 1));
      if (Plan.on(now).task(id).isPresent()) {
        work.merge(id, Plan.on(now).time().minutes(time), (a, b) -> Math.min(a + b, Estimate.MOST));
      } else if (GOODS.stream().anyMatch(kind -> now.ledger().knows(kind, id))) {
        goods.merge(id, WorkTime.calendarDays(time), (a, b) -> Math.min(a + b, MOST_DAYS));
      } else {
        throw AheadCommand.unknown(id, ids(now));
      }
    }
    work.replaceAll((id, minutes) -> Math.min(minutes, room(id, now)));
    Schedule with = LookAhead.on(now, new Late(goods)).paced(work);
    return new Suppose(
        said,
        LookAhead.on(now).paced(),
        Plan.on(now).scheduled(with.network().heldUntil(Crates.late(goods, now))));
  }

  /** How much longer a task can become at most. */
  private static long room(String id, Facts now) {
    return Estimate.MOST
        - Plan.on(now).network().activity(id).map(each -> each.takes().high()).orElse(0L);
  }

  private static List<String> ids(Facts now) {
    List<String> ids = new ArrayList<>(now.ledger().ids(Kind.TASKS));
    GOODS.forEach(kind -> ids.addAll(now.ledger().ids(kind)));
    return ids;
  }

  private static Quantity time(String text) {
    if (text.startsWith("-")) {
      throw new Refusal(
          "After --late: nothing can be late by “" + text + "”.", "Write a time such as 14d.");
    }
    try {
      return Quantity.parse(text, Unit.DAY, Dimension.TIME);
    } catch (Misread misread) {
      throw Refusal.of(misread);
    }
  }
}
