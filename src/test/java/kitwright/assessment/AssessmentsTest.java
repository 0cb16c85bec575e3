package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import kitwright.Sample;
import kitwright.assessment.material.Bases;
import kitwright.assessment.sheet.Figure;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Verdict;
import kitwright.finding.Finding;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.Test;

/** What assessments come to, by method, and what keeps them open. */
class AssessmentsTest {
  private static final String STUFF =
      """
      materials:
        - {id: wood, kind: timber, density: 1400 kg/m3, E: 12 GPa, G: 0.75 GPa, bending-strength: 60 MPa, tensile-strength: 60 MPa, compressive-strength: 40 MPa, shear-strength: 8 MPa, scatter: 15 %, source: test}
        - {id: iron, kind: metal, density: 7850 kg/m3, E: 200 GPa, poisson: 0.3, yield-strength: 250 MPa, source: test}
        - {id: skin, kind: laminate, isotropic: yes, density: 1700 kg/m3, E: 15 GPa, G: 4 GPa, poisson: 0.2, tensile-strength: 250 MPa, compressive-strength: 200 MPa, shear-strength: 60 MPa, source: test}
        - {id: foam, kind: core, isotropic: yes, density: 80 kg/m3, E: 70 MPa, G: 20 MPa, tensile-strength: 2 MPa, compressive-strength: 1.2 MPa, shear-strength: 1.0 MPa, source: test}
        - {id: fibre-of-glass, kind: fibre, isotropic: yes, density: 2560 kg/m3, E: 73 GPa, poisson: 0.22, source: test}
        - {id: resin, kind: resin, density: 1200 kg/m3, E: 3 GPa, poisson: 0.35, source: test}
        - {id: straight, kind: cloth, fibre: fibre-of-glass, resin: resin, weave: biaxial, areal-weight: 600 g/m2, fibre-fraction: 0.5, tensile-strength: 260 MPa, compressive-strength: 220 MPa, shear-strength: 48 MPa, source: test}
        - {id: slant, kind: cloth, fibre: fibre-of-glass, resin: resin, weave: double-bias, areal-weight: 600 g/m2, fibre-fraction: 0.5, tensile-strength: 260 MPa, compressive-strength: 220 MPa, shear-strength: 48 MPa, source: test}
      """;

  private static Ledger ledger(String more) {
    return Sample.ledger(STUFF + more);
  }

  private static Result result(String more) {
    return Assessments.on(Facts.of(ledger(more), Sample.TODAY)).all().get(0);
  }

  /**
   * R. C. Hibbeler, Mechanics of Materials: wood 150 by 150 mm with a steel strap 20 mm below, E 12
   * and 200 GPa (reference values T5): I of the steel section 9.358e6 mm⁴, so EI 1 871.6 kN·m².
   */
  @Test
  void aMixedSectionOfTheLedgerHasTheStiffnessOfTheTextbook() {
    Result result =
        result(
            """
            sections:
              - id: strapped
                width: 150 mm
                layers: [{material: iron, thickness: 20 mm}, {material: wood, thickness: 150 mm}]
            assessments:
              - {id: a, method: section, designed: strapped, built: strapped, require: {stiffness: 1}}
            """);
    assertThat(new Assessed(result).built(Measure.STIFFNESS)).isCloseTo(1.8716e6, within(200.0));
    assertThat(result.verdict().passes()).isTrue();
  }

  /** Reference case OC1: faces 1.5 mm, core 20 mm, EI 5.25542e9 N·mm² and GA 462 250 N a metre. */
  @Test
  void aSandwichHasItsExactStiffnessAndItsShear() {
    Result result =
        result(
            """
            sections:
              - id: panel
                width: 1000 mm
                layers: [{material: skin, thickness: 1.5 mm}, {material: foam, thickness: 20 mm}, {material: skin, thickness: 1.5 mm}]
            assessments:
              - {id: a, method: section, designed: panel, built: panel, require: {stiffness: 1}}
            """);
    assertThat(new Assessed(result).built(Measure.STIFFNESS)).isCloseTo(5255.42, within(0.01));
    assertThat(new Assessed(result).built(Measure.SHEAR_STIFFNESS))
        .isCloseTo(462_250, within(4623.0));
    assertThat(
            new Assessed(result).row(Measure.SHEAR).built().orElseThrow().governing().orElseThrow())
        .contains("core shear");
  }

