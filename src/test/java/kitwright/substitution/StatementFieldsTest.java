package kitwright.substitution;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Assessment;
import kitwright.ledger.Evidence;
import kitwright.ledger.KitItem;
import kitwright.ledger.KnockDown;
import kitwright.ledger.Ledger;
import kitwright.ledger.Load;
import kitwright.ledger.Material;
import kitwright.ledger.MaterialProperty;
import kitwright.ledger.Party;
import kitwright.ledger.Section;
import kitwright.ledger.Spend;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.ledger.WeakLink;
import kitwright.value.Word;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The statement field by field: whatever a record may say stands in it, or is left out on purpose.
 * A new component of a record fails here until somebody has decided.
 */
class StatementFieldsTest {
  private static final String RECORDS =
      """
      parties:
        - {id: office, name: A. Osterlund, role: designer, may-sign: [structural]}
        - {id: nora, name: Nora, role: builder}
        - {id: pell, name: Pell, role: lender}
      kit:
        - {id: stave, what: spruce stave, qty: 14 m, drawing: D-31, material: spruce, size: 900 x 90 x 24 mm, grade: systems}
        - {id: stave-2, what: another stave, qty: 14 m}
      stock:
        - {id: larch-a, what: larch board, size: 2450 x 110 x 32 mm, material: larch, grain: along}
        - {id: larch-b, what: larch board, size: 2450 x 110 x 32 mm, material: larch, grain: along}
      budget: [{line: spars, title: Spars, amount: 900}]
      spending:
        - {id: buy, on: 2026-01-20, line: spars, what: glue tin, amount: 40, state: paid, qty: 1 kg, item: stave}
        - {id: buy-2, on: 2026-01-20, line: spars, what: hose, amount: 40, state: paid, qty: 2 kg, material: larch}
      tasks:
        - {id: close, what: Close it, takes: 1 d, grade: systems}
        - {id: open, what: Open it, takes: 1 d}
      sections:
        - {id: drawn, what: a box, width: 96 mm, grade: systems, glue: glue, layers: [{material: spruce, thickness: 24 mm, grain: along}, {thickness: 48 mm, strips: [{material: spruce, grain: along, width: 24 mm}, {void: 48 mm}]}]}
        - {id: built, what: a foil, shape: foil, material: larch, dimensions: {chord: 260 mm}, skins: [{material: cloth, plies: 2, angle: 45 deg}], members: [{what: spine, material: larch, width: 28 mm, at: 78 mm, height: 20 mm}]}
        - {id: pin, what: a pin, shape: polygon, material: spruce, outline: [{y: 0 mm, z: 0 mm}, {y: 10 mm, z: 0 mm}, {y: 0 mm, z: 10 mm, wall: 3 mm}]}
      materials:
        - {id: larch, what: larch, kind: timber, E: 12 GPa, source: a book, basis: mean, unconfirmed: [E]}
        - {id: spruce, what: spruce, kind: timber, E: 11 GPa, source: a book}
        - {id: glue, what: resin glue, kind: glue, bond-strength: 8 MPa, source: a sheet}
        - {id: cloth, what: cloth, kind: cloth, fibre: glass, resin: epoxy, weave: woven, areal-weight: 290 g/m2, angles: [0, 90], source: a sheet}
        - {id: glass, what: glass, kind: fibre, E: 73 GPa, isotropic: yes, source: a book}
        - {id: epoxy, what: epoxy, kind: resin, E: 3 GPa, hardener: hard, source: a sheet}
        - {id: hard, what: hardener, kind: resin, density: 970 kg/m3, source: a sheet}
        - {id: plate, what: plate, kind: metal, metal: brass, density: 8400 kg/m3, source: a book}
        - {id: ply, what: ply, kind: plywood, wood: spruce, density: 440 kg/m3, invented: yes, source: a book}
      shortages:
        - {id: s1, item: stave, qty: 4 m, found: 2026-01-22, cause: not-packed}
      assessments:
        - id: spar
          method: section
          on: 2026-02-05
          by: office
          designed: drawn
          built: built
          require: {stiffness: 1.0, moment: 0.9}
          less-because: {moment: it breaks first}
          not-structural: {by: office, on: 2026-02-06, why: a toy}
          allow: {mass: 1.3}
          weak-link: {sacrificial: built, protected: pin, margin: 1.1, breaks-at: 60 mm, chance: 0.05}
          load: {shape: elliptic, support: cantilever, force: 700 N, tip-force: 900 N, pressure: 5 kPa, span: 1.1 m, breadth: 480 mm, speed: 6 kn, area: 0.2 m2, lift: 1.1, density: 1025 kg/m3, thrust: 300 N, ends: pinned, torque: 40 Nm, held-sideways: 400 mm, self-weight: yes, factor: 3, source: drawing D-31}
          numbers: {stiffness: 1.2}
          sources: [the yard]
          factors: {moisture: 0.92}
          knock-downs: [{for: duration, value: 0.9, on: both, layer: 1, source: a code}, {for: slope-of-grain, slope: 0.1, on: built, source: a ruler}]
          against: [plate, ply]
          remark: as it lies
          evidence: [{file: there/sum.pdf, says: the sum}]
      substitutions:
        - id: sub
          for: s1
          instead-of: {item: stave, what: staves, qty: 10 m}
          use: [{stock: larch-a, qty: 4 each}, {item: stave-2, qty: 1 m}, {spend: buy, qty: 1 kg}, {spend: buy-2, qty: 1 kg}]
          grade: structural
          why: larch is here
          proposed: {by: nora, on: 2026-01-30}
          assessment: spar
          hold: close
          sign-offs: [{by: office, on: 2026-02-12, conditions: [{section: built, at-least: {plies: 2}, text: keep it dry}], evidence: [there/letter.txt]}]
      """;

