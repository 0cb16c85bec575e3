package kitwright.assessment;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.assessment.sheet.Input;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.ledger.Assessment;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Which stated value moves the tightest limit most, and what measured value would settle it. Each
 * value is changed by itself, all others as they are.
 */
public final class Sensitivity {
  private static final int SHOWN = 3;
  private static final double STEP = 0.01;

  /** What would be printed as nothing moves nothing. */
  private static final double SEEN = 0.0005;

  private static final int HALVINGS = 30;

  private final Assessment assessment;
  private final Ledger ledger;
  private final Result asIs;
  private final Measure measure;

  private Sensitivity(Result asIs, Ledger ledger, Measure measure) {
    this.assessment = asIs.assessment();
    this.ledger = ledger;
    this.asIs = asIs;
    this.measure = measure;
  }

  /** How far one value moves the margin. */
  private record Moved(Material material, Input input, double byOne) {}

  /** Lines, the value that moves most first; none where nothing has a margin. */
  public static List<String> of(Result result, Ledger ledger) {
    return result
        .tightest()
        .filter(row -> !result.assessment().method().equals(Assessment.Method.EXTERNAL))
        .filter(row -> row.measure() != Measure.LINK_CHANCE)
        .map(row -> new Sensitivity(result, ledger, row.measure()).lines())
        .orElseGet(List::of);
  }

  private List<String> lines() {
    double margin = asIs.tightest().orElseThrow().margin().orElse(0);
    List<Moved> moved = new ArrayList<>();
    for (Input input : asIs.inputs()) {
      material(input).flatMap(material -> moved(material, input, margin)).ifPresent(moved::add);
    }
    moved.sort(Comparator.comparingDouble(one -> -Math.abs(one.byOne())));
    List<String> lines = new ArrayList<>();
    for (Moved one : moved.subList(0, Math.min(SHOWN, moved.size()))) {
      lines.add(words(one) + settled(one, margin < 0).map(value -> "; " + value).orElse(""));
    }
    return lines;
  }

  private Optional<Material> material(Input input) {
    return ledger.material(new Ref(input.material(), assessment.at().record()));
  }

  private Optional<Moved> moved(Material material, Input input, double margin) {
    if (!material.properties().containsKey(input.property())) {
      return Optional.empty();
    }
    OptionalDouble other = margin(material, input, 1 + STEP);
    return other.isPresent() && Math.abs(other.getAsDouble() - margin) >= SEEN
        ? Optional.of(new Moved(material, input, other.getAsDouble() - margin))
        : Optional.empty();
  }

  private OptionalDouble margin(Material material, Input input, double times) {
    Result result = changed(material, input, times, false);
    return result.asked().stream()
        .filter(row -> row.measure() == measure && row.margin().isPresent())
        .mapToDouble(row -> row.margin().getAsDouble())
        .min();
  }

  private Result changed(Material material, Input input, double times, boolean sampled) {
    return Assessments.with(
        material.with(input.property(), value(material, input, times)),
        assessment,
        ledger,
        sampled);
  }

  private static Quantity value(Material material, Input input, double times) {
    Quantity stated = Objects.requireNonNull(material.properties().get(input.property()));
    return stated.times(BigDecimal.valueOf(times));
  }

  private String words(Moved one) {
    return "1 % more "
        + one.input().property().key()
        + " of "
        + one.input().material()
        + " moves the margin of “"
        + measure.words()
        + "” by "
        + Print.apart(one.byOne());
  }

  /** The value at which the tightest limit is just met, within a half to the double. */
  private Optional<String> settled(Moved one, boolean fails) {
    double towards = one.byOne() > 0 == fails ? 2 : 0.5;
    OptionalDouble far = margin(one.material(), one.input(), towards);
    if (far.isEmpty() || far.getAsDouble() < 0 == fails) {
      return Optional.empty();
    }
    double near = 1;
    double beyond = towards;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (near + beyond) / 2;
      boolean still =
          margin(one.material(), one.input(), middle).orElse(fails ? -1 : 1) < 0 == fails;
      near = still ? middle : near;
      beyond = still ? beyond : middle;
    }
    Quantity value = value(one.material(), one.input(), fails ? beyond : near);
    String told = new Quantity(value.amount().round(new MathContext(3)), value.unit()).toString();
    if (!fails) {
      return Optional.of((towards > 1 ? "above " : "below ") + told + " it is missed");
    }
    boolean passes = changed(one.material(), one.input(), beyond * 1.001, true).verdict().passes();
    return Optional.of(
        "a measured value "
            + (towards > 1 ? "above " : "below ")
            + told
            + (passes ? " makes it pass" : " meets this limit"));
  }
}
