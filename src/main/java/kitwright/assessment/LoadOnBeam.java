package kitwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.assessment.method.BeamLoad;
import kitwright.assessment.method.BeamLoad.Own;
import kitwright.assessment.part.Part;

/** The load of a beam, bare and with the own weight of what it lies on. */
final class LoadOnBeam {
  private final Optional<BeamLoad> bare;
  private final List<BeamLoad> laid = new ArrayList<>();

  /**
   * @param bare without the weight of any part
   */
  LoadOnBeam(Optional<BeamLoad> bare) {
    this.bare = bare;
    laid(List.of());
  }

  Optional<BeamLoad> bare() {
    return bare;
  }

  Optional<BeamLoad> with(Part part) {
    return bare.map(some -> some.with(List.of(Own.of(part))));
  }

  /** The load with the own weight of so many parts, where it asks for that; the sheet tells it. */
  Optional<BeamLoad> laid(List<Own> own) {
    Optional<BeamLoad> load = bare.map(some -> some.with(own));
    load.filter(some -> !some.stated().selfWeight() || !own.isEmpty()).ifPresent(laid::add);
    return load;
  }

  /** How it lies, told even where a section cannot be worked out. */
  List<String> lines() {
    Set<String> lines = new LinkedHashSet<>();
    laid.forEach(load -> lines.addAll(load.how()));
    return List.copyOf(lines);
  }
}