  /** A cloth at 45 degrees does not carry its fibre's modulus along the part. */
  @Test
  void aDoubleBiasIsFarSofterAlongThanTheSameClothLaidStraight() {
    Result result =
        result(
            """
            sections:
              - {id: along, width: 1000 mm, layers: [{material: straight, plies: 2}]}
              - {id: bias, width: 1000 mm, layers: [{material: slant, plies: 2}]}
            assessments:
              - {id: a, method: laminate, designed: along, built: bias, require: {stiffness: 1.0}, allow: {mass: 1.0}}
            """);
    assertThat(new Assessed(result).row(Measure.STRETCH).ratio().orElseThrow())
        .isBetween(0.3, 0.75);
    assertThat(new Assessed(result).row(Measure.SHEAR_IN_PLANE).ratio().orElseThrow())
        .isGreaterThan(2);
    assertThat(new Assessed(result).row(Measure.PLATE_MASS).ratio().orElseThrow())
        .isCloseTo(1, within(1e-12));
    assertThat(result.verdict().fails()).isTrue();
  }

  /** ISO 898-1:2013, table 5: an M10 of class 8.8 breaks at 46 400 N at the least. */
  @Test
  void aBoltOfTheBuiltInTableHasTheLoadOfItsStandard() {
    Result result =
        result(
            """
            sections:
              - {id: bolt, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm, count: 1}}
              - {id: four, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm, count: 4}}
            assessments:
              - {id: a, method: bolt, designed: bolt, built: four, require: {strength: 1.0, proof: 1.0}}
            """);
    assertThat(new Assessed(result).built(Measure.BOLT_TENSION)).isCloseTo(4 * 46.4, within(0.2));
    assertThat(result.verdict().passes()).isTrue();
  }

  /** EN 1993-1-8:2005, table 3.4, and EN 1993-1-4: 0.6 for class 8.8, 0.5 for stainless steel. */
  @Test
  void aStainlessBoltOfEqualTensionIsWeakerInShearThanOneOfClass88() {
    Result result =
        result(
            """
            sections:
              - {id: drawn, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm}}
              - {id: stainless, shape: bolt, material: bolt-a4-80, dimensions: {diameter: 10 mm}}
            assessments:
              - {id: a, method: bolt, designed: drawn, built: stainless, require: {strength: 1.0, shear: 1.0}}
            """);
    assertThat(new Assessed(result).row(Measure.BOLT_TENSION).ratio().orElseThrow())
        .isCloseTo(1, within(1e-9));
    assertThat(new Assessed(result).row(Measure.BOLT_SHEAR).ratio().orElseThrow())
        .isCloseTo(0.5 / 0.6, within(1e-9));
    assertThat(result.verdict().fails()).isTrue();
  }

  @Test
  void theShearOfABoltWhoseClassNobodyKnowsIsNotGuessed() {
    Result result =
        result(
            """
            ---
            materials:
              - {id: odd-bolt, kind: bolt, basis: minimum, tensile-strength: 700 MPa, source: a test}
            sections:
              - {id: drawn, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm}}
              - {id: odd, shape: bolt, material: odd-bolt, dimensions: {diameter: 12 mm}}
            assessments:
              - {id: a, method: bolt, designed: drawn, built: odd, require: {shear: 1.0}}
            """);
    assertThat(result.verdict().passes()).isFalse();
    assertThat(result.verdict().fails()).isFalse();
    assertThat(result.verdict().because()).contains("odd-bolt does not state its shear-strength");
  }

