package kitwright.loan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Loan;
import kitwright.ledger.Task;
import kitwright.value.Days;
import kitwright.value.Ref;

/** Which borrowed tools are here for a task; another of the same tool does as well. */
public final class AtHand {
  private AtHand() {}

  /**
   * A tool that is here, and the day by which the last of its kind shall be back.
   *
   * @param loan the one that may stay longest
   */
  public record Back(Loan loan, LocalDate due) {
    /** As a clause. */
    public String words() {
      return loan.tool() + " due back on " + Days.named(due);
    }
  }

  /** The tools a task needs that are not here on the day, by name. */
  public static List<String> lacking(Task task, Facts day) {
    return tools(task, day).filter(tool -> here(tool, day).isEmpty()).toList();
  }

  /** The tools a task needs that are here and shall be back before a day. */
  public static List<Back> backBefore(LocalDate by, Task task, Facts day) {
    return tools(task, day)
        .flatMap(tool -> back(here(tool, day)).stream())
        .filter(back -> back.due().isBefore(by))
        .toList();
  }

  /** The names of the tools a task needs, whether they are here or went back. */
  static Stream<String> tools(Task task, Facts day) {
    Stream<String> named =
        task.tools().stream()
            .map(tool -> day.ledger().loan(tool).map(Loan::tool).orElse(tool.id()));
    Stream<String> lent =
        Standing.on(day).stream()
            .map(Standing::loan)
            .filter(loan -> isFor(task, loan))
            .map(Loan::tool);
    return Stream.concat(named, lent).distinct();
  }

  private static boolean isFor(Task task, Loan loan) {
    return loan.neededFor().stream().map(Ref::id).anyMatch(task.id()::equals);
  }

  static List<Loan> here(String tool, Facts day) {
    return Standing.on(day).stream()
        .filter(standing -> !standing.isBack() && standing.loan().tool().equals(tool))
        .map(Standing::loan)
        .toList();
  }

  private static Optional<Back> back(List<Loan> here) {
    return here.stream().anyMatch(loan -> loan.due().isEmpty())
        ? Optional.empty()
        : here.stream()
            .map(loan -> new Back(loan, loan.due().orElseThrow()))
            .max(Comparator.comparing(Back::due));
  }
}
