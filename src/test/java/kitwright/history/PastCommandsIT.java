package kitwright.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kitwright.OutsideProgram;
import kitwright.cli.Run;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the commands tell of the past, in a repository made by git itself. */
class PastCommandsIT {
  private static final String DIGITS = "81644cb3".repeat(8);
  private static final String START =
      """
      build: {name: Sample, currency: EUR, started: 2026-01-05, launch: 2026-09-26}
      parties:
        - {id: maker, name: Redshank Kit Boats, role: supplier}
        - {id: office, name: A. Osterlund, role: designer, may-sign: [finish]}
      budget: [{line: kit, title: The kit, amount: 1000 EUR}]
      kit: [{id: rail, what: teak rail, qty: 4 m, from: maker}]
      tasks: [{id: rails, what: Fit the rails, takes: 2 d}]
      """;
  private static final String SUBSTITUTION =
      """
      substitutions:
        - id: sub-rail
          instead-of: {item: rail, qty: 4 m}
          grade: finish
          why: oak is at hand
          hold: rails
          sign-offs:
            - {by: office, on: %s, covers: %s}
      """;

  @TempDir Path temp;
  private GitFolder folder;

  @BeforeEach
  void aRepository() throws Exception {
    OutsideProgram.needed("git", "git");
    folder = GitFolder.made(temp.resolve("boat"));
    folder.write("build.yaml", START).commit("Nora", "2026-03-02", "Begin");
  }

  private Run run(String... words) {
    String[] all = new String[words.length + 2];
    System.arraycopy(words, 0, all, 0, words.length);
    all[words.length] = "--today";
    all[words.length + 1] = "2026-03-29";
    return Run.in(folder.top(), all);
  }

  private void spend(String day, String amount) throws Exception {
    folder.write(
        "spend-" + day + ".yaml",
        """
        spending: [{id: s-%s, on: %s, what: bolts, to: maker, amount: %s, line: kit, state: paid}]
        """
            .formatted(day, day, amount));
    folder.commit("Eskil", day, "Pay");
  }

  @Test
  void sinceTellsMoneyByLineAndWhoseHandItWas() throws Exception {
    spend("2026-03-09", "46.20 EUR");
    Run run = run("since", "2026-03-02");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("The kit, spent", "0.00", "46.20", "spend (s-2026-03-09)", "Eskil");
    assertThat(run("since", "HEAD").out()).doesNotContain("Every record");
  }

  @Test
  void whatNobodyTouchedIsToldToFollowAndARecordTellsWhichOfItsKeysChanged() throws Exception {
    spend("2026-03-09", "46.20 EUR");
    folder.write(
        "spend-2026-03-09.yaml",
        "spending: [{id: s-2026-03-09, on: 2026-03-09, what: bolts, to: maker, amount: 50 EUR,"
            + " line: kit, state: paid}]");
    List<String> lines =
        run("since", "HEAD")
            .out()
            .lines()
            .map(line -> line.replaceAll("[\\s\u00a0]+", " "))
            .toList();
    assertThat(lines)
        .contains(
            " The kit, spent 46.20 EUR 50.00 EUR follows",
            " spend (s-2026-03-09) there changed: amount not committed")
        .anyMatch(line -> line.startsWith("the change follows from other records"));
  }

  @Test
  void whatCouldNotBeReadThenIsNotToldAsNewWithoutAWord() throws Exception {
    folder.write("tasks.yaml", "tasks: [{id: sole, what: Lay the sole, takes: 1 dayy}]");
    folder.commit("Nora", "2026-03-09", "A slip");
    folder.write("tasks.yaml", "tasks: [{id: sole, what: Lay the sole, takes: 1 d}]");
    assertThat(run("since", "HEAD").out().replaceAll("[\\s\u00a0]+", " "))
        .contains(
            "1 fault stood in the ledger’s files then: what could not be read is told as new.",
            "task (sole) cannot be read new");
  }

  @Test
  void whatCannotBeReadNowIsNotToldAsGoneNorItsMoneyAsASum() throws Exception {
    spend("2026-03-09", "46.20 EUR");
    folder.write(
        "spend-2026-03-09.yaml",
        "spending: [{id: s-2026-03-09, on: 2026-03-09, what: bolts, amount: x, line: kit, state:"
            + " paid}]");
    assertThat(run("since", "HEAD").out().replaceAll("[\\s\u00a0]+", " "))
        .contains(
            "spend (s-2026-03-09) there cannot be read",
            "The kit, spent 46.20 EUR cannot be told whole");
  }

