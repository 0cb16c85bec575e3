package kitwright.daybook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kitwright.ledger.Claim;
import kitwright.ledger.Delivery;
import kitwright.ledger.Ledger;
import kitwright.ledger.Loan;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.ledger.Substitution;

/**
 * What the dated records say of a week, each list by date.
 *
 * @param arrived deliveries received
 * @param found shortages found
 * @param decided shortages for which a way out was chosen
 * @param proposed substitutions put forward
 * @param signed signatures given
 * @param claimsSent claims that went out
 * @param letters what happened in the correspondence of claims
 * @param claimsSettled claims that ended
 * @param money orders, payments and refunds
 * @param borrowed tools that came
 * @param returned tools that went back
 */
public record Happenings(
    List<Delivery> arrived,
    List<Shortage> found,
    List<Shortage> decided,
    List<Substitution> proposed,
    List<Signature> signed,
    List<Claim> claimsSent,
    List<Letter> letters,
    List<Claim> claimsSettled,
    List<Spend> money,
    List<Loan> borrowed,
    List<Loan> returned) {
  public record Signature(Substitution substitution, Substitution.SignOff signOff) {}

  /** An entry of a claim's correspondence. */
  public record Letter(Claim claim, Claim.Event event) {}

  public static Happenings in(Week week, Ledger ledger) {
    List<Signature> signatures =
        ledger.substitutions().stream()
            .flatMap(each -> each.signOffs().stream().map(signed -> new Signature(each, signed)))
            .toList();
    List<Letter> letters =
        ledger.claims().stream()
            .flatMap(each -> each.events().stream().map(event -> new Letter(each, event)))
            .toList();
    List<Shortage> shortages = ledger.shortages();
    List<Claim> claims = ledger.claims();
    return new Happenings(
        dated(week, ledger.deliveries(), Delivery::received),
        dated(week, shortages, each -> Optional.of(each.found())),
        dated(week, shortages, each -> each.decided().map(Shortage.Decision::on)),
        dated(week, ledger.substitutions(), each -> each.proposed().map(p -> p.on())),
        dated(week, signatures, each -> Optional.of(each.signOff().on())),
        dated(week, claims, Claim::sent),
        dated(week, letters, each -> Optional.of(each.event().on())),
        dated(week, claims, each -> each.settled().map(Claim.Settlement::on)),
        dated(week, ledger.spending(), each -> Optional.of(each.on())),
        dated(week, ledger.borrowed(), each -> Optional.of(each.on())),
        dated(week, ledger.borrowed(), Loan::returned));
  }

  private static <T> List<T> dated(Week week, List<T> all, Function<T, Optional<LocalDate>> day) {
    return all.stream()
        .filter(each -> day.apply(each).filter(week::contains).isPresent())
        .sorted(Comparator.comparing((T each) -> day.apply(each).orElse(week.last())))
        .toList();
  }
}
