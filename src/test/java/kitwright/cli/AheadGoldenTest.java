package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import kitwright.Golden;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code open} and {@code ahead} print of a small build, on Monday, 2 March 2026. */
class AheadGoldenTest {
  private static final String LEDGER =
      """
      build: {name: Tern, currency: EUR, started: 2026-01-05, launch: 2026-05-02, horizon: 4 w}
      parties:
        - {id: kit-maker, name: Redshank Kit Boats, role: supplier, lead: 3 w}
        - {id: office, name: A. Osterlund, role: designer, may-sign: [structural, systems, finish]}
        - {id: nora, name: Nora, role: builder}
        - {id: ivo, name: Ivo, role: helper}
        - {id: pell, name: Pell, role: lender}
      materials:
        - {id: e-glass, kind: fibre, isotropic: yes, density: 2560 kg/m3, source: test}
        - {id: epoxy, what: laminating epoxy, kind: resin, density: 1120 kg/m3, mix-ratio: 0.25, hardener: slow, cure: 20 h, pot-life: 30 min, at-temperature: 20 C, source: test}
        - {id: slow, what: slow hardener, kind: resin, density: 970 kg/m3, source: test}
        - {id: woven, what: woven glass 400, kind: cloth, fibre: e-glass, resin: epoxy, areal-weight: 400 g/m2, fibre-fraction: 0.5, roll-width: 1 m, overlap: 200 mm, source: test}
      sections: [{id: skin, layers: [{material: woven, plies: 2}]}]
      kit:
        - {id: cloth, what: woven glass, qty: 40 m2, material: woven}
        - {id: resin, what: laminating epoxy, qty: 12 kg, material: epoxy}
        - {id: hardener, what: slow hardener, qty: 3 kg, material: slow}
        - {id: ply, what: plywood 9 mm, qty: 4 sheet}
        - {id: cleat, what: bronze cleat, qty: 4}
        - {id: sail, what: mainsail, qty: 1}
      deliveries:
        - {id: d1, received: 2026-02-10, from: kit-maker, counted: [{item: cloth, qty: 40 m2}, {item: resin, qty: 12 kg}, {item: hardener, qty: 1 kg}, {item: ply, qty: 3 sheet}]}
        - {id: d2, expected: 2026-04-14, from: kit-maker, note: N 2, packed: [{item: sail, qty: 1}]}
      shortages:
        - {id: s-ply, item: ply, qty: 1 sheet, found: 2026-02-11, cause: damaged}
      claims:
        - {id: c-ply, against: kit-maker, shortages: [s-ply], sent: 2026-02-12, reply-by: 2026-02-26, remedy: replacement}
      substitutions:
        - {id: thin-panel, instead-of: {what: panel of 12 mm, qty: 1}, grade: finish, why: 9 mm is here, hold: bond}
      borrowed:
        - {id: saw, tool: band saw, from: pell, on: 2026-02-01, due: 2026-03-04, condition: fine}
      forecast:
        - {day: 2026-03-02, rain: 2 mm, low: 1 C, high: 6 C, humidity: 90 %}
        - {day: 2026-03-03, rain: 0 mm, low: 3 C, high: 9 C, humidity: 60 %}
        - {day: 2026-03-04, rain: 0 mm, low: 4 C, high: 10 C, humidity: 60 %}
        - {day: 2026-03-05, rain: 5 mm, low: 4 C, high: 8 C, humidity: 90 %}
      tasks:
        - {id: bond, what: Bond the bulkheads, phase: hull, takes: [3 d, 4 d, 7 d], place: indoors, tools: [saw], uses: [{item: ply, qty: 4 sheet}]}
        - {id: sheathe, what: Sheathe the hull, phase: hull, takes: [2 d, 3 d, 5 d], after: [bond], wait: 24 h, place: indoors, weather: {above: 12 C}, who: [nora, ivo], uses: [{section: skin, area: 10 m2, waste: 10 %}]}
        - {id: oars, what: Shape the oars, phase: spars, takes: 2 d, place: indoors, who: [ivo]}
        - {id: oil, what: Oil the oars, phase: spars, takes: 1 d, place: outdoors, weather: {dry: 2 d}, after: [oars]}
        - {id: cleats, what: Fit the cleats, phase: rig, takes: 1 d, place: indoors, uses: [{item: cleat, qty: 4}]}
        - {id: rig, what: Step the mast and bend the sail, phase: rig, takes: 2 d, after: [sheathe, cleats, oil], place: outdoors, weather: {dry: 1 d}, uses: [{item: sail, qty: 1}]}
      """;

