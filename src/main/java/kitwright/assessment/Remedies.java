package kitwright.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Assessment;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.mechanics.remedy.Addition;
import kitwright.mechanics.remedy.Remedy;
import kitwright.value.Money;

/**
 * Searches the menu of an assessment for what makes the built section meet everything that is
 * asked. Every combination cheaper than the answer is worked out anew, weak link and all: a ply in
 * the wrong place can move the break.
 */
public final class Remedies {
  /** Where the menu does not say how many, no more than this are tried. */
  private static final int MOST = 6;

  private Remedies() {}

  /** What shall be least. */
  public enum Least {
    MASS,
    COST
  }

  /**
   * The answer.
   *
   * @param additions in words: “2 plies of glass-290 on both faces”; empty where nothing is needed
   * @param result the assessment with them
   * @param prices what each step of it costs and weighs, and what all of it does
   * @param tried how many combinations were worked out
   * @param none why there is no answer, where there is none
   * @param nearest where nothing will do: what comes nearest, and what it misses
   */
  public record Answer(
      List<String> additions,
      List<String> prices,
      Optional<Result> result,
      int tried,
      Optional<String> none,
      Optional<String> nearest) {
    public Answer {
      additions = List.copyOf(additions);
      prices = List.copyOf(prices);
    }
  }

  /** The least additions that pass. */
  public static Answer of(Assessment assessment, Ledger ledger, Least least) {
    Optional<Section> built = assessment.built().flatMap(ledger::section);
    if (assessment.menu().isEmpty() || built.isEmpty()) {
      return none("The assessment has no menu of what may be added.");
    }
    Result asIs = Assessments.result(assessment, ledger);
    if (asIs.verdict().passes()) {
      return new Answer(
          List.of(), List.of(), Optional.of(asIs), 1, Optional.empty(), Optional.empty());
    }
    boolean priced = assessment.menu().stream().allMatch(one -> one.cost().isPresent());
    if (least == Least.COST && !priced) {
      return none("A line of the menu states no cost, so that the cheapest cannot be told.");
    }
    return search(assessment, ledger, built.get(), asIs, least);
  }

