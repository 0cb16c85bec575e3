package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.TreeSet;
import kitwright.Sample;
import kitwright.check.Check;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;

/** A structural substitution with all that it needs, signed for what its records say. */
final class SignedSample {
  private SignedSample() {}

  /** Where the digits of the last sign-off go. */
  static final String COVERS = "COVERS";

  static final String RECORDS =
      """
      parties:
        - {id: kit-maker, name: Redshank Kit Boats, role: supplier}
        - {id: office, name: A. Osterlund, role: designer, may-sign: [{grade: structural, since: 2026-01-01, until: 2026-12-31, letter: {file: there/licence.pdf, sha256: e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855}}, systems, finish]}
        - {id: bryde, name: T. Bryde, role: engineer, may-sign: [{grade: structural, letter: {file: there/licence-2.pdf}}], contact: bryde@sund.example}
        - {id: nora, name: Nora, role: builder, may-sign: [finish]}
        - {id: ivo, name: Ivo, role: helper}
        - {id: pell, name: Pell, role: lender}
      kit:
        - {id: stave, what: spruce stave 24 x 96, qty: 14 m, drawing: D-31, price: 11 EUR/m, material: spruce, grade: structural}
        - {id: bolt, what: bolt M10 x 120, qty: 8}
        - {id: ply, what: plywood 6 mm, qty: 8 sheet}
      stock:
        - {id: larch-a, what: larch board left from the floor, size: 2450 x 110 x 32 mm, pieces: 5, material: larch, grain: along}
        - {id: bolts-m12, what: bolt M12 x 140 A4-70, qty: 20}
      materials:
        - {id: larch, what: larch, kind: timber, density: 560 kg/m3, E: 12.4 GPa, bending-strength: 90 MPa, source: a handbook, basis: mean}
        - {id: spruce, what: spruce, kind: timber, density: 415 kg/m3, E: 10.9 GPa, source: a handbook, basis: mean}
        - {id: glue, what: resorcinol, kind: glue, bond-strength: 8 MPa, source: a data sheet}
        - {id: cloth, what: woven glass, kind: cloth, fibre: glass, resin: epoxy, areal-weight: 290 g/m2, source: a data sheet, roll-width: 1.25 m}
        - {id: glass, what: E-glass, kind: fibre, E: 73 GPa, source: a handbook}
        - {id: epoxy, what: epoxy, kind: resin, E: 3.1 GPa, mix-ratio: 0.32, hardener: hard, pot-life: 35 min, source: a data sheet}
        - {id: hard, what: hardener, kind: resin, density: 970 kg/m3, source: a data sheet}
      budget: [{line: spars, title: Spars, amount: 900}]
      spending:
        - {id: buy-glue, on: 2026-01-20, line: spars, what: resorcinol glue 1 kg tin, amount: 40, state: paid, qty: 1 kg}
      tasks:
        - {id: close, what: Close the bowsprit, takes: 1 d, grade: structural}
        - {id: paint, what: Paint the bowsprit, takes: 1 d, after: [close]}
      sections:
        - {id: drawn, what: box of spruce, width: 96 mm, layers: [{material: spruce, thickness: 24 mm, grain: along}]}
        - {id: built, what: box of larch, width: 96 mm, layers: [{material: larch, thickness: 26 mm, grain: along}, {material: cloth, plies: 2}], glue: glue}
      assessments:
        - id: spar
          method: external
          on: 2026-02-05
          by: bryde
          designed: drawn
          built: built
          require: {stiffness: 1.0, strength: 0.9, reserve: 1.0}
          less-because: {strength: the load is shared with the stay}
          allow: {mass: 1.35}
          numbers: {stiffness: 1.1, strength: 0.95, reserve: 1.4, mass: 1.2}
          load: {tip-force: 900 N, span: 1.15 m, factor: 3, source: drawing D-31}
          evidence: [{file: there/sum.pdf, says: the sum}]
      substitutions:
        - id: sub
          instead-of: {item: stave, qty: 10.4 m}
          use: [{stock: larch-a, qty: 4 each}, {stock: bolts-m12, qty: 8 each}, {spend: buy-glue, qty: 1 kg}]
          grade: structural
          why: larch staves, thinner walls
          proposed: {by: nora, on: 2026-01-30}
          assessment: spar
          hold: close
          sign-offs:
            - by: office
              on: 2026-02-12
              covers: COVERS
              saw: {verdict: passes, stiffness: 1.1, strength: 0.95, reserve: 1.4, mass: 1.2}
              conditions:
                - {section: built, at-least: {plies: 2}}
                - no knot within 100 mm of a scarf
              evidence: [{file: there/letter.txt, sha256: e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855}]
      """;

  /** The records with the digits of what the sign-off signs. */
  static String signed(String records) {
    return records.replace(COVERS, statement(records).fingerprint().digits());
  }

  /** What the last sign-off signs. */
  static Statement statement(String records) {
    Ledger ledger = Sample.ledger(records.replace(COVERS, "0".repeat(12)));
    Substitution substitution = ledger.substitutions().get(0);
    return Statement.of(
        substitution, substitution.signOffs().get(substitution.signOffs().size() - 1), ledger);
  }

  static SubstitutionStanding standing(String records) {
    return SubstitutionStandings.on(Facts.of(Sample.ledger(records), Sample.TODAY)).all().get(0);
  }

  /** Every rule that finds something, in alphabetical order. */
  static List<String> rules(String records) {
    return List.copyOf(
        new TreeSet<>(findings(records, Sample.TODAY).stream().map(Finding::rule).toList()));
  }

  static List<Finding> findings(String records, LocalDate today) {
    Findings out = new Findings();
    Check.examine(Facts.of(Sample.ledger(records), today), out);
    return out.inOrder();
  }

  /** The records with one text replaced, which must be there. */
  static String with(String records, String from, String to) {
    assertThat(records).contains(from);
    return records.replace(from, to);
  }
}
