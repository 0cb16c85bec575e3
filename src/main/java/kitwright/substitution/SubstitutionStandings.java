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
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.SignOff;
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

  /** The substitutions that hold a task until they may be built, in the ledger's order. */
  public List<SubstitutionStanding> holding(String task) {
    return Stream.concat(holding.getOrDefault(task, List.of()).stream(), astray.stream())
        .map(this::judged)
        .toList();
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
