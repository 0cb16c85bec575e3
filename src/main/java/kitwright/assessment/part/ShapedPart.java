package kitwright.assessment.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.assessment.material.Factors;
import kitwright.assessment.material.Materials;
import kitwright.assessment.material.Stuff;
import kitwright.assessment.sheet.Faults;
import kitwright.assessment.sheet.Print;
import kitwright.ledger.Section;
import kitwright.ledger.Section.Shape;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.FoilSection;
import kitwright.mechanics.beam.FoilShape;
import kitwright.mechanics.beam.Loop;
import kitwright.mechanics.beam.Point;
import kitwright.mechanics.beam.Shapes;
import kitwright.value.Dimension;
import kitwright.value.Nearest;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/** A section by its outline and dimensions. */
public final class ShapedPart {
  private static final Map<Shape, Set<String>> NEEDS =
      Map.of(
          Shape.RECTANGLE, Set.of("width", "height"),
          Shape.ROUND, Set.of("diameter"),
          Shape.TUBE, Set.of("diameter", "wall"),
          Shape.I, Set.of("width", "height", "web", "flange"),
          Shape.FOIL, Set.of("chord", "thickness-ratio"),
          Shape.POLYGON, Set.of());

  /** A polygon may have a wall of one thickness round a hollow. */
  private static final Set<String> WALL = Set.of("wall");

  private static final double THICKEST = 0.3;

  /** m; more is a slip of the unit. */
  private static final double GREATEST = 10;

  private final Section section;
  private final Materials materials;
  private final Factors.OnSide factors;
  private final Faults faults;

  ShapedPart(Section section, Materials materials, Factors.OnSide factors, Faults faults) {
    this.section = section;
    this.materials = materials;
    this.factors = factors;
    this.faults = faults;
  }

  public Optional<kitwright.mechanics.beam.Section> section() {
    Shape shape = section.shape().orElseThrow();
    if (!measured(shape)) {
      return Optional.empty();
    }
    if (shape == Shape.FOIL || (shape == Shape.POLYGON && !section.skins().isEmpty())) {
      return foil(shape);
    }
    if (!section.skins().isEmpty() || !section.members().isEmpty()) {
      faults.add(
          section.skins().isEmpty() ? "members" : "skins",
          "Only a foil or a polygon with skins has skins and members",
          "Use a foil, or layers and strips.");
      return Optional.empty();
    }
    walls(shape);
    return material().map(stuff -> shaped(shape, stuff));
  }

  private kitwright.mechanics.beam.Section shaped(Shape shape, BeamMaterial stuff) {
    return switch (shape) {
      case RECTANGLE -> Shapes.rectangle(stuff, at("width"), at("height"));
      case ROUND -> Shapes.round(stuff, at("diameter"));
      case TUBE -> Shapes.tube(stuff, at("diameter"), at("wall"));
      case I -> Shapes.iBeam(stuff, at("width"), at("height"), at("web"), at("flange"));
      case POLYGON -> polygon(stuff);
      case FOIL, BOLT, NAIL, RINGED_NAIL, SCREW, LAG_SCREW ->
          throw new IllegalArgumentException("no plain shape: " + shape);
    };
  }

  private kitwright.mechanics.beam.Section polygon(BeamMaterial stuff) {
    List<Double> walls =
        section.outline().stream()
            .flatMap(corner -> corner.wall().stream())
            .map(Quantity::base)
            .toList();
    if (!walls.isEmpty()) {
      return Shapes.walled(stuff, corners(), walls);
    }
    return section.dimension("wall").isPresent()
        ? Shapes.staves(stuff, outline(), at("wall"))
        : Shapes.polygon(stuff, outline());
  }

  /** Every side of a hollow polygon has a wall, told in one way. */
  private void sided(Shape shape) {
    long walls = section.outline().stream().filter(one -> one.wall().isPresent()).count();
    boolean round = section.dimension("wall").isPresent() || !section.skins().isEmpty();
    if (walls > 0 && (walls < section.outline().size() || round || shape != Shape.POLYGON)) {
      faults.add(
          "outline",
          "Some sides of a polygon state a wall" + (round ? ", and so does all of it" : ""),
          "Give each corner the wall of the side that begins there, or one wall for all sides among"
              + " the dimensions.");
    }
  }

