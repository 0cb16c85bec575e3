package kitwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import kitwright.ledger.Assessment;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.mechanics.remedy.Addition;
import kitwright.mechanics.remedy.Remedy;

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
   * @param tried how many combinations were worked out
   * @param none why there is no answer, where there is none
   */
  public record Answer(
      List<String> additions, Optional<Result> result, int tried, Optional<String> none) {
    public Answer {
      additions = List.copyOf(additions);
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
      return new Answer(List.of(), Optional.of(asIs), 1, Optional.empty());
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
    List<Addition> menu = new ArrayList<>();
    for (int i = 0; i < assessment.menu().size(); i++) {
      Assessment.Addition line = assessment.menu().get(i);
      int[] one = new int[assessment.menu().size()];
      one[i] = 1;
      double price =
          least == Least.COST
              ? line.cost().map(cost -> cost.amount().doubleValue()).orElse(0.0)
              : Math.max(0, mass(worked.apply(one)) - mass(asIs));
      menu.add(new Addition(words(line, 1), line.most().orElse(MOST), price));
    }
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
          Optional.empty(),
          new Remedy(menu).combinations(),
          Optional.of("Nothing on the menu will do: " + open(asIs)));
    }
    int[] counts = found.get().counts().stream().mapToInt(Integer::intValue).toArray();
    List<String> additions = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        additions.add(words(assessment.menu().get(i), counts[i]));
      }
    }
    return new Answer(
        additions, Optional.of(worked.apply(counts)), found.get().tried(), Optional.empty());
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
    return new Answer(List.of(), Optional.empty(), 0, Optional.of(why));
  }
}
