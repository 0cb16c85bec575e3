package kitwright.cutting.solve;

import java.util.List;

/** What a model came to: cuts in types, what is unmade of each type, and what is proved. */
record BarSolution(List<BarCut> cuts, List<Integer> unmade, long bound, boolean mostParts) {

  long missing() {
    return unmade.stream().mapToLong(n -> n).sum();
  }
}