  private static Answer search(
      Assessment assessment, Ledger ledger, Section built, Result asIs, Least least) {
    Variant variant = new Variant(ref -> ledger.material(ref).map(Material::sort));
    Optional<String> misfit =
        assessment.menu().stream()
            .flatMap(line -> variant.misfit(built, line).stream())
            .findFirst();
    if (misfit.isPresent()) {
      return none(misfit.get());
    }
    Function<int[], Result> worked =
        counts ->
            Assessments.result(
                assessment,
                ledger,
                Assessments.replacing(with(assessment, built, variant, counts), ledger));
    List<Addition> menu =
        menu(assessment.menu(), least, one -> mass(worked.apply(one)) - mass(asIs));
    Predicate<Section> trials = Assessments.trials(assessment, ledger);
    Optional<Remedy.Found> found;
    try {
      found =
          new Remedy(menu)
              .cheapest(
                  counts ->
                      trials.test(with(assessment, built, variant, counts))
                          && worked.apply(counts).verdict().passes());
    } catch (IllegalArgumentException tooMany) {
      return none("The menu allows " + tooMany.getMessage() + ".");
    }
    if (found.isEmpty()) {
      return new Answer(
          List.of(),
          List.of(),
          Optional.empty(),
          new Remedy(menu).combinations(),
          Optional.of("Nothing on the menu will do: " + open(asIs)),
          nearest(assessment, menu, worked));
    }
    int[] counts = found.get().counts().stream().mapToInt(Integer::intValue).toArray();
    List<String> additions = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        additions.add(words(assessment.menu().get(i), counts[i]));
      }
    }
    Result mended = worked.apply(counts);
    return new Answer(
        additions,
        prices(assessment, counts, step -> mass(worked.apply(step)) - mass(asIs), mended, asIs),
        Optional.of(mended),
        found.get().tried(),
        Optional.empty(),
        Optional.empty());
  }

  /**
   * The lines with their prices.
   *
   * @param more mass that so many of each line bring
   */
  private static List<Addition> menu(
      List<Assessment.Addition> lines, Least least, ToDoubleFunction<int[]> more) {
    List<Addition> menu = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Assessment.Addition line = lines.get(i);
      int[] one = new int[lines.size()];
      one[i] = 1;
      double price =
          least == Least.COST
              ? line.cost().map(cost -> cost.amount().doubleValue()).orElse(0.0)
              : Math.max(0, more.applyAsDouble(one));
      menu.add(new Addition(words(line, 1), line.most().orElse(MOST), price));
    }
    return menu;
  }

  /** A line a step, and one for all together; a ply on each face is one step. */
  private static List<String> prices(
      Assessment assessment,
      int[] counts,
      ToDoubleFunction<int[]> mass,
      Result mended,
      Result asIs) {
    List<String> prices = new ArrayList<>();
    Optional<Money> all = Optional.empty();
    for (int i = 0; i < counts.length; i++) {
      Assessment.Addition line = assessment.menu().get(i);
      if (counts[i] > 0) {
        int[] one = new int[counts.length];
        one[i] = 1;
        prices.add(
            words(line, 1)
                + ": "
                + Print.with(mass.applyAsDouble(one), unit(asIs))
                + line.cost().map(cost -> ", " + cost + faces(line)).orElse(", no cost stated"));
        all = sum(all, line.cost(), counts[i]);
      }
    }
    prices.add(
        "all together: "
            + Print.with(mass(mended) - mass(asIs), unit(asIs))
            + all.map(cost -> ", " + cost).orElse(""));
    return prices;
  }

  private static Optional<Money> sum(Optional<Money> sum, Optional<Money> cost, int count) {
    Optional<Money> more =
        cost.map(
            one -> new Money(one.amount().multiply(BigDecimal.valueOf(count)), one.currency()));
    if (sum.isEmpty() || more.isEmpty()) {
      return more.or(() -> sum);
    }
    return sum.get().currency().equals(more.get().currency())
        ? Optional.of(new Money(sum.get().amount().add(more.get().amount()), more.get().currency()))
        : Optional.empty();
  }

  private static String faces(Assessment.Addition line) {
    return line.material().isPresent() && line.faces().orElse(2) > 1 ? " for both faces" : "";
  }

  private static String unit(Result result) {
    return result.rows().stream().anyMatch(row -> row.measure() == Measure.PLATE_MASS)
        ? "kg/m²"
        : "kg/m";
  }

  /** Of so many combinations at the most that are worked out whole. */
  private static final int NEAR = 300;

  private static Optional<String> nearest(
      Assessment assessment, List<Addition> menu, Function<int[], Result> worked) {
    Optional<String> near = Optional.empty();
    double best = Double.NEGATIVE_INFINITY;
    int all = new Remedy(menu).combinations();
    for (int n = 0; n < all; n += Math.max(1, all / NEAR)) {
      int[] counts = Addition.counts(n, menu);
      Result result = worked.apply(counts);
      double margin =
          result.asked().stream()
              .filter(row -> row.margin().isPresent())
              .mapToDouble(row -> row.margin().getAsDouble())
              .min()
              .orElse(Double.NEGATIVE_INFINITY);
      if (margin > best) {
        best = margin;
        near =
            Optional.of(
                additions(assessment, counts) + " still misses: " + result.verdict().because());
      }
    }
    return near;
  }

  private static String additions(Assessment assessment, int[] counts) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        words.add(words(assessment.menu().get(i), counts[i]));
      }
    }
    return words.isEmpty() ? "the part as it is" : String.join(", ", words);
  }

  /** What cannot be told is not mended by plies. */
  private static String open(Result asIs) {
    return asIs.verdict().outcome() == Verdict.Outcome.CANNOT_TELL
        ? "it is not strength that is lacking, but " + asIs.verdict().because() + "."
        : "every combination misses something that is asked.";
  }

  /** The built section with so many of each line of the menu. */
  static Section with(Assessment assessment, Section built, Variant variant, int[] counts) {
    Section mended = built;
    for (int i = 0; i < counts.length; i++) {
      mended = variant.with(mended, assessment.menu().get(i), counts[i]);
    }
    return mended;
  }

  private static double mass(Result result) {
    return result.rows().stream()
        .filter(row -> row.measure() == Measure.MASS || row.measure() == Measure.PLATE_MASS)
        .findFirst()
        .flatMap(Row::built)
        .map(Figure::value)
        .orElse(0.0);
  }

  private static String words(Assessment.Addition line, int count) {
    if (line.material().isPresent()) {
      return count
          + (count == 1 ? " ply of " : " plies of ")
          + line.material().get()
          + (line.faces().orElse(2) > 1 ? " on each face" : " on the upper face");
    }
    return count
        + " × "
        + line.step().map(Object::toString).orElse("?")
        + " more "
        + line.dimension().orElse("of it");
  }

  private static Answer none(String why) {
    return new Answer(
        List.of(), List.of(), Optional.empty(), 0, Optional.of(why), Optional.empty());
  }
}
