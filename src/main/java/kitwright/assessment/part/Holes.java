package kitwright.assessment.part;

import java.util.List;
import java.util.stream.Collectors;
import kitwright.assessment.sheet.Print;
import kitwright.mechanics.beam.BeamMaterial;
import kitwright.mechanics.beam.BeamMaterial.Kind;
import kitwright.mechanics.beam.Region;
import kitwright.mechanics.beam.RoundHole;

/**
 * Upright holes, written as voids in every layer. Wood is judged by what the hole leaves (EN
 * 1995-1-1, 5.2), and so is metal, which yields beside the hole first. A laminate and a core do not
 * yield: they tear from where the stress is greatest.
 */
final class Holes {
  private Holes() {}

  /** What cannot be told of a part for its holes, each a clause. */
  static List<String> lacking(Part part) {
    if (!part.beam().parted()) {
      return List.of();
    }
    return part.beam().regions().stream()
        .map(Region::material)
        .filter(one -> one.kind() == Kind.LAMINATE || one.kind() == Kind.CORE)
        .map(BeamMaterial::name)
        .distinct()
        .map(name -> words(part, name))
        .collect(Collectors.toList());
  }

  private static String words(Part part, String material) {
    double width = part.beam().bounds().width();
    double bottom = part.beam().bounds().minZ();
    double left =
        part.beam().regions().stream()
            .map(Region::bounds)
            .filter(box -> box.minZ() <= bottom)
            .mapToDouble(box -> box.width())
            .sum();
    return part.id()
        + " has a hole through "
        + material
        + ", which does not yield: beside one round hole its stress is "
        + Print.number(new RoundHole(width - left, width).ofNet())
        + " times the mean of what is left, and more where it is stiffer along than across; what it"
        + " bears is not worked out here";
  }
}
