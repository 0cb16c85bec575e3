package kitwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.joint.BoltMethod;
import kitwright.assessment.joint.DrivenMethod;
import kitwright.assessment.material.Factors.OnSide;
import kitwright.assessment.material.Factors.Side;
import kitwright.assessment.method.BeamLoad;
import kitwright.assessment.method.BeamLoad.Own;
import kitwright.assessment.method.Crushed;
import kitwright.assessment.method.LaminateMethod;
import kitwright.assessment.method.PanelMethod;
import kitwright.assessment.method.SectionMethod;
import kitwright.assessment.method.Taper;
import kitwright.assessment.part.Between;
import kitwright.assessment.part.Part;
import kitwright.assessment.part.Parts;
import kitwright.assessment.sheet.Figures;
import kitwright.assessment.sheet.Outcome;
import kitwright.assessment.sheet.Working;
import kitwright.finding.Findings;
import kitwright.ledger.Kind;
import kitwright.ledger.Load;
import kitwright.ledger.Section;
import kitwright.value.Ref;
import kitwright.value.Word;

/** What a side of a comparison comes to by the method of its assessment. */
final class SideWorked {
  private final Case of;
  private final WorkedParts parts;
  private final LoadOnBeam load;
  private final boolean sideways;

  /**
   * @param sideways whether what it bears across is worked out too
   */
  SideWorked(Case of, WorkedParts parts, LoadOnBeam load, boolean sideways) {
    this.of = of;
    this.parts = parts;
    this.load = load;
    this.sideways = sideways;
  }

  Outcome of(Optional<Ref> ref, Side side) {
    if (ref.isEmpty()) {
      return Outcome.nothing();
    }
    Optional<Section> section = of.sections().apply(ref.get());
    if (section.isEmpty()) {
      of.lacks(of.inputs().noSuch(Kind.SECTIONS, ref.get()) + " (" + Word.key(side) + ")");
      return Outcome.nothing();
    }
    return switch (of.assessment().method()) {
      case SECTION, TIMBER ->
          parts
              .part(section.get(), side)
              .map(part -> beam(section.get(), part, side))
              .orElseGet(Outcome::nothing);
      case PANEL -> panel(section.get(), side);
      case LAMINATE ->
          parts.stack(section.get(), side).map(LaminateMethod::of).orElseGet(Outcome::nothing);
      case BOLT -> bolt(section.get(), side);
      case EXTERNAL -> Outcome.nothing();
    };
  }

  private Outcome beam(Section section, Part part, Side side) {
    Optional<Load> stated = of.assessment().load();
    if (section.notch().isPresent()
        && stated.flatMap(Load::support).filter(Load.Support.SIMPLE::equals).isEmpty()) {
      of.lacks(
          "a notch is worked out at the supports of a beam that lies on two: a load with"
              + " support: simple");
    }
    if (section.tapersTo().isEmpty()) {
      Optional<BeamLoad> laid = load.laid(List.of(Own.of(part)));
      Outcome outcome = SectionMethod.of(part, parts.bending(part), sideways, laid, of.safety());
      return laid.flatMap(some -> crushed(part, some, side, outcome))
          .map(outcome::with)
          .orElse(outcome);
    }
    if (stated.flatMap(Load::bearing).isPresent()) {
      of.lacks("where a part that tapers is crushed is not worked out: leave bearing out");
    }
    return tapered(section, section.tapersTo().get(), part, side);
  }

  private Outcome tapered(Section section, Ref end, Part part, Side side) {
    Optional<BeamLoad> laid = load.laid(List.of(Own.of(part)));
    Optional<Section> tip = of.sections().apply(end);
    Optional<String> misfit =
        tip.isEmpty()
            ? Optional.of(of.inputs().noSuch(Kind.SECTIONS, end))
            : Between.misfit(section, tip.get());
    misfit.ifPresent(of::lacks);
    of.materials().twice(end).ifPresent(of::lacks);
    if (section.notch().isPresent()) {
      of.lacks("a notch in a part that tapers is not worked out");
    }
    List<Part> along = misfit.isEmpty() ? along(section, tip.orElseThrow(), side) : List.of();
    if (along.size() < Taper.PLACES || laid.flatMap(BeamLoad::cantilever).isEmpty()) {
      return Taper.without(part, new Figures());
    }
    if (laid.get().stated().selfWeight()
        && along.get(Taper.PLACES - 1).beam().massPerLength() > part.beam().massPerLength()) {
      of.lacks(section.named() + " grows heavier outwards, and weighs as at its support here");
    }
    Taper.sideways(part, parts.bending(part), laid.get()).ifPresent(of::lacks);
    return Taper.of(along, laid.get(), of.safety());
  }

  private List<Part> along(Section section, Section tip, Side side) {
    List<Part> along = new ArrayList<>();
    for (int i = 0; i < Taper.PLACES; i++) {
      Section there = Between.at(section, tip, (double) i / (Taper.PLACES - 1));
      new Parts(of.materials(), of.factors(side), new Findings()).of(there).ifPresent(along::add);
    }
    return along;
  }

  private Optional<Working> crushed(Part part, BeamLoad load, Side side, Outcome outcome) {
    OnSide on = of.factors(side);
    boolean beside =
        of.assessment().require().keySet().stream().anyMatch(one -> one.id().equals("strength"));
    if (side == Side.DESIGNED && !beside && Crushed.isDoubted(part, of.materials(), on)) {
      if (load.stated().bearing().isPresent()) {
        of.inputs()
            .note(
                "where "
                    + part.id()
                    + " bears it is not worked out as drawn: nobody vouches for its strength"
                    + " across, and what is asked is of the part as built");
      }
      return Optional.empty();
    }
    return Crushed.put(part, load, of.safety(), of.materials(), on, outcome.figures());
  }

  private Outcome panel(Section section, Side side) {
    Optional<PanelMethod.Pressed> pressed =
        of.assessment().load().flatMap(some -> PanelMethod.Pressed.of(some, of.lacking()));
    if (of.assessment().load().isEmpty()) {
      of.lacks("a panel needs a load: pressure, span, breadth and support");
    }
    Optional<Part> part = parts.stack(section, side);
    return pressed
        .flatMap(asked -> part.map(one -> PanelMethod.of(one, asked)))
        .orElseGet(Outcome::nothing);
  }

  private Outcome bolt(Section section, Side side) {
    if (DrivenMethod.isDriven(section)) {
      return DrivenMethod.of(section, of.materials(), of.factors(side), new Findings());
    }
    if (!section.isBolt()) {
      of.lacks(section.named() + " is no bolt, nail or screw (shape: bolt, with a diameter)");
      return Outcome.nothing();
    }
    return BoltMethod.of(section, of.materials(), of.factors(side), new Findings());
  }
}
