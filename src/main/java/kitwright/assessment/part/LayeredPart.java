package kitwright.assessment.part;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.material.Stuff;
import kitwright.assessment.part.Part.StackLayer;
import kitwright.assessment.sheet.Faults;
import kitwright.assessment.sheet.Print;
import kitwright.ledger.Kind;
import kitwright.ledger.Material;
import kitwright.ledger.Section;
import kitwright.ledger.Section.Grain;
import kitwright.ledger.Section.Layer;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.LayeredSection;
import kitwright.mechanics.beam.Strip;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** A stack of layers, each over the whole width or of strips side by side. */
public final class LayeredPart {
  /** Strips that miss the width by less than this fill it: they are measured to half a mm. */
  private static final double FIT = 0.5e-3;

  /** m; more is a slip of the unit. */
  private static final double THICKEST = 1;

  private static final double WIDEST = 20;

  /** Degrees; a fibre that is turned further lies as one that is turned less. */
  private static final double HALF_TURN = 180;

  private final Section section;
  private final Materials materials;
  private final Factors.OnSide factors;
  private final Faults faults;
  private final LayersUnsaid unsaid;
  private double wide;
  private final List<StackLayer> stack = new ArrayList<>();

  LayeredPart(Section section, Materials materials, Factors.OnSide factors, Faults faults) {
    this.section = section;
    this.materials = materials;
    this.factors = factors;
    this.faults = faults;
    unsaid = new LayersUnsaid(section, materials);
  }

  public Optional<Part> part() {
    Optional<Quantity> width = section.width();
    if (width.isEmpty() || width.get().isNone()) {
      faults.add(
          "width",
          width.isEmpty() ? "A section of layers has no width" : "A section has a width of zero",
          "Write the width over all strips, such as width: 96 mm.");
      return Optional.empty();
    }
    wide = width.get().base();
    if (wide > WIDEST) {
      faults.add("width", "A section is " + width.get() + " wide", "Look at its unit.");
      return Optional.empty();
    }
    walls();
    unsaid.taken();
    LayeredSection built = LayeredSection.ofWidth(wide);
    glue().ifPresent(built::glue);
    boolean whole = true;
    boolean plain = true;
    for (int i = 0; i < section.layers().size(); i++) {
      Layer layer = section.layers().get(i);
      plain &= layer.strips().isEmpty();
      whole &= add(layer, i + 1, built);
    }
    if (!whole || faults.any()) {
      return Optional.empty();
    }
    return Optional.of(new Part(section, built.section(), plain ? stack : List.of()));
  }

  /** Beside a void faces and walls are thin, and what they are across decides when they buckle. */
  private void walls() {
    boolean voids =
        section.layers().stream()
            .flatMap(layer -> layer.strips().stream())
            .anyMatch(Section.Strip::hollow);
    if (voids) {
      section.layers().forEach(layer -> layer.material().ifPresent(materials::plate));
      section.layers().forEach(this::slimWebs);
    }
  }

  /** Of a web much higher than thick what it is across decides whether it buckles in shear. */
  private void slimWebs(Layer layer) {
    double high = layer.thickness().map(Quantity::base).orElse(0.0);
    layer.strips().stream()
        .filter(strip -> high > Webs.STOUT * strip.width().base())
        .flatMap(strip -> strip.material().stream())
        .forEach(materials::plate);
  }

  private Optional<Double> glue() {
    section
        .glue()
        .filter(glue -> materials.material(glue).isEmpty())
        .ifPresent(
            glue ->
                materials
                    .inputs()
                    .lacks(
                        materials.inputs().noSuch(Kind.MATERIALS, glue)
                            + ", the glue of "
                            + section.named()));
    return section
        .glue()
        .flatMap(materials::material)
        .flatMap(
            glue -> {
              if (glue.sort() != Material.Sort.GLUE && glue.sort() != Material.Sort.RESIN) {
                materials
                    .inputs()
                    .lacks(
                        "the glue of " + section.named() + " is " + glue.id() + ", which is none");
              }
              OptionalDouble bond =
                  materials.value(glue, kitwright.ledger.MaterialProperty.BOND_STRENGTH);
              OptionalDouble shear =
                  materials.value(glue, kitwright.ledger.MaterialProperty.SHEAR_STRENGTH);
              OptionalDouble strength = bond.isPresent() ? bond : shear;
              if (strength.isEmpty()) {
                materials.inputs().lacks("glue " + glue.id() + " does not state its bond-strength");
              }
              return strength.isEmpty() ? Optional.empty() : Optional.of(strength.getAsDouble());
            });
  }

