package kitwright.choice;

/**
 * A shortage of mast staves with four ways out. Today is Monday 2026-03-02; a working day has eight
 * hours from Monday to Friday. The sums by hand stand in {@link ChoiceTest}.
 */
public final class Spars {
  /** A whole ledger of one file. The shortage is {@code short}; nobody has decided. */
  public static final String LEDGER =
      """
      build: {name: Sample, currency: EUR, started: 2026-01-05, launch: 2026-09-26, own-hour: 14}
      budget: [{line: spars, title: Spars, amount: 1450, remaining: 200}]
      parties:
        - {id: kit-maker, name: Kit maker, role: supplier}
        - {id: nora, name: N. Builder, role: builder}
        - {id: designer, name: A. Osterlund, role: designer, may-sign: [structural]}
      kit: [{id: stave, what: stave, qty: 14 m, price: 12}]
      deliveries:
        - {id: d, received: 2026-01-22, from: kit-maker, note: PL 1, counted: [{item: stave, qty: 4 m}]}
      stock:
        - {id: larch-a, what: larch left from the floors, size: 2450 x 110 x 32 mm, pieces: 5, keep-for: [lockers]}
      tasks:
        - {id: plane, what: Plane the staves, takes: 2 d, budget: spars, uses: [{item: stave, qty: 14 m}]}
        - {id: close, what: Close the bowsprit, takes: 1 d, after: [plane]}
        - {id: hull, what: Plank the hull, takes: 20 d}
        - {id: rig, what: Rig, takes: 2 d, after: [close, hull]}
        - {id: lockers, what: Locker fronts, takes: 1 d, after: [hull]}
      shortages:
        - id: short
          item: stave
          qty: 10 m
          found: 2026-01-24
          cause: not-packed
          options:
            - {kind: wait, arrives: 2026-04-20}
            - {kind: buy, cost: [280, 310, 360], arrives: 2026-03-16, hours: 2}
            - {kind: substitute, substitution: sub, hours: 16}
            - {id: dear, kind: buy, cost: 400, arrives: 2026-03-20, hours: 2}
      substitutions:
        - id: sub
          for: short
          instead-of: {item: stave, qty: 10 m}
          use: [{stock: larch-a, qty: 4 each}]
          grade: structural
          why: larch is here and dry
          proposed: {by: nora, on: 2026-01-30}
          hold: close
      """;

  private Spars() {}

  /** The ledger with the decision written into the shortage. */
  public static String decided(String yaml) {
    return yaml.replace(
        "substitutions:\n",
        "    decided: {option: buy, on: 2026-02-28, by: nora, why: it comes in time}\nsubstitutions:\n");
  }

  /** The ledger with the substitution standing in for a shortage of its own. */
  public static String substitutionForAnother(String yaml) {
    return yaml.replace("    for: short\n", "    for: other\n")
        .replace(
            "shortages:\n",
            "shortages:\n  - {id: other, item: stave, qty: 1 m, found: 2026-01-24, cause: wrong}\n");
  }
}
