package kitwright.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kitwright.OutsideProgram;
import kitwright.finding.Findings;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ledger's past, in repositories made by git itself. */
class HistoryIT {
  private static final String BUILD =
      """
      build: {name: Sample, currency: EUR, started: 2026-01-05, launch: 2026-09-26}
      parties:
        - {id: maker, name: Redshank Kit Boats, role: supplier}
        - {id: nora, name: Nora, role: builder}
      budget: [{line: kit, title: The kit, amount: 1000 EUR}]
      """;
  private static final String KIT =
      "kit: [{id: bolt, what: keel bolts, qty: 12 each, from: maker}]\n";
  private static final String PLAN =
      """
      tasks:
        - {id: plank, what: Plank the hull, takes: 5 d}
        - {id: keel, what: Hang the keel, takes: 2 d, after: [plank]}
      """;

  @TempDir Path temp;
  private GitFolder folder;

  @BeforeEach
  void aRepository() throws Exception {
    OutsideProgram.needed("git", "git");
    folder = GitFolder.made(temp.resolve("boat"));
  }

  private void threeWeeks() throws Exception {
    folder.write("ledger/build.yaml", BUILD).write("ledger/kit.yaml", KIT);
    folder.write("ledger/plan.yaml", PLAN).write("elsewhere.txt", "not ours\n");
    folder.commit("Nora", "2026-03-02", "Begin");
    folder.write(
        "ledger/crate.yaml",
        """
        deliveries:
          - {id: crate, from: maker, received: 2026-03-09, counted: [{item: bolt, qty: 8 each}]}
        """);
    folder.commit("Eskil", "2026-03-09", "Count the crate");
    folder.write(
        "ledger/spend.yaml",
        "spending: [{id: s1, on: 2026-03-15, what: bolts, to: maker, amount: 46.20 EUR, line: kit,"
            + " state: paid}]\n");
    folder.write("elsewhere.txt", "still not ours\n").commit("Nora", "2026-03-16", "Pay");
  }

  private Path ledger() {
    return folder.top().resolve("ledger");
  }

  private static Facts facts(Optional<Ledger> ledger, String day) {
    return Facts.of(ledger.orElseThrow(), LocalDate.parse(day));
  }

  private Facts now(String day) {
    Findings faults = new Findings();
    Facts now = facts(LedgerFolder.at(ledger()).read(faults), day);
    assertThat(faults.inOrder()).isEmpty();
    return now;
  }

  private Changes since(String named, String today) throws NoHistory {
    History history = History.of(ledger());
    Commit commit = history.commit(named);
    Facts then = facts(history.tree(commit).ledger(new Findings()), commit.day().toString());
    Hands hands = new Hands(history.hands(commit), history.uncommitted());
    return Changes.between(then, now(today), hands);
  }

  @Test
  void aDayMeansTheLastCommitUpToItsEnd() throws Exception {
    threeWeeks();
    History history = History.of(ledger());
    assertThat(history.commit("2026-03-08").subject()).isEqualTo("Begin");
    assertThat(history.commit("2026-03-09").subject()).isEqualTo("Count the crate");
    assertThat(history.commit("HEAD~1").subject()).isEqualTo("Count the crate");
    assertThat(history.commit("main").by()).isEqualTo("Nora");
  }