  private boolean add(Layer layer, int index, LayeredSection built) {
    String where = "layer " + index;
    if (layer.strips().isEmpty()) {
      return single(layer, where, index).filter(ply -> lay(ply, built)).isPresent();
    }
    Optional<Double> thick = thickness(layer);
    Optional<List<Strip>> strips = strips(layer, where, index);
    if (thick.isEmpty() || strips.isEmpty()) {
      return false;
    }
    built.add(new kitwright.mechanics.beam.Layer(where, thick.get(), strips.get()));
    return true;
  }

  private Optional<StackLayer> single(Layer layer, String where, int index) {
    if (layer.material().isEmpty()) {
      faults.add(
          layer.at().record(),
          "A layer has neither a material nor strips",
          "Say what it is made of, or list its strips.");
      return Optional.empty();
    }
    double angle = angle(layer.angle(), layer.grain());
    if (Math.abs(angle) > HALF_TURN) {
      faults.add(
          layer.at().of("angle"),
          "A layer lies at " + Print.number(angle) + " degrees",
          "Write it between -180 and 180, most often 0, 45, -45 or 90.");
    }
    Ref material = layer.material().get();
    if (layer.angle().isEmpty() && layer.grain().isEmpty()) {
      unsaid.notTurned(material, where);
    }
    Optional<Stuff> stuff = materials.at(material, angle);
    if (stuff.filter(one -> one.veneer().isPresent()).isPresent()) {
      stuff = materials.flat(material);
    }
    Optional<Double> thick =
        layer.plies().isPresent() ? cured(layer, stuff) : thickness(layer, stuff);
    if (stuff.isEmpty() || thick.isEmpty()) {
      return Optional.empty();
    }
    Stuff less = factors.on(stuff.get(), index);
    return Optional.of(new StackLayer(where, less, angle + less.turned(), thick.get()));
  }

  /** A plywood of which the veneer is stated is its veneers, each second one square to the rest. */
  private boolean veneers(StackLayer board, LayeredSection built) {
    double veneer = board.stuff().veneer().getAsDouble();
    int count = (int) Math.round(board.thickness() / veneer);
    if (count < 1 || count % 2 == 0 || Math.abs(count * veneer / board.thickness() - 1) > 0.1) {
      materials
          .inputs()
          .lacks(
              board.stuff().id()
                  + " of "
                  + Print.mm(board.thickness())
                  + " is no odd number of veneers of "
                  + Print.mm(veneer)
                  + " ("
                  + board.where()
                  + ")");
      return false;
    }
    materials
        .inputs()
        .note(
            board.stuff().id()
                + " is worked out as "
                + count
                + " equal veneers, the faces along its grain; a veneer square to the span may"
                + " crack, and only its shear is checked");
    double thick = board.thickness() / count;
    for (int i = 0; i < count; i++) {
      double angle = board.angle() + (i % 2 == 0 ? 0 : 90);
      String where = count == 1 ? board.where() : board.where() + " veneer " + (i + 1);
      stack.add(new StackLayer(where, board.stuff(), angle, thick));
      built.add(layer(where, thick, board.stuff().veneer(angle)));
    }
    return true;
  }

  private boolean lay(StackLayer ply, LayeredSection built) {
    if (ply.stuff().veneer().isPresent()) {
      return veneers(ply, built);
    }
    stack.add(ply);
    built.add(layer(ply.where(), ply.thickness(), ply.stuff().beam(ply.angle())));
    return true;
  }

