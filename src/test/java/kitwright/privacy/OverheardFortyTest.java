package kitwright.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Ledger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Forty sentences that would give something away, and forty from the bench that must stay as they
 * are, beside those of {@link OverheardTest}: other people, other sums, other work.
 */
class OverheardFortyTest {
  private static final Ledger LEDGER =
      Sample.ledger(
          """
          build: {name: Tern, currency: EUR, started: 2026-01-05, contingency: 1800}
          parties:
            - {id: yard, name: Brønnum Skibskit A/S, role: supplier, contact: kit@bronnum.example}
            - {id: me, name: Wilhelmina Straat, role: builder}
            - {id: al, name: Al Dent, role: helper, contact: +44 7700 900123}
            - {id: lu, name: Lu, role: helper}
            - {id: gus, name: Gustav Ångström-Weiß, role: helper}
            - {id: neighbour-2, name: Fru Dahl, role: lender}
            - {id: eng, name: Dr. Thandiwe Mokoena, role: engineer}
          budget: [{line: hull, title: Hull, amount: 9500}]
          kit: [{id: knee, what: oak knee, qty: 6, price: 43.75 EUR}]
          shortages: [{id: s, item: knee, qty: 2, found: 2026-03-24, cause: damaged}]
          claims: [{id: claim-2026-03-25, against: yard, shortages: [s], remedy: replacement}]
          spending:
            - {id: p1, on: 2026-03-24, line: hull, what: fastenings, amount: 2318.40 EUR, to: Vesterhavs Beslag, state: paid}
            - {id: p2, on: 2026-03-25, line: hull, what: crane, amount: 640 EUR, to: O. Quist, state: ordered}
          """);

  private static final Overheard OVERHEARD = Overheard.of(LEDGER);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Al steadied the plank.",
        "Thanks, AL!",
        "Lu brought soup.",
        "Lu’s soup was hot.",
        "The Dahls lent us trestles.",
        "fru dahl lent us trestles.",
        "Gustav sanded.",
        "Angstrom sanded.",
        "Aangstroem sanded.",
        "Weiss sanded.",
        "WEISZ no, WEIß it was.",
        "G. Å.-W. sanded.",
        "Wilhelmina slept.",
        "W.S. signed the card.",
        "Dr Mokoena looked at the spine.",
        "thandiwe nodded.",
        "The box from Bronnum came.",
        "Broennum has not written.",
        "Skibskit forgot the knees.",
        "Beslag in town had screws.",
        "Quist sends his crane on Monday.",
        "oquist.jpg shows the hook.",
        "https://bronnum.example/order/12",
        "kit [at] bronnum dot example",
        "Text me on 07700 900123.",
        "Tel. +44 (0)7700 900 123",
        "0 77 00 90 01 23 after six",
        "It came to 2318.",
        "All of it was 2 318,40.",
        "Forty-three seventy-five each, the knees: 43.75.",
        "The crane is 640 all told.",
        "Six hundred and forty for the crane.",
        "That is £90 a day.",
        "He wants 20 quid.",
        "USD 300 for freight.",
        "Cost us a fortune.",
        "They owe us six knees.",
        "We shall see them in court.",
        "They say it is not their fault, and refuse to send more.",
        "claim-2026-03-25 went off today.",
        "Our complaint lies with them."
      })
  void theAuthorIsShown(String text) {
    assertThat(OVERHEARD.in(text)).as(text).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "All hands on the long board.",
        "Also planed the sheer.",
        "A lull in the rain, so we glassed.",
        "Glued the laminate along the stem.",
        "The plug is aluminium.",
        "Hull number one is fair.",
        "Dentate edge on the spreader, 3 mm notch.",
        "Dahlias flower by the shed door.",
        "Engine beds are square to the keel.",
        "The yard is a sheet of ice.",
        "Swept the yard.",
        "Me and the plane, all day.",
        "Kit laid out by number.",
        "Guesswork is no measure.",
        "640 mm from the transom to the first frame.",
        "Frame 12 stands 640 mm off.",
        "1800 strokes and she is fair.",
        "9500 staples pulled, or so it feels.",
        "Station 4 to station 7 faired.",
        "Ratio 5:1 by weight, always.",
        "Tolerance 0.5 mm over 2 m.",
        "Scarf 8 to 1, glued at 18 °C.",
        "Wind force 5, tent held.",
        "Day 63 of the build.",
        "Next week: glass, 600 g cloth.",
        "A 12 V lamp is enough to see by.",
        "The moon rose at 21:40 over the shed.",
        "Tide at 06:15, no use to us yet.",
        "Bevel 12.5 degrees at the heel.",
        "M10 x 160 through the floor, eight of them.",
        "The plywood is 9 mm, five plies.",
        "Drawing D-14, sheet 2.",
        "Moisture 11.5 %, good enough.",
        "She turned over without a creak.",
        "The crane lifted her like an egg.",
        "Two coats on, one to go.",
        "Bank the sawdust up against the cold.",
        "Weigh the resin, never guess it.",
        "A bright day; the doors stood open.",
        "Straight as a string from stem to stern.",
        "The plane sings when the iron is sharp.",
        "Nine knees fitted, three to go."
      })
  void theBenchIsLeftAlone(String text) {
    assertThat(OVERHEARD.in(text)).as(text).isEmpty();
  }
}