  @Test
  void whatIsOtherwiseIsToldMatterByMatterWithWhoseHandItWas() throws Exception {
    threeWeeks();
    Changes changes = since("2026-03-02", "2026-03-16");
    assertThat(changes.of(Matter.COUNTED))
        .singleElement()
        .satisfies(
            counted -> {
              assertThat(counted.what()).isEqualTo("keel bolts");
              assertThat(counted.before()).isEqualTo(new Held.Nothing());
              assertThat(counted.now()).hasToString("Many[quantity=8 each]");
            });
    assertThat(changes.of(Matter.MONEY))
        .filteredOn(change -> change.what().equals("The kit, spent"))
        .singleElement()
        .satisfies(spent -> assertThat(spent.now()).hasToString("Sum[money=46.20 EUR]"));
    assertThat(changes.of(Matter.RECORDS))
        .extracting(Change::id, Change::by)
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple("crate", Set.of("Eskil")),
            org.assertj.core.groups.Tuple.tuple("s1", Set.of("Nora")));
  }

  @Test
  void nothingChangedIsNothingTold() throws Exception {
    threeWeeks();
    assertThat(since("HEAD", "2026-03-16").all()).isEmpty();
  }

  @Test
  void aRecordMovedToAnotherFileHasNotChanged() throws Exception {
    threeWeeks();
    Files.move(ledger().resolve("kit.yaml"), ledger().resolve("crate-one.yaml"));
    folder.write("ledger/crate-one.yaml", "# the kit\n\n" + KIT);
    folder.commit("Nora", "2026-03-17", "Move the kit");
    assertThat(since("2026-03-16", "2026-03-16").of(Matter.RECORDS)).isEmpty();
  }

  @Test
  void whatIsNotCommittedIsToldAsSuch() throws Exception {
    threeWeeks();
    folder.write("ledger/kit.yaml", KIT.replace("12 each", "10 each"));
    assertThat(since("HEAD", "2026-03-16").of(Matter.RECORDS))
        .singleElement()
        .satisfies(
            change -> {
              assertThat(change.id()).isEqualTo("bolt");
              assertThat(change.now()).isEqualTo(new Held.Changed(List.of("qty")));
              assertThat(change.by()).containsExactly(Hands.NOT_COMMITTED);
            });
  }

  @Test
  void theStagedLedgerIsReadWithoutWhatIsNotStaged() throws Exception {
    threeWeeks();
    folder.write("ledger/kit.yaml", KIT.replace("12 each", "10 each")).git("add", "--all");
    folder.write("ledger/kit.yaml", "kit: [");
    Findings faults = new Findings();
    Ledger staged = History.staged(ledger()).ledger(faults).orElseThrow();
    assertThat(faults.inOrder()).isEmpty();
    assertThat(staged.kit())
        .singleElement()
        .satisfies(k -> assertThat(k.qty()).hasToString("10 each"));
  }

  @Test
  void twoBranchesWithARecordAFileMergeWithoutAQuarrelAndBothAreTold() throws Exception {
    threeWeeks();
    folder.git("checkout", "-q", "-b", "eskil");
    folder.write(
        "ledger/e.yaml", "stock: [{id: oak, what: an oak plank, size: 2000 x 120 x 22 mm}]\n");
    folder.commit("Eskil", "2026-03-18", "An oak plank");
    folder.git("checkout", "-q", "main");
    folder.write(
        "ledger/n.yaml", "stock: [{id: ash, what: an ash plank, size: 2000 x 120 x 22 mm}]\n");
    folder.commit("Nora", "2026-03-18", "An ash plank");
    folder.git("merge", "-q", "--no-edit", "eskil");
    assertThat(since("2026-03-16", "2026-03-18").of(Matter.RECORDS))
        .extracting(Change::id, Change::by)
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple("oak", Set.of("Eskil")),
            org.assertj.core.groups.Tuple.tuple("ash", Set.of("Nora")));
  }

  @Test
  void anUnfinishedMergeIsNamed() throws Exception {
    threeWeeks();
    folder.git("checkout", "-q", "-b", "eskil");
    folder.write("ledger/kit.yaml", KIT.replace("12 each", "14 each"));
    folder.commit("Eskil", "2026-03-18", "Fourteen");
    folder.git("checkout", "-q", "main");
    folder.write("ledger/kit.yaml", KIT.replace("12 each", "10 each"));
    folder.commit("Nora", "2026-03-18", "Ten");
    assertThatThrownBy(() -> folder.git("merge", "-q", "eskil")).isInstanceOf(AssertionError.class);
    assertThatThrownBy(() -> History.staged(ledger()))
        .isInstanceOf(NoHistory.class)
        .hasMessageContaining("kit.yaml");
  }

  @Test
  void oddNamesAreReadAsTheyAre() throws Exception {
    threeWeeks();
    folder.write(
        "ledger/Åse’s crate \"2\".yaml", "stock: [{id: oak, what: o, size: 2000 x 120 x 22 mm}]\n");
    folder.commit("Åse", "2026-03-20", "Odd");
    assertThat(since("2026-03-16", "2026-03-20").of(Matter.RECORDS))
        .singleElement()
        .satisfies(change -> assertThat(change.id()).isEqualTo("oak"));
  }

  @Test
  void whatCannotBeToldIsRefusedInPlainWords() throws Exception {
    Path alone = Files.createDirectories(temp.resolve("alone"));
    assertThatThrownBy(() -> History.of(alone)).hasMessageContaining("lies in no Git repository");
    assertThatThrownBy(() -> History.of(folder.top()))
        .hasMessageContaining("Nothing was committed");
    threeWeeks();
    History history = History.of(ledger());
    assertThatThrownBy(() -> history.commit("nonsense"))
        .hasMessageContaining("Git knows no commit “nonsense”");
    assertThatThrownBy(() -> history.commit("--all")).isInstanceOf(NoHistory.class);
    assertThatThrownBy(() -> history.commit("2026-02-01"))
        .hasMessageContaining("The first is of 2026-03-02");
  }

  @Test
  void aShallowCloneSaysThatItHoldsAPart() throws Exception {
    threeWeeks();
    Path clone = temp.resolve("clone");
    folder.git("clone", "-q", "--depth", "1", folder.top().toUri().toString(), clone.toString());
    History history = History.of(clone.resolve("ledger"));
    assertThatThrownBy(() -> history.commit("2026-03-02"))
        .hasMessageContaining("git fetch --unshallow");
  }

  @Test
  void aDetachedHeadIsAnsweredLikeAnyOther() throws Exception {
    threeWeeks();
    folder.git("checkout", "-q", "--detach", "HEAD~1");
    assertThat(History.of(ledger()).commits())
        .extracting(Commit::subject)
        .containsExactly("Begin", "Count the crate");
  }

  @Test
  void aCorruptObjectIsOneClearLine() throws Exception {
    threeWeeks();
    try (var objects = Files.walk(folder.top().resolve(".git/objects"))) {
      for (Path file : objects.filter(Files::isRegularFile).toList()) {
        file.toFile().setWritable(true);
        Files.write(file, new byte[] {1, 2, 3});
      }
    }
    assertThatThrownBy(
            () -> {
              History history = History.of(ledger());
              history.tree(history.commit("HEAD")).ledger(new Findings());
            })
        .isInstanceOf(NoHistory.class);
  }

  @Test
  void evidenceIsHashedAsTheCommitHoldsIt() throws Exception {
    threeWeeks();
    String shortage =
        """
        shortages:
          - {id: s, item: bolt, qty: 4, found: 2026-03-10, cause: not-packed,
             evidence: [photo.jpg, empty.txt, copy.jpg, gone.jpg]}
        """;
    String photo = "a picture of many bytes\n".repeat(9000);
    folder.write("ledger/short.yaml", shortage).write("ledger/photo.jpg", photo);
    folder.write("ledger/copy.jpg", photo).write("ledger/empty.txt", "");
    folder.commit("Nora", "2026-03-17", "Show it");
    folder.write("ledger/photo.jpg", "changed since\n");
    History history = History.of(ledger());
    Ledger then = history.tree(history.commit("HEAD")).ledger(new Findings()).orElseThrow();
    List<EvidenceFile> files =
        then.shortages().get(0).evidence().stream().map(then::evidence).toList();
    assertThat(files.get(0).sha256()).contains(sha256(photo));
    assertThat(files.get(1).sha256()).contains(sha256(""));
    assertThat(files.get(2)).isEqualTo(files.get(0));
    assertThat(files.get(3).state()).isEqualTo(EvidenceFile.State.ABSENT);
  }

  @Test
  void aDayIsThatOfThePlaceWhereTheCommitWasMade() throws Exception {
    threeWeeks();
    at("2026-03-22T23:30:00-0500", "Late in the west");
    at(
        "2026-03-23T00:30:00+1300",
        "Early in the east"); // before the other, by a clock of the world
    History history = History.of(ledger());
    assertThat(history.commit("2026-03-22").subject()).isEqualTo("Late in the west");
    assertThat(history.commit("2026-03-23").subject()).isEqualTo("Early in the east");
    assertThat(history.commit("2026-03-21").subject()).isEqualTo("Pay");
  }

  private void at(String moment, String subject) throws Exception {
    folder.ran(
        "env",
        "GIT_COMMITTER_DATE=" + moment,
        "git",
        "commit",
        "-q",
        "--allow-empty",
        "-m",
        subject);
  }

  private static String sha256(String text) throws Exception {
    byte[] digest =
        MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    return HexFormat.of().formatHex(digest);
  }
}