  private Optional<BeamMaterial> material() {
    boolean flat = section.shape().filter(Shape.RECTANGLE::equals).isPresent();
    section
        .material()
        .flatMap(materials::material)
        .filter(one -> OnEdge.isMeantFlat(one) && !(flat && at("height") <= at("width")))
        .ifPresent(one -> materials.inputs().lacks(OnEdge.words(one, section)));
    if (section.material().isEmpty()) {
      faults.add(
          "material", "A section has no material", "Name under “material” what it is made of.");
    }
    return section.material().flatMap(this::stuff);
  }

  private Optional<BeamMaterial> stuff(Ref ref) {
    return materials
        .at(ref, 0)
        .filter(this::isPlain)
        .map(stuff -> factors.on(stuff, 1).beam(stuff.turned()));
  }

  /** What a thin wall or flange is across decides when it buckles. */
  private void walls(Shape shape) {
    if (shape == Shape.TUBE || shape == Shape.I || shape == Shape.FOIL || shape == Shape.POLYGON) {
      section.material().ifPresent(materials::plate);
      section.skins().forEach(skin -> skin.material().ifPresent(materials::plate));
    }
  }

  private boolean isPlain(Stuff stuff) {
    if (stuff.veneer().isPresent()) {
      materials
          .inputs()
          .lacks(
              stuff.id()
                  + " is worked out veneer by veneer in layers only: state the values of the board"
                  + " (E, E-across and strengths) for a shape");
    }
    return stuff.veneer().isEmpty();
  }

  /** Whether every dimension is there, is one the shape knows, and is more than nothing. */
  private boolean measured(Shape shape) {
    Set<String> needs = NEEDS.getOrDefault(shape, Set.of());
    Set<String> known = shape == Shape.POLYGON && section.skins().isEmpty() ? WALL : needs;
    for (Map.Entry<Ref, Quantity> one : section.dimensions().entrySet()) {
      check(one.getKey(), one.getValue(), known);
    }
    for (String need : needs.stream().sorted().toList()) {
      if (section.dimension(need).isEmpty()) {
        faults.add("dimensions", "A " + word(shape) + " has no " + need, "Add it to “dimensions”.");
      }
    }
    if (shape == Shape.POLYGON && section.outline().size() < 3) {
      faults.add(
          "outline",
          "A polygon has fewer than three corners",
          "List its corners in order round it, each {y: …, z: …}.");
    }
    sided(shape);
    if (shape == Shape.POLYGON && !faults.any() && !outline().simple()) {
      faults.add(
          "outline",
          "A polygon crosses itself, or goes round something twice",
          "List each corner once, in order round it; only a slit to a hollow goes there and back.");
    }
    return !faults.any();
  }

  private void check(Ref name, Quantity value, Set<String> needs) {
    Dimension wanted = name.id().equals("thickness-ratio") ? Dimension.RATIO : Dimension.LENGTH;
    if (!needs.contains(name.id())) {
      faults.add(
          name.at(),
          "The shape has no dimension “" + name + "”",
          Nearest.ofWords(name.id(), needs.stream().sorted().toList())
              .map(near -> "Did you mean “" + near + "”?")
              .orElse("It has: " + String.join(", ", needs.stream().sorted().toList()) + "."));
    } else if (value.unit().dimension() != wanted) {
      faults.add(
          name.at(),
          "The " + name + " is " + value.unit().dimension().word() + ", not " + wanted.word(),
          "Write it as " + (wanted == Dimension.LENGTH ? "a length, such as 28 mm." : "a ratio."));
    } else if (value.isNone()) {
      faults.add(name.at(), "The " + name + " is zero", "Write how much it is.");
    } else if (wanted == Dimension.LENGTH && value.base() > GREATEST) {
      faults.add(name.at(), "The " + name + " is " + value, "Look at its unit.");
    }
  }

  private static String word(Shape shape) {
    return shape.name().toLowerCase(java.util.Locale.ROOT);
  }

  private double at(String name) {
    return section.dimension(name).map(Quantity::base).orElse(0.0);
  }

  private List<Point> corners() {
    return section.outline().stream()
        .map(corner -> new Point(corner.y().base(), corner.z().base()))
        .toList();
  }

  private Loop outline() {
    return new Loop(corners());
  }

