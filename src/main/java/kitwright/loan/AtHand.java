package kitwright.loan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Loan;
import kitwright.ledger.Task;
import kitwright.value.Days;
import kitwright.value.Ref;

/** Which borrowed tools are here for a task; another of the same tool does as well. */
public final class AtHand {
  private static final Facts.Fact<AtHand> FACT = AtHand::new;

  private final Map<String, List<Loan>> byTool = new HashMap<>();
  private final Map<String, List<String>> byTask = new HashMap<>();
  private final Map<String, Loan> last = new HashMap<>();

  private AtHand(Facts day) {
    for (LoanStanding standing : LoanStanding.on(day)) {
      Loan loan = standing.loan();
      last.put(loan.tool(), loan);
      if (!standing.isBack()) {
        byTool.computeIfAbsent(loan.tool(), any -> new ArrayList<>(1)).add(loan);
      }
      for (Ref task : loan.neededFor()) {
        byTask.computeIfAbsent(task.id(), any -> new ArrayList<>(1)).add(loan.tool());
      }
    }
  }

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

  /** The loan of a tool that was written down last; empty where none ever was. */
  public static Optional<Loan> last(String tool, Facts day) {
    return Optional.ofNullable(FACT.on(day).last.get(tool));
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
    List<String> lent = FACT.on(day).byTask.getOrDefault(task.id(), List.of());
    return Stream.concat(named, lent.stream()).distinct();
  }

  static List<Loan> here(String tool, Facts day) {
    return List.copyOf(FACT.on(day).byTool.getOrDefault(tool, List.of()));
  }

  private static Optional<Back> back(List<Loan> here) {
    return here.stream().anyMatch(loan -> loan.due().isEmpty())
        ? Optional.empty()
        : here.stream()
            .map(loan -> new Back(loan, loan.due().orElseThrow()))
            .max(Comparator.comparing(Back::due));
  }
}
