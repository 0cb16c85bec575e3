package kitwright.substitution;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Grade;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.SignOff;
import kitwright.ledger.Task;
import kitwright.value.Ref;

/**
 * How every substitution stands on a day. Each is judged when it is first asked for: its verdict
 * may be the only thing for which mechanics is worked out.
 */
public final class SubstitutionStandings {
  private static final Facts.Fact<SubstitutionStandings> FACT = SubstitutionStandings::new;

  private final Judge judge;

  /** What was proposed by the end of the day, in the ledger's order. */
  private final Map<String, Substitution> there = new LinkedHashMap<>();

  private final Map<String, SubstitutionStanding> judged = new HashMap<>();
  private final Map<String, Set<String>> answering = new HashMap<>();
  private final TakenWays taken;
  private final Map<String, List<Substitution>> holding = new HashMap<>();

  /** Those that name no task to hold, by the work that uses what they replace or take. */
  private final Map<String, List<Substitution>> unnamed = new LinkedHashMap<>();

  /** Those that hold a task that nobody knows: it may be any. */
  private final List<Substitution> astray = new ArrayList<>();

  private SubstitutionStandings(Facts day) {
    judge = new Judge(day);
    for (Substitution substitution : day.ledger().substitutions()) {
      there.putIfAbsent(substitution.id(), substitution);
    }
    link(day.ledger());
    taken = new TakenWays(day.ledger(), there.values());
  }

  /** How every substitution stands, judged by what is recorded up to the end of the day. */
  public static SubstitutionStandings on(Facts day) {
    return FACT.on(day);
  }

  /**
   * By the task that it holds, and by the shortage that it answers: it says which, or an option of
   * the shortage names it.
   */
  private void link(Ledger ledger) {
    for (Substitution each : there.values()) {
      each.hold()
          .ifPresent(task -> holding.computeIfAbsent(task.id(), id -> new ArrayList<>()).add(each));
      if (each.hold().filter(task -> !ledger.knows(Kind.TASKS, task.id())).isPresent()) {
        astray.add(each);
      }
      if (each.hold().isEmpty()) {
        ledger.tasks().stream()
            .filter(task -> task.uses().stream().anyMatch(use -> touches(use, each)))
            .forEach(task -> unnamed.computeIfAbsent(task.id(), id -> new ArrayList<>()).add(each));
      }
      each.shortage().ifPresent(shortage -> link(shortage.id(), each));
    }
    for (Shortage shortage : ledger.shortages()) {
      for (Shortage.Option option : shortage.options()) {
        option
            .substitution()
            .map(ref -> there.get(ref.id()))
            .filter(named -> named.shortage().isEmpty())
            .ifPresent(named -> link(shortage.id(), named));
      }
    }
  }

  /** Whether work uses what a substitution replaces or takes. */
  private static boolean touches(Task.Use use, Substitution substitution) {
    return isOne(use.item(), substitution.insteadOf().item())
        || substitution.use().stream()
            .anyMatch(take -> isOne(use.item(), take.item()) || isOne(use.stock(), take.stock()));
  }

  private static boolean isOne(Optional<Ref> used, Optional<Ref> touched) {
    return used.isPresent() && used.map(Ref::id).equals(touched.map(Ref::id));
  }

  private void link(String shortage, Substitution substitution) {
    answering.computeIfAbsent(shortage, id -> new LinkedHashSet<>()).add(substitution.id());
  }

  private SubstitutionStanding judged(Substitution substitution) {
    SubstitutionStanding known = judged.get(substitution.id());
    if (known == null) {
      known = judge.standing(substitution);
      judged.put(substitution.id(), known);
    }
    return known;
  }

  /** Every substitution, in the ledger's order. */
  public List<SubstitutionStanding> all() {
    return where(any -> true);
  }

  /** Those whose records are asked for, in the ledger's order; no other is judged. */
  public List<SubstitutionStanding> where(Predicate<Substitution> asked) {
    return there.values().stream().filter(asked).map(this::judged).toList();
  }

  public Optional<SubstitutionStanding> of(Ref substitution) {
    return Optional.ofNullable(there.get(substitution.id())).map(this::judged);
  }

  /** Whether a sign-off counts on that day. */
  public boolean counts(SignOff signOff) {
    return where(each -> each.signOffs().contains(signOff)).stream()
        .flatMap(standing -> standing.signatures().stream())
        .anyMatch(signature -> signature.signOff().equals(signOff) && signature.counts());
  }

  /**
   * The substitutions that hold a task until they may be built, in the ledger's order. A structural
   * one that does not say which work it holds holds whatever uses what it replaces or takes.
   */
  public List<SubstitutionStanding> holding(String task) {
    Stream<SubstitutionStanding> named =
        Stream.concat(holding.getOrDefault(task, List.of()).stream(), astray.stream())
            .map(this::judged);
    Stream<SubstitutionStanding> touching =
        unnamed.getOrDefault(task, List.of()).stream()
            .map(this::judged)
            .filter(standing -> standing.grade() == Grade.STRUCTURAL);
    return Stream.concat(named, touching).toList();
  }

  /**
   * The work that uses what a structural substitution replaces or takes, where it does not say
   * which it holds; else none.
   */
  public List<String> touchedBy(SubstitutionStanding standing) {
    return standing.grade() == Grade.STRUCTURAL
        ? unnamed.entrySet().stream()
            .filter(each -> each.getValue().contains(standing.substitution()))
            .map(Map.Entry::getKey)
            .toList()
        : List.of();
  }

  /** The substitutions that answer a shortage, withdrawn ones among them. */
  public List<SubstitutionStanding> answering(String shortage) {
    return answering.getOrDefault(shortage, Set.of()).stream()
        .flatMap(id -> Optional.ofNullable(there.get(id)).stream())
        .map(this::judged)
        .toList();
  }

  /**
   * Which of them are taken to get round a shortage, and which are only a way out that is listed.
   */
  public TakenWays taken() {
    return taken;
  }
}
