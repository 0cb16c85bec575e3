package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * By which ways a signature comes to rest on a material: another strength of it, and the signature
 * no longer covers what is built.
 */
class SignedGroundsTest {
  private static final String RECORDS =
      """
      kit: [{id: bare, what: stave, qty: 4 m}, {id: made, what: stave, qty: 4 m, material: m}]
      stock: [{id: scrap, what: board, qty: 4 m}, {id: board, what: board, qty: 4 m, material: m}]
      budget: [{line: a, title: A, amount: 9}]
      spending:
        - {id: by-material, on: 2026-01-20, line: a, what: x, amount: 4, state: paid, material: m}
        - {id: by-item, on: 2026-01-20, line: a, what: x, amount: 4, state: paid, item: made}
      materials:
        - {id: m, what: the one, kind: timber, E: 12 GPa, source: a book}
        - {id: glass, kind: cloth, fibre: m, source: a book}
        - {id: wet, kind: cloth, resin: m, source: a book}
        - {id: epoxy, kind: resin, hardener: m, source: a book}
        - {id: ply, kind: plywood, wood: m, source: a book}
      sections:
        - {id: empty, what: nothing}
        - {id: solid, shape: polygon, material: m}
        - {id: glued, glue: m}
        - {id: layered, layers: [{material: m, thickness: 4 mm}]}
        - {id: skinned, skins: [{material: m, plies: 2}]}
        - {id: striped, layers: [{thickness: 4 mm, strips: [{material: m, width: 4 mm}]}]}
        - {id: framed, members: [{what: spine, material: m, width: 4 mm}]}
        - {id: tapered, tapers-to: solid}
        - {id: of-glass, layers: [{material: glass, plies: 2}]}
        - {id: of-wet, layers: [{material: wet, plies: 2}]}
        - {id: of-epoxy, glue: epoxy}
        - {id: of-ply, layers: [{material: ply, thickness: 4 mm}]}
      assessments:
        - {id: drawn, method: external, designed: solid}
        - {id: built, method: external, built: solid}
        - {id: against, method: external, against: [m]}
        - {id: menu, method: external, menu: [{material: m}]}
        - {id: breaks, method: section, weak-link: {sacrificial: solid, protected: empty, margin: 1.1}}
        - {id: whole, method: section, weak-link: {sacrificial: empty, protected: solid, margin: 1.1}}
        - {id: as, method: external, built: %s}
      substitutions:
        - {id: sub, instead-of: {item: %s, qty: 1 m}, use: [%s], grade: finish, why: here%s, sign-offs: [{by: nora, on: 2026-02-12%s}]}
      """;

  private static Ledger ledger(String item, String use, String built, String more, String signed) {
    return Sample.ledger(RECORDS.formatted(built, item, use, more, signed));
  }

  private static void isCovered(Ledger ledger, boolean statement, boolean firstForm) {
    Substitution substitution = ledger.substitutions().get(0);
    String text = Statement.of(substitution, substitution.signOffs().get(0), ledger).text();
    assertThat(text.contains("\nMaterial m\n")).as(text).isEqualTo(statement);
    String first = FirstForm.text(substitution, ledger);
    assertThat(("\n" + first).contains("\nmaterial m\n")).as(first).isEqualTo(firstForm);
  }

  @Test
  void nothingLeadsToItWhereNothingNamesIt() {
    isCovered(
        ledger("bare", "{stock: scrap, qty: 1 m}", "empty", ", assessment: as", ""), false, false);
  }

  @ParameterizedTest
  @CsvSource({
    "'{stock: board, qty: 1 m}', true",
    "'{item: made, qty: 1 m}', true",
    "'{spend: by-material, qty: 1 m}', false",
    "'{spend: by-item, qty: 1 m}', false"
  })
  void whatIsTaken(String use, boolean firstForm) {
    isCovered(ledger("bare", use, "empty", "", ""), true, firstForm);
  }

  @Test
  void whatIsReplacedAndWhatASignerAsksOf() {
    isCovered(ledger("made", "", "empty", "", ""), true, false);
    String condition = ", conditions: [{section: solid, at-least: {plies: 2}}]";
    isCovered(ledger("bare", "", "empty", "", condition), true, false);
  }

  @ParameterizedTest
  @CsvSource({
    "drawn, true, true",
    "built, true, true",
    "against, true, true",
    "breaks, true, true",
    "whole, true, true",
    "menu, false, true" // what might be added changes nothing of what is signed
  })
  void whatIsAssessed(String assessment, boolean statement, boolean firstForm) {
    isCovered(ledger("bare", "", "empty", ", assessment: " + assessment, ""), statement, firstForm);
  }

  @ParameterizedTest
  @CsvSource({
    "solid, true",
    "glued, true",
    "layered, true",
    "skinned, true",
    "striped, true",
    "framed, true",
    "tapered, false",
    "of-glass, true",
    "of-wet, true",
    "of-epoxy, false",
    "of-ply, true"
  })
  void whatASectionIsMadeOf(String section, boolean firstForm) {
    isCovered(ledger("bare", "", section, ", assessment: as", ""), true, firstForm);
  }
}
