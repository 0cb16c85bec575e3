package kitwright.money;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import kitwright.Sample;
import kitwright.ledger.Ledger;

/** Ledgers with spending of every kind, drawn from a seed; the records can be shuffled. */
final class RandomSpending {
  private static final String[] LINES = {"spars", "hull", "tools", "nowhere"};
  private static final String[] CAUSES = {
    "",
    "",
    "",
    ", cause: price",
    ", cause: quantity",
    ", cause: forgotten",
    ", because: short",
    ", substitution: sub",
    ", item: stave, qty: 3 m"
  };

  private final Random random;
  private final boolean foreign;
  private final List<String> spends = new ArrayList<>();
  private final List<String> orders = new ArrayList<>();
  private final List<String> paid = new ArrayList<>();

  private RandomSpending(long seed, boolean foreign) {
    random = new Random(seed);
    this.foreign = foreign;
  }

  /** Spends in the build's currency only. */
  static List<String> home(long seed, int size) {
    return new RandomSpending(seed, false).draw(size);
  }

  /** Spends in three currencies. */
  static List<String> mixed(long seed, int size) {
    return new RandomSpending(seed, true).draw(size);
  }

  private List<String> draw(int size) {
    for (int i = 0; i < size; i++) {
      spends.add(spend("s" + i));
    }
    return spends;
  }

  private String spend(String id) {
    int kind = random.nextInt(4);
    String links = "";
    String state = "paid";
    if (kind == 0) {
      state = "ordered";
    } else if (kind == 1 && !orders.isEmpty()) {
      links = ", pays: " + pick(orders) + (random.nextInt(6) == 0 ? ", in-full: yes" : "");
    } else if (kind == 2) {
      state = "refunded";
      List<String> any = random.nextBoolean() ? orders : paid;
      links = any.isEmpty() ? "" : ", refunds: " + pick(any);
    }
    (kind == 0 ? orders : paid).add(id);
    BigDecimal amount = BigDecimal.valueOf(1 + random.nextInt(99999), 2);
    return String.format(
        Locale.ROOT,
        "  - {id: %s, on: 2026-0%d-%02d, line: %s, what: thing, amount: %s %s, state: %s%s%s}%n",
        id,
        1 + random.nextInt(3),
        1 + random.nextInt(28),
        LINES[random.nextInt(LINES.length)],
        amount,
        foreign && random.nextInt(3) == 0 ? (random.nextBoolean() ? "NZD" : "GBP") : "EUR",
        state,
        links,
        kind == 1 || kind == 2 ? "" : CAUSES[random.nextInt(CAUSES.length)]);
  }

  private String pick(List<String> from) {
    return from.get(random.nextInt(from.size()));
  }

  /** A ledger with these spends, in this order. */
  static Ledger ledger(List<String> spends) {
    return Sample.ledger(
        """
        rates:
          - {on: 2026-01-01, from: NZD, to: EUR, rate: 0.54321}
          - {on: 2026-02-10, from: NZD, to: EUR, rate: 0.56}
          - {on: 2026-01-01, from: EUR, to: GBP, rate: 0.8671}
          - {on: 2026-03-01, from: EUR, to: GBP, rate: 0.8534}
        budget:
          - {line: spars, title: Spars, amount: 1450, remaining: [200, 320, 600]}
          - {line: hull, title: Hull, amount: 2600}
          - {line: tools, title: Tools, amount: 800 NZD}
          - {line: crane, title: Crane, amount: 300}
        kit: [{id: stave, what: stave, qty: 14 m, price: 11.40 NZD/m}]
        tasks:
          - {id: plane, what: Plane, takes: 1 d, budget: hull, uses: [{item: stave, qty: 9 m}], progress: 40 %}
          - {id: sand, what: Sand, takes: 2 d, budget: tools, progress: 10 %}
          - {id: oil, what: Oil, takes: 2 d, budget: tools}
        shortages:
          - {id: short, item: stave, qty: 4 m, found: 2026-01-24, cause: not-packed, options: [{kind: buy, cost: [90, 110, 140]}, {kind: wait}]}
        substitutions:
          - {id: sub, instead-of: {item: stave, qty: 4 m}, use: [], grade: finish, why: larch is here}
        claims:
          - {id: c, against: kit-maker, shortages: [short], sent: 2026-01-30, remedy: credit, costs: [s1, s2]}
        """
            + (spends.isEmpty() ? "" : "spending:\n" + String.join("", spends)));
  }
}
