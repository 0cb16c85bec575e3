package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Ways to make a part from pieces shorter than itself. */
final class BarSplit {
  private BarSplit() {}

  /** The fewest pieces no longer than {@code longest}; zero where no number of them will do. */
  static int fewest(BarPart part, long longest) {
    if (part.length() <= longest) {
      return 1;
    }
    if (part.joint().isEmpty() || longest < part.joint().get().shortest()) {
      return 0;
    }
    long loss = part.joint().get().loss();
    long gain = longest - loss;
    long pieces = (part.length() - loss + gain - 1) / gain;
    return (int) Math.min(pieces, Integer.MAX_VALUE);
  }

  /** What the part takes out of the stock at the least, a kerf for each piece included. */
  static long taking(BarPart part, int pieces, long kerf) {
    long loss = part.joint().map(Joint::loss).orElse(0L);
    return part.length() + (pieces - 1) * loss + pieces * kerf;
  }

  /** Pieces of the full length and one for the rest; empty where the rest would be too short. */
  static List<Long> full(BarPart part, long full) {
    int pieces = fewest(part, full);
    if (pieces < 2) {
      return List.of();
    }
    Joint joint = part.joint().orElseThrow();
    List<Long> lengths = new ArrayList<>(Collections.nCopies(pieces, full));
    long rest = part.length() + (pieces - 1) * joint.loss() - (pieces - 1) * full;
    long borrowed = Math.max(0, joint.shortest() - rest);
    lengths.set(pieces - 1, rest + borrowed);
    lengths.set(pieces - 2, full - borrowed);
    return full - borrowed < joint.shortest() ? List.of() : lengths;
  }

  /** Pieces of about one length. */
  static List<Long> even(BarPart part, long longest) {
    int pieces = fewest(part, longest);
    if (pieces < 2) {
      return List.of();
    }
    Joint joint = part.joint().orElseThrow();
    long all = part.length() + (pieces - 1) * joint.loss();
    List<Long> lengths = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      lengths.add(all / pieces + (i < all % pieces ? 1 : 0));
    }
    return lengths.get(pieces - 1) < joint.shortest() ? List.of() : lengths;
  }
}