  /** What stands in the statement: of which record, what is written, and what else it might be. */
  private static final String COVERED =
      """
      Substitution.id | id: sub\\n | id: sup\\n
      Substitution.shortage | for: s1 | for: s2
      Substitution.insteadOf InsteadOf.item | instead-of: {item: stave, | instead-of: {item: stave-2,
      InsteadOf.what | what: staves | what: boards
      InsteadOf.qty | qty: 10 m | qty: 11 m
      Substitution.use Take.stock | stock: larch-a, qty | stock: larch-b, qty
      Take.item | item: stave-2, qty | item: stave, qty
      Take.spend | spend: buy, | spend: buy-3,
      Take.qty | qty: 4 each | qty: 3 each
      Substitution.grade | grade: structural | grade: systems
      Substitution.why | why: larch is here | why: larch is near
      Substitution.proposed Proposal.by | proposed: {by: nora | proposed: {by: pell
      Proposal.on | on: 2026-01-30 | on: 2026-01-31
      Substitution.assessment | assessment: spar | assessment: none
      Substitution.hold | hold: close | hold: open
      Substitution.signOffs SignOff.by | [{by: office, on: 2026-02-12 | [{by: nora, on: 2026-02-12
      SignOff.conditions Condition.section | {section: built, at-least | {section: drawn, at-least
      Condition.atLeast | plies: 2} | plies: 3}
      Condition.text | keep it dry | keep it wet
      KitItem.id | id: stave, | id: stave-9,
      KitItem.what | what: spruce stave | what: fir stave
      KitItem.drawing | drawing: D-31, | drawing: D-32,
      KitItem.material | material: spruce, size | material: larch, size
      KitItem.size | 900 x 90 x 24 mm | 900 x 90 x 22 mm
      KitItem.grade | 24 mm, grade: systems | 24 mm, grade: finish
      Stock.id | id: larch-a | id: larch-c
      Stock.what | id: larch-a, what: larch board | id: larch-a, what: knotty board
      Stock.size | larch board, size: 2450 x 110 x 32 mm | larch board, size: 2450 x 110 x 30 mm
      Stock.material | 32 mm, material: larch | 32 mm, material: spruce
      Stock.grain | grain: along}\\n  - {id: larch-b | grain: across}\\n  - {id: larch-b
      Spend.id | id: buy, | id: buy-9,
      Spend.what | what: glue tin | what: paint tin
      Spend.qty | state: paid, qty: 1 kg | state: paid, qty: 3 kg
      Spend.item | item: stave}\\n  - {id: buy-2 | item: stave-2}\\n  - {id: buy-2
      Spend.material | qty: 2 kg, material: larch | qty: 2 kg, material: spruce
      Task.id | id: close, | id: shut,
      Task.what | what: Close it | what: Sand it
      Task.grade | takes: 1 d, grade: systems | takes: 1 d, grade: finish
      Party.id | [{by: office | [{by: nora
      Party.name | name: A. Osterlund | name: B. Osterlund
      Party.role | role: designer | role: engineer
      Assessment.id | id: spar\\n | id: boom\\n
      Assessment.method | method: section | method: timber
      Assessment.on | on: 2026-02-05 | on: 2026-02-04
      Assessment.designed | designed: drawn | designed: pin
      Assessment.built | built: built | built: pin
      Assessment.require | stiffness: 1.0, | stiffness: 1.1,
      Assessment.lessBecause | it breaks first | it may break
      Assessment.notStructural NotStructural.by | not-structural: {by: office | not-structural: {by: nora
      NotStructural.on | on: 2026-02-06 | on: 2026-02-07
      NotStructural.why | why: a toy | why: a model
      Assessment.allow | mass: 1.3 | mass: 1.4
      Assessment.weakLink WeakLink.sacrificial | sacrificial: built | sacrificial: drawn
      WeakLink.protectedPart | protected: pin | protected: drawn
      WeakLink.margin | margin: 1.1 | margin: 1.0
      WeakLink.breaksAt | breaks-at: 60 mm | breaks-at: 70 mm
      WeakLink.chance | chance: 0.05 | chance: 0.10
      WeakLink.by | margin: 1.1 | by: shear, margin: 1.1
      WeakLink.rating | margin: 1.1 | rating: {load: 9 kN}, margin: 1.1
      Rating.load | margin: 1.1 | rating: {load: 8 kN}, margin: 1.1
      Rating.basis | margin: 1.1 | rating: {load: 8 kN, basis: minimum}, margin: 1.1
      Rating.scatter | margin: 1.1 | rating: {load: 8 kN, scatter: 5 %}, margin: 1.1
      Rating.source | margin: 1.1 | rating: {load: 8 kN, source: sheet}, margin: 1.1
      Assessment.load Load.shape | shape: elliptic | shape: uniform
      Load.support | support: cantilever | support: simple
      Load.force | {shape: elliptic, support: cantilever, force: 700 N | {shape: elliptic, support: cantilever, force: 600 N
      Load.tipForce | tip-force: 900 N | tip-force: 800 N
      Load.pressure | pressure: 5 kPa | pressure: 4 kPa
      Load.span | span: 1.1 m | span: 1.0 m
      Load.overhang | breadth: 480 mm | overhang: 470 mm, breadth: 480 mm
      Load.breadth | breadth: 480 mm | breadth: 470 mm
      Load.speed | speed: 6 kn | speed: 5 kn
      Load.area | area: 0.2 m2 | area: 0.1 m2
      Load.lift | lift: 1.1 | lift: 1.0
      Load.density | density: 1025 kg/m3 | density: 1000 kg/m3
      Load.thrust | thrust: 300 N | thrust: 200 N
      Load.ends | ends: pinned | ends: ENDS
      Load.torque | torque: 40 Nm | torque: 30 Nm
      Load.heldSideways | held-sideways: 400 mm | held-sideways: 300 mm
      Load.bearing | held-sideways: 400 mm | held-sideways: 400 mm, bearing: 40 mm
      Load.selfWeight | self-weight: yes | self-weight: no
      Load.factor | factor: 3, source | factor: 2, source
      Load.source | source: drawing D-31} | source: a guess}
      Assessment.by | by: office\\n    designed | by: nora\\n    designed
      Assessment.numbers | stiffness: 1.2 | stiffness: 1.3
      Assessment.sources | [the yard] | [the shop]
      Assessment.factors | moisture: 0.92 | moisture: 0.95
      Assessment.knockDowns KnockDown.on | for: duration | for: moisture
      KnockDown.value | value: 0.9, | value: 0.8,
      KnockDown.slope | slope: 0.1 | slope: 0.05
      KnockDown.lasts | slope: 0.1 | slope: 0.1, lasts: short
      KnockDown.serviceClass | slope: 0.1 | slope: 0.1, service-class: 3
      KnockDown.side | on: both | on: built
      KnockDown.layer | layer: 1 | layer: 2
      KnockDown.source | source: a code | source: a norm
      Assessment.against | against: [plate, ply] | against: [plate]
      Assessment.remark | as it lies | as it hangs
      Assessment.evidence Evidence.says | says: the sum | says: a sum
      Section.id | id: drawn, | id: drawing,
      Section.what | what: a box | what: a case
      Section.width | width: 96 mm | width: 95 mm
      Section.layers Layer.material | {material: spruce, thickness | {material: larch, thickness
      Layer.thickness | thickness: 24 mm | thickness: 25 mm
      Layer.grain | 24 mm, grain: along}, {thickness | 24 mm, grain: across}, {thickness
      Layer.plies | plies: 2, angle | plies: 3, angle
      Layer.angle | angle: 45 deg | angle: 0 deg
      Layer.strips Strip.material | strips: [{material: spruce | strips: [{material: larch
      Strip.grain | grain: along, width: 24 mm | grain: across, width: 24 mm
      Strip.width | grain: along, width: 24 mm | grain: along, width: 23 mm
      Strip.hollow | {void: 48 mm} | {width: 48 mm}
      Section.shape | shape: foil | shape: round
      Section.material | shape: foil, material: larch | shape: foil, material: spruce
      Section.dimensions | chord: 260 mm | chord: 250 mm
      Section.skins | skins: [{material: cloth | skins: [{material: ply
      Section.members Member.what | what: spine | what: web
      Member.material | what: spine, material: larch | what: spine, material: spruce
      Member.width | width: 28 mm | width: 27 mm
      Member.at | at: 78 mm | at: 79 mm
      Member.height | height: 20 mm | height: 21 mm
      Section.outline Corner.y | y: 10 mm | y: 11 mm
      Corner.z | z: 10 mm | z: 11 mm
      Corner.wall | wall: 3 mm | wall: 4 mm
      Section.glue | glue: glue | glue: epoxy
      Section.grade | 96 mm, grade: systems | 96 mm, grade: finish
      Section.tapersTo | 96 mm, grade: systems | 96 mm, tapers-to: pin, grade: systems
      Section.notch Notch.depth | 96 mm, grade: systems | 96 mm, notch: {depth: 9 mm}, grade: systems
      Notch.corner | 96 mm, grade: systems | 96 mm, notch: {depth: 9 mm, corner: 9 mm}, grade: systems
      Notch.slope | 96 mm, grade: systems | 96 mm, notch: {depth: 9 mm, slope: 4}, grade: systems
      Notch.opposite | 96 mm, grade: systems | 96 mm, notch: {depth: 9 mm, opposite: yes}, grade: systems
      Material.id | id: larch, | id: larix,
      Material.what | what: larch, kind | what: pine, kind
      Material.sort | what: larch, kind: timber | what: larch, kind: other
      Material.fibre | fibre: glass | fibre: epoxy
      Material.resin | resin: epoxy | resin: hard
      Material.hardener | hardener: hard | hardener: glass
      Material.wood | wood: spruce | wood: larch
      Material.isotropic | isotropic: yes | isotropic: no
      Material.invented | invented: yes | invented: no
      Material.weave | weave: woven | weave: biaxial
      Material.metal | metal: brass | metal: copper
      Material.angles | angles: [0, 90] | angles: [0, 45]
      Material.properties | E: 12 GPa | E: 13 GPa
      Material.source | E: 12 GPa, source: a book | E: 12 GPa, source: hearsay
      Material.basis | basis: mean | basis: minimum
      Material.unconfirmed | unconfirmed: [E] | unconfirmed: [density]
      """;

