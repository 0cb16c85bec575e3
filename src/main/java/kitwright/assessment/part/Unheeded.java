package kitwright.assessment.part;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import kitwright.assessment.sheet.Faults;
import kitwright.ledger.At;
import kitwright.ledger.Section;
import kitwright.ledger.Section.Shape;
import kitwright.value.Word;

/**
 * What a section states and nothing of its kind would take: a skin on a layered part, a second
 * angle, a void that is of a material. Left out in silence it would make the part as drawn weaker
 * than it is, and the part as built pass.
 */
public final class Unheeded {
  /** What a section may state beside its measures. */
  private enum Key {
    WIDTH,
    LAYERS,
    MATERIAL,
    DIMENSIONS,
    SKINS,
    MEMBERS,
    OUTLINE,
    GLUE;

    String word() {
      return Word.key(this);
    }
  }

  private static final Set<Key> LAYERED = EnumSet.of(Key.WIDTH, Key.LAYERS, Key.GLUE);
  private static final Map<Shape, Set<Key>> SHAPED = shaped();

  private Unheeded() {}

  private static Map<Shape, Set<Key>> shaped() {
    Map<Shape, Set<Key>> all = new EnumMap<>(Shape.class);
    for (Shape shape : Shape.values()) {
      all.put(
          shape,
          shape.isFastening()
              ? EnumSet.of(Key.MATERIAL, Key.DIMENSIONS, Key.LAYERS)
              : EnumSet.of(Key.MATERIAL, Key.DIMENSIONS));
    }
    all.put(Shape.FOIL, EnumSet.of(Key.MATERIAL, Key.DIMENSIONS, Key.SKINS, Key.MEMBERS));
    all.put(
        Shape.POLYGON,
        EnumSet.of(Key.MATERIAL, Key.DIMENSIONS, Key.OUTLINE, Key.SKINS, Key.MEMBERS));
    return all;
  }

  /** Tells each as a fault; one that has layers and a shape is told elsewhere. */
  public static void tell(Section section, Faults faults) {
    if (!section.layers().isEmpty() && section.shape().filter(s -> !s.isFastening()).isPresent()) {
      return;
    }
    Set<Key> taken =
        section.shape().map(shape -> SHAPED.getOrDefault(shape, LAYERED)).orElse(LAYERED);
    for (Key key : stated(section)) {
      if (!taken.contains(key)) {
        faults.add(
            key.word(),
            "The section states “" + key.word() + "”, which " + kind(section) + " does not take",
            "Take it out if it is not meant; else write the part so that it takes it: "
                + elsewhere(key)
                + ".");
      }
    }
    if (section.shape().filter(Shape::isFastening).isPresent()) {
      section.tapersTo().ifPresent(any -> none("tapers-to", faults));
      section.notch().ifPresent(any -> none("notch", faults));
    }
    section.layers().forEach(layer -> layer(layer, faults));
    section.skins().forEach(layer -> layer(layer, faults));
    section.members().stream()
        .filter(member -> member.height().isPresent())
        .forEach(
            member ->
                faults.add(
                    member.place().of("height"),
                    "The "
                        + member.what()
                        + " states a height, and members reach from skin to skin",
                    "Leave the height out where it does; a lower one is not worked out here."));
  }

  private static void none(String key, Faults faults) {
    faults.add(key, "A fastening states “" + key + "”, which is of beams", "Take it out.");
  }

  private static Set<Key> stated(Section section) {
    Set<Key> stated = EnumSet.noneOf(Key.class);
    section.width().ifPresent(any -> stated.add(Key.WIDTH));
    section.material().ifPresent(any -> stated.add(Key.MATERIAL));
    section.glue().ifPresent(any -> stated.add(Key.GLUE));
    if (!section.layers().isEmpty()) {
      stated.add(Key.LAYERS);
    }
    if (!section.dimensions().isEmpty()) {
      stated.add(Key.DIMENSIONS);
    }
    if (!section.skins().isEmpty()) {
      stated.add(Key.SKINS);
    }
    if (!section.members().isEmpty()) {
      stated.add(Key.MEMBERS);
    }
    if (!section.outline().isEmpty()) {
      stated.add(Key.OUTLINE);
    }
    return stated;
  }

  private static String kind(Section section) {
    return section
        .shape()
        .map(shape -> "the shape " + Word.key(shape))
        .orElse("a section of layers");
  }

  private static String elsewhere(Key key) {
    return switch (key) {
      case SKINS -> "a skin is a layer more, or stands round a foil or polygon";
      case WIDTH -> "a shape has its width among its dimensions";
      case MATERIAL, DIMENSIONS -> "layers have their own material and thickness";
      case MEMBERS -> "members stand in a foil, or are strips of a layer";
      case OUTLINE -> "only a polygon has corners";
      case GLUE -> "glue lines are looked at between layers";
      case LAYERS -> "layers have no shape";
    };
  }

  private static void layer(Section.Layer layer, Faults faults) {
    if (layer.grain().isPresent() && layer.angle().isPresent()) {
      both(layer.at(), "angle", "A layer states a grain and an angle", faults);
    }
    if (layer.strips().isEmpty()) {
      return;
    }
    if (layer.material().isPresent()) {
      both(layer.at(), "material", "A layer states a material and strips", faults);
    }
    if (layer.plies().isPresent()) {
      both(layer.at(), "plies", "A layer of strips states plies", faults);
    }
    if (layer.grain().isPresent() || layer.angle().isPresent()) {
      String key = layer.grain().isPresent() ? "grain" : "angle";
      both(layer.at(), key, "A layer of strips states a " + key + " for all of them", faults);
    }
    for (Section.Strip strip : layer.strips()) {
      if (strip.hollow() && (strip.material().isPresent() || strip.grain().isPresent())) {
        both(strip.at(), "void", "A strip is a void and of a material", faults);
      }
    }
  }

  private static void both(At at, String key, String what, Faults faults) {
    faults.add(at.of(key), what, "Keep the one that is meant; strips state their own.");
  }
}
