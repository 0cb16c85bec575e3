package kitwright.cutting.solve;

import java.util.Comparator;

/** A width to which the fence is set, for strips that run so. */
record Setting(Run run, long over) {
  static final Comparator<Setting> ORDER =
      Comparator.comparing(Setting::run).thenComparingLong(Setting::over);

  @Override
  public boolean equals(Object other) {
    return other instanceof Setting that && run.equals(that.run) && over == that.over;
  }

  @Override
  public int hashCode() {
    int hash = run.hashCode();
    hash = 31 * hash + Long.hashCode(over);
    return hash;
  }
}
