package kitwright.choice;

import java.time.LocalDate;
import java.util.Optional;
import kitwright.value.Quantity;

/**
 * When a way out lets the work go on.
 *
 * @param arrives the day on which the thing is at hand; empty where nobody knows
 * @param held the first task that has to wait for it; empty where none waits, or nobody knows
 * @param launch the day on which the build ends; empty where nobody knows
 * @param rest what it leaves missing, where it stands for less than is; when that comes nobody says
 */
public record Timing(
    Optional<LocalDate> arrives,
    Optional<Held> held,
    Optional<LaunchDay> launch,
    Optional<Quantity> rest) {

  /**
   * A task that waits.
   *
   * @param days calendar days by which it starts, or is finished where it is under way, later than
   *     if the thing were here
   * @param floatUsed working days of its float that this uses up
   * @param floatLeft working days of its float that are left
   */
  public record Held(String task, String what, long days, double floatUsed, double floatLeft) {}

  /**
   * The end of the build.
   *
   * @param later calendar days later than if the thing were here
   */
  public record LaunchDay(LocalDate on, long later) {}
}
