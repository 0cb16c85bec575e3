package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Stock that is the same to the saw: the same clear stretches, the same value and the same parts
 * that may come from it.
 *
 * @param stretches sound wood in each piece
 * @param value of one piece
 * @param members places in the task's list of stock
 * @param count of all members together
 * @param barred places in the task's list of those parts that may not come from it
 */
record BarKind(
    List<Span> stretches, long value, List<Integer> members, int count, Set<Integer> barred) {
  private record Likeness(List<Span> stretches, long value, Set<Integer> barred) {}

  /** All stock that has room for anything, in the order of the task. */
  static List<BarKind> of(BarTask task) {
    Map<Likeness, List<Integer>> alike = new LinkedHashMap<>();
    for (int b = 0; b < task.stock().size(); b++) {
      Bar bar = task.stock().get(b);
      List<Span> clear =
          Clear.stretches(bar.length(), task.trim(), bar.defects(), task.kerf()).stream().toList();
      if (bar.count() > 0 && !clear.isEmpty()) {
        alike
            .computeIfAbsent(
                new Likeness(clear, bar.value(), barred(task, bar)), k -> new ArrayList<>())
            .add(b);
      }
    }
    List<BarKind> kinds = new ArrayList<>();
    alike.forEach(
        (like, members) -> {
          long count = members.stream().mapToLong(b -> task.stock().get(b).count()).sum();
          int capped = (int) Math.min(Integer.MAX_VALUE, count);
          kinds.add(new BarKind(like.stretches(), like.value(), members, capped, like.barred()));
        });
    return List.copyOf(kinds);
  }

  private static Set<Integer> barred(BarTask task, Bar bar) {
    return IntStream.range(0, task.parts().size())
        .filter(p -> !task.parts().get(p).mayComeFrom(bar.id()))
        .boxed()
        .collect(Collectors.toUnmodifiableSet());
  }

  boolean allows(int part) {
    return !barred.contains(part);
  }

  long[] lengths() {
    return stretches.stream().mapToLong(Span::length).toArray();
  }

  long longest() {
    return stretches.stream().mapToLong(Span::length).max().orElse(0);
  }
}
