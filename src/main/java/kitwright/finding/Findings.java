package kitwright.finding;

import java.util.ArrayList;
import java.util.List;

/** Collects findings while reading and judging; only ever added to, and in order when read. */
public final class Findings {
  private final List<Finding> all = new ArrayList<>();

  public void add(Finding finding) {
    all.add(finding);
  }

  /** Adds what another collected. */
  public void addAll(Findings other) {
    all.addAll(other.all);
  }

  /** Everything found so far, by place. */
  public List<Finding> inOrder() {
    return all.stream().sorted().distinct().toList();
  }
}
