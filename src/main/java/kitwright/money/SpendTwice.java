package kitwright.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Evidence;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.ledger.Spend;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Fires where two spends look like one that was written down twice: the same money on the same day,
 * to the same firm for the same thing, and no order, receipt or word that sets them apart.
 */
public final class SpendTwice implements Rule {
  private record Sum(LocalDate on, Spend.State state, Money amount, String line) {}

  @Override
  public void examine(Facts day, Findings out) {
    Map<Sum, List<Spend>> alike = new HashMap<>();
    for (Spend spend : day.ledger().spending()) {
      if (spend.amount().signum() <= 0 || spend.withdrawn().isPresent()) {
        continue; // counts for nothing
      }
      Sum sum = new Sum(spend.on(), spend.state(), spend.amount(), spend.line().id());
      List<Spend> earlier = alike.computeIfAbsent(sum, any -> new ArrayList<>(1));
      earlier.stream()
          .filter(each -> isSame(each, spend))
          .findFirst()
          .ifPresent(each -> out.add(finding(each, spend)));
      earlier.add(spend);
    }
  }

  private static boolean isSame(Spend one, Spend other) {
    return (isSame(one.what(), other.what()) || isOneThing(one, other))
        && (one.to().isEmpty() || other.to().isEmpty() || isSame(one.to().get(), other.to().get()))
        && agree(one.qty().map(Quantity::told), other.qty().map(Quantity::told))
        && agree(one.pays().map(Ref::id), other.pays().map(Ref::id))
        && agree(one.refunds().map(Ref::id), other.refunds().map(Ref::id))
        && agree(one.because().map(Ref::id), other.because().map(Ref::id))
        && agree(receipts(one), receipts(other));
  }

  /** Whether what both say is the same: one that says nothing contradicts nothing. */
  private static boolean agree(Optional<?> one, Optional<?> other) {
    return one.isEmpty() || other.isEmpty() || one.equals(other);
  }

  private static boolean isOneThing(Spend one, Spend other) {
    return one.thing().isPresent() && one.thing().map(Ref::id).equals(other.thing().map(Ref::id));
  }

  private static Optional<Set<String>> receipts(Spend spend) {
    Set<String> files = new HashSet<>();
    spend.receipt().stream().map(Evidence::file).forEach(files::add);
    return files.isEmpty() ? Optional.empty() : Optional.of(files);
  }

  private static boolean isSame(String one, String other) {
    return one.equals(other) || plain(one).equals(plain(other));
  }

  private static String plain(String words) {
    return words.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  private Finding finding(Spend first, Spend again) {
    String moved =
        switch (again.state()) {
          case ORDERED -> "ordered";
          case PAID -> "paid";
          case REFUNDED -> "back";
        };
    return note(
        again.at().record(),
        "The "
            + again.named()
            + " says the same as "
            + first.id()
            + ": "
            + again.amount().told()
            + " "
            + moved
            + " on the same day for “"
            + again.what()
            + "”.",
        "Both count. If it was written down twice, the line "
            + again.line()
            + " is told wrong by "
            + again.amount().told()
            + ".",
        "If it is one, take the second out; if there were two, say so where they differ: the number"
            + " of the invoice in “what”, the order in “pays”, or each its own “receipt”.",
        List.of(again.named(), first.named()));
  }
}
