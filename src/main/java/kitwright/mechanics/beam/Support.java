package kitwright.mechanics.beam;

import java.util.function.DoubleFunction;
import java.util.function.Function;
import kitwright.mechanics.Refuse;

/** What keeps a thin face from buckling. */
public sealed interface Support {
  <R> R match(Function<BeamMaterial, R> onCore, DoubleFunction<R> overGap);

  /** Held by a core all along. */
  record OnCore(BeamMaterial core) implements Support {
    @Override
    public <R> R match(Function<BeamMaterial, R> onCore, DoubleFunction<R> overGap) {
      return onCore.apply(core);
    }
  }

  /** Held at both sides of a gap, whose width is in m. */
  record OverGap(double width) implements Support {
    public OverGap {
      Refuse.unlessPositive("gap", width);
    }

    @Override
    public <R> R match(Function<BeamMaterial, R> onCore, DoubleFunction<R> overGap) {
      return overGap.apply(width);
    }
  }
}
