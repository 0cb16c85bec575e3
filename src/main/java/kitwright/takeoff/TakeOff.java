package kitwright.takeoff;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.ledger.Task;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/**
 * What a section takes over an area or a length.
 *
 * @param lines one a material of a layer, in the order of the section
 * @param gaps what could not be worked out
 */
public record TakeOff(List<Line> lines, List<Gap> gaps) {
  /**
   * Something that could not be worked out.
   *
   * @param what a clause after “it is not known”
   * @param mend a sentence
   */
  public record Gap(String what, String mend) {
    /** A record is named that is not there, or cannot be read. */
    static Gap absent(String kind, Ref ref) {
      return new Gap(
          "what “" + ref.id() + "” is, since no " + kind + " of that name can be read",
          "Write the " + kind + ", or mend its name.");
    }
  }

  private static final TakeOff NOTHING = new TakeOff(List.of(), List.of());

  public TakeOff {
    lines = List.copyOf(lines);
    gaps = List.copyOf(gaps);
  }

  /** What a use of a section takes; nothing where it names no section. */
  public static TakeOff of(Task.Use use, Ledger ledger) {
    return use.section().map(ref -> of(use, ref, ledger)).orElse(NOTHING);
  }

  private static TakeOff of(Task.Use use, Ref ref, Ledger ledger) {
    return ledger
        .section(ref)
        .map(section -> new Worked(use, section, ledger).takeOff())
        .orElseGet(() -> new TakeOff(List.of(), List.of(Gap.absent("section", ref))));
  }

  /** What all uses of a task take. */
  public static TakeOff of(Task task, Ledger ledger) {
    List<Line> lines = new ArrayList<>();
    List<Gap> gaps = new ArrayList<>();
    for (Task.Use use : task.uses()) {
      TakeOff one = of(use, ledger);
      lines.addAll(one.lines());
      gaps.addAll(one.gaps());
    }
    return new TakeOff(lines, gaps);
  }

  private static final class Worked {
    private final Task.Use use;
    private final Section section;
    private final Ledger ledger;
    private final BigDecimal waste;
    private final List<Line> lines = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();
    private final Laminating laminating;

    Worked(Task.Use use, Section section, Ledger ledger) {
      this.use = use;
      this.section = section;
      this.ledger = ledger;
      this.waste = use.waste().orElse(BigDecimal.ZERO);
      this.laminating = new Laminating(ledger, waste, lines, gaps);
    }

    TakeOff takeOff() {
      section.layers().forEach(layer -> layer(layer, area(section.width())));
      section.skins().forEach(layer -> layer(layer, area(girth())));
      section.material().ifPresent(this::solid);
      if (lines.isEmpty() && gaps.isEmpty()) {
        gaps.add(
            new Gap(
                "what section " + section.id() + " is made of",
                "Write its “layers”, or its “material”."));
      }
      return new TakeOff(lines, gaps);
    }

    /** The area covered: as said, or the length times a width. */
    private Optional<Quantity> area(Optional<Quantity> width) {
      return use.area()
          .or(
              () ->
                  use.length()
                      .flatMap(
                          length ->
                              width.map(
                                  wide ->
                                      new Quantity(
                                          length
                                              .in(Unit.M)
                                              .amount()
                                              .multiply(wide.in(Unit.M).amount()),
                                          Unit.M2))));
    }

    private Optional<Quantity> girth() {
      Optional<Quantity> height = dimension("height");
      Optional<Quantity> wide = dimension("width").or(section::width);
      Optional<Quantity> round = dimension("diameter");
      if (round.isPresent()) {
        return Optional.of(round.get().times(new BigDecimal(Math.PI, MathContext.DECIMAL32)));
      }
      return height.flatMap(h -> wide.map(w -> h.plus(w).times(BigDecimal.valueOf(2))));
    }

    private Optional<Quantity> dimension(String name) {
      return section.dimensions().entrySet().stream()
          .filter(entry -> entry.getKey().id().equals(name))
          .map(Map.Entry::getValue)
          .filter(quantity -> quantity.unit().convertsTo(Unit.M))
          .findFirst();
    }

    private void layer(Section.Layer layer, Optional<Quantity> area) {
      layer.strips().forEach(strip -> strip(layer, strip));
      layer
          .material()
          .ifPresent(
              ref ->
                  ledger
                      .material(ref)
                      .ifPresentOrElse(
                          found -> layer(ref, found, layer, area),
                          () -> gaps.add(Gap.absent("material", ref))));
    }

