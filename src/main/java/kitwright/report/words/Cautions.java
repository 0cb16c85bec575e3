package kitwright.report.words;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
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
  private static final Pattern SAW =
      words(
          "saw(?:s|ing|n)?|cut(?:s|ting)?|rip(?:s|ping)?|scarf(?:s|ing)?|plan(?:e|es|ing)|mill(?:s|ing)?");
  private static final Pattern DUST =
      words("sand(?:s|ing)?|plane|planing|fair(?:s|ing)?|long-board|shape|round|grind(?:ing)?");
  private static final Pattern RESIN =
      words(
          "resin|epoxy|glue(?:s|d)?|glu(?:e"
              + " up|ing)|laminat\\w+|glass(?:es|ing)?|sheath\\w*|fill(?:s|ing)?|coat(?:s|ing)?|varnish\\w*|paint\\w*|prim(?:e|er|ing)|bond\\w*|bed");

  /** Things that are harmful to touch or breathe, by what they are called. */
  private static final Pattern CHEMICAL =
      words(
          "epoxy|resins?|hardener|solvents?|acetone|thinners?|varnish|paint|primer|glue|sealant"
              + "|adhesive");

  private static final Pattern HEATER = words("heater|heat(?:ing)?|warm(?:ing)?|stove");
  private static final Pattern LEAD = words("lead|ballast");
  private static final Pattern LIFTING =
      words(
          "lift(?:s|ing)?|turn(?:s|ing)? (?:the|her|over|it)|hoist\\w*|crane|step (?:the"
              + " )?mast\\w*|launch\\w*|unstep\\w*|jack up");
  private static final Pattern ELECTRICAL =
      words(
          "wiring|electric\\w*|batter(?:y|ies)|charger|switch(?:es)?|shore power|navigation"
              + " lights?|gas|stove|lamps?");
  private static final Pattern CRATE = words("crates?|unpack\\w*|unload\\w*");
  private static final Pattern HEIGHT = words("aloft|mast ?head|rig(?:ging)?|shrouds|scaffold\\w*");

  private Cautions() {}

  private static Pattern words(String any) {
    return Pattern.compile("(?<![\\p{L}])(?:" + any + ")(?![\\p{L}])");
  }

  /** The cautions of a piece of work. */
  public static Set<Caution> of(Task task, Ledger ledger) {
    Set<Caution> all = EnumSet.noneOf(Caution.class);
    String what = task.what().toLowerCase(Locale.ROOT);
    add(SAW, Caution.SAW, what, all);
    add(DUST, Caution.DUST, what, all);
    add(RESIN, Caution.RESIN, what, all);
    add(HEATER, Caution.HEATER, what, all);
    add(LEAD, Caution.LEAD, what, all);
    add(LIFTING, Caution.LIFTING, what, all);
    add(ELECTRICAL, Caution.ELECTRICAL, what, all);
    add(CRATE, Caution.CRATE, what, all);
    add(HEIGHT, Caution.HEIGHT, what, all);
    task.tools().stream()
        .flatMap(tool -> ledger.loan(tool).stream())
        .forEach(loan -> add(HEATER, Caution.HEATER, loan.tool().toLowerCase(Locale.ROOT), all));
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

  private static void used(Task.Use use, Ledger ledger, Set<Caution> all) {
    use.item()
        .flatMap(ledger::kitItem)
        .map(item -> item.what())
        .or(() -> use.stock().flatMap(ledger::stock).map(stock -> stock.what()))
        .map(what -> what.toLowerCase(Locale.ROOT))
        .ifPresent(
            what -> {
              add(CHEMICAL, Caution.RESIN, what, all);
              add(LEAD, Caution.LEAD, what, all);
            });
  }

  private static void add(Pattern pattern, Caution caution, String words, Set<Caution> all) {
    if (pattern.matcher(words).find()) {
      all.add(caution);
    }
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

  /** At the crate. */
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