  private kitwright.mechanics.beam.Layer layer(String where, double thick, BeamMaterial material) {
    return new kitwright.mechanics.beam.Layer(where, thick, List.of(Strip.of(wide, material)));
  }

  private Optional<Double> cured(Layer layer, Optional<Stuff> stuff) {
    BigDecimal plies = layer.plies().orElseThrow();
    if (plies.signum() > 0 && plies.stripTrailingZeros().scale() > 0) {
      faults.add(
          layer.at().of("plies"),
          "A layer has " + plies.toPlainString() + " plies",
          "Write how many whole plies lie everywhere; where more lie is a section of its own.");
      return Optional.empty();
    }
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
    Optional<Double> thick = stuff.map(cloth -> cloth.ply().orElseThrow() * plies.doubleValue());
    if (thick.filter(one -> one > THICKEST).isPresent()) {
      faults.add(
          layer.at().of("plies"),
          "A layer has " + plies.toPlainString() + " plies",
          "Count them again: no layer here is more than 1 m thick.");
      return Optional.empty();
    }
    return thick;
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
          thick.isEmpty() ? "A layer has no thickness" : "A layer has a thickness of zero",
          "Write how thick it is, or how many plies of a cloth.");
      return Optional.empty();
    }
    if (thick.get().base() > THICKEST) {
      faults.add(
          layer.at().of("thickness"),
          "A layer is " + thick.get() + " thick",
          "Look at its unit: no layer here is more than 1 m thick.");
      return Optional.empty();
    }
    return Optional.of(thick.get().base());
  }

  private Optional<List<Strip>> strips(Layer layer, String where, int index) {
    double sum = layer.strips().stream().mapToDouble(strip -> strip.width().base()).sum();
    if (Math.abs(sum - wide) > FIT) {
      faults.add(
          layer.at().of("strips"),
          "The strips of "
              + where
              + " are "
              + Print.number(sum * 1000)
              + " mm wide together in a section of "
              + Print.number(wide * 1000)
              + " mm",
          "Make the strips and voids add up to the width.");
      return Optional.empty();
    }
    if (layer.strips().stream().allMatch(Section.Strip::hollow)) {
      faults.add(
          layer.at().of("strips"),
          "All of " + where + " is void, as where a hole is bored from side to side",
          "What such a hole takes from the part hangs on its place along it, and is not worked out"
              + " here: ask the designer. An upright hole is a void beside strips in every layer.");
      return Optional.empty();
    }
    List<Strip> strips = new ArrayList<>();
    for (Section.Strip strip : layer.strips()) {
      double high = layer.thickness().map(Quantity::base).orElse(0.0);
      strip(strip, wide / sum, high, index).ifPresent(strips::add);
    }
    return strips.size() == layer.strips().size() ? Optional.of(strips) : Optional.empty();
  }

  private Optional<Strip> strip(Section.Strip strip, double stretch, double high, int index) {
    if (strip.width().isNone()) {
      faults.add(
          strip.at().of(strip.hollow() ? "void" : "width"),
          "A strip has a width of zero",
          "Write its width, or leave the strip out.");
      return Optional.empty();
    }
    double part = strip.width().base() * stretch;
    if (strip.hollow()) {
      return Optional.of(Strip.gap(part));
    }
    Optional<Ref> material = strip.material();
    if (material.isEmpty()) {
      faults.add(strip.at().record(), "A strip has no material", "Name it, or write void: WIDTH.");
      return Optional.empty();
    }
    unsaid.upright(material.get(), strip.width().base(), high);
    double angle = angle(Optional.empty(), strip.grain());
    return materials
        .at(material.get(), angle)
        .filter(stuff -> !unsaid.isVeneered(stuff))
        .map(stuff -> Strip.of(part, factors.on(stuff, index).beam(angle + stuff.turned())));
  }

  /** Degrees of grain or first fibre from the length. */
  public static double angle(Optional<Quantity> stated, Optional<Grain> grain) {
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
