package kitwright.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.assessment.Part.StackLayer;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.ledger.Section.Grain;
import kitwright.ledger.Section.Layer;
import kitwright.mechanics.beam.LayeredSection;
import kitwright.mechanics.beam.Strip;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** A stack of layers, each over the whole width or of strips side by side. */
final class LayeredPart {
  /** Strips that miss the width by less than this fill it: they are measured to half a mm. */
  private static final double FIT = 0.5e-3;

  private final Section section;
  private final Stuffs stuffs;
  private final Faults faults;
  private final List<StackLayer> stack = new ArrayList<>();

  LayeredPart(Section section, Stuffs stuffs, Faults faults) {
    this.section = section;
    this.stuffs = stuffs;
    this.faults = faults;
  }

  Optional<Part> part() {
    Optional<Quantity> width = section.width();
    if (width.isEmpty() || width.get().isNone()) {
      faults.add(
          "width",
          width.isEmpty() ? "A section of layers has no width" : "A section has a width of nought",
          "Write the width over all strips, such as width: 96 mm.");
      return Optional.empty();
    }
    double wide = width.get().base();
    LayeredSection built = LayeredSection.ofWidth(wide);
    glue().ifPresent(built::glue);
    boolean whole = true;
    boolean plain = true;
    for (int i = 0; i < section.layers().size(); i++) {
      Layer layer = section.layers().get(i);
      plain &= layer.strips().isEmpty();
      whole &= add(layer, "layer " + (i + 1), wide, built);
    }
    if (!whole || faults.any()) {
      return Optional.empty();
    }
    return Optional.of(new Part(section, built.section(), plain ? stack : List.of()));
  }

  private Optional<Double> glue() {
    return section
        .glue()
        .flatMap(stuffs::material)
        .flatMap(
            glue -> {
              OptionalDouble bond =
                  stuffs.value(glue, kitwright.ledger.MaterialProperty.BOND_STRENGTH);
              OptionalDouble shear =
                  stuffs.value(glue, kitwright.ledger.MaterialProperty.SHEAR_STRENGTH);
              OptionalDouble strength = bond.isPresent() ? bond : shear;
              if (strength.isEmpty()) {
                stuffs.lacks("glue " + glue.id() + " does not state its bond-strength");
              }
              return strength.isEmpty() ? Optional.empty() : Optional.of(strength.getAsDouble());
            });
  }

  private boolean add(Layer layer, String where, double width, LayeredSection built) {
    if (layer.strips().isEmpty()) {
      Optional<StackLayer> one = single(layer, where);
      one.ifPresent(
          ply -> {
            stack.add(ply);
            built.layer(ply.stuff().beam(ply.angle()), ply.thickness());
          });
      return one.isPresent();
    }
    Optional<Double> thick = thickness(layer);
    Optional<List<Strip>> strips = strips(layer, where, width);
    if (thick.isEmpty() || strips.isEmpty()) {
      return false;
    }
    built.strips(thick.get(), strips.get());
    return true;
  }

  private Optional<StackLayer> single(Layer layer, String where) {
    if (layer.material().isEmpty()) {
      faults.add(
          layer.at().record(),
          "A layer has neither a material nor strips",
          "Say what it is made of, or list its strips.");
      return Optional.empty();
    }
    Optional<Stuff> stuff = stuffs.of(layer.material().get());
    Optional<Double> thick =
        layer.plies().isPresent() ? cured(layer, stuff) : thickness(layer, stuff);
    if (stuff.isEmpty() || thick.isEmpty()) {
      return Optional.empty();
    }
    Optional<Material> material = stuffs.material(layer.material().get());
    Stuff boarded =
        material
            .filter(one -> one.sort() == Material.Sort.PLYWOOD)
            .map(one -> stuffs.boarded(one, stuff.get(), thick.get()))
            .orElse(stuff.get());
    return Optional.of(
        new StackLayer(
            where, boarded, angle(layer.angle(), layer.grain()) + boarded.turned(), thick.get()));
  }

