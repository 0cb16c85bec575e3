package kitwright.assessment.joint;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import kitwright.ledger.Material;
import kitwright.ledger.Material.Sort;
import kitwright.mechanics.fastener.Metal;

/** Which metal a material is, stated or told by the id of a built-in row. */
public final class Metals {
  private static final List<Known> KNOWN =
      List.of(
          new Known("bolt-a2(-.*)?", Material.Metal.STAINLESS_304),
          new Known("bolt-a4(-.*)?", Material.Metal.STAINLESS_316),
          new Known("bolt-\\d+-\\d+(-.*)?", Material.Metal.STEEL),
          new Known("steel(-.*)?", Material.Metal.STEEL),
          new Known("stainless-304.*", Material.Metal.STAINLESS_304),
          new Known("stainless-316.*", Material.Metal.STAINLESS_316),
          new Known("aluminium(-.*)?", Material.Metal.ALUMINIUM),
          new Known("carbon(-.*)?", Material.Metal.CARBON));

  private Metals() {}

  private record Known(Pattern id, Material.Metal metal) {
    Known(String id, Material.Metal metal) {
      this(Pattern.compile(id), metal);
    }
  }

  /** Empty for what is no metal and no carbon, and where nobody says which. */
  public static Optional<Material.Metal> of(Material material) {
    if (material.metal().isPresent()) {
      return material.metal();
    }
    boolean conducts = isMetal(material) || material.sort() == Sort.FIBRE;
    return conducts
        ? KNOWN.stream()
            .filter(known -> known.id().matcher(material.id()).matches())
            .map(Known::metal)
            .findFirst()
        : Optional.empty();
  }

  static boolean isMetal(Material material) {
    return material.sort() == Sort.METAL || material.sort() == Sort.BOLT;
  }

  /** Stainless steel is noble in flowing water, and base where water stands or is shut out. */
  static List<Metal> states(Material.Metal metal) {
    return switch (metal) {
      case MAGNESIUM -> List.of(Metal.MAGNESIUM);
      case ZINC, GALVANISED_STEEL -> List.of(Metal.ZINC);
      case ALUMINIUM -> List.of(Metal.ALUMINIUM);
      case STEEL -> List.of(Metal.STEEL);
      case BRASS -> List.of(Metal.BRASS);
      case COPPER -> List.of(Metal.COPPER);
      case MANGANESE_BRONZE -> List.of(Metal.MANGANESE_BRONZE);
      case SILICON_BRONZE -> List.of(Metal.SILICON_BRONZE);
      case LEAD -> List.of(Metal.LEAD);
      case NICKEL_ALUMINIUM_BRONZE -> List.of(Metal.NICKEL_ALUMINIUM_BRONZE);
      case STAINLESS_304 -> List.of(Metal.STAINLESS_304_PASSIVE, Metal.STAINLESS_304_ACTIVE);
      case STAINLESS_316 -> List.of(Metal.STAINLESS_316_PASSIVE, Metal.STAINLESS_316_ACTIVE);
      case TITANIUM -> List.of(Metal.TITANIUM);
      case CARBON -> List.of(Metal.CARBON);
    };
  }
}
