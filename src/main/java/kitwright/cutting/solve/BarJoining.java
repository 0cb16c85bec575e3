package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Makes from left-overs and untouched stock what could not be made whole, where the part permits
 * joints: the longest rooms first, so that there are few joints.
 */
final class BarJoining {
  private record Room(BarBench.Stretch stretch, long length) {}

  private final BarPart part;
  private final Joint joint;
  private final List<Room> taken = new ArrayList<>();

  private BarJoining(BarPart part, Joint joint) {
    this.part = part;
    this.joint = joint;
  }

  /** Cuts the pieces of one copy; says whether there was room. */
  static boolean join(BarPart part, int place, int copy, BarBench bench) {
    Optional<Joint> joint = part.joint();
    return joint.isPresent() && new BarJoining(part, joint.get()).join(place, copy, bench);
  }

  private boolean join(int place, int copy, BarBench bench) {
    long need = part.length();
    List<BarBench.Stretch> begun = new ArrayList<>(bench.stretches(place));
    begun.sort(Comparator.comparingLong(s -> -s.room()));
    for (BarBench.Stretch stretch : begun) {
      need = take(stretch, need);
    }
    while (need > 0) {
      List<BarBench.Stretch> fresh = bench.fetchCheapest(place);
      if (fresh.isEmpty()) {
        return false;
      }
      for (BarBench.Stretch stretch : fresh) {
        need = take(stretch, need);
      }
    }
    if (!lastIsLongEnough()) {
      return false;
    }
    for (int i = 0; i < taken.size(); i++) {
      long length = taken.get(i).length();
      BarOrder order = new BarOrder(place, copy, 1, i + 1, taken.size(), length, part.priority());
      taken.get(i).stretch().pieces.add(new BarBench.Due(order, copy));
    }
    return true;
  }

  private long take(BarBench.Stretch stretch, long need) {
    if (need <= 0 || stretch.room() < joint.shortest()) {
      return need;
    }
    long loss = taken.isEmpty() ? 0 : joint.loss();
    long length = Math.min(stretch.room(), need + loss);
    taken.add(new Room(stretch, length));
    return need - (length - loss);
  }

  /** Lengthens the last piece at the cost of the one before where it came out too short. */
  private boolean lastIsLongEnough() {
    int last = taken.size() - 1;
    long lacking = joint.shortest() - taken.get(last).length();
    if (lacking <= 0) {
      return true;
    }
    if (last == 0 || taken.get(last - 1).length() - lacking < joint.shortest()) {
      return false;
    }
    Room before = taken.get(last - 1);
    taken.set(last - 1, new Room(before.stretch(), before.length() - lacking));
    taken.set(last, new Room(taken.get(last).stretch(), joint.shortest()));
    return true;
  }
}
