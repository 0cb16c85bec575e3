package kitwright.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What looks private to the author, and what does not. */
class OverheardTest {
  // A name that is a word too counts wherever it has a capital: at a sentence’s start nobody knows.

  private static final Ledger LEDGER =
      Sample.ledger(
          """
          build: {name: Dory, currency: EUR, started: 2026-01-05, contingency: 1250}
          parties:
            - {id: kit-maker, name: Redshank Kit Boats, role: supplier, contact: works@redshank.example}
            - {id: nora, name: Nora Kvist, role: builder}
            - {id: bo, name: Bo Li, role: helper}
            - {id: jose, name: José Núñez, role: helper, contact: +47 912 34 567}
            - {id: lender-1, name: Åse Farm, role: lender}
            - {id: des, name: P. O'Brien, role: designer}
            - {id: h2, name: Rob Will, role: helper}
            - {id: anders, name: Anders from the boatyard, role: lender}
            - {id: open, name: Sunniva Strand, role: helper, public: yes}
          budget: [{line: kit, title: Kit, amount: 4000}]
          kit: [{id: ply, what: ply sheet, qty: 12 sheet, price: 87.35 EUR}, {id: bolt, what: bolt, qty: 150, price: 12}]
          shortages: [{id: sh1, item: ply, qty: 2 sheet, found: 2026-03-24, cause: not-packed}]
          claims: [{id: cl-7, against: kit-maker, shortages: [sh1], remedy: credit}]
          spending:
            - {id: sp1, on: 2026-03-24, line: kit, what: ply, amount: 1234.56 EUR, to: Holm Timber, state: paid}
            - {id: sp2, on: 2026-03-24, line: kit, what: holes, amount: 150, to: Moe & Sønn, state: paid}
            - {id: sp3, on: 2026-03-24, line: kit, what: glue, amount: 120, to: Holm Timber, state: paid}
          """);

  private static final Overheard OVERHEARD = Overheard.of(LEDGER);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Bo held the other end.",
        "bo held the other end.",
        "Bo's plane is blunt.",
        "Nora planed.",
        "NORA planed.",
        "Noras bench.",
        "N.K. did the rest.",
        "NK did the rest.",
        "N. K. did the rest.",
        "Nunez came by.",
        "Jose came by.",
        "JOSÉ came by.",
        "Ase lent the saw.",
        "Aase lent the saw.",
        "OBrien rang.",
        "O’Brien rang.",
        "Will came by.",
        "Rob came by.",
        "Went to Holm for glue.",
        "The parcel from Moe was wet.",
        "Sonn was shut.",
        "Redshank wrote again.",
        "The Redshankers wrote.",
        "kit-maker wrote.",
        "See IMG_Kvist_1.jpg.",
        "See bo-li.jpg.",
        "Write to works@redshank.example.",
        "Ring 912 34 567.",
        "Ring 91234567.",
        "Ring +47 912-34-567.",
        "Ring (0)912 34 567.",
        "It came to twelve hundred.",
        "It came to 2k.",
        "174.70 for two.",
        "It was €12.",
        "It was 12 EUR.",
        "It was eur 12.",
        "It was 1250 in all.",
        "It was 1 250.",
        "It was 1,234.56 there.",
        "We paid too much.",
        "Four hundred quid.",
        "They refused to replace it.",
        "The lawyer says no.",
        "cl-7 is out.",
        "We claimed the plywood.",
        "P**au**l and N**or**a.",
        "&#78;ora planed.",
        "See [this](http://x.example/%4Eora).",
        "N\u00ADora planed.",
        "Ｎｏｒａ planed."
      })
  void theAuthorIsShown(String text) {
    assertThat(OVERHEARD.in(text)).as(text).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Cold barn, and the stove smokes.",
        "Bolt M12 x 120 goes through both floors.",
        "Drilled 150 holes before lunch.",
        "Bored a hole for the M12 x 120.",
        "Took the strip from the pile and from the rack.",
        "The boatyard lies across the fjord.",
        "So will it hold? It has.",
        "Planed six staves to 24 x 96.",
        "A board of 1250 mm.",
        "The glue wants 12 h at 18 C.",
        "1.25 kg of resin for 2.50 m.",
        "The hull weighs 412 kg, give or take 15.",
        "Float is 31 working days.",
        "2026-03-29 was a Sunday.",
        "Three dry days, 40 % humidity at noon.",
        "A robin sat on the stem.",
        "The bow is fair from sheer to keel.",
        "Marked a line on the strongback.",
        "A hundred clamps are never enough.",
        "Two thousand strokes of the long board.",
        "Spelling matters, pellets burn.",
        "The designer came and liked her.",
        "She is smaller than she looks.",
        "Boxes stand six high.",
        "No bottle of hardener left.",
        "Kit parts lie in the sun.",
        "The kit is a good one.",
        "Boats are built upside down.",
        "Sunniva planed the mast.",
        "Sheet 12 of 40.",
        "480, 905 and 310 mm from the end.",
        "From 690 to 1595: long 1.",
        "Scale 1:10 on the drawing.",
        "The fall of the tackle is 4 to 1.",
        "Dust mask on, always.",
        "It is 7.2 m long and 2.1 m wide.",
        "Cut at 45 degrees, twice.",
        "The third coat is on.",
        "Ran both palms along her.",
        "A jolly good day.",
        "The farm dog came along.",
        "Rubbed down with 120 grit."
      })
  void harmlessWordsAreLeftAlone(String text) {
    assertThat(OVERHEARD.in(text)).as(text).isEmpty();
  }

  @Test
  void itSaysWhatAndWhy() {
    assertThat(OVERHEARD.in("Bo paid 12 EUR."))
        .extracting(Suspicion::words)
        .contains("bo", "paid", "2 EUR");
  }
}
