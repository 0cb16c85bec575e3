package kitwright.mechanics.scatter;

import kitwright.mechanics.Refuse;
import kitwright.mechanics.scatter.Scattered.Shape;
import kitwright.numbers.Normal;

/**
 * The chance that one property is below another, in closed form where both have one shape: an
 * oracle for the samples.
 *
 * @see "K. C. Kapur, L. R. Lamberson, Reliability in Engineering Design, 1977, chapter 6"
 */
public final class StressStrength {
  private StressStrength() {}

  /** P(first &lt; second) for two normal or two lognormal properties. */
  public static double below(Scattered first, Scattered second) {
    Refuse.unless(first.shape() == second.shape(), "both of one shape");
    if (first.shape() == Shape.NORMAL) {
      double one = first.mean() * first.variation();
      double other = second.mean() * second.variation();
      return at(second.mean() - first.mean(), Math.hypot(one, other));
    }
    double one = first.sigma();
    double other = second.sigma();
    double apart = Math.log(second.mean() / first.mean()) - (other * other - one * one) / 2;
    return at(apart, Math.hypot(one, other));
  }

  private static double at(double apart, double spread) {
    if (spread == 0) {
      return apart > 0 ? 1 : 0;
    }
    return Normal.below(apart / spread);
  }
}