  /** What is left out, and why. */
  private static final Map<String, String> LEFT_OUT =
      Map.ofEntries(
          Map.entry("Substitution.withdrawn", "ends it, changes nothing of it"),
          Map.entry("SignOff.on", "files cannot prove a day"),
          Map.entry("SignOff.covers", "is the digits themselves"),
          Map.entry("SignOff.saw", "results stand below the sealed part"),
          Map.entry("SignOff.statement", "is the text itself"),
          Map.entry("SignOff.signature", "is made over the text"),
          Map.entry("SignOff.evidence", "the letter quotes the digits; its hash is judged"),
          Map.entry("KitItem.qty", "how much was promised"),
          Map.entry("KitItem.crate", "where it is packed"),
          Map.entry("KitItem.price", "money"),
          Map.entry("KitItem.from", "who sends it"),
          Map.entry("KitItem.lead", "time"),
          Map.entry("KitItem.allow", "what may be read in public"),
          Map.entry("Stock.qty", "how much lies there"),
          Map.entry("Stock.pieces", "how much lies there"),
          Map.entry("Stock.keepFor", "whose it is"),
          Map.entry("Stock.worth", "money"),
          Map.entry("Stock.flaws", "where not to cut; a condition says what may be built in"),
          Map.entry("Stock.since", "time"),
          Map.entry("Stock.bought", "money"),
          Map.entry("Task.phase", "order of the plan"),
          Map.entry("Task.takes", "time"),
          Map.entry("Task.after", "order of the plan"),
          Map.entry("Task.unpacks", "order of the plan"),
          Map.entry("Task.uses", "material of the plan"),
          Map.entry("Task.tools", "the plan"),
          Map.entry("Task.hazards", "what can hurt whoever works; no strength hangs on it"),
          Map.entry("Task.who", "who works; the signer is judged by it"),
          Map.entry("Task.place", "the plan"),
          Map.entry("Task.weather", "the plan"),
          Map.entry("Task.cure", "time"),
          Map.entry("Task.budget", "money"),
          Map.entry("Task.started", "progress"),
          Map.entry("Task.finished", "progress"),
          Map.entry("Task.progress", "progress"),
          Map.entry("Task.withdrawn", "progress"),
          Map.entry("Task.publicly", "what may be read in public"),
          Map.entry("Task.allow", "what may be read in public"),
          Map.entry("Party.maySign", "a right is judged, and may be renewed"),
          Map.entry("Party.signingKey", "a key is checked"),
          Map.entry("Party.contact", "where somebody is reached"),
          Map.entry("Party.notice", "claims"),
          Map.entry("Party.lead", "time"),
          Map.entry("Party.off", "time"),
          Map.entry("Party.isPublic", "what may be read in public"),
          Map.entry("Assessment.menu", "what a remedy may add is not built"),
          Map.entry("Material.price", "money"),
          Map.entry("Evidence.file", "where it lies; its hash as found is in it"),
          Map.entry("Evidence.sha256", "the hash as found is in it"),
          Map.entry("Evidence.audience", "what may be read in public"),
          Map.entry("Evidence.allow", "what may be read in public"));