  private Optional<kitwright.mechanics.beam.Section> foil(Shape shape) {
    if (shape == Shape.FOIL && at("thickness-ratio") >= 0.5) {
      faults.add(
          "dimensions",
          "A foil is more than half as thick as it is long",
          "Write thickness over chord, such as thickness-ratio: 0.12.");
      return Optional.empty();
    }
    Loop round =
        shape == Shape.FOIL
            ? new FoilShape(at("chord"), at("thickness-ratio")).outline()
            : outline();
    List<FoilSection.Ply> skins = new ArrayList<>();
    for (Section.Layer layer : section.skins()) {
      skin(layer).ifPresent(skins::add);
    }
    List<FoilSection.Member> members = members(round);
    Optional<BeamMaterial> filling = section.material().flatMap(this::stuff);
    boolean whole =
        skins.size() == section.skins().size()
            && members.size() == section.members().size()
            && filling.isPresent() == section.material().isPresent();
    if (!whole || faults.any() || !fits(round, skins)) {
      return Optional.empty();
    }
    return Optional.of(new FoilSection(round, skins, filling, members).section());
  }

  private boolean fits(Loop round, List<FoilSection.Ply> skins) {
    double thick = skins.stream().mapToDouble(FoilSection.Ply::thickness).sum();
    double low = round.points().stream().mapToDouble(Point::z).min().orElse(0);
    double high = round.points().stream().mapToDouble(Point::z).max().orElse(0);
    if (2 * thick >= high - low) {
      faults.add(
          "skins",
          "Skins of "
              + Print.number(thick * 1000)
              + " mm on both sides do not fit an outline "
              + Print.number((high - low) * 1000)
              + " mm thick",
          "Take plies away, or make the outline thicker.");
      return false;
    }
    return true;
  }

  /** Skins are written from inside to outside; mechanics wants the outermost first. */
  private Optional<FoilSection.Ply> skin(Section.Layer layer) {
    Section alone =
        new Section(
            section.id(),
            section.what(),
            Optional.of(Quantity.of("1", kitwright.value.Unit.M)),
            List.of(layer),
            Optional.empty(),
            Optional.empty(),
            Map.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            section.at());
    return new LayeredPart(alone, materials, factors, faults)
        .part()
        .filter(part -> part.stack().size() == 1)
        .map(part -> part.stack().get(0))
        .map(ply -> new FoilSection.Ply(ply.stuff().beam(ply.angle()), ply.thickness()));
  }

  private List<FoilSection.Member> members(Loop round) {
    double from = round.points().stream().mapToDouble(Point::y).min().orElse(0);
    double to = round.points().stream().mapToDouble(Point::y).max().orElse(0);
    List<FoilSection.Member> members = new ArrayList<>();
    double end = from;
    List<Section.Member> inOrder =
        section.members().stream()
            .sorted(Comparator.comparingDouble(m -> start(m, from, to)))
            .toList();
    for (Section.Member member : inOrder) {
      if (member.at().isEmpty()) {
        materials
            .inputs()
            .note(
                "the "
                    + member.what()
                    + " of "
                    + section.id()
                    + " does not say where it stands: it is taken at three tenths of the chord");
      }
      double left = start(member, from, to);
      double right = left + member.width().base();
      if (member.width().isNone()) {
        faults.add(member.place().of("width"), "A member has a width of zero", "Write its width.");
      } else if (left < from || right > to) {
        faults.add(
            member.place().of("width"),
            "The "
                + member.what()
                + " reaches from "
                + Print.number((left - from) * 1000)
                + " to "
                + Print.number((right - from) * 1000)
                + " mm in a chord of "
                + Print.number((to - from) * 1000)
                + " mm",
            "Make it narrower, or move it (“at” is where its middle lies on the chord).");
      } else if (left < end - 1e-9) {
        faults.add(
            member.place().record(),
            "Two members overlap",
            "Move one of them, or make it narrower.");
      } else {
        stuff(member.material())
            .ifPresent(
                stuff -> members.add(new FoilSection.Member(member.what(), stuff, left, right)));
      }
      end = Math.max(end, right);
    }
    return members;
  }

  /** The forward edge; a member without a place stands where a four-digit foil is thickest. */
  private static double start(Section.Member member, double from, double to) {
    double middle = member.at().map(Quantity::base).orElse(THICKEST * (to - from));
    return from + middle - member.width().base() / 2;
  }
}