  @Test
  void nothingPassesOnAValueThatNobodyHasConfirmed() {
    String sections =
        """
        sections:
          - {id: spar, shape: tube, material: aluminium-6061-t6-sheet-plate, dimensions: {diameter: 60 mm, wall: 3 mm}}
        assessments:
          - {id: a, method: section, designed: spar, built: spar, require: {moment: 1.0}, sources: [%s]}
        """;
    Result open = result(sections.formatted(""));
    assertThat(open.verdict().outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
    assertThat(open.verdict().because()).contains("not confirmed in its source");
    Result vouched =
        result(
            sections.formatted("\"aluminium-6061-t6-sheet-plate: mill certificate of the tube\""));
    assertThat(vouched.verdict().passes()).isTrue();
  }

  @Test
  void aMissingStrengthKeepsOnlyWhatLeansOnItOpen() {
    String text =
        """
        materials:
          - {id: plain, kind: timber, density: 500 kg/m3, E: 10 GPa, source: test}
        sections:
          - {id: beam, shape: rectangle, material: plain, dimensions: {width: 40 mm, height: 60 mm}}
        assessments:
          - {id: a, method: section, designed: beam, built: beam, require: {%s: 1.0}}
        """;
    assertThat(Assessed.of(text.formatted("stiffness")).result().verdict())
        .matches(Verdict::passes);
    Verdict moment = Assessed.of(text.formatted("moment")).result().verdict();
    assertThat(moment.outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
    assertThat(moment.because()).contains("does not state its bending-strength");
  }

  @Test
  void factorsTakeFromStrengthAndLeaveTheRatio() {
    String text =
        """
        sections:
          - {id: beam, shape: rectangle, material: wood, dimensions: {width: 40 mm, height: 60 mm}}
        assessments:
          - {id: a, method: timber, designed: beam, built: beam, require: {moment: 1.0, reserve: 1.0}, factors: {%s}, load: {tip-force: 500 N, span: 1 m, source: test}}
        """;
    Result clear = result(text.formatted(""));
    Result graded = result(text.formatted("grade: 0.5, moisture: 0.9"));
    assertThat(new Assessed(graded).built(Measure.MOMENT_SAGGING))
        .isCloseTo(0.45 * new Assessed(clear).built(Measure.MOMENT_SAGGING), within(1e-6));
    assertThat(new Assessed(graded).row(Measure.MOMENT_SAGGING).ratio().orElseThrow())
        .isCloseTo(1, within(1e-12));
    assertThat(new Assessed(clear).built(Measure.RESERVE))
        .isCloseTo(60e6 * 0.04 * 0.0036 / 6 / 500, within(1e-9));
  }

  @Test
  void aStrongerBladeMovesTheBreakToTheStock() {
    String text =
        """
        sections:
          - {id: blade, shape: rectangle, material: wood, dimensions: {width: 200 mm, height: %s mm}}
          - {id: stock, shape: rectangle, material: wood, dimensions: {width: 60 mm, height: 60 mm}}
        assessments:
          - id: a
            method: section
            designed: blade
            built: blade
            weak-link: {sacrificial: blade, protected: stock, margin: 1.2, breaks-at: 50 mm}
            load: {shape: elliptic, force: 900 N, span: 0.8 m, source: test}
        """;
    Result thin = result(text.formatted("20"));
    assertThat(thin.verdict().passes()).isTrue();
    assertThat(thin.breaks().get(0).part()).isEqualTo("blade");
    Result thick = result(text.formatted("40"));
    assertThat(thick.verdict().fails()).isTrue();
    assertThat(thick.breaks().get(0).part()).isEqualTo("stock");
  }

  @Test
  void aRemedyAddsTheFewestPliesThatWillDoAndSaysWhenNothingWill() {
    String text =
        """
        sections:
          - {id: drawn, width: 100 mm, layers: [{material: wood, thickness: 20 mm}]}
          - {id: made, width: 100 mm, layers: [{material: wood, thickness: 18 mm}]}
        assessments:
          - id: a
            method: section
            designed: drawn
            built: made
            require: {stiffness: 1.0}
            allow: {mass: %s}
            menu: [{material: straight, faces: 2, most: 6, cost: 4 EUR}]
        """;
    Ledger can = ledger(text.formatted("1.3"));
    Remedies.Answer answer = Remedies.of(can.assessments().get(0), can, Remedies.Least.MASS);
    assertThat(answer.additions()).containsExactly("2 plies of straight on each face");
    assertThat(answer.result().orElseThrow().verdict().passes()).isTrue();
    Ledger cannot = ledger(text.formatted("0.9"));
    assertThat(Remedies.of(cannot.assessments().get(0), cannot, Remedies.Least.COST).none())
        .hasValueSatisfying(why -> assertThat(why).startsWith("Nothing on the menu will do"));
  }

  @Test
  void whatFailsIsToldFirstAndThenWhatIsNotKnown() {
    Result result =
        result(
            """
              - {id: rumour, kind: timber, density: 500 kg/m3, E: 9 GPa, G: 0.6 GPa, bending-strength: 40 MPa, compressive-strength: 30 MPa, shear-strength: 6 MPa}
            sections:
              - {id: drawn, width: 100 mm, layers: [{material: wood, thickness: 20 mm}]}
              - {id: made, width: 100 mm, layers: [{material: rumour, thickness: 18 mm}]}
            assessments:
              - {id: a, method: section, designed: drawn, built: made, require: {stiffness: 1.0}}
            """);
    assertThat(result.verdict().fails()).isTrue();
    assertThat(result.verdict().reasons().get(0)).startsWith("bending stiffness EI is 0.54");
    assertThat(result.verdict().reasons().get(1))
        .startsWith("not known: the E of rumour has no source");
  }

  @Test
  void aRemedyThatAddsALengthToACountIsRefusedInWords() {
    Ledger ledger =
        ledger(
            """
            sections:
              - {id: drawn, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm, count: 4}}
              - {id: made, shape: bolt, material: bolt-8-8, dimensions: {diameter: 8 mm, count: 4}}
            assessments:
              - {id: a, method: bolt, designed: drawn, built: made, require: {strength: 1}, menu: [{step: 1 mm, dimension: count}]}
            """);
    assertThat(
            Remedies.of(ledger.assessments().get(0), ledger, Remedies.Least.MASS)
                .none()
                .orElseThrow())
        .startsWith("The menu adds 1 mm to the count of section made, which is 4");
  }

  @Test
  void twoOfOneKindAreEachWeakerHalfTheTime() {
    Ledger ledger =
        ledger(
            """
            sections:
              - {id: one, shape: rectangle, material: wood, dimensions: {width: 40 mm, height: 60 mm}}
              - {id: other, shape: rectangle, material: wood, dimensions: {width: 40 mm, height: 60 mm}}
            assessments:
              - {id: a, method: section, designed: one, built: other, require: {stiffness: 1.0}}
            """);
    Chances.Told told = Chances.of(ledger.assessments().get(0), ledger);
    assertThat(told.lines()).hasSize(3);
    assertThat(told.lines())
        .allSatisfy(
            line ->
                assertThat(line.chance().probability())
                    .isCloseTo(0.5, within(4 * line.chance().standardError())));
    assertThat(Chances.of(ledger.assessments().get(0), ledger)).isEqualTo(told);
  }

  @Test
  void impossibleSectionsAreToldAtTheirPlace() {
    Ledger ledger =
        ledger(
            """
            sections:
              - {id: a, width: 100 mm, layers: [{material: wood, thickness: 0 mm}]}
              - {id: b, shape: foil, material: foam, dimensions: {chord: 200 mm, thickness-ratio: 0.1}, members: [{what: spine, material: wood, width: 260 mm}]}
              - {id: c, shape: foil, material: foam, dimensions: {chord: 200 mm, thickness-ratio: 0.02}, skins: [{material: straight, plies: 6}]}
              - {id: d, shape: tube, material: iron, dimensions: {diameter: 20 mm, wal: 2 mm}}
              - {id: e, shape: round, material: iron, dimensions: {diameter: 3 kg}}
              - {id: f, width: 100 mm, layers: [{material: wood, plies: 3}]}
              - {id: g, shape: bolt, material: bolt-8-8}
            """);
    List<Finding> found = Sample.findings(new SectionImpossible(), ledger, Sample.TODAY);
    for (String id : List.of("a", "b", "c", "d", "e", "f", "g")) {
      assertThat(found).anyMatch(finding -> finding.records().contains("section " + id));
    }
    assertThat(found).anyMatch(finding -> finding.mend().contains("“wall”"));
    assertThat(found).allMatch(finding -> finding.at().line() > 1);
  }

  /** What is asked and cannot be worked out never passes, whatever the section is. */
  @Test
  void nothingPassesForAPartThatTheMethodDoesNotKnow() {
    String text =
        """
        sections:
          - {id: beam, width: 40 mm, layers: [{material: wood, thickness: 60 mm}]}
          - {id: block, shape: rectangle, material: wood, dimensions: {width: 40 mm, height: 60 mm}}
          - {id: bolt, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm}}
        assessments:
          - {id: a, method: %s, designed: %s, built: %s, require: {%s: 1.0}, load: {pressure: 3 kPa, span: 1 m, breadth: 0.5 m, source: test}}
        """;
    for (String method : List.of("section", "timber", "panel", "laminate")) {
      assertOpen(text.formatted(method, "beam", "bolt", "stiffness"), "is a fastening");
      assertOpen(text.formatted(method, "bolt", "bolt", "stiffness"), "is a fastening");
    }
    for (String method : List.of("panel", "laminate")) {
      assertOpen(text.formatted(method, "block", "block", "strength"), "is no stack of layers");
    }
    assertOpen(text.formatted("bolt", "beam", "beam", "strength"), "is no bolt");
    assertOpen(text.formatted("section", "beam", "beam", "toughness"), "it tells stiffness");
  }

  private static void assertOpen(String text, String why) {
    Verdict verdict = result(text).verdict();
    assertThat(verdict.outcome()).as(text).isEqualTo(Verdict.Outcome.CANNOT_TELL);
    assertThat(verdict.because()).contains(why);
  }

  @Test
  void aWeakLinkOfABoltAsProtectedPartIsNotPassed() {
    Result result =
        result(
            """
            sections:
              - {id: beam, width: 40 mm, layers: [{material: wood, thickness: 60 mm}]}
              - {id: bolt, shape: bolt, material: bolt-8-8, dimensions: {diameter: 10 mm}}
            assessments:
              - {id: a, method: section, designed: beam, built: beam, weak-link: {sacrificial: beam, protected: bolt, margin: 1.1}, load: {tip-force: 3 N, span: 1 m, source: test}}
            """);
    assertThat(result.verdict().outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
  }

  /**
   * Solid by its modulus of rupture bears 60·40·60²/6 = 1440 N·m, by its compression 40/60 of that,
   * 960; the hollow one of the same outside is judged by compression: 40·(40·60³ − 20·30³)/12/30.
   */
  @Test
  void solidTimberAgainstAMixedOrHollowPartIsToldAsJudgedUnlike() {
    Result result =
        result(
            """
            sections:
              - {id: solid, width: 40 mm, layers: [{material: wood, thickness: 60 mm}]}
              - id: hollow
                width: 40 mm
                layers:
                  - {material: wood, thickness: 15 mm}
                  - {thickness: 30 mm, strips: [{material: wood, width: 10 mm}, {void: 20 mm}, {material: wood, width: 10 mm}]}
                  - {material: wood, thickness: 15 mm}
            assessments:
              - {id: a, method: section, designed: solid, built: hollow, require: {moment: 0.5}}
            """);
    double hollow = 40 * (40 * 216_000 - 20 * 27_000) / 12.0 / 30 / 1000;
    assertThat(new Assessed(result).row(Measure.MOMENT_SAGGING).ratio().orElseThrow())
        .isCloseTo(hollow / 1440, within(1e-9));
    assertThat(result.cautions())
        .singleElement()
        .asString()
        .contains("solid is judged by its modulus of rupture")
        .contains("solid bears 960 N·m")
        .contains("built over designed is 0.937");
  }

  /** A ±45 strip pulled freely: A₁₁ − A₁₂²/A₂₂, of the cloth laid straight turned by hand. */
  @Test
  void aBiasClothPulledFreelyIsSofterThanItsA11() {
    Result result =
        result(
            """
            sections:
              - {id: bias, width: 1000 mm, layers: [{material: slant, plies: 2}]}
            assessments:
              - {id: a, method: laminate, designed: bias, built: bias, require: {stiffness: 1.0}}
            """);
    Result straight =
        result(
            """
            sections:
              - {id: along, width: 1000 mm, layers: [{material: straight, plies: 2}]}
            assessments:
              - {id: a, method: laminate, designed: along, built: along, require: {stiffness: 1.0}}
            """);
    double along = new Assessed(straight).built(Measure.STRETCH);
    double shear = new Assessed(straight).built(Measure.SHEAR_IN_PLANE);
    double coupled =
        Math.sqrt(along * along - along * new Assessed(straight).built(Measure.STRETCH_FREE));
    double pulled = (along + coupled) / 2 + shear;
    double across = (along + coupled) / 2 - shear;
    assertThat(new Assessed(result).built(Measure.STRETCH))
        .isCloseTo(pulled, within(1e-9 * pulled));
    assertThat(new Assessed(result).built(Measure.STRETCH_FREE))
        .isCloseTo(pulled - across * across / pulled, within(1e-9 * pulled))
        .isLessThan(0.8 * pulled);
  }

  @Test
  void aRatioThatJustMissesAnUpperLimitIsNotPrintedAsIfItMetIt() {
    Row row =
        new Row(
            Measure.MASS,
            Optional.of(Figure.of(1)),
            Optional.of(Figure.of(1.3004)),
            Optional.of(new Row.Limit(Row.Limit.Side.AT_MOST, 1.3)),
            List.of());
    assertThat(row.outcome()).contains(Verdict.Outcome.FAIL);
    assertThat(row.printedRatio()).contains("1.301");
  }

  @Test
  void aMeanBesideACharacteristicStrengthIsNotOfLikeWithLike() {
    String text =
        """
        ---
        materials:
          - {id: graded, kind: timber, basis: characteristic, density: 450 kg/m3, E: 11 GPa, bending-strength: 24 MPa, shear-strength: 4 MPa, source: test}
        sections:
          - {id: clear, shape: rectangle, material: wood, dimensions: {width: 40 mm, height: 60 mm}}
          - {id: sorted, shape: rectangle, material: graded, dimensions: {width: 40 mm, height: 60 mm}}
        assessments:
          - {id: a, method: timber, designed: %s, built: sorted, require: {moment: 0.1}}
        """;
    Result unsaid = result(text.formatted("clear"));
    assertThat(unsaid.verdict().outcome()).isEqualTo(Verdict.Outcome.CANNOT_TELL);
    assertThat(unsaid.verdict().because())
        .isEqualTo(
            "wood does not say what the strengths are, and others are known: write basis: mean,"
                + " characteristic or minimum");
    assertThat(unsaid.cautions()).containsExactly("what the strengths of wood are is not said");
    assertThat(result(text.formatted("sorted")).cautions())
        .containsExactly(
            "the section as built is the one as designed, sorted: nothing is compared");
    assertThat(Bases.of(result(text.formatted("sorted")).inputs()).words())
        .startsWith("characteristic or least values are compared with their like");
  }
}
