package kitwright.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import kitwright.Sample;
import kitwright.ledger.Facts;
import kitwright.money.Account;
import kitwright.shortage.LookAhead;
import kitwright.value.Place;
import kitwright.value.Ref;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/**
 * What is foretold of a way out is what the plan and the money say once it is decided, once it is
 * ordered, promised or signed, and once it is here. Today is Monday, 2 March 2026.
 */
class CarriedOutProperties {
  private static final String LEDGER =
      """
      budget: [{line: spars, title: Spars, amount: 1450%s}, {line: rest, title: Rest, amount: 900}]
      kit: [{id: stave, what: stave, qty: 14 m, price: 12, lead: 9 w}]
      deliveries:
        - {id: d, received: 2026-01-22, from: kit-maker, counted: [{item: stave, qty: 4 m}]}
      %s
      stock: [{id: larch, what: larch, qty: 9 each}]
      tasks:
        - {id: plane, what: Plane the staves, takes: 2 d, budget: spars, uses: [{item: stave, qty: 14 m}]}
        - {id: close, what: Close the bowsprit, takes: 1 d, after: [plane], budget: rest}
        - {id: hull, what: Plank the hull, takes: %d d}
        - {id: rig, what: Rig, takes: 2 d, after: [close, hull]}
      shortages:
        - id: short
          item: stave
          qty: 10 m
          found: 2026-01-24
          cause: not-packed
          line: spars
          options:
            - {kind: wait, arrives: %s, hours: %d}
            - {kind: buy, cost: %d, arrives: %s, hours: %d}
            - {kind: substitute, substitution: sub, cost: %d, hours: %d, arrives: 2026-03-02}
            - {kind: do-without, cost: %d, hours: %d}
          %s
      substitutions:
        - id: sub
          for: short
          instead-of: {item: stave, qty: 10 m}
          use: [{stock: larch, qty: 4}]
          grade: finish
          why: larch is here
          hold: plane
          %s
      %s
      """;

  private record Case(String remaining, int hull, LocalDate arrives, int cost, int hours) {
    String yaml(String delivery, String decided, String signed, String spending) {
      return LEDGER.formatted(
          remaining, delivery, hull, arrives, hours, cost, arrives, hours, cost, hours, cost, hours,
          decided, signed, spending);
    }
  }

  private static Facts day(String yaml, LocalDate today) {
    return Facts.of(Sample.ledger(yaml), today);
  }

  private static void assertTold(WayOut way, Facts day, String when) {
    assertThat(LookAhead.on(day).paced().end().toLocalDate())
        .as(way.name() + " " + when)
        .isEqualTo(way.timing().launch().orElseThrow().on());
    assertThat(Account.on(day).whole().forecast())
        .as(way.name() + " " + when)
        .isEqualTo(way.outlay().forecast().orElseThrow());
  }

  @Property(tries = 60)
  void decisionOrderAndDeliveryEndWhereItWasForetold(
      @ForAll @IntRange(min = 1, max = 40) int hull,
      @ForAll @IntRange(min = 1, max = 50) int days,
      @ForAll @IntRange(min = 1, max = 400) int cost,
      @ForAll @IntRange(max = 30) int hours,
      @ForAll boolean stated) {
    LocalDate arrives = Sample.TODAY.plusDays(days);
    Case of = new Case(stated ? ", remaining: 200" : "", hull, arrives, cost, hours);
    Facts open = day(of.yaml("", "", "", ""), Sample.TODAY);
    Choice choice = Choice.of(open, new Ref("short", Place.wholeFile("test"))).orElseThrow();
    for (WayOut way : choice.ways()) {
      String decided = "decided: {option: %s, on: 2026-03-02, by: nora}".formatted(way.name());
      assertTold(way, day(of.yaml("", decided, "", ""), Sample.TODAY), "decided");
      assertThat(LookAhead.on(day(of.yaml("", decided, "", ""), Sample.TODAY)).orders())
          .as(way.name() + ": nothing more is to be ordered")
          .isEmpty();
      switch (way.name()) {
        case "wait" -> {
          String sent =
              "  - {id: e, expected: %s, from: kit-maker, packed: [{item: stave, qty: 10 m}]}"
                  .formatted(arrives);
          assertTold(way, day(of.yaml(sent, decided, "", ""), Sample.TODAY), "on its way");
        }
        case "buy" -> {
          String order =
              "spending: [{id: o, on: 2026-03-02, line: spars, what: staves, state: ordered, amount: %d, replaces: short, expected: %s}]"
                  .formatted(cost, arrives);
          assertTold(way, day(of.yaml("", decided, "", order), Sample.TODAY), "ordered");
          String paid =
              order.replace(
                  "}]",
                  "}, {id: p, on: %s, line: spars, what: staves, state: paid, amount: %d, pays: o}]"
                      .formatted(arrives, cost));
          Facts here = day(of.yaml("", decided, "", paid), arrives);
          assertThat(Account.on(here).whole().forecast())
              .isEqualTo(way.outlay().forecast().orElseThrow());
          assertThat(LookAhead.on(here).ofTask("plane"))
              .allMatch(
                  wanted ->
                      wanted.missing().isNone()
                          && wanted.toCome().isEmpty()
                          && wanted.uncounted().isNone());
        }
        case "do-without" -> {
          String spent =
              "spending: [{id: o, on: 2026-03-02, line: spars, what: a cover, state: paid, amount: %d, because: short}]"
                  .formatted(cost);
          assertTold(way, day(of.yaml("", decided, "", spent), Sample.TODAY), "paid for");
        }
        default -> {
          String onlySigned = "sign-offs: [{by: nora, on: 2026-03-02}]";
          assertTold(
              way,
              day(of.yaml("", decided, onlySigned, ""), Sample.TODAY),
              "signed, nothing bought");
          String signed = "sign-offs: [{by: nora, on: 2026-03-02}]";
          String spent =
              "spending: [{id: o, on: 2026-03-02, line: spars, what: glue, state: paid, amount: %d, substitution: sub}]"
                  .formatted(cost);
          assertTold(way, day(of.yaml("", decided, signed, spent), Sample.TODAY), "signed");
        }
      }
    }
  }
}
