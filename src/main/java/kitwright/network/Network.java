package kitwright.network;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Tasks and the links between them, in an order in which every link points forward. What cannot
 * stand (a loop, a link to nowhere) is told by {@link #faults} and left out.
 *
 * <p>Tasks are kept by id, so that the order in which files are read changes nothing.
 */
public final class Network {
  private static final Comparator<Link> LINK_ORDER =
      Comparator.comparing(Link::before).thenComparing(Link::after).thenComparingLong(Link::lag);

  private final List<Activity> activities;
  private final Map<String, Integer> numbers;
  private final List<NetworkFault> faults;
  final int[] order;
  final Arrows after;
  final Arrows before;

  private Network(
      List<Activity> activities,
      Map<String, Integer> numbers,
      List<NetworkFault> faults,
      int[] order,
      Arrows after,
      Arrows before) {
    this.activities = activities;
    this.numbers = numbers;
    this.faults = faults;
    this.order = order;
    this.after = after;
    this.before = before;
  }

  /** The network of these tasks and links; never fails on what a person can write. */
  public static Network of(Collection<Activity> tasks, Collection<Link> links) {
    List<NetworkFault> faults = new ArrayList<>();
    Map<String, Integer> numbers = new HashMap<>(tasks.size() * 2);
    List<Activity> kept = new ArrayList<>(tasks.size());
    for (Activity each : tasks.stream().sorted(Comparator.comparing(Activity::id)).toList()) {
      if (numbers.putIfAbsent(each.id(), kept.size()) == null) {
        kept.add(each);
      } else {
        faults.add(new NetworkFault(NetworkFault.Kind.SAME_ID, List.of(each.id())));
      }
    }
    return linked(List.copyOf(kept), numbers, sound(links, numbers, faults), faults);
  }

  private static List<Link> sound(
      Collection<Link> links, Map<String, Integer> numbers, List<NetworkFault> faults) {
    List<Link> sound = new ArrayList<>(links.size());
    List<Link> unsound = new ArrayList<>();
    for (Link each : links) {
      boolean known = numbers.containsKey(each.before()) && numbers.containsKey(each.after());
      (known && !each.before().equals(each.after()) ? sound : unsound).add(each);
    }
    for (Link each : unsound.stream().sorted(LINK_ORDER).toList()) {
      if (!numbers.containsKey(each.before()) || !numbers.containsKey(each.after())) {
        faults.add(fault(NetworkFault.Kind.UNKNOWN_TASK, each));
      } else {
        faults.add(fault(NetworkFault.Kind.SELF_LINK, each));
      }
    }
    return sound;
  }

  private static NetworkFault fault(NetworkFault.Kind kind, Link link) {
    return new NetworkFault(kind, List.of(link.before(), link.after()));
  }

  private static Network linked(
      List<Activity> kept,
      Map<String, Integer> numbers,
      List<Link> links,
      List<NetworkFault> faults) {
    int[] tail = new int[links.size()];
    int[] head = new int[links.size()];
    long[] lag = new long[links.size()];
    int[] places = places(kept.size(), links, numbers);
    for (int k = 0; k < places.length; k++) {
      Link link = links.get(k);
      tail[places[k]] = number(numbers, link.before());
      head[places[k]] = number(numbers, link.after());
      lag[places[k]] = link.lag();
    }
    Sorting sorting = new Sorting(kept.size(), tail, head);
    for (int[] loop : sorting.loops()) {
      List<String> ids = Arrays.stream(loop).mapToObj(i -> kept.get(i).id()).toList();
      faults.add(new NetworkFault(NetworkFault.Kind.LOOP, ids));
    }
    int left = 0;
    for (int k = 0; k < tail.length; k++) {
      if (!sorting.opened()[k]) {
        tail[left] = tail[k];
        head[left] = head[k];
        lag[left++] = lag[k];
      }
    }
    int[] tails = Arrays.copyOf(tail, left);
    int[] heads = Arrays.copyOf(head, left);
    return new Network(
        kept,
        Map.copyOf(numbers),
        List.copyOf(faults),
        sorting.order(),
        Arrows.groupedByTail(kept.size(), tails, heads, lag),
        Arrows.groupedByTail(kept.size(), heads, tails, lag));
  }

  /** Where each link stands when they are sorted by the task before, then by the task after. */
  private static int[] places(int tasks, List<Link> links, Map<String, Integer> numbers) {
    int[] heads = links.stream().mapToInt(link -> number(numbers, link.after())).toArray();
    int[] byHead = Arrows.slots(heads, new int[tasks + 1]);
    int[] tails = new int[heads.length];
    for (int k = 0; k < heads.length; k++) {
      tails[byHead[k]] = number(numbers, links.get(k).before());
    }
    int[] byTail = Arrows.slots(tails, new int[tasks + 1]);
    return Arrays.stream(byHead).map(place -> byTail[place]).toArray();
  }

  private static int number(Map<String, Integer> numbers, String id) {
    Integer number = numbers.get(id);
    if (number == null) {
      throw new IllegalArgumentException("no task " + id + " in this network");
    }
    return number;
  }

  /** What could not stand; empty when all is well. */
  public List<NetworkFault> faults() {
    return faults;
  }

  /** All tasks, by id. */
  public List<Activity> activities() {
    return activities;
  }

  public Optional<Activity> activity(String id) {
    return Optional.ofNullable(numbers.get(id)).map(activities::get);
  }

  /** All ids, each after everything that it waits for. */
  public List<String> inOrder() {
    return Arrays.stream(order).mapToObj(i -> activities.get(i).id()).toList();
  }

  /** Ids of the tasks that this one waits for, without those before them. */
  public List<String> waitsFor(String id) {
    return ends(before, number(numbers, id));
  }

  /** Ids of the tasks that wait for this one, without those after them. */
  public List<String> followers(String id) {
    return ends(after, number(numbers, id));
  }

  private List<String> ends(Arrows arrows, int task) {
    return Arrays.stream(arrows.to, arrows.from[task], arrows.from[task + 1])
        .distinct()
        .mapToObj(i -> activities.get(i).id())
        .toList();
  }

  /** The same network with the named tasks, all of them known, held at least until a day. */
  public Network heldUntil(Map<String, LocalDate> days) {
    days.keySet().forEach(this::number);
    return with(each -> Optional.ofNullable(days.get(each.id())).map(each::heldUntil).orElse(each));
  }

  /** The same network with so many working minutes more for the named tasks, all of them known. */
  public Network longerBy(Map<String, Long> minutes) {
    minutes.keySet().forEach(this::number);
    return with(
        each -> Optional.ofNullable(minutes.get(each.id())).map(each::longerBy).orElse(each));
  }

  /** The same network as it was before any work began: for what was planned to be done by a day. */
  public Network unbegun() {
    return with(
        each ->
            new Activity(
                each.id(),
                each.what(),
                each.takes(),
                each.cure(),
                Headway.WAITING,
                each.notBefore(),
                each.away()));
  }

  private Network with(UnaryOperator<Activity> change) {
    List<Activity> changed = activities.stream().map(change).toList();
    return new Network(changed, numbers, faults, order, after, before);
  }

  int number(String id) {
    return number(numbers, id);
  }
}
