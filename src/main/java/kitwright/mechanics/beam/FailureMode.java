package kitwright.mechanics.beam;

/** How a section first fails. */
public enum FailureMode {
  TENSION("tension"),
  COMPRESSION("compression"),
  BENDING("bending of solid timber"),
  WRINKLING("face wrinkling on the core"),
  DIMPLING("buckling of the face over a gap"),
  FLANGE_BUCKLING("buckling of the free edge"),
  WALL_BUCKLING("buckling of the wall"),
  CORE_SHEAR("core shear"),
  TIMBER_SHEAR("timber shear along the grain"),
  ROLLING_SHEAR("rolling shear across the grain"),
  SHEAR("shear"),
  TORSION("shear in torsion"),
  TWIST("shear in its plane from twist"),
  /** By a value that it reaches at least, as of a long tube or of a plate without an end. */
  SHEARED_WALL("buckling in shear, at the least,"),
  BOND_SHEAR("shear of the bond line");

  private final String words;

  FailureMode(String words) {
    this.words = words;
  }

  /** The mode in plain words. */
  public String words() {
    return words;
  }
}
