package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Task;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** How far a task is, on every evening of random histories, against a reading of days in order. */
class HeadwaysProperties {
  private static final LocalDate FIRST = LocalDate.of(2026, 2, 2);

  @Property(tries = 300)
  void everyEveningHasOneAnswerThatAReadingDayByDayFinds(
      @ForAll @Size(max = 6) List<@IntRange(max = 20) Integer> days,
      @ForAll @Size(6) List<@IntRange(max = 4) Integer> quarters,
      @ForAll @IntRange(min = -1, max = 20) int finished,
      @ForAll @IntRange(max = 22) int asked) {
    TreeMap<Integer, Integer> log = new TreeMap<>();
    for (int i = 0; i < days.size(); i++) {
      log.put(days.get(i), quarters.get(i) * 25);
    }
    StringBuilder yaml = new StringBuilder("tasks: [{id: a, what: A, takes: 4 d");
    yaml.append(finished < 0 ? "" : ", finished: " + FIRST.plusDays(finished)).append("}]\n");
    log.forEach(
        (day, share) ->
            yaml.append(
                "---\nday: %s\ntasks: {a: %d %%}\n---\n".formatted(FIRST.plusDays(day), share)));
    Ledger ledger = Sample.ledger(yaml.toString());
    Facts evening = Facts.of(ledger, FIRST.plusDays(asked));
    Task task = ledger.tasks().get(0);

    int share = 0;
    int doneOn = -1;
    int begun = -1;
    for (int day = 0; day <= asked; day++) { // as somebody who reads the log from its beginning
      if (log.containsKey(day)) {
        begun = begun < 0 ? day : begun;
        share = log.get(day);
        doneOn = share == 100 ? (doneOn < 0 ? day : doneOn) : -1;
      }
    }
    if (finished >= 0 && finished <= asked) {
      boolean reopened = share < 100 && !log.subMap(finished, false, asked, true).isEmpty();
      share = reopened ? share : 100;
      doneOn = reopened ? -1 : finished;
      begun = begun < 0 ? finished : Math.min(begun, finished);
    }
    assertThat(Headways.on(evening).share(task))
        .isEqualByComparingTo(BigDecimal.valueOf(share).movePointLeft(2));
    Headway headway = Headways.on(evening).of(task);
    if (doneOn >= 0) {
      assertThat(headway)
          .isEqualTo(
              new Headway.Done(FIRST.plusDays(Math.min(begun, doneOn)), FIRST.plusDays(doneOn)));
    } else if (begun >= 0) {
      assertThat(headway).isEqualTo(new Headway.Begun(FIRST.plusDays(begun), share / 100.0));
    } else {
      assertThat(headway).isEqualTo(Headway.WAITING);
    }
    LocalDate morning = Plan.on(evening).morning();
    assertThat(morning).isEqualTo(FIRST.plusDays(log.containsKey(asked) ? asked + 1 : asked));
  }
}
