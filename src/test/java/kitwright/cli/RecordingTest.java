package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.edit.Replacing;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What happened is written into the record that is there, and nothing else of its file changes. */
class RecordingTest {
  private static final String LEDGER =
      """
      # my boat
      build: {name: S, currency: EUR, started: 2026-01-05}
      parties:
        - {id: yard, name: Y, role: supplier}   # the yard
        - {id: pell, name: Pell, role: lender}
      kit:
        - {id: plank, what: larch, qty: 4}
      deliveries:
        - id: d1
          from: yard     # by lorry

      tasks:
        - {id: glue, what: Glue, takes: 1 d}
        - id: sand
          what: "Sand: all of it"
          takes: 2 d
          started: 2026-02-20
      borrowed:
        - {id: saw, tool: saw, from: pell, on: 2026-02-01, condition: good}
      shortages:
        - {id: s1, item: plank, qty: 1, found: 2026-02-20, cause: damaged}
      claims:
        - id: c1
          against: yard
          shortages: [s1]
          remedy: credit
      """;

  @TempDir private Path root;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(root.resolve("all.yaml"), LEDGER);
  }

  @Test
  void whereASecondFileCannotBeWrittenTheFirstIsSaidToBe() throws IOException {
    Files.writeString(root.resolve("shortages"), "a note");
    Run run = Run.in(root, "count", "d1", "plank=2", "--shortages", "--today", "2026-03-02");
    assertThat(run.out()).contains("Recorded in all.yaml");
    assertThat(run.err())
        .contains(
            "could not be written",
            "is no folder",
            "all.yaml is written already; look with “git diff” what is still to do.")
        .doesNotContain("nothing was changed");
  }

  private static final String MONEY =
      """
      budget: [{line: deck, title: Deck, amount: 500}]
      spending:
        - {id: order, on: 2026-02-01, line: deck, what: rope, amount: 50, state: ordered}
        - {id: paid, on: 2026-02-02, line: deck, what: glue, amount: 20, state: paid}
        - {id: back, on: 2026-02-03, line: deck, what: glue, amount: 5, state: refunded, refunds: paid}
      """;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pay paid 5 | “paid” is no order: it was paid on 2\u00a0February\u00a02026. Name the order"
            + " that is paid: order. What was bought without an order is recorded with “kitwright"
            + " buy”. Nothing was changed.",
        "pay back 5 | “back” is no order: it was money that came back on"
            + " 3\u00a0February\u00a02026.",
        "refund back 5 | “back” is no payment: it was money that came back on"
            + " 3\u00a0February\u00a02026. Name the payment of which money came back, such as paid."
            + " Nothing was changed.",
        "demand s1 --remedy refund | With this, 2 × plank are asked for the shortage s1, which"
            + " lacks 1; asked already by c1. Give each line its “qty”, or take the shortage out of"
            + " one of the claims or lines. Nothing was changed.",
      })
  void whatCannotHaveBeenIsRefusedWithItsMend(String words, String said) throws IOException {
    Files.writeString(root.resolve("money.yaml"), MONEY);
    List<String> all = new ArrayList<>(List.of(words.split(" ")));
    all.addAll(List.of("--today", "2026-03-02"));
    Run run = Run.in(root, all.toArray(String[]::new));
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(said);
    assertThat(root.resolve("spending")).doesNotExist();
    assertThat(root.resolve("claims")).doesNotExist();
  }

  @Test
  void anOrderIsPaidAndAPaymentGivenBack() throws IOException {
    Files.writeString(root.resolve("money.yaml"), MONEY);
    assertThat(Run.in(root, "pay", "order", "50", "--today", "2026-03-02").out()).contains("new ");
    assertThat(Run.in(root, "refund", "paid", "5", "--today", "2026-03-02").out()).contains("new ");
  }

  @Test
  void whatTheCheckSaysOfAnAmendedRecordIsSaidAtOnce() {
    Run run = Run.in(root, "amend", "task", "glue", "after+=x", "--today", "2026-03-02");
    assertThat(run.out()).contains("Recorded in all.yaml", "There is no task “x”");
    assertThat(Run.in(root, "amend", "task", "glue", "takes=2 d").out()).contains("task “x”");
  }

  @Test
  void whatNobodyCountedIsNotKnownToBeHere() {
    assertThat(Run.in(root, "kit", "--today", "2026-03-02").out())
        .containsPattern("plank +4 +uncounted .* not known");
    assertThat(Run.in(root, "kit", "--today", "2026-03-02", "--format", "json").out())
        .doesNotContain("\"here\"");
  }

  /** What no system writes, whoever asks: a folder that is a file, a name beyond all bounds. */
  @Test
  void whereNothingCanBeWrittenNothingIsLostAndItIsSaidWhy() throws IOException {
    Files.writeString(root.resolve("shortages"), "my notes");
    Run run = Run.in(root, "short", "plank", "1", "--cause", "wrong", "--today", "2026-03-02");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("could not be written", "shortages” is no folder", "Move what");
    assertThat(root.resolve("shortages")).hasContent("my notes");
    assertThat(root.resolve("all.yaml")).hasContent(LEDGER);

    Run report = Run.in(root, "report", "budget", "--out", "x".repeat(300));
    assertThat(report.code()).isEqualTo(2);
    assertThat(report.err()).contains("document-not-written", "cannot be written");
    assertThat(root.toFile().list()).containsExactlyInAnyOrder("all.yaml", "shortages");
  }

  @Test
  void aTaskIsFinishedAndBegunWhereNothingSaidSo() throws IOException {
    ok("finish", "glue");
    holds("takes: 1 d}", "takes: 1 d, started: 2026-03-02, finished: 2026-03-02}");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "stock what=oak qty=3bananas; The unit “bananas” is not known",
        "task what=Sand takes=soon; “soon” is not a time",
        "shortage item=plank qty=1 cause=eaten; “eaten” is not one of the words",
        "shortage id=s1 item=plank qty=1; A shortage “s1” is there already",
        "task id=glue what=Glue takes=1d; A task “glue” is there already"
      })
  void aNewRecordIsNotBegunWithWhatTheCheckCannotRead(String words, String told) {
    List<String> args = new ArrayList<>(List.of("new"));
    args.addAll(List.of(words.split(" ")));
    Run run = Run.in(root, args.toArray(String[]::new));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(told);
    assertThat(root.toFile().list()).containsExactly("all.yaml");
  }

  /** What happened is written down, however bad; what cannot have happened so is not. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "finish sand --on 2026-02-01; is before “started”",
        "begin glue --on 2026-03-09; is still to come",
        "return saw good --on 2026-01-20; is before “on”",
        "count d1 plank=3,damaged=4; of these 4 are said to be damaged",
        "amend task sand started=2026-04-01; is still to come",
        "log --tasks glue=110%; is 110 % done"
      })
  void whatCannotHaveHappenedSoIsRefused(String words, String told) {
    List<String> args = new ArrayList<>(List.of(words.split(" ")));
    args.addAll(List.of("--today", "2026-03-02"));
    Run run = Run.in(root, args.toArray(String[]::new));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(told, "Nothing was changed.");
    assertThat(root.resolve("all.yaml")).hasContent(LEDGER);
    assertThat(root.toFile().list()).containsExactly("all.yaml");
  }

  @Test
  void whatWasImpossibleBeforeDoesNotHinderTheRest() throws IOException {
    Files.writeString(
        root.resolve("all.yaml"), LEDGER.replace("started: 2026-02-20", "started: 2026-04-20"));
    assertThat(ok("amend", "task", "sand", "phase=deck").out()).contains("is still to come");
    ok("amend", "task", "sand", "started=2026-02-21");
  }

  @Test
  void behindABareKeyNothingIsSaidYet() throws IOException {
    String bare = LEDGER.replace("started: 2026-02-20", "started:   # not yet\n    finished:");
    Files.writeString(root.resolve("all.yaml"), bare);
    ok("finish", "sand");
    assertThat(Files.readString(root.resolve("all.yaml")))
        .isEqualTo(
            bare.replace("started:   #", "started: 2026-03-02   #")
                .replace("finished:", "finished: 2026-03-02"));
  }

  /** Who is offered another task begins that one. */
  @Test
  void forARecordThatCannotBeReadNoOtherIsOffered() throws IOException {
    Files.writeString(
        root.resolve("all.yaml"), LEDGER.replace("{id: glue,", "{id: glue, place: nowhere,"));
    Run twin = Run.in(root, "begin", "glue", "--today", "2026-03-02");
    assertThat(twin.err())
        .contains("The task “glue” cannot be read. “kitwright check” tells what is wrong there")
        .doesNotContain("Did you mean", "begins one");
    Files.writeString(root.resolve("more.yaml"), "tasks:\n  - {id: glu2, what: [B\n");
    Run lost = Run.in(root, "begin", "glu2", "--today", "2026-03-02");
    assertThat(lost.err())
        .contains("No task “glu2” could be read; it may stand in more.yaml")
        .doesNotContain("Did you mean");
    assertThat(Run.in(root, "begin", "sanf").err()).contains("Did you mean “sand”?");
  }

  @Test
  void aTaskThatWasBegunIsOnlyFinished() throws IOException {
    ok("finish", "sand", "--on", "2026-03-01");
    holds("started: 2026-02-20\n", "started: 2026-02-20\n    finished: 2026-03-01\n");
  }

  @Test
  void aDeliveryIsCounted() throws IOException {
    Run run = ok("count", "d1", "plank=3,damaged=1");
    holds(
        "# by lorry\n",
        "# by lorry\n    received: 2026-03-02\n    counted: [{item: plank, qty: 3, damaged: 1}]\n");
    assertThat(run.out()).contains("plank");
  }

  /** Counted in haste, and the shortages recorded in the evening. */
  @Test
  void whatACountOnRecordShowsToBeShortIsRecordedLater() throws IOException {
    ok("count", "d1", "plank=2");
    String counted = Files.readString(root.resolve("all.yaml"));
    Run later = ok("count", "d1", "--shortages", "--claim");
    Matcher written = Pattern.compile("shortages/\\S+\\.yaml").matcher(later.out());
    assertThat(written.find()).as(later.out()).isTrue();
    assertThat(Files.readString(root.resolve(written.group())))
        .contains("item: plank", "qty: 1", "cause: not-packed");
    assertThat(later.out()).contains("claims/");
    assertThat(Files.readString(root.resolve("all.yaml"))).isEqualTo(counted);
    refused("Nothing of “d1” is short that is not recorded", "count", "d1", "--shortages");
  }

  @Test
  void aClaimIsSentAndSettled() throws IOException {
    ok("send", "c1", "--by", "e-mail");
    ok("settle", "c1", "credited", "12.50", "EUR");
    holds(
        "remedy: credit\n",
        """
        remedy: credit
            sent: 2026-03-02
            by: e-mail
            reply-by: 2026-03-16
            settled: {on: 2026-03-02, how: credited, amount: 12.50 EUR}
        """);
  }

  @Test
  void aLineOfAClaimEndsByItself() throws IOException {
    ok("send", "c1", "--on", "2026-03-01", "--reply-by", "2026-03-16");
    ok("settle", "c1", "credited", "12.50", "EUR", "--of", "s1");
    holds(
        """
        shortages: [s1]
            remedy: credit
        """,
        """
        shortages: [{shortage: s1, settled: [{on: 2026-03-02, how: credited, amount: 12.50 EUR}]}]
            remedy: credit
            sent: 2026-03-01
            reply-by: 2026-03-16
        """);
    refused("Its lines are: s1.", "settle", "c1", "credited", "--of", "x-9");
  }

  @Test
  void anAnswerGoesBehindTheOthers() throws IOException {
    ok("send", "c1", "--by", "post", "--reply-by", "2026-03-16");
    ok("answer", "c1", "promised", "they", "come", "--expect", "2026-03-20", "--of", "s1");
    ok("answer", "c1", "reminded");
    holds(
        "remedy: credit\n",
        """
        remedy: credit
            sent: 2026-03-02
            by: post
            reply-by: 2026-03-16
            events: [{on: 2026-03-02, what: promised, of: [s1], text: they come, expect: 2026-03-20}, {on: 2026-03-02, what: reminded}]
        """);
  }

  @Test
  void aTaskIsBegun() throws IOException {
    ok("begin", "glue");
    holds("takes: 1 d}", "takes: 1 d, started: 2026-03-02}");
    refused("“started: 2026-03-02” already", "begin", "glue");
  }

  @Test
  void aToolGoesBack() throws IOException {
    ok("return", "saw", "blunt, else good");
    holds("good}\nsho", "good, returned: 2026-03-02, back: \"blunt, else good\"}\nsho");
  }

  @Test
  void anyKeyIsSetAndAnyListAddedTo() throws IOException {
    ok("amend", "task", "glue", "phase=hull", "after+=sand");
    holds("takes: 1 d}", "takes: 1 d, phase: hull, after: [sand]}");
  }

  @Test
  void printingLeavesTheFileAsItIs() throws IOException {
    assertThat(ok("finish", "glue", "--print").out()).contains("finished: 2026-03-02}");
    holds("", "");
  }

  @Test
  void whatCannotBeReadIsRefusedAndNothingIsWritten() throws IOException {
    refused("is not a date", "finish", "glue", "--on", "tomorrow");
    refused("Did you mean “takes”?", "amend", "task", "glue", "take=2 d");
    refused("Did you mean “glue”?", "finish", "gleu");
    refused("says no quantity", "count", "d1", "plank");
    refused("Did you mean “credited”?", "settle", "c1", "creditd");
    holds("", "");
  }

  @Test
  void whatIsSaidAlreadyIsNotWrittenAgain() throws IOException {
    refused("says so already", "amend", "task", "sand", "takes=2 d");
    holds("", "");
  }

  @Test
  void whatIsOnRecordIsNotWrittenOver() throws IOException {
    ok("finish", "glue", "--on", "2026-03-01");
    refused("“finished: 2026-03-01” already", "finish", "glue");
    ok("return", "saw", "good");
    refused("“returned: 2026-03-02” already", "return", "saw", "broken");
    ok("send", "c1");
    refused("“sent: 2026-03-02” already", "send", "c1", "--on", "2026-02-01");
    ok("settle", "c1", "refused");
    refused("“settled: 2026-03-02” already", "settle", "c1", "credited");
  }

  @Test
  void aFileThatSomebodyChangedMeanwhileIsLeftAlone() throws IOException {
    Files.writeString(root.resolve("all.yaml"), LEDGER + "# more\n");
    Assertions.assertThatThrownBy(() -> Replacing.write(root, "all.yaml", LEDGER, "x"))
        .isInstanceOf(Replacing.Changed.class);
    assertThat(root.resolve("all.yaml")).hasContent(LEDGER + "# more\n");
    assertThat(root.toFile().list()).containsExactly("all.yaml");
  }

  /** Whoever comes second reads again; nobody’s line is lost, and nothing lies about. */
  @Test
  void manyAtOnceLoseNothing() throws Exception {
    ExecutorService many = Executors.newFixedThreadPool(4);
    List<Callable<Boolean>> lines = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      String line = "# line " + i + "\n";
      lines.add(() -> addUntilDone(line));
    }
    for (Future<Boolean> each : many.invokeAll(lines)) {
      assertThat(each.get()).isTrue();
    }
    many.shutdown();
    String text = Files.readString(root.resolve("all.yaml"));
    for (int i = 0; i < 40; i++) {
      assertThat(text).containsOnlyOnce("# line " + i + "\n");
    }
    assertThat(text).startsWith(LEDGER);
    assertThat(root.toFile().list()).containsExactly("all.yaml");
  }

  private boolean addUntilDone(String line) throws IOException {
    while (true) {
      String read = Files.readString(root.resolve("all.yaml"));
      try {
        Replacing.write(root, "all.yaml", read, read + line);
        return true;
      } catch (Replacing.Changed meanwhile) {
        Thread.onSpinWait();
      }
    }
  }

  private Run ok(String... arguments) {
    Run run = Run.in(root, arguments);
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    return run;
  }

  private void refused(String what, String... arguments) {
    Run run = Run.in(root, arguments);
    assertThat(run.err()).contains(what);
    assertThat(run.code()).isEqualTo(2);
  }

  private void holds(String before, String now) throws IOException {
    assertThat(Files.readString(root.resolve("all.yaml")))
        .isEqualTo(before.isEmpty() ? LEDGER : LEDGER.replace(before, now));
  }
}
