package kitwright.assessment;

import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Factors.OnSide;
import kitwright.assessment.material.Factors.Side;
import kitwright.assessment.part.Part;
import kitwright.assessment.part.Parts;
import kitwright.assessment.part.Sketch;
import kitwright.finding.Findings;
import kitwright.ledger.Section;
import kitwright.mechanics.beam.Bending;

/** The parts that an assessment compares or links, each worked out once from its section. */
final class WorkedParts {
  private final Case of;
  private final Map<String, Optional<Part>> parts = new LinkedHashMap<>();
  private final IdentityHashMap<kitwright.mechanics.beam.Section, Bending> bendings =
      new IdentityHashMap<>();

  WorkedParts(Case of) {
    this.of = of;
  }

  /** Takes over what another has worked out already. */
  void addAll(WorkedParts others) {
    parts.putAll(others.parts);
    bendings.putAll(others.bendings);
  }

  Optional<Part> drawn() {
    return of.section(of.assessment().designed()).flatMap(one -> part(one, Side.DESIGNED));
  }

  Optional<Part> made() {
    return of.section(of.assessment().built()).flatMap(one -> part(one, Side.BUILT));
  }

  /** Tells of the part as drawn and as made, where both can be worked out. */
  void both(BiConsumer<Part, Part> told) {
    drawn().ifPresent(drawn -> made().ifPresent(made -> told.accept(drawn, made)));
  }

  /** A part of layers that reach over its whole width, known across its grain too. */
  Optional<Part> stack(Section section, Side side) {
    Optional<Part> part = part(section, side);
    part.filter(one -> one.stack().isEmpty())
        .ifPresent(
            one ->
                of.lacks(
                    section.named()
                        + " is no stack of layers over its whole width, which a panel or"
                        + " laminate needs: list its layers"));
    if (section.tapersTo().isPresent() || section.notch().isPresent()) {
      of.lacks(section.named() + " tapers or is notched, which is of beams");
    }
    boolean flat = true;
    for (Section.Layer layer : section.layers()) {
      flat &= layer.material().flatMap(of.materials()::flat).isPresent();
    }
    boolean known = flat;
    return part.filter(one -> known && !one.stack().isEmpty());
  }

  Optional<Part> part(Section section, Side side) {
    return part(
        section, (of.factors().alike() ? "" : side + " ") + section.id(), of.factors(), side);
  }

  /** A part of a weak link, as built and by the means of its strengths. */
  Optional<Part> linked(Section section) {
    if (section.tapersTo().isPresent() || section.notch().isPresent()) {
      of.lacks("a weak link of a part that tapers or is notched is not worked out");
    }
    String key =
        of.linked().equals(of.factors()) && of.factors().alike()
            ? section.id()
            : "linked " + section.id();
    return part(section, key, of.linked(), Side.BUILT);
  }

  private Optional<Part> part(Section section, String key, Factors with, Side side) {
    if (section.shape().filter(Section.Shape::isFastening).isPresent()) {
      of.lacks(section.named() + " is a fastening, which method: bolt works out");
      return Optional.empty();
    }
    return parts.computeIfAbsent(
        key, any -> new Parts(of.materials(), new OnSide(with, side), new Findings()).of(section));
  }

  Bending bending(Part part) {
    return bendings.computeIfAbsent(part.beam(), Bending::of);
  }

  List<Sketch> sketches() {
    return parts.values().stream().flatMap(Optional::stream).map(Sketch::of).toList();
  }
}