    private void layer(Ref ref, Material material, Section.Layer layer, Optional<Quantity> area) {
      if (use.length().isPresent() && material.sort() == Material.Sort.TIMBER) {
        lines.add(length().line(ref, Line.Role.TIMBER, Unit.M, waste));
      } else if (area.isEmpty()) {
        gaps.add(
            new Gap(
                "how wide section " + section.id() + " is", "Write “area” instead of “length”."));
      } else if (material.sort() == Material.Sort.CLOTH) {
        laminating.plies(ref, material, layer.plies(), area.get());
      } else {
        role(material.sort())
            .ifPresentOrElse(
                role ->
                    lines.add(
                        Sum.of(area.get().in(Unit.M2))
                            .line(ref, role, Unit.M2, waste)
                            .of(layer.thickness())),
                () ->
                    gaps.add(
                        new Gap(
                            "how much of " + ref.id() + " a layer takes",
                            "Give the layer a cloth, a board, a core, wood or metal, and write the"
                                + " rest as a line of its own.")));
      }
    }

    private static Optional<Line.Role> role(Material.Sort sort) {
      return switch (sort) {
        case CORE -> Optional.of(Line.Role.CORE);
        case PLYWOOD, LAMINATE, OTHER -> Optional.of(Line.Role.PANEL);
        case TIMBER -> Optional.of(Line.Role.TIMBER);
        case METAL -> Optional.of(Line.Role.METAL);
        case FIBRE, RESIN, CLOTH, GLUE, BOLT -> Optional.empty();
      };
    }

    /** A strip along a length; over an area so many side by side. */
    private void strip(Section.Layer layer, Section.Strip strip) {
      if (strip.material().isEmpty()) {
        return;
      }
      if (use.length().isEmpty() && pitch(layer).signum() == 0) {
        gaps.add(
            new Gap(
                "how wide the strips of section " + section.id() + " are",
                "Write the “width” of each."));
        return;
      }
      Sum metres = use.length().isPresent() ? length() : sideBySide(layer);
      lines.add(metres.line(strip.material().get(), Line.Role.TIMBER, Unit.M, waste));
    }

    private Sum sideBySide(Section.Layer layer) {
      BigDecimal pitch = pitch(layer);
      BigDecimal area = use.area().orElseThrow().in(Unit.M2).amount();
      return new Sum(
          area.divide(pitch, MathContext.DECIMAL64),
          use.area().get() + " / " + Sum.rounded(pitch) + " m a strip");
    }

    private static BigDecimal pitch(Section.Layer layer) {
      return layer.strips().stream()
          .map(each -> each.width().in(Unit.M).amount())
          .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private Sum length() {
      return Sum.of(use.length().orElseThrow().in(Unit.M));
    }

    /** A solid section over a length, or fasteners along it. */
    private void solid(Ref ref) {
      Optional<Material> material = ledger.material(ref);
      boolean bolts =
          section.shape().filter(Section.Shape::isFastening).isPresent()
              || material.filter(found -> found.sort() == Material.Sort.BOLT).isPresent();
      if (use.length().isEmpty()) {
        gaps.add(
            new Gap(
                "how long section " + section.id() + " runs", "Write “length” instead of “area”."));
      } else if (bolts) {
        fasteners(ref);
      } else {
        Line.Role role = material.flatMap(m -> role(m.sort())).orElse(Line.Role.TIMBER);
        lines.add(length().line(ref, role, Unit.M, waste));
      }
    }

    private void fasteners(Ref ref) {
      Optional<Quantity> spacing = dimension("spacing").filter(each -> !each.isNone());
      if (spacing.isEmpty()) {
        gaps.add(
            new Gap(
                "how far apart the fasteners of " + section.id() + " stand",
                "Write the section’s “spacing”."));
        return;
      }
      Quantity length = use.length().orElseThrow();
      BigDecimal gapsBetween =
          length
              .in(Unit.M)
              .amount()
              .divide(spacing.get().in(Unit.M).amount(), MathContext.DECIMAL64)
              .setScale(0, RoundingMode.FLOOR);
      BigDecimal net = gapsBetween.add(BigDecimal.ONE);
      BigDecimal gross = net.multiply(BigDecimal.ONE.add(waste)).setScale(0, RoundingMode.CEILING);
      lines.add(
          new Line(
              ref,
              Line.Role.FASTENER,
              new Quantity(net, Unit.EACH),
              new Quantity(gross, Unit.EACH),
              Optional.empty(),
              length
                  + " / "
                  + spacing.get()
                  + " and one more = "
                  + net.toPlainString()
                  + (waste.signum() == 0 ? "" : "; with waste " + gross.toPlainString())));
    }
  }
}
