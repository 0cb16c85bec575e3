package kitwright.cutting.solve;

import java.util.Comparator;

/** A width to which the fence is set, for strips that run so. */
record Setting(Run run, long over) {
  static final Comparator<Setting> ORDER =
      Comparator.comparing(Setting::run).thenComparingLong(Setting::over);
}
