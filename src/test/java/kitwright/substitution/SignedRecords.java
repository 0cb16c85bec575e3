package kitwright.substitution;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.substitution.Written.Value;

/** The records that one signature covers, and some that it does not, as a tree. */
final class SignedRecords {
  private SignedRecords() {}

  static final String HASH = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
  private static final String OTHER_HASH = HASH.replace('e', 'd');

  /** What the signature under {@code sub} covers: a change of any value changes its meaning. */
  static Map<String, List<Map<String, Object>>> covered() {
    Map<String, List<Map<String, Object>>> kinds = new LinkedHashMap<>();
    kinds.put("substitutions", List.of(substitution()));
    kinds.put("assessments", List.of(assessment()));
    kinds.put("sections", List.of(drawn(), built(), pin()));
    kinds.put("materials", List.of(spruce(), cloth(), fibre(), glue()));
    return kinds;
  }

  /** Records beside them that the signature has nothing to do with. */
  static Map<String, List<Map<String, Object>>> beside(String pieces, String remark) {
    Map<String, List<Map<String, Object>>> kinds = new LinkedHashMap<>();
    kinds.put(
        "tasks", List.of(map("id", v("close", ""), "what", v(remark, ""), "takes", v("1 d", ""))));
    kinds.put(
        "stock",
        List.of(
            map(
                "id",
                v("larch-a", ""),
                "what",
                v(remark, ""),
                "size",
                v("2450 x 110 x 32 mm", ""),
                "pieces",
                v(pieces, ""),
                "material",
                v("spruce", ""))));
    return kinds;
  }

  private static Map<String, Object> substitution() {
    return map(
        "id", v("sub", "sub-2"),
        "instead-of", map("what", v("spruce staves", "ash staves"), "qty", v("8 m", "9 m")),
        "use", List.of(map("stock", v("larch-a", "larch-b"), "qty", v("4 each", "5 each"))),
        "grade", v("structural", "systems"),
        "why", v("larch is here", "larch is not here"),
        "proposed", map("by", v("nora", "ivo"), "on", v("2026-01-30", "2026-01-31")),
        "assessment", v("bowsprit", "bowsprit-2"),
        "hold", v("close", "open"));
  }

  private static Map<String, Object> assessment() {
    return map(
        "id", v("bowsprit", "bowsprit-2"),
        "method", v("section", "panel"),
        "on", v("2026-02-01", "2026-02-02"),
        "designed", v("drawn", "pin"),
        "built", v("built", "drawn"),
        "require", map("stiffness", v("1.0", "0.9"), "shear", v("1.0", "0.8")),
        "allow", map("mass", v("1.20", "1.30")),
        "weak-link",
            map(
                "sacrificial",
                v("pin", "built"),
                "protected",
                v("built", "pin"),
                "margin",
                v("1.5", "1.4")),
        "load",
            map(
                "tip-force",
                v("900 N", "800 N"),
                "span",
                v("1.15 m", "1.05 m"),
                "factor",
                v("3", "2")),
        "evidence",
            List.of(
                map(
                    "file",
                    v("there/a.pdf", "gone/a.pdf"),
                    "sha256",
                    v(HASH, OTHER_HASH),
                    "says",
                    v("the sheet", "a sheet"))));
  }

  private static Map<String, Object> drawn() {
    return map(
        "id", v("drawn", "drawn-2"),
        "width", v("96 mm", "95 mm"),
        "layers",
            List.of(
                map(
                    "material",
                    v("spruce", "fir"),
                    "thickness",
                    v("24 mm", "25 mm"),
                    "grain",
                    v("along", "across")),
                map(
                    "thickness", v("48 mm", "47 mm"),
                    "strips",
                        List.of(
                            map("material", v("spruce", "fir"), "width", v("24 mm", "23 mm")),
                            map("void", v("48 mm", "49 mm"))))));
  }

  private static Map<String, Object> built() {
    return map(
        "id", v("built", "built-2"),
        "glue", v("glue-1", "fir"),
        "layers",
            List.of(
                map(
                    "material",
                    v("cloth-600", "cloth-300"),
                    "plies",
                    v("2", "3"),
                    "angle",
                    v("45 deg", "0 deg")),
                map("material", v("spruce", "fir"), "thickness", v("20 mm", "18 mm"))));
  }

  private static Map<String, Object> pin() {
    return map(
        "id", v("pin", "pin-2"),
        "shape", v("round", "tube"),
        "material", v("spruce", "fir"),
        "dimensions", map("diameter", v("12 mm", "10 mm")));
  }

  private static Map<String, Object> spruce() {
    return map(
        "id", v("spruce", "spruce-2"),
        "kind", v("timber", "plywood"),
        "E", v("11.8 GPa", "11.7 GPa"),
        "source", v("a handbook", "another handbook"));
  }

  private static Map<String, Object> cloth() {
    return map(
        "id", v("cloth-600", "cloth-2"),
        "kind", v("cloth", "laminate"),
        "fibre", v("glass-fibre", "other-fibre"),
        "areal-weight", v("600 g/m2", "300 g/m2"));
  }

  private static Map<String, Object> fibre() {
    return map(
        "id", v("glass-fibre", "glass-2"), "kind", v("fibre", "other"), "E", v("73 GPa", "70 GPa"));
  }

  private static Map<String, Object> glue() {
    return map(
        "id", v("glue-1", "glue-2"),
        "kind", v("glue", "other"),
        "bond-strength", v("8 MPa", "7 MPa"));
  }

  private static Value v(String text, String other) {
    return new Value(text, other);
  }

  private static Map<String, Object> map(Object... pairs) {
    Map<String, Object> all = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      all.put((String) pairs[i], pairs[i + 1]);
    }
    return all;
  }
}
