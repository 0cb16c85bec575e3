package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;

/**
 * A ledger as it read on an earlier day: what had not happened is not there, what was planned is.
 */
class AsOfTest {
  private static final String RECORDS =
      """
      tasks:
        - {id: bevel, what: bevel, takes: 2 d, started: 2026-02-10, finished: 2026-02-20}
      shortages:
        - {id: late, item: plank, qty: 1, found: 2026-02-15, cause: not-packed}
        - id: early
          item: plank
          qty: 1
          found: 2026-02-01
          cause: not-packed
          options: [{kind: wait, arrives: 2026-06-01}]
          decided: {option: wait, on: 2026-02-12, by: nora}
      kit: [{id: plank, what: plank, qty: 4}]
      claims:
        - id: c
          against: kit-maker
          shortages: [early]
          remedy: replacement
          sent: 2026-02-05
          reply-by: 2026-03-01
          events:
            - {on: 2026-02-08, what: acknowledged}
            - {on: 2026-02-14, what: promised, expect: 2026-04-01}
      stock: [{id: offcut, what: off-cut, size: 900 x 60 x 9 mm, since: 2026-02-13}]
      substitutions:
        - {id: sub, instead-of: {item: plank, qty: 1}, why: here, grade: finish, proposed: {by: nora, on: 2026-02-11}}
      deliveries:
        - {id: d, received: 2026-02-12, expected: 2026-02-03, from: kit-maker, packed: [{item: plank, qty: 4}]}
      """;

  private static Ledger on(String day) {
    return Sample.ledger(RECORDS).asOf(LocalDate.parse(day));
  }

  private static List<String> ids(List<? extends Entry> entries) {
    return entries.stream().map(Entry::id).toList();
  }

  @Test
  void onceEverythingHasHappenedItIsTheSame() {
    Ledger ledger = Sample.ledger(RECORDS);
    assertThat(ledger.asOf(LocalDate.of(2026, 2, 20))).isSameAs(ledger);
    assertThat(ledger.asOf(LocalDate.of(2026, 2, 19))).isNotSameAs(ledger);
  }

  @Test
  void aRecordThatBeginsWithADayIsThereFromThatDayOn() {
    assertThat(ids(on("2026-02-14").shortages())).containsExactly("early");
    assertThat(ids(on("2026-02-15").shortages())).containsExactly("late", "early");
    assertThat(on("2026-02-12").stock()).isEmpty();
    assertThat(ids(on("2026-02-13").stock())).containsExactly("offcut");
  }

  @Test
  void aSubstitutionIsThereFromItsProposalOn() {
    assertThat(on("2026-02-10").substitutions()).isEmpty();
    assertThat(ids(on("2026-02-11").substitutions())).containsExactly("sub");
  }

  @Test
  void aKeyThatTellsWhatHappenedLaterIsEmpty() {
    Task task = on("2026-02-19").tasks().get(0);
    assertThat(task.started()).contains(LocalDate.of(2026, 2, 10));
    assertThat(task.finished()).isEmpty();
    assertThat(on("2026-02-09").tasks().get(0).started()).isEmpty();
    assertThat(on("2026-02-11").deliveries().get(0).received()).isEmpty();
  }

  @Test
  void aGroupThatHappenedLaterIsGoneAndThoseBeforeItStay() {
    Ledger ledger = on("2026-02-13");
    assertThat(ledger.claims().get(0).events())
        .extracting(event -> event.on().toString())
        .containsExactly("2026-02-08");
    assertThat(ledger.shortages().get(0).decided()).isPresent();
    assertThat(on("2026-02-11").shortages().get(0).decided()).isEmpty();
  }

  @Test
  void whatIsPlannedStays() {
    Ledger ledger = on("2026-02-05");
    assertThat(ledger.claims().get(0).replyBy()).contains(LocalDate.of(2026, 3, 1));
    assertThat(ledger.shortages().get(0).options().get(0).arrives()).isPresent();
    assertThat(ledger.deliveries().get(0).expected()).isPresent();
    assertThat(ledger.build().launch()).isEqualTo(Sample.ledger(RECORDS).build().launch());
  }

  @Test
  void theBuildIsThereBeforeItBegan() {
    assertThat(on("2025-12-01").build().name()).isEqualTo("Sample");
  }

  @Test
  void aNameOfALaterRecordDoesNotLeadNowhere() {
    Ledger ledger = on("2026-02-14");
    Optional<Shortage> late = ledger.shortage(new Ref("late", ledger.build().at().record()));
    assertThat(late).isEmpty();
    assertThat(ledger.knows(Kind.SHORTAGES, "late")).isTrue();
  }

  @Test
  void aRecordThatNoDayCutsIsTheVeryOneThatWasRead() {
    Ledger ledger = Sample.ledger(RECORDS);
    Ledger view = ledger.asOf(LocalDate.of(2026, 2, 13));
    assertThat(view.kit().get(0)).isSameAs(ledger.kit().get(0));
    assertThat(view.shortages().get(0)).isSameAs(ledger.shortages().get(1));
    assertThat(view.claims().get(0)).isNotSameAs(ledger.claims().get(0));
  }

  @Test
  void whatAKeySignedStaysSignedOnAnEarlierDay() {
    Ledger ledger =
        Sample.ledger(
            """
            substitutions:
              - id: sub
                instead-of: {item: plank, qty: 1}
                why: here
                grade: finish
                proposed: {by: nora, on: 2026-02-11}
                sign-offs: [{by: nora, on: 2026-02-12, statement: abc}]
            tasks: [{id: bevel, what: bevel, takes: 2 d, started: 2026-02-20}]
            """);
    Substitution.SignOff signOff = ledger.substitutions().get(0).signOffs().get(0);
    Ledger sealed = ledger.sealed(Map.of(signOff.at().record(), Seal.GOOD));
    Ledger view = sealed.asOf(LocalDate.of(2026, 2, 19));
    assertThat(view.tasks().get(0).started()).isEmpty();
    assertThat(view.seal(view.substitutions().get(0).signOffs().get(0))).isEqualTo(Seal.GOOD);
  }

  /** Whatever key is added: the view holds no day after its own that is declared as happened. */
  @Test
  void noDayThatHappenedLaterIsLeftInAnyRecordOfTheDemonstration() {
    Findings faults = new Findings();
    Ledger ledger = LedgerFolder.at(java.nio.file.Path.of("ledger")).read(faults).orElseThrow();
    LocalDate first = ledger.build().started();
    int cut = 0;
    for (LocalDate day = first; day.isBefore(first.plusDays(120)); day = day.plusDays(9)) {
      Ledger view = ledger.asOf(day);
      cut += ledger.all().size() - view.all().size();
      List<String> later = new ArrayList<>();
      LocalDate last = day;
      for (Entry entry : view.all()) {
        entry
            .at()
            .each(
                (within, key, value) -> {
                  if (key.isHappened() && ((LocalDate) value).isAfter(last)) {
                    later.add(entry.named() + " " + key.name() + " " + value);
                  }
                });
      }
      assertThat(later.stream().filter(each -> !each.startsWith("build ")))
          .as("on " + day)
          .isEmpty();
    }
    assertThat(cut).isPositive();
  }
}
