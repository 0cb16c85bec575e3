package kitwright.finding;

/** The signs that stand round the guilty stretch of a quoted line. */
public enum Marks {
  /** {@code ⟦} and {@code ⟧}, for terminals that show Unicode. */
  WHITE_BRACKETS("⟦", "⟧", "…"),
  /** {@code [[} and {@code ]]}, for all others. */
  DOUBLED_BRACKETS("[[", "]]", "...");

  private final String open;
  private final String close;
  private final String cut;

  Marks(String open, String close, String cut) {
    this.open = open;
    this.close = close;
    this.cut = cut;
  }

  String open() {
    return open;
  }

  String close() {
    return close;
  }

  /** Stands where something was left out. */
  String cut() {
    return cut;
  }
}
