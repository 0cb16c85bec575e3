package kitwright.assessment;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.joint.ForceLink;
import kitwright.assessment.joint.LinkStated;
import kitwright.assessment.joint.PinLink;
import kitwright.assessment.joint.WeakLinks;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Spreads;
import kitwright.assessment.method.BeamLoad;
import kitwright.assessment.method.BeamLoad.Own;
import kitwright.assessment.part.Part;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Print;
import kitwright.assessment.sheet.Row;
import kitwright.ledger.Assessment;
import kitwright.ledger.Section;
import kitwright.ledger.WeakLink;
import kitwright.mechanics.load.Break;
import kitwright.mechanics.load.Cantilever;
import kitwright.value.Quantity;

/** Judges whether the part of a weak link that is meant to break does so first. */
final class LinkJudged {
  private final Case of;
  private final WorkedParts parts;
  private final LoadOnBeam load;
  private final Tipping tipping;

  LinkJudged(Case of, WorkedParts parts, LoadOnBeam load, Tipping tipping) {
    this.of = of;
    this.parts = parts;
    this.load = load;
    this.tipping = tipping;
  }

  /** The order of the two, with its row behind the others. */
  WeakLinks judge(WeakLink link, List<Row> rows) {
    WeakLinks worked = worked(link);
    of.lacking().addAll(worked.lacking());
    of.lacking().addAll(LinkStated.lacking(link));
    double least = link.margin().doubleValue();
    if (link.by() == WeakLink.By.BENDING) {
      of.section(link.protectedPart())
          .flatMap(parts::linked)
          .flatMap(kept -> tipping.outlasts(kept, worked.margin().orElse(0.0), least))
          .ifPresent(of::lacks);
    }
    Row row =
        new Row(
            Measure.LINK,
            Optional.empty(),
            worked.margin().map(Figure::of),
            Optional.of(new Row.Limit(Row.Limit.Side.AT_LEAST, least)),
            worked.lacking());
    rows.add(worked.alike().map(row::judgedAlike).orElse(row));
    worked.first().flatMap(first -> otherThanMeant(first, link)).ifPresent(of.failing()::add);
    return worked;
  }

  private static Optional<String> otherThanMeant(Break first, WeakLink link) {
    boolean itself = first.part().equals(link.sacrificial().id());
    double meant = link.breaksAt().map(Quantity::base).orElse(0.0);
    if (itself && Math.abs(first.at() - meant) <= 1e-6) {
      return Optional.empty();
    }
    return Optional.of(
        first.part()
            + " breaks first, "
            + (first.at() == 0 ? "at the support" : Print.mm(first.at()) + " from the support")
            + " ("
            + first.mode()
            + "); "
            + (itself
                ? "it was meant to break " + Print.mm(meant) + " from it"
                : link.sacrificial() + " was meant to"));
  }

  private WeakLinks worked(WeakLink link) {
    if (link.isToItself()) {
      return lacking("its weak link protects a section from itself");
    }
    if (link.by() == WeakLink.By.BENDING) {
      return bent(link);
    }
    Assessment assessment = of.assessment();
    Spreads spreads = new Spreads(of.materials(), assessment.at().record(), new HashSet<>());
    return ForceLink.of(link, of.sections(), of.materials(), Factors.of(assessment), spreads)
        .told(of.inputs());
  }

  private WeakLinks bent(WeakLink link) {
    Optional<Section> weak = of.sections().apply(link.sacrificial());
    Optional<Section> safe = of.section(link.protectedPart());
    if (!of.assessment().method().isOfBeam()
        || load.laid(List.of()).flatMap(BeamLoad::cantilever).isEmpty()) {
      return lacking("a weak link needs a load on a cantilever");
    }
    if (weak.isEmpty() || safe.isEmpty()) {
      return lacking("a section of its weak link does not exist");
    }
    if (of.assessment()
        .load()
        .filter(some -> some.thrust().isPresent() || some.torque().isPresent())
        .isPresent()) {
      return lacking("a weak link is worked out for what bends it, not with a thrust or torque");
    }
    double at = link.breaksAt().map(Quantity::base).orElse(0.0);
    Optional<Part> kept = parts.linked(safe.get());
    Optional<WeakLinks> order =
        weak.get().isBolt()
            ? kept.map(one -> pinned(weak.get(), one, at))
            : parts.linked(weak.get()).flatMap(one -> kept.map(other -> beams(one, other, at)));
    return order.orElseGet(() -> WeakLinks.lacking(List.of()));
  }

  private WeakLinks pinned(Section pin, Part kept, double at) {
    Cantilever cantilever = cantilever(List.of(Own.of(kept)));
    return PinLink.of(pin, kept, parts.bending(kept), cantilever, at, of.materials(), of.linked());
  }

  private WeakLinks beams(Part weak, Part kept, double at) {
    Cantilever cantilever = cantilever(Own.joined(kept, weak, at));
    return WeakLinks.of(weak, kept, parts::bending, cantilever, at);
  }

  private static WeakLinks lacking(String why) {
    return WeakLinks.lacking(List.of(why));
  }

  private Cantilever cantilever(List<Own> own) {
    return load.laid(own).flatMap(BeamLoad::cantilever).orElseThrow();
  }
}
