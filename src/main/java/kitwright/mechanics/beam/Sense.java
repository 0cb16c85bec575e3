package kitwright.mechanics.beam;

/** Which way a moment bends. */
public enum Sense {
  /** Tension below, compression above. */
  SAGGING(1),
  /** Tension above, compression below. */
  HOGGING(-1);

  private final int sign;

  Sense(int sign) {
    this.sign = sign;
  }

  int sign() {
    return sign;
  }
}
