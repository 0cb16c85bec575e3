package kitwright.assessment;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import kitwright.assessment.material.Materials;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Assessment;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.value.Ref;

/** Every assessment of a ledger, each worked out once, when it is first asked for. */
public final class Assessments {
  private static final Facts.Fact<Assessments> FACT = day -> of(day.ledger());

  private final Ledger ledger;
  private final Map<String, Assessment> byId = new LinkedHashMap<>();
  private final Map<String, Result> worked = new HashMap<>();

  private Assessments(Ledger ledger) {
    this.ledger = ledger;
    ledger.assessments().forEach(each -> byId.putIfAbsent(each.id(), each));
  }

  /** Every assessment, each worked out once. */
  public static Assessments on(Facts day) {
    return FACT.on(day);
  }

  public static Assessments of(Ledger ledger) {
    return new Assessments(ledger);
  }

  /** Works one out. */
  static Result result(Assessment assessment, Ledger ledger) {
    if (assessment.method() == Assessment.Method.EXTERNAL) {
      return External.result(assessment, ledger);
    }
    return result(assessment, ledger, ledger::section);
  }

  /**
   * Works one out with another material in place of the ledger's of its id.
   *
   * @param sampled whether chances are sampled
   */
  static Result with(Material other, Assessment assessment, Ledger ledger, boolean sampled) {
    try {
      Materials materials = Materials.with(other, assessment, ledger);
      return new Examiner(assessment, ledger::section, materials).result(sampled);
    } catch (IllegalArgumentException beyond) {
      return Result.without(assessment, beyond(beyond));
    }
  }

  /** Works one out with sections from elsewhere, such as with plies added. */
  static Result result(
      Assessment assessment, Ledger ledger, Function<Ref, Optional<Section>> sections) {
    try {
      return new Examiner(assessment, sections, Materials.of(assessment, ledger)).result();
    } catch (IllegalArgumentException beyond) {
      return Result.without(assessment, beyond(beyond));
    }
  }

  /**
   * Tells of one built section after another whether the assessment may pass with it: where it says
   * no, {@link #result} does not. What does not hang on the built section is worked out once.
   */
  static Predicate<Section> trials(Assessment assessment, Ledger ledger) {
    try {
      Examiner ahead =
          Examiner.ahead(assessment, ledger::section, Materials.of(assessment, ledger));
      return built -> mayPass(ahead, replacing(built, ledger));
    } catch (IllegalArgumentException beyond) {
      return built -> false;
    }
  }

  private static boolean mayPass(Examiner ahead, Function<Ref, Optional<Section>> sections) {
    try {
      return ahead.again(sections).mayPass();
    } catch (IllegalArgumentException beyond) {
      return false;
    }
  }

  /** The sections of a ledger, one of them replaced. */
  static Function<Ref, Optional<Section>> replacing(Section other, Ledger ledger) {
    return ref -> ref.id().equals(other.id()) ? Optional.of(other) : ledger.section(ref);
  }

  /** Mechanics refuses numbers that cannot be, such as a span of a thousand kilometres. */
  private static Verdict beyond(IllegalArgumentException refused) {
    return Verdict.cannotTell(
        List.of("its numbers lie beyond what can be worked out: " + refused.getMessage()));
  }

  /** In the ledger's order. */
  public List<Result> all() {
    return byId.values().stream().map(this::worked).toList();
  }

  public Optional<Result> of(String id) {
    return Optional.ofNullable(byId.get(id)).map(this::worked);
  }

  private Result worked(Assessment assessment) {
    return worked.computeIfAbsent(assessment.id(), id -> result(assessment, ledger));
  }
}
