package kitwright.shortage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Task;
import kitwright.network.Activity;
import kitwright.network.Link;
import kitwright.network.Network;
import kitwright.network.NetworkFault;
import kitwright.network.Plan;
import kitwright.value.Ref;

/**
 * Fires where work needs what lies in a crate that is unpacked only by work behind it: a ring of
 * tasks that goes through a crate.
 */
public final class CrateCycle implements Rule {
  /** A task that needs what a crate holds, and the one that unpacks it. */
  private record Through(Delivery crate, Task unpacking, Ref unpacks, String needing) {}

  @Override
  public void examine(Facts day, Findings out) {
    Plan plan = Plan.on(day);
    Map<String, Through> crates = new LinkedHashMap<>();
    for (Delivery delivery : day.ledger().deliveries()) {
      if (!delivery.isCounted()) {
        through(delivery, day).forEach(each -> crates.put(key(each), each));
      }
    }
    if (crates.isEmpty()) {
      return;
    }
    List<Link> links = new ArrayList<>();
    for (Activity each : plan.network().activities()) {
      plan.network()
          .waitsFor(each.id())
          .forEach(before -> links.add(new Link(before, each.id(), 0)));
    }
    crates.values().forEach(each -> links.add(new Link(each.unpacking().id(), each.needing(), 0)));
    Network.of(plan.network().activities(), links).faults().stream()
        .filter(fault -> fault.kind() == NetworkFault.Kind.LOOP)
        .forEach(fault -> out.add(finding(fault.ids(), crates, plan)));
  }

  private static String key(Through each) {
    return each.unpacking().id() + "\n" + each.needing();
  }

  /** Who needs what lies in a crate that nobody has unpacked. */
  private static List<Through> through(Delivery crate, Facts day) {
    Plan plan = Plan.on(day);
    Optional<Task> first =
        plan.tasks().stream()
            .filter(task -> unpacks(task, crate).isPresent())
            .filter(task -> plan.isOpen(task.id()))
            .min(Comparator.comparing(task -> plan.schedule().of(task.id()).goesOn()));
    boolean done =
        plan.tasks().stream()
            .anyMatch(task -> unpacks(task, crate).isPresent() && !plan.isOpen(task.id()));
    if (first.isEmpty() || done) {
      return List.of();
    }
    Ref at = unpacks(first.get(), crate).orElseThrow();
    return crate.packed().stream()
        .map(Delivery.Packed::item)
        .flatMap(item -> LookAhead.on(day).ofItem(item).stream())
        .filter(wanted -> leansOn(wanted, crate, LookAhead.on(day)))
        .map(Wanted::task)
        .distinct()
        .filter(task -> !task.equals(first.get().id()) && plan.isOpen(task))
        .map(task -> new Through(crate, first.get(), at, task))
        .toList();
  }

  private static Optional<Ref> unpacks(Task task, Delivery crate) {
    return task.unpacks().stream().filter(ref -> ref.id().equals(crate.id())).findFirst();
  }

  /** By its day, by a day that nobody knows, or since it is here and not counted. */
  private static boolean leansOn(Wanted wanted, Delivery crate, LookAhead ahead) {
    if (crate.received().isPresent()) {
      return !wanted.uncounted().isNone();
    }
    return wanted.leansOn(crate.named())
        || (!wanted.missing().isNone()
            && ahead.dayless(wanted.thing()).stream()
                .anyMatch(each -> each.by().equals(crate.named())));
  }

  private Finding finding(List<String> loop, Map<String, Through> crates, Plan plan) {
    List<Through> on = new ArrayList<>();
    List<String> ring = new ArrayList<>();
    for (int i = 0; i < loop.size(); i++) {
      String next = loop.get((i + 1) % loop.size());
      ring.add("“" + plan.name(loop.get(i)) + "”");
      Optional.ofNullable(crates.get(loop.get(i) + "\n" + next))
          .ifPresent(
              each -> {
                on.add(each);
                ring.add("the crate " + each.crate().id());
              });
    }
    ring.add("“" + plan.name(loop.get(0)) + "”");
    Through crate = on.get(0);
    String needing = "“" + plan.name(crate.needing()) + "”";
    String unpacking = "“" + plan.name(crate.unpacking().id()) + "”";
    return stop(
        crate.unpacks().at(),
        "Each of these waits for the one before it, round and round: "
            + String.join(" → ", ring)
            + ".",
        "What "
            + needing
            + " needs lies in "
            + crate.crate().id()
            + ", and "
            + unpacking
            + ", which unpacks it, comes behind that: neither can ever begin. Dates are worked out"
            + " as if the goods were at hand once the crate has come.",
        "Unpack "
            + crate.crate().id()
            + " before: take out of “after” what "
            + unpacking
            + " need not wait for, or name the crate under “unpacks” of earlier work.",
        Stream.concat(
                loop.stream().map(id -> "task " + id),
                on.stream().map(each -> each.crate().named()))
            .toList());
  }
}
