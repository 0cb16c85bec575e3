package kitwright.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The working days of a week less the days off, numbered on end. */
final class WorkingDays {
  private final Week week;
  private final List<DaysOff> off;
  private final long[] from;
  private final long[] until;

  /** Working days lost to the stretches before this one; one entry more than stretches. */
  private final long[] lost;

  /** Number of the first working day after each stretch began. */
  private final long[] number;

  WorkingDays(Week week, List<DaysOff> off) {
    this.week = week;
    this.off = off;
    List<long[]> merged = merged(off);
    int count = merged.size();
    from = new long[count];
    until = new long[count];
    number = new long[count];
    lost = new long[count + 1];
    for (int i = 0; i < count; i++) {
      from[i] = merged.get(i)[0];
      until[i] = merged.get(i)[1];
      number[i] = week.numberAt(from[i]) - lost[i];
      lost[i + 1] = lost[i] + week.numberAt(until[i]) - week.numberAt(from[i]);
    }
  }

  private static List<long[]> merged(List<DaysOff> off) {
    List<long[]> merged = new ArrayList<>();
    for (DaysOff each : off.stream().sorted(Comparator.comparing(DaysOff::first)).toList()) {
      long first = each.first().toEpochDay();
      long after = each.last().toEpochDay() + 1;
      if (!merged.isEmpty() && merged.get(merged.size() - 1)[1] >= first) {
        long[] last = merged.get(merged.size() - 1);
        last[1] = Math.max(last[1], after);
      } else {
        merged.add(new long[] {first, after});
      }
    }
    return merged;
  }

  /** The same less some days more. */
  WorkingDays without(List<DaysOff> more) {
    return new WorkingDays(week, Stream.concat(off.stream(), more.stream()).toList());
  }

  /** The number of the first working day on or after this epoch day. */
  long numberAt(long day) {
    int begun = below(from, day);
    long plain = week.numberAt(day);
    if (begun == 0) {
      return plain;
    }
    long over = Math.min(day, until[begun - 1]);
    return plain - lost[begun - 1] - (week.numberAt(over) - week.numberAt(from[begun - 1]));
  }

  boolean isWorking(long day) {
    return week.numberAt(day + 1) > week.numberAt(day) && !isOff(day);
  }

  private boolean isOff(long day) {
    int begun = below(from, day + 1);
    return begun > 0 && day < until[begun - 1];
  }

  /** The epoch day of the working day with this number. */
  long dayOf(long wanted) {
    return week.dayOf(wanted + lost[below(number, wanted + 1)]);
  }

  /** How many of the sorted values lie below {@code limit}. */
  private static int below(long[] sorted, long limit) {
    int low = 0;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted[middle] < limit) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