  /** Of spending only what was bought counts; the rest is money. */
  private static final Set<String> OF_SPENDING = Set.of("id", "what", "qty", "item", "material");

  private static final List<Class<?>> RECORD_TYPES =
      List.of(
          Substitution.class,
          Substitution.InsteadOf.class,
          Substitution.Take.class,
          Substitution.Proposal.class,
          Substitution.SignOff.class,
          Substitution.Condition.class,
          KitItem.class,
          Stock.class,
          Task.class,
          Party.class,
          Assessment.class,
          Assessment.NotStructural.class,
          WeakLink.class,
          WeakLink.Rating.class,
          Load.class,
          KnockDown.class,
          Section.class,
          Section.Layer.class,
          Section.Notch.class,
          Section.Strip.class,
          Section.Member.class,
          Section.Corner.class,
          Material.class,
          Evidence.class);

  private static String statement(String yaml) {
    Ledger ledger = Sample.read(yaml, new Findings()).orElseThrow();
    Substitution substitution = ledger.substitutions().get(0);
    return Statement.of(substitution, substitution.signOffs().get(0), ledger).text();
  }

  @TestFactory
  Stream<DynamicTest> everyChangeOfAFieldShows() {
    String plain = statement(records());
    return COVERED
        .lines()
        .map(line -> line.split(" \\| "))
        .map(
            row ->
                DynamicTest.dynamicTest(
                    row[0],
                    () -> {
                      String from = row[1].strip().replace("\\n", "\n");
                      String to = row[2].strip().replace("\\n", "\n").replace("ENDS", otherEnds());
                      assertThat(records()).contains(from);
                      assertThat(statement(records().replace(from, to))).isNotEqualTo(plain);
                    }));
  }

