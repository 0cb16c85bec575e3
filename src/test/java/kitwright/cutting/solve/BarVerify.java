package kitwright.cutting.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Looks over a plan of lengths as a distrustful second person would: from the task and the plan
 * alone, with nothing of the solver's.
 */
public final class BarVerify {
  private final BarTask task;
  private final BarPlan plan;
  private final Map<String, Bar> stock = new HashMap<>();
  private final Map<String, BarPart> wanted = new HashMap<>();
  private final List<String> faults = new ArrayList<>();

  private BarVerify(BarTask task, BarPlan plan) {
    this.task = task;
    this.plan = plan;
    task.stock().forEach(bar -> stock.put(bar.id(), bar));
    task.parts().forEach(part -> wanted.put(part.mark(), part));
  }

  /** Everything wrong with the plan, in plain words; empty where it can be cut as it stands. */
  public static List<String> faults(BarTask task, BarPlan plan) {
    BarVerify verify = new BarVerify(task, plan);
    verify.stock();
    plan.bars().forEach(verify::bar);
    verify.parts();
    return List.copyOf(verify.faults);
  }

  private void stock() {
    Set<String> used = new HashSet<>();
    long value = 0;
    for (CutBar bar : plan.bars()) {
      Bar from = named(stock, bar.stock());
      value += from.value();
      if (bar.number() < 1 || bar.number() > from.count()) {
        faults.add("there is no piece " + bar.number() + " of " + bar.stock());
      }
      if (!used.add(bar.stock() + " " + bar.number())) {
        faults.add(bar.stock() + " " + bar.number() + " is cut twice");
      }
    }
    if (value != plan.outcome().value()) {
      faults.add("the stock is worth " + value + ", the plan says " + plan.outcome().value());
    }
    if (plan.outcome().bound() > value) {
      faults.add("the bound is above the value");
    }
  }

  private static <T> T named(Map<String, T> all, String name) {
    return Optional.ofNullable(all.get(name))
        .orElseThrow(() -> new IllegalArgumentException("the task knows no " + name));
  }

  private void bar(CutBar cut) {
    Bar from = named(stock, cut.stock());
    List<Span> taken = new ArrayList<>();
    for (BarPiece piece : cut.pieces()) {
      if (!named(wanted, piece.mark()).mayComeFrom(cut.stock())) {
        faults.add(piece.mark() + " may not come from " + cut.stock());
      }
      taken.add(new Span(piece.from(), piece.to()));
    }
    taken.addAll(cut.remnants());
    for (Span span : taken) {
      if (span.from() < task.trim() || span.to() > from.length() - task.trim()) {
        faults.add(cut.stock() + ": " + span + " lies beyond the trimmed ends");
      }
      if (from.defects().stream().anyMatch(d -> d.from() < span.to() && span.from() < d.to())) {
        faults.add(cut.stock() + ": " + span + " holds a defect");
      }
    }
    taken.sort(Comparator.comparingLong(Span::from));
    for (int i = 1; i < taken.size(); i++) {
      if (taken.get(i).from() < taken.get(i - 1).to() + task.kerf()) {
        faults.add(
            cut.stock() + ": no saw cut between " + taken.get(i - 1) + " and " + taken.get(i));
      }
    }
    if (cut.remnants().stream().anyMatch(r -> r.length() < task.remnant())) {
      faults.add(cut.stock() + ": a left-over is too short to keep");
    }
  }

  private void parts() {
    Map<String, Integer> made = new HashMap<>();
    Map<String, List<BarPiece>> copies = new HashMap<>();
    for (CutBar bar : plan.bars()) {
      for (BarPiece piece : bar.pieces()) {
        copies
            .computeIfAbsent(piece.mark() + " " + piece.copy(), k -> new ArrayList<>())
            .add(piece);
      }
    }
    for (List<BarPiece> pieces : copies.values()) {
      made.merge(pieces.get(0).mark(), 1, Integer::sum);
      copy(pieces);
    }
    for (Shortfall shortfall : plan.missing()) {
      made.merge(shortfall.mark(), shortfall.missing(), Integer::sum);
    }
    for (BarPart part : task.parts()) {
      int accounted = made.getOrDefault(part.mark(), 0);
      if (accounted != part.qty()) {
        faults.add(part.mark() + ": wanted " + part.qty() + ", made or missing " + accounted);
      }
    }
  }

  private void copy(List<BarPiece> pieces) {
    BarPiece first = pieces.get(0);
    BarPart part = named(wanted, first.mark());
    String name = first.mark() + " " + first.copy();
    if (pieces.size() != first.of()
        || pieces.stream().map(BarPiece::piece).distinct().count() != pieces.size()) {
      faults.add(name + ": not the pieces it is made of");
    }
    long length = pieces.stream().mapToLong(BarPiece::length).sum();
    long loss = part.joint().map(j -> j.loss() * (pieces.size() - 1)).orElse(0L);
    if (length - loss != part.length()) {
      faults.add(name + ": comes out at " + (length - loss) + ", not " + part.length());
    }
    if (pieces.size() > 1
        && (part.joint().isEmpty()
            || pieces.stream().anyMatch(p -> p.length() < part.joint().get().shortest()))) {
      faults.add(name + ": joined against its rules");
    }
  }
}