  @Test
  void theEndThatMovedIsTheEndThatTheLookAheadTells() throws Exception {
    folder.write(
        "tasks.yaml",
        """
        tasks: [{id: paint, what: Paint, takes: 1 d, place: outdoors, weather: {above: 8 C}}]
        forecast:
          - {day: 2026-03-29, rain: 0 mm, low: 2 C, high: 4 C}
          - {day: 2026-03-30, rain: 0 mm, low: 2 C, high: 4 C}
          - {day: 2026-03-31, rain: 0 mm, low: 9 C, high: 14 C}
        """);
    assertThat(run("ahead").out().replaceAll("[\\s\u00a0]+", " "))
        .contains("With the weather as well, by the forecast", "Wed 1 April 2026");
    assertThat(run("since", "2026-03-02").out().replaceAll("[\\s\u00a0]+", " "))
        .contains("The plan ends 2026-03-03 2026-04-01");
    folder.commit("Nora", "2026-03-29", "A task");
    assertThat(run("history", "end").out().replaceAll("[\\s\u00a0]+", " "))
        .contains("2026-03-29 2026-04-01");
  }

  @Test
  void aFigureIsNotToldWhereWhatItCountsCannotBeRead() throws Exception {
    folder.write("short.yaml", "shortages: [{id: short, item: rail, qty: x, found: 2026-03-09}]");
    folder.commit("Nora", "2026-03-09", "Short");
    assertThat(run("history", "missing").out().replaceAll("[\\s\u00a0]+", " "))
        .contains("On 1 day it could not be told");
  }

  @Test
  void aKeyOfAGroupIsToldWithItsGroup() throws Exception {
    folder.write("sub.yaml", SUBSTITUTION.formatted("2026-03-08", DIGITS));
    folder.commit("Nora", "2026-03-09", "Signed");
    folder.write("sub.yaml", SUBSTITUTION.formatted("2026-03-09", DIGITS).replace("4 m", "3 m"));
    assertThat(run("since", "HEAD", "--format", "json").out())
        .contains("instead-of → qty", "sign-offs → on");
  }

  @Test
  void sinceTellsTheSameAsJson() throws Exception {
    spend("2026-03-09", "46.20 EUR");
    assertThat(run("since", "2026-03-02", "--format", "json").out())
        .contains("\"money\"", "46.20", "\"by\"");
  }

  @Test
  void historyTellsEachChangeOfAFigureOnce() throws Exception {
    spend("2026-03-09", "46.20 EUR");
    folder.write("notes.txt", "nothing of the ledger").commit("Nora", "2026-03-10", "Notes");
    spend("2026-03-16", "3.80 EUR");
    Run run = run("history", "spent");
    assertThat(run.out().lines().filter(line -> line.startsWith("2026-")))
        .extracting(line -> line.replaceAll("[\\s\u00a0]+", " ").replaceFirst(" EUR .*", ""))
        .containsExactly("2026-03-02 0.00", "2026-03-09 46.20", "2026-03-16 50.00");
  }

  @Test
  void aFigureThatThereIsNotIsAnsweredWithThoseThatThereAre() {
    assertThat(run("history", "weight").err()).contains("spent, forecast, end, missing, unsigned");
  }

  @Test
  void aSignatureThatComesWithTheDayItBearsFits() throws Exception {
    folder.write("sub.yaml", SUBSTITUTION.formatted("2026-03-08", DIGITS));
    folder.commit("Nora", "2026-03-09", "Signed");
    Run run = run("signed", "--format", "markdown");
    assertThat(run.out())
        .contains("2026‑03‑08", "2026‑03‑09", "not signed")
        .doesNotContain("before it came");
    assertThat(run.code()).isZero();
  }

  @Test
  void aSignatureDatedLongBeforeItCameIsTold() throws Exception {
    folder.write("sub.yaml", SUBSTITUTION.formatted("2026-03-01", DIGITS));
    folder.commit("Nora", "2026-03-09", "Signed");
    Run run = run("signed", "--format", "markdown");
    assertThat(run.out()).contains("dated more than 7 days before it came");
    assertThat(run.code()).isEqualTo(1);
  }

  @Test
  void aSignatureThatCameAfterTheWorkHadBegunIsTold() throws Exception {
    folder.write("build.yaml", START.replace("takes: 2 d", "takes: 2 d, started: 2026-03-06"));
    folder.write("sub.yaml", SUBSTITUTION.formatted("2026-03-05", DIGITS));
    folder.commit("Nora", "2026-03-09", "Signed");
    assertThat(run("signed", "--format", "markdown").out())
        .contains("it came after the work had begun");
  }