  private static String records() {
    return RECORDS.replace("ends: pinned", "ends: " + word(Load.Ends.PINNED));
  }

  private static String otherEnds() {
    return word(Load.Ends.FIXED);
  }

  private static String word(Enum<?> constant) {
    return Word.key(constant);
  }

  @Test
  void theRecordsRead() {
    Findings faults = new Findings();
    Sample.read(records(), faults);
    assertThat(faults.inOrder()).extracting(finding -> finding.what()).isEmpty();
  }

  @Test
  void everyFieldIsCoveredOrLeftOutOnPurpose() {
    Set<String> decided = new TreeSet<>(LEFT_OUT.keySet());
    COVERED
        .lines()
        .map(line -> line.split(" \\| ")[0])
        .forEach(names -> decided.addAll(List.of(names.split(" "))));
    decided.removeIf(name -> name.startsWith("Spend."));
    assertThat(decided)
        .containsExactlyInAnyOrderElementsOf(
            RECORD_TYPES.stream()
                .flatMap(
                    type ->
                        Arrays.stream(type.getRecordComponents()).map(StatementFieldsTest::name))
                .filter(name -> !name.endsWith(".at") || name.equals("Member.at"))
                .filter(name -> !name.equals("Member.place"))
                .collect(Collectors.toSet()));
    assertThat(Arrays.stream(Spend.class.getRecordComponents()).map(RecordComponent::getName))
        .containsAll(OF_SPENDING);
  }

  private static String name(RecordComponent component) {
    return component.getDeclaringRecord().getSimpleName() + "." + component.getName();
  }

  @TestFactory
  Stream<DynamicTest> everyPropertyOfAMaterialShowsButThoseOfTheWorkshop() {
    Set<MaterialProperty> workshop =
        Set.of(MaterialProperty.ROLL_WIDTH, MaterialProperty.OVERLAP, MaterialProperty.POT_LIFE);
    return Arrays.stream(MaterialProperty.values())
        .map(
            property ->
                DynamicTest.dynamicTest(
                    property.key(),
                    () ->
                        assertThat(
                                statement(with(property, "2"))
                                    .equals(statement(with(property, "1"))))
                            .isEqualTo(workshop.contains(property))));
  }

  private static String with(MaterialProperty property, String amount) {
    String unit = kitwright.value.Unit.symbolsOf(property.dimension()).split("[, ]")[0];
    String value = unit.equals("a") || unit.equals("%") ? "0." + amount : amount + " " + unit;
    return records()
        .replace(
            "{id: hard, what: hardener, kind: resin, density: 970 kg/m3",
            "{id: hard, what: hardener, kind: resin, " + property.key() + ": " + value);
  }
}
