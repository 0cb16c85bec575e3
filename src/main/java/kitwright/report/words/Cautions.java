package kitwright.report.words;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import kitwright.assessment.Remedies;
import kitwright.assessment.Result;
import kitwright.cutting.CutPlan;
import kitwright.document.Block;
import kitwright.document.Slots;
import kitwright.document.Value;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Task;
import kitwright.value.Ref;

/** Which cautions go with which work; each telling of work that can hurt asks here. */
public final class Cautions {
  private static final Pattern CHEMICAL =
      Pattern.compile(
          "(?i)(?<!\\p{L})(?:epoxy|resins?|hardener|solvents?|acetone|thinners?|varnish|paint|primer"
              + "|glue|sealant|adhesive|putty|antifouling)(?!\\p{L})");
  private static final Pattern LEAD = Pattern.compile("(?i)(?<!\\p{L})(?:lead|ballast)(?!\\p{L})");

  private Cautions() {}

  /** The cautions of a piece of work: of the hazards that it states, and of what suggests some. */
  public static Set<Caution> of(Task task, Ledger ledger) {
    Set<Caution> all = SuggestedCautions.by(task.what());
    task.hazards().forEach(hazard -> all.add(Caution.of(hazard)));
    task.tools().stream()
        .flatMap(tool -> ledger.loan(tool).stream())
        .filter(loan -> SuggestedCautions.suggest(Caution.HEATER, loan.tool()))
        .forEach(loan -> all.add(Caution.HEATER));
    if (!task.unpacks().isEmpty()) {
      all.add(Caution.CRATE);
    }
    if (task.weather().flatMap(Task.Weather::above).isPresent()
        && task.place().filter(place -> place == Task.Where.INDOORS).isPresent()) {
      all.add(Caution.HEATER);
    }
    if (task.uses().stream().anyMatch(use -> isResin(use, ledger))) {
      all.add(Caution.RESIN);
    }
    task.uses().forEach(use -> used(use, ledger, all));
    return all;
  }

  /** What is harmful to touch or breathe, by what it is called. */
  private static void used(Task.Use use, Ledger ledger, Set<Caution> all) {
    use.item()
        .flatMap(ledger::kitItem)
        .map(item -> item.what())
        .or(() -> use.stock().flatMap(ledger::stock).map(stock -> stock.what()))
        .ifPresent(
            what -> {
              if (CHEMICAL.matcher(what).find()) {
                all.add(Caution.RESIN);
              }
              if (LEAD.matcher(what).find()) {
                all.add(Caution.LEAD);
              }
            });
  }

  private static boolean isResin(Task.Use use, Ledger ledger) {
    Optional<Ref> material =
        use.material()
            .or(() -> use.item().flatMap(ledger::kitItem).flatMap(item -> item.material()))
            .or(() -> use.stock().flatMap(ledger::stock).flatMap(stock -> stock.material()));
    return use.section().isPresent()
        || material
            .flatMap(ledger::material)
            .filter(found -> found.sort() == Material.Sort.RESIN)
            .isPresent();
  }

  /** What is to be said of several pieces of work, each line once. */
  public static List<String> of(List<Task> tasks, Ledger ledger) {
    Set<Caution> all = EnumSet.noneOf(Caution.class);
    tasks.forEach(task -> all.addAll(of(task, ledger)));
    return all.stream().map(Caution::words).toList();
  }

  /** At the saw. */
  public static List<String> of(CutPlan plan) {
    return plan.pieces().isEmpty() ? List.of() : List.of(Caution.SAW.words());
  }

  /** Of building what a sheet works out: what cures, and what makes dust. */
  public static List<String> of(Result result) {
    return switch (result.assessment().method()) {
      case LAMINATE, PANEL -> List.of(Caution.RESIN.words(), Caution.DUST.words());
      case SECTION, TIMBER -> List.of(Caution.DUST.words());
      case BOLT, EXTERNAL -> List.of();
    };
  }

  /** Of glueing on what a remedy adds; nothing where it adds nothing. */
  public static List<String> of(Remedies.Answer remedy) {
    return remedy.none().isPresent() || remedy.additions().isEmpty()
        ? List.of()
        : List.of(Caution.RESIN.words(), Caution.DUST.words());
  }

  public static List<String> atTheCrate() {
    return List.of(Caution.CRATE.words(), Caution.LIFTING.words());
  }

  /** Slots and these cautions behind them, set apart. */
  public static Slots in(Slots slots, List<String> cautions) {
    return slots.block("cautions", value(cautions), apart(cautions));
  }

  /** Cautions set apart; no block where there are none. */
  public static List<Block> apart(List<String> cautions) {
    Block[] paragraphs = cautions.stream().map(Block::paragraph).toArray(Block[]::new);
    return cautions.isEmpty() ? List.of() : List.of(Block.quote(paragraphs));
  }

  /** Cautions for other programs. */
  public static Value value(List<String> cautions) {
    List<Value> words = new ArrayList<>();
    cautions.forEach(caution -> words.add(new Value.Text(caution)));
    return new Value.Several(words);
  }
}