  /** The key of a commit says who made it; the name on it says what somebody typed. */
  @Test
  void aCommitSignedByAnSshKeyIsToldWithWhoseKeyItIs() throws Exception {
    OutsideProgram.needed("ssh-keygen", "openssh-client");
    Path key = temp.resolve("key");
    folder.ran("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-C", "x", "-f", key.toString());
    Path allowed = Files.writeString(temp.resolve("allowed"), "");
    folder.git("config", "gpg.format", "ssh");
    folder.git("config", "user.signingkey", key + ".pub");
    folder.git("config", "commit.gpgsign", "true");
    folder.write("sub.yaml", SUBSTITUTION.formatted("2026-03-08", DIGITS));
    folder.commit("A. Osterlund", "2026-03-09", "Signed");
    String pub = Files.readString(temp.resolve("key.pub")).strip();

    assertThat(signed()).as("git is not set up to look").contains("signed, cannot be checked");
    folder.git("config", "gpg.ssh.allowedSignersFile", allowed.toString());
    assertThat(signed()).as("no key is allowed").contains("a key that nothing here vouches for");
    folder.ran("ssh-keygen", "-q", "-t", "ed25519", "-N", "", "-f", temp.resolve("b").toString());
    Files.writeString(allowed, "office@x.example " + Files.readString(temp.resolve("b.pub")));
    assertThat(signed()).as("another key").contains("a key that nothing here vouches for");
    Files.writeString(allowed, "nora@x.example " + pub + "\n");
    assertThat(signed()).contains("signed, good, by the key of nora@x.example");
    Files.writeString(allowed, "office@x.example " + pub + "\n");
    assertThat(signed()).contains("signed, good, by the key of office@x.example");
  }

  private String signed() {
    return run("signed", "--format", "json").out();
  }

  @Test
  void aSignatureThatNobodyHasCommittedIsTold() throws Exception {
    folder.write("sub.yaml", SUBSTITUTION.formatted("2026-03-28", DIGITS));
    assertThat(run("signed", "--format", "markdown").out()).contains("not committed yet");
  }

  @Test
  void whatIsStagedIsJudgedAndNotWhatLiesBesideIt() throws Exception {
    folder.write("build.yaml", START.replace("qty: 4 m", "qty: 4 mm x")).git("add", "--all");
    folder.write("build.yaml", START);
    assertThat(run("check", "--staged").code()).isEqualTo(1);
    folder.git("add", "--all");
    assertThat(run("check", "--staged", "--fail-on", "stop").code()).isZero();
  }

  /** Two people record something of one task: both wrote below its last line, and both are kept. */
  @Test
  void twoBranchesThatRecordOfOneTaskMeetAndAreToldHowToGoOn() throws Exception {
    folder.write("tasks/glue.yaml", "tasks:\n  - id: glue\n    what: Glue\n    takes: 1 d\n");
    folder.commit("Nora", "2026-03-08", "A task").git("checkout", "-q", "-b", "barn");
    assertThat(run("begin", "glue").code()).isZero();
    folder.commit("Eskil", "2026-03-09", "Begun").git("checkout", "-q", "main");
    assertThat(run("amend", "task", "glue", "phase=hull").code()).isZero();
    folder.commit("Nora", "2026-03-10", "Phase");
    assertThatThrownBy(() -> folder.git("merge", "-q", "barn")).hasMessageContaining("CONFLICT");
    assertThat(run("check").out()).contains("A merge of two branches was not finished here");
    assertThat(run("check", "--staged").err()).contains("The merge is not finished");
    Path file = folder.top().resolve("tasks/glue.yaml");
    folder.write("tasks/glue.yaml", Files.readString(file).replaceAll("(?m)^[<=>]{7}.*\n", ""));
    folder.commit("Nora", "2026-03-11", "Both");
    assertThat(Files.readString(file)).contains("started: 2026-03-29", "phase: hull");
    assertThat(run("since", "2026-03-08").out()).contains("task (glue)", "Eskil", "Nora");
  }

  @Test
  void aDayBeforeTheFirstCommitIsAnsweredWithThatDay() {
    assertThat(run("since", "2020-01-01").err())
        .isEqualTo(
            "kitwright: No commit is as old as 2020-01-01. The first is of 2026-03-02: name that"
                + " day or a later one.\n");
  }
}
