package kitwright.loan;

import java.util.List;
import java.util.stream.Stream;
import kitwright.ledger.Facts;
import kitwright.ledger.Loan;
import kitwright.ledger.Task;
import kitwright.value.Ref;

/** Which borrowed tools are here for a task; another of the same tool does as well. */
public final class AtHand {
  private AtHand() {}

  /** The tools a task needs that are not here on the day, by name. */
  public static List<String> lacking(Task task, Facts day) {
    Stream<String> named =
        task.tools().stream()
            .filter(tool -> !isHere(tool, day))
            .map(tool -> day.ledger().loan(tool).map(Loan::tool).orElse(tool.id()));
    Stream<String> lent =
        Standing.on(day).stream()
            .filter(Standing::isBack)
            .map(Standing::loan)
            .filter(loan -> loan.neededFor().stream().anyMatch(ref -> ref.id().equals(task.id())))
            .map(Loan::tool)
            .filter(tool -> !isHere(tool, day));
    return Stream.concat(named, lent).distinct().toList();
  }

  private static boolean isHere(Ref tool, Facts day) {
    return day.ledger().loan(tool).filter(loan -> isHere(loan.tool(), day)).isPresent();
  }

  private static boolean isHere(String tool, Facts day) {
    return Standing.on(day).stream()
        .anyMatch(standing -> !standing.isBack() && standing.loan().tool().equals(tool));
  }
}