  private Optional<Double> cured(Layer layer, Optional<Stuff> stuff) {
    BigDecimal plies = layer.plies().orElseThrow();
    if (plies.signum() <= 0) {
      faults.add(
          layer.at().of("plies"), "A layer has no ply", "Write how many plies, or leave it out.");
      return Optional.empty();
    }
    if (layer.thickness().isPresent()) {
      faults.add(
          layer.at().of("thickness"),
          "A layer of plies also states a thickness",
          "Leave the thickness out: it follows from the cloth’s weight and fibre content.");
      return Optional.empty();
    }
    if (stuff.isPresent() && stuff.get().ply().isEmpty()) {
      faults.add(
          layer.at().of("plies"),
          "Plies are counted of “" + stuff.get().id() + "”, which is no cloth",
          "Write its thickness instead.");
      return Optional.empty();
    }
    return stuff.map(cloth -> cloth.ply().orElseThrow() * plies.doubleValue());
  }

  private Optional<Double> thickness(Layer layer, Optional<Stuff> stuff) {
    if (stuff.isPresent() && stuff.get().ply().isPresent()) {
      faults.add(
          layer.at().of("material"),
          "The cloth “" + stuff.get().id() + "” is laid without a number of plies",
          "Write how many plies; the thickness follows from weight and fibre content.");
      return Optional.empty();
    }
    return thickness(layer);
  }

  private Optional<Double> thickness(Layer layer) {
    Optional<Quantity> thick = layer.thickness();
    if (thick.isEmpty() || thick.get().isNone()) {
      faults.add(
          layer.at().of("thickness"),
          thick.isEmpty() ? "A layer has no thickness" : "A layer has a thickness of nought",
          "Write how thick it is, or how many plies of a cloth.");
      return Optional.empty();
    }
    return Optional.of(thick.get().base());
  }

  private Optional<List<Strip>> strips(Layer layer, String where, double width) {
    double sum = layer.strips().stream().mapToDouble(strip -> strip.width().base()).sum();
    if (Math.abs(sum - width) > FIT) {
      faults.add(
          layer.at().of("strips"),
          "The strips of "
              + where
              + " are "
              + Print.number(sum * 1000)
              + " mm wide together in a section of "
              + Print.number(width * 1000)
              + " mm",
          "Make the strips and voids add up to the width.");
      return Optional.empty();
    }
    List<Strip> strips = new ArrayList<>();
    for (Section.Strip strip : layer.strips()) {
      strip(strip, width / sum).ifPresent(strips::add);
    }
    return strips.size() == layer.strips().size() ? Optional.of(strips) : Optional.empty();
  }

  private Optional<Strip> strip(Section.Strip strip, double stretch) {
    if (strip.width().isNone()) {
      faults.add(
          strip.at().of(strip.hollow() ? "void" : "width"),
          "A strip has a width of nought",
          "Write its width, or leave the strip out.");
      return Optional.empty();
    }
    double wide = strip.width().base() * stretch;
    if (strip.hollow()) {
      return Optional.of(Strip.gap(wide));
    }
    Optional<Ref> material = strip.material();
    if (material.isEmpty()) {
      faults.add(strip.at().record(), "A strip has no material", "Name it, or write void: WIDTH.");
      return Optional.empty();
    }
    return stuffs
        .of(material.get())
        .map(stuff -> Strip.of(wide, stuff.beam(angle(Optional.empty(), strip.grain()))));
  }

  /** Degrees of grain or first fibre from the length. */
  static double angle(Optional<Quantity> stated, Optional<Grain> grain) {
    if (stated.isPresent()) {
      return stated.get().base();
    }
    return switch (grain.orElse(Grain.ALONG)) {
      case ALONG -> 0;
      case BIAS -> 45;
      case ACROSS -> 90;
    };
  }
}
