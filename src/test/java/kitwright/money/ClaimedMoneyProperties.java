package kitwright.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kitwright.Sample;
import kitwright.claim.ClaimStanding;
import kitwright.claim.ClaimStandings;
import kitwright.ledger.Facts;
import kitwright.value.Money;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What claims ask and have not got is what the account of the money says may still come. */
class ClaimedMoneyProperties {
  private static final String[] REMEDIES = {"refund", "credit", "price-reduction", "cost"};
  private static final String[] STATES = {
    "state: paid", "state: ordered", "state: ordered, withdrawn: 2026-01-20"
  };

  private static String build(Random random) {
    StringBuilder yaml = new StringBuilder("budget: [{line: a, title: A, amount: 900}]\nkit:\n");
    StringBuilder counted = new StringBuilder();
    StringBuilder later = new StringBuilder();
    StringBuilder shortages = new StringBuilder("shortages:\n");
    StringBuilder spending = new StringBuilder("spending:\n");
    StringBuilder claims = new StringBuilder("claims:\n");
    for (int i = 0; i < 3; i++) {
      int missing = 1 + random.nextInt(6);
      yaml.append("  - {id: k%d, what: k, qty: 10, price: %d}\n".formatted(i, 3 + i));
      counted.append("{item: k%d, qty: %d}, ".formatted(i, 10 - missing));
      later.append("{item: k%d, qty: %d}, ".formatted(i, random.nextInt(missing + 1)));
      shortages.append(
          "  - {id: s%d, item: k%d, qty: %d, found: 2026-01-06, cause: not-packed}\n"
              .formatted(i, i, missing));
      List<String> costs = new ArrayList<>();
      for (int p = 0; p < random.nextInt(4); p++) {
        String id = "p" + i + p;
        spending.append(
            "  - {id: %s, on: 2026-01-1%d, line: a, what: w, amount: %d.%d7, %s%s%s%s}\n"
                .formatted(
                    id,
                    p,
                    5 + random.nextInt(30),
                    random.nextInt(10),
                    STATES[random.nextInt(STATES.length)],
                    random.nextBoolean() ? ", because: s" + i : ", replaces: s" + i,
                    random.nextBoolean() ? ", item: k" + i : "",
                    random.nextBoolean() ? ", qty: " + (1 + random.nextInt(8)) : ""));
        if (random.nextBoolean()) {
          costs.add(id);
        }
      }
      claims.append(
          "  - {id: c%d, against: kit-maker, shortages: [s%d], sent: 2026-01-2%d, remedy: %s, costs: %s}\n"
              .formatted(i, i, 1 + i, REMEDIES[random.nextInt(REMEDIES.length)], costs));
    }
    return yaml
        + "deliveries:\n  - {id: d, received: 2026-01-05, from: kit-maker, counted: ["
        + counted
        + "]}\n  - {id: e, received: 2026-02-05, from: kit-maker, counted: ["
        + later
        + "]}\n"
        + shortages
        + (spending.length() > 10 ? spending : "")
        + claims;
  }

  @Property(tries = 300)
  void theAccountExpectsWhatTheClaimsAsk(@ForAll long seed) {
    String yaml = build(new Random(seed));
    Facts day = Facts.of(Sample.ledger(yaml), LocalDate.of(2026, 3, 2));
    BigDecimal open = BigDecimal.ZERO;
    for (ClaimStanding claim : ClaimStandings.on(day).all()) {
      open = claim.open().stream().map(Money::amount).reduce(open, BigDecimal::add);
    }
    assertThat(Account.on(day).ifGranted().amount()).as(yaml).isEqualByComparingTo(open);
  }
}
