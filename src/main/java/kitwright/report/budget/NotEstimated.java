package kitwright.report.budget;

import java.util.ArrayList;
import java.util.List;
import kitwright.ledger.Facts;
import kitwright.money.Account;
import kitwright.money.Remaining;
import kitwright.report.words.Say;

/** What counts as sure in the chances of the money, or as nothing, for want of an estimate. */
final class NotEstimated {
  private NotEstimated() {}

  /** Clauses; none where somebody has estimated all. */
  static List<String> on(Facts now) {
    Account account = Account.on(now);
    List<String> all = new ArrayList<>();
    add(
        all,
        "of ",
        account.all().stream()
            .filter(line -> line.remaining().basis() == Remaining.Basis.BUDGET)
            .filter(line -> line.remaining().likely().signum() != 0)
            .map(line -> "“" + line.title() + "”")
            .toList(),
        " what is left of the budget counts as sure, for want of “remaining: [low, likely, high]”");
    add(
        all,
        "",
        account.all().stream().flatMap(line -> line.remaining().unpriced().stream()).toList(),
        " without a price count as nothing");
    add(
        all,
        "to get round ",
        account.unpriced().stream().map(each -> each.shortage().id()).toList(),
        " counts as nothing, since no way out of it states its cost");
    return all;
  }

  private static void add(List<String> all, String before, List<String> names, String after) {
    if (!names.isEmpty()) {
      all.add(before + Say.list(names) + after);
    }
  }
}
