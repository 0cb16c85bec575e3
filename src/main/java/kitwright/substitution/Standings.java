package kitwright.substitution;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.SignOff;
import kitwright.value.Ref;

/** How every substitution stands on a day. */
public final class Standings {
  private static final Facts.Fact<Standings> FACT = new Work();

  private final Map<String, Standing> byId;
  private final List<Standing> all;
  private final Map<String, List<Standing>> byShortage;

  private Standings(Map<String, Standing> byId, Map<String, List<Standing>> byShortage) {
    this.byId = byId;
    this.all = List.copyOf(byId.values());
    this.byShortage = byShortage;
  }

  /** How every substitution stands, judged by what is recorded up to the end of the day. */
  public static Standings on(Facts day) {
    return FACT.on(day);
  }

  /** One that was proposed later does not stand there yet. */
  private static final class Work extends Facts.Fact<Standings> {
    @Override
    protected Standings work(Facts day) {
      Judge judge = new Judge(day);
      Map<String, Standing> byId = new LinkedHashMap<>();
      for (Substitution substitution : day.ledger().substitutions()) {
        if (substitution.proposed().filter(made -> made.on().isAfter(day.day())).isEmpty()) {
          byId.putIfAbsent(substitution.id(), judge.standing(substitution));
        }
      }
      return new Standings(byId, byShortage(day.ledger(), byId));
    }
  }

  /** A substitution says which shortage it answers, or an option of the shortage names it. */
  private static Map<String, List<Standing>> byShortage(Ledger ledger, Map<String, Standing> byId) {
    Map<String, Map<String, Standing>> all = new HashMap<>();
    byId.values()
        .forEach(
            standing ->
                standing.substitution().shortage().ifPresent(ref -> link(all, ref.id(), standing)));
    ledger
        .shortages()
        .forEach(
            shortage ->
                shortage.options().stream()
                    .flatMap(option -> option.substitution().stream())
                    .map(ref -> Optional.ofNullable(byId.get(ref.id())))
                    .flatMap(Optional::stream)
                    .filter(standing -> standing.substitution().shortage().isEmpty())
                    .forEach(standing -> link(all, shortage.id(), standing)));
    Map<String, List<Standing>> lists = new HashMap<>();
    all.forEach((id, set) -> lists.put(id, List.copyOf(set.values())));
    return lists;
  }

  private static void link(
      Map<String, Map<String, Standing>> all, String shortage, Standing standing) {
    all.computeIfAbsent(shortage, id -> new LinkedHashMap<>())
        .putIfAbsent(standing.substitution().id(), standing);
  }

  /** Every substitution, in the ledger's order. */
  public List<Standing> all() {
    return all;
  }

  public Optional<Standing> of(Ref substitution) {
    return Optional.ofNullable(byId.get(substitution.id()));
  }

  /** Whether a sign-off counts on that day. */
  public boolean counts(SignOff signOff) {
    return all.stream()
        .flatMap(standing -> standing.signatures().stream())
        .anyMatch(signature -> signature.signOff().equals(signOff) && signature.counts());
  }

  /** The substitutions that answer a shortage, withdrawn ones among them. */
  public List<Standing> answering(String shortage) {
    return byShortage.getOrDefault(shortage, List.of());
  }
}
