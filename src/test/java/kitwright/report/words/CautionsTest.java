package kitwright.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.Sample;
import kitwright.assessment.Remedies;
import kitwright.ledger.Hazard;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Each kind of work that can hurt somebody gets its own caution, and each caution defers. */
class CautionsTest {
  private static Set<Caution> of(String what, String more) {
    Ledger ledger =
        Sample.ledger(
            """
            build: {name: Tern, currency: EUR, started: 2026-01-05}
            parties: [{id: pell, name: Pell, role: lender}]
            kit: [{id: pot, what: a pot of something, qty: 1 kg, material: epoxy}, {id: tin, what: slow hardener, qty: 1 kg}, {id: pig, what: lead ingot, qty: 4}]
            deliveries: [{id: d, from: pell, expected: 2026-04-01}]
            borrowed: [{id: warm, tool: fuel heater 9 kW, from: pell, on: 2026-03-01, due: 2026-04-01, condition: good}]
            tasks: [{id: t, what: %s, takes: 1 d%s}]
            """
                .formatted(what, more));
    return Cautions.of(ledger.tasks().get(0), ledger);
  }

  @ParameterizedTest
  @CsvSource({
    "Saw the frames, SAW",
    "Rip the stringers, SAW",
    "Sand the cabin top, DUST",
    "Fair the hull, DUST",
    "Glue the knees, RESIN",
    "Sheathe the deck, RESIN",
    "Varnish the coamings, RESIN",
    "Wipe down and prime the hull, RESIN",
    "Keep the tent warm with the heater, HEATER",
    "Pour the lead shoe, LEAD",
    "Stow the ballast, LEAD",
    "Turn the hull over, LIFTING",
    "Step the mast, LIFTING",
    "Wiring for the lights, ELECTRICAL",
    "Fit the battery, ELECTRICAL",
    "Unpack and count crate C5, CRATE",
    "Work aloft on the shrouds, HEIGHT",
  })
  void eachKindOfWorkGetsItsOwn(String what, Caution caution) {
    assertThat(of(what, "")).contains(caution);
  }

  @Test
  void whatIsUsedBorrowedUnpackedOrKeptWarmTellsToo() {
    assertThat(of("Close the box", ", uses: [{item: pot, qty: 1 kg}]")).contains(Caution.RESIN);
    assertThat(of("Close the box", ", uses: [{item: tin, qty: 1 kg}]"))
        .containsExactly(Caution.RESIN);
    assertThat(of("Close the box", ", uses: [{item: pig, qty: 1}]")).containsExactly(Caution.LEAD);
    assertThat(of("Close the box", ", tools: [warm]")).containsExactly(Caution.HEATER);
    assertThat(of("Close the box", ", unpacks: [d]")).containsExactly(Caution.CRATE);
    assertThat(of("Close the box", ", place: indoors, weather: {above: 12 C}"))
        .containsExactly(Caution.HEATER);
  }

  /** As people write who never read the list; the words only suggest, and rather too much. */
  @ParameterizedTest
  @CsvSource({
    "Glass the keel, RESIN",
    "Wet out the cloth on the foredeck, RESIN",
    "Tab in the bulkheads, RESIN",
    "Hot-coat the cockpit, RESIN",
    "Wipe the flange down with acetone, RESIN",
    "Fillet the floors, RESIN",
    "Wire the panel, ELECTRICAL",
    "Run the cables to the mast foot, ELECTRICAL",
    "Hook up the solar panel, ELECTRICAL",
    "Cast the keel, LEAD",
    "Cast the ballast, LEAD",
    "Melt down the old pipe, LEAD",
    "Flip the hull, LIFTING",
    "Roll her right way up, LIFTING",
    "Hang the rudder, LIFTING",
    "Drop in the engine, LIFTING",
    "Fair and sand, DUST",
    "Belt-sand the keel, DUST",
    "Strip the old paint, DUST",
    "Rebate the stem with the router, SAW",
    "Bandsaw the floors, SAW",
    "Light the heater in the shed, HEATER",
    "Heat the tent overnight, HEATER",
    "Steam the ribs, HEATER",
    "Bring the pallet in, CRATE",
    "Up the mast with the lights, HEIGHT",
  })
  void otherWordsForItSuggestItToo(String what, Caution caution) {
    assertThat(of(what, "")).contains(caution);
  }

  @ParameterizedTest
  @EnumSource(Hazard.class)
  void aTaskStatesItsHazardsWhateverItIsCalled(Hazard hazard) {
    String word = hazard.name().toLowerCase(java.util.Locale.ROOT);
    assertThat(of("Finish the thing", ", hazards: [" + word + "]"))
        .containsExactly(Caution.valueOf(hazard.name()));
  }

  @Test
  void everyCautionHasItsHazard() {
    assertThat(Hazard.values())
        .extracting(Hazard::name)
        .containsExactlyInAnyOrderElementsOf(
            java.util.Arrays.stream(Caution.values()).map(Caution::name).toList());
  }

  @Test
  void workThatHurtsNobodyGetsNone() {
    assertThat(of("Order the rudder fittings", "")).isEmpty();
    assertThat(of("Measure the sole", "")).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Caution.class)
  void eachIsReachedAndDefersToSheetMakerLicenceOrRules(Caution caution) {
    assertThat(caution.words())
        .matches(
            "(?si).*(data sheet|local rules|licensed|maker|instructions|plan is paper|each cut).*");
    assertThat(EnumSet.allOf(Caution.class)).contains(caution);
  }

  private static Remedies.Answer remedy(List<String> additions, Optional<String> none) {
    return new Remedies.Answer(additions, List.of(), Optional.empty(), 1, none, Optional.empty());
  }

  @Test
  void whatARemedyAddsIsGluedOnAndSanded() {
    List<String> added = List.of("2 plies of glass-290");
    assertThat(Cautions.of(remedy(added, Optional.empty())))
        .containsExactly(Caution.RESIN.words(), Caution.DUST.words());
    assertThat(Cautions.of(remedy(List.of(), Optional.empty()))).isEmpty();
    assertThat(Cautions.of(remedy(added, Optional.of("Nothing will do.")))).isEmpty();
    assertThat(Cautions.apart(List.of())).isEmpty();
  }
}
