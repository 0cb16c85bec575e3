package kitwright.assessment.part;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.ledger.Section;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * A part that tapers in a straight line from one section to another of the same make: every measure
 * changes in proportion to the way.
 */
public final class Between {
  private final Section from;
  private final Section to;

  private Between(Section from, Section to) {
    this.from = from;
    this.to = to;
  }

  /** Why one cannot taper to the other, a clause. */
  public static Optional<String> misfit(Section from, Section to) {
    boolean alike =
        from.shape().equals(to.shape())
            && id(from.material()).equals(id(to.material()))
            && names(from.dimensions()).equals(names(to.dimensions()))
            && from.layers().size() == to.layers().size()
            && from.outline().size() == to.outline().size()
            && from.width().isPresent() == to.width().isPresent()
            && id(from.glue()).equals(id(to.glue()))
            && from.skins().isEmpty()
            && to.skins().isEmpty()
            && from.members().isEmpty()
            && to.members().isEmpty();
    for (int i = 0; alike && i < from.layers().size(); i++) {
      alike = alike(from.layers().get(i), to.layers().get(i));
    }
    return alike
        ? Optional.empty()
        : Optional.of(
            from.named()
                + " tapers to "
                + to.named()
                + ", which is made otherwise: the same shape, layers, materials and strips on both"
                + " ends are needed");
  }

  private static boolean alike(Section.Layer one, Section.Layer other) {
    boolean alike =
        id(one.material()).equals(id(other.material()))
            && one.grain().equals(other.grain())
            && one.angle().equals(other.angle())
            && one.plies().equals(other.plies())
            && one.thickness().isPresent() == other.thickness().isPresent()
            && one.strips().size() == other.strips().size();
    for (int i = 0; alike && i < one.strips().size(); i++) {
      Section.Strip a = one.strips().get(i);
      Section.Strip b = other.strips().get(i);
      alike =
          id(a.material()).equals(id(b.material()))
              && a.grain().equals(b.grain())
              && a.hollow() == b.hollow();
    }
    return alike;
  }

  private static Optional<String> id(Optional<Ref> ref) {
    return ref.map(Ref::id);
  }

  private static List<String> names(Map<Ref, Quantity> dimensions) {
    return dimensions.keySet().stream().map(Ref::id).sorted().toList();
  }

  /** What it is at a share of the way, 0 to 1; both ends fit each other. */
  public static Section at(Section from, Section to, double share) {
    return new Between(from, to).at(BigDecimal.valueOf(share));
  }

  private Section at(BigDecimal share) {
    List<Section.Layer> layers = new ArrayList<>();
    for (int i = 0; i < from.layers().size(); i++) {
      layers.add(layer(from.layers().get(i), to.layers().get(i), share));
    }
    Map<Ref, Quantity> dimensions = new LinkedHashMap<>();
    from.dimensions()
        .forEach((name, value) -> dimensions.put(name, mixed(value, far(name), share)));
    List<Section.Corner> outline = new ArrayList<>();
    for (int i = 0; i < from.outline().size(); i++) {
      Section.Corner a = from.outline().get(i);
      Section.Corner b = to.outline().get(i);
      Optional<Quantity> wall = a.wall().flatMap(w -> b.wall().map(v -> mixed(w, v, share)));
      outline.add(new Section.Corner(mixed(a.y(), b.y(), share), mixed(a.z(), b.z(), share), wall));
    }
    return new Section(
        from.id(),
        from.what(),
        from.width().map(width -> mixed(width, to.width().orElseThrow(), share)),
        layers,
        from.shape(),
        from.material(),
        dimensions,
        List.of(),
        List.of(),
        outline,
        from.glue(),
        from.grade(),
        Optional.empty(),
        Optional.empty(),
        from.at());
  }

  private Quantity far(Ref name) {
    return to.dimension(name.id()).orElseThrow();
  }

  private static Section.Layer layer(Section.Layer a, Section.Layer b, BigDecimal share) {
    List<Section.Strip> strips = new ArrayList<>();
    for (int i = 0; i < a.strips().size(); i++) {
      Section.Strip one = a.strips().get(i);
      Quantity width = mixed(one.width(), b.strips().get(i).width(), share);
      strips.add(new Section.Strip(one.material(), one.grain(), width, one.hollow(), one.at()));
    }
    return new Section.Layer(
        a.material(),
        a.thickness().map(thick -> mixed(thick, b.thickness().orElseThrow(), share)),
        a.plies(),
        a.grain(),
        a.angle(),
        strips,
        a.at());
  }

  private static Quantity mixed(Quantity one, Quantity other, BigDecimal share) {
    return one.times(BigDecimal.ONE.subtract(share)).plus(other.times(share));
  }
}