  @TempDir private Path ledger;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(ledger.resolve("all.yaml"), LEDGER);
  }

  private String out(String... words) {
    Run run = Run.in(ledger, words);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    return run.out();
  }

  @Test
  void whatIsOpen() {
    Golden.check("cli/open.txt", out("open"));
  }

  @Test
  void whatIsOpenForOtherPrograms() {
    Golden.check("cli/open.json", out("open", "--format", "json"));
  }

  @Test
  void whatLiesAhead() {
    Golden.check("cli/ahead.txt", out("ahead"));
  }

  @Test
  void whatLiesAheadIfThingsAreLate() {
    Golden.check(
        "cli/ahead-late.txt",
        out("ahead", "--weeks", "1", "--late", "d2=14d", "--late", "oars=3d", "--range"));
  }

  @Test
  void whatLiesAheadForOtherPrograms() {
    Golden.check("cli/ahead.json", out("ahead", "--format", "json", "--late", "s-ply=7d"));
  }

  @Test
  void thePicture() {
    Run run = Run.in(ledger, "ahead", "--picture", "work.svg");
    assertThat(run.code()).isZero();
    try {
      Golden.check("cli/ahead.svg", Files.readString(ledger.resolve("work.svg")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void aPictureOfSomebodyElseIsNotReplaced() throws IOException {
    Files.writeString(ledger.resolve("work.svg"), "<svg/>");
    Run run = Run.in(ledger, "ahead", "--picture", "work.svg");
    assertThat(run.code()).isEqualTo(2);
    assertThat(ledger.resolve("work.svg")).hasContent("<svg/>");
  }

  @Test
  void anUnknownIdIsRefusedWithTheNearest() {
    Run run = Run.in(ledger, "ahead", "--late", "sheath=3d");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("“sheath”").contains("Did you mean “sheathe”?");
    assertThat(Run.in(ledger, "ahead", "--late", "d2=soon").code()).isEqualTo(2);
    assertThat(Run.in(ledger, "ahead", "--late", "d2").code()).isEqualTo(2);
    assertThat(Run.in(ledger, "ahead", "--weeks", "99999").code()).isEqualTo(2);
  }

  @Test
  void absurdTimesAreShownAndNeverBreakIt() throws IOException {
    Files.writeString(
        ledger.resolve("all.yaml"),
        """
        build: {name: Tern, currency: EUR, started: 2026-01-05}
        tasks:
          - {id: a, what: A, takes: 999999999999 d, wait: 999999999999 w}
          - {id: b, what: B, takes: 999999999999 w, after: [{task: a, lag: 999999999999 d}]}
          - {id: c, what: C, takes: 1 d, after: [c, d]}
          - {id: d, what: D, takes: 1 d, after: [c, b]}
        """);
    for (String format : new String[] {"text", "json"}) {
      out("open", "--format", format);
      out("ahead", "--format", format, "--late", "b=999999999999w", "--range");
    }
    assertThat(Run.in(ledger, "ahead", "--picture", "far.svg").code()).isZero();
    assertThat(Run.in(ledger, "check", "--all").out())
        .contains("task-cycle", "duration-beyond-reason");
  }

  /** What nobody can read is not finished for that. */
  @Test
  void workThatCannotBeReadIsNotFinished() throws IOException {
    Files.writeString(
        ledger.resolve("all.yaml"),
        """
        build: {name: Tern, currency: EUR, started: 2026-01-05}
        tasks: [{id: plane, what: Plane, takes: soon}]
        """);
    Run run = Run.in(ledger, "ahead");
    assertThat(run.out()).contains("- task plane cannot be read").doesNotContain("finished");
    Files.writeString(
        ledger.resolve("all.yaml"),
        """
        build: {name: Tern, currency: EUR, started: 2026-01-05}
        tasks:
        \t- {id: plane, what: Plane, takes: 1 d}
        """);
    assertThat(Run.in(ledger, "ahead").out())
        .contains("cannot be read, and may hold tasks")
        .doesNotContain("finished");
  }

  @Test
  void anEmptyBuildHasNothingAhead() throws IOException {
    Files.writeString(
        ledger.resolve("all.yaml"), "build: {name: Tern, currency: EUR, started: 2026-01-05}\n");
    assertThat(out("ahead")).contains("Every task is finished");
    assertThat(out("open")).contains("0 open matters");
    assertThat(out("ahead", "--range")).contains("runs");
  }
}
