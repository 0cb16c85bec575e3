package kitwright.report.writing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WritingTest {
  private static final String MARK =
      "<!-- Written by Kitwright from the ledger. Changes made here will be lost. -->\n";

  @TempDir private Path folder;
  private Writing writing = Writing.into(Path.of("."));

  @BeforeEach
  void aimAtTheFolder() {
    writing = Writing.into(folder);
  }

  @Test
  void theTextStandsAboveTheMark() throws IOException {
    assertThat(writing.write("week.md", "# Week\n", Existing.KEEP_FOREIGN))
        .isEqualTo(new Written.Done(folder.toRealPath().resolve("week.md")));
    assertThat(folder.resolve("week.md")).hasContent("# Week\n\n" + MARK);
    assertThat(left()).containsExactly("week.md");
  }

  @Test
  void noEmptyFolderIsLeftWhereNothingCouldBeWritten() throws IOException {
    Files.createDirectories(folder.resolve("mine"));
    for (String name : List.of("letters/", "mine/deep/")) {
      assertThat(
              Writing.into(folder.resolve("out"))
                  .write(name + "x".repeat(300), "x\n", Existing.KEEP_FOREIGN))
          .isInstanceOf(Written.Refused.class);
      assertThat(writing.write(name + "x".repeat(300), "x\n", Existing.KEEP_FOREIGN))
          .isInstanceOf(Written.Refused.class);
    }
    assertThat(left()).containsExactly("mine");
    assertThat(folder.resolve("mine")).isEmptyDirectory();
  }

  @Test
  void foldersAreMade() {
    Writing.into(folder.resolve("out/of"))
        .write("letters/claims/one.md", "x\n", Existing.KEEP_FOREIGN);
    assertThat(folder.resolve("out/of/letters/claims/one.md")).exists();
  }

  @Test
  void itsOwnFileIsReplaced() {
    writing.write("week.md", "one\n", Existing.KEEP_FOREIGN);
    assertThat(writing.write("week.md", "two\n", Existing.KEEP_FOREIGN))
        .isInstanceOf(Written.Done.class);
    assertThat(folder.resolve("week.md")).hasContent("two\n\n" + MARK);
  }

  @Test
  void theSameTextLeavesTheFileAlone() throws IOException {
    writing.write("week.md", "one\n", Existing.KEEP_FOREIGN);
    FileTime longAgo = FileTime.fromMillis(1_000_000);
    Files.setLastModifiedTime(folder.resolve("week.md"), longAgo);
    assertThat(writing.write("week.md", "one\n", Existing.KEEP_FOREIGN))
        .isInstanceOf(Written.Unchanged.class);
    assertThat(Files.getLastModifiedTime(folder.resolve("week.md"))).isEqualTo(longAgo);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mine\n",
        "",
        "<!-- Written by Kitwright from the ledger. Changes made here will be lost. --> and mine\n",
        "<!-- Written by Kitwright from the ledger. Changes made here will be lost. -->\nmine\n"
      })
  void somebodysOwnFileIsKept(String own) throws IOException {
    Files.writeString(folder.resolve("week.md"), own);
    assertThat(why(writing.write("week.md", "new\n", Existing.KEEP_FOREIGN)))
        .isEqualTo("The file that stands there was not written by Kitwright.");
    assertThat(Files.readString(folder.resolve("week.md"))).isEqualTo(own);
    assertThat(left()).containsExactly("week.md");
  }

  @Test
  void somebodysOwnFileIsReplacedWhereThatIsAskedFor() throws IOException {
    Files.writeString(folder.resolve("week.md"), "mine\n");
    writing.write("week.md", "new\n", Existing.REPLACE);
    assertThat(folder.resolve("week.md")).hasContent("new\n\n" + MARK);
  }

  @Test
  void aKindWithoutRoomForTheMarkIsReplacedOnlyWhenAsked() {
    writing.write("a.csv", "1\n", Existing.KEEP_FOREIGN);
    assertThat(folder.resolve("a.csv")).hasContent("1\n");
    assertThat(writing.write("a.csv", "1\n", Existing.KEEP_FOREIGN))
        .isInstanceOf(Written.Unchanged.class);
    assertThat(writing.write("a.csv", "2\n", Existing.KEEP_FOREIGN))
        .isInstanceOf(Written.Refused.class);
    assertThat(writing.write("a.csv", "2\n", Existing.REPLACE)).isInstanceOf(Written.Done.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"week.md", "plan.svg", "week.html", "week.pdf", "new.yaml"})
  void everyKindWithTheMarkIsKnownAgain(String name) {
    writing.write(name, "one", Existing.KEEP_FOREIGN);
    assertThat(writing.write(name, "two", Existing.KEEP_FOREIGN)).isInstanceOf(Written.Done.class);
  }

  @Test
  void aFolderInTheWayIsKeptEvenByForce() throws IOException {
    Files.createDirectories(folder.resolve("week.md"));
    assertThat(why(writing.write("week.md", "x", Existing.REPLACE)))
        .isEqualTo("A folder of this name is in the way.");
    assertThat(left()).containsExactly("week.md");
  }

  @Test
  void aFileInPlaceOfAFolderIsKept() throws IOException {
    Files.writeString(folder.resolve("letters"), "mine");
    assertThat(why(writing.write("letters/one.md", "x", Existing.REPLACE)))
        .endsWith("letters is in the way.");
    assertThat(why(Writing.into(folder.resolve("letters")).write("a.md", "x", Existing.REPLACE)))
        .endsWith("letters is in the way.");
    assertThat(folder.resolve("letters")).hasContent("mine");
  }

  @Test
  void noLinkIsFollowedOutOfTheFolder(@TempDir Path elsewhere) throws IOException {
    Path secret = Files.writeString(elsewhere.resolve("secret.md"), "mine\n\n" + MARK);
    Files.createSymbolicLink(folder.resolve("week.md"), secret);
    Files.createSymbolicLink(folder.resolve("letters"), elsewhere);
    Files.createSymbolicLink(folder.resolve("dangling.md"), elsewhere.resolve("none.md"));
    assertThat(why(writing.write("week.md", "x", Existing.REPLACE)))
        .isEqualTo("A link to another place is in the way.");
    assertThat(why(writing.write("dangling.md", "x", Existing.REPLACE)))
        .isEqualTo("A link to another place is in the way.");
    assertThat(why(writing.write("letters/secret.md", "x", Existing.REPLACE)))
        .endsWith("letters is a link to another place.");
    assertThat(secret).hasContent("mine\n\n" + MARK);
    assertThat(elsewhere.resolve("none.md")).doesNotExist();
  }

  @Test
  void theFolderItselfMayBeALink(@TempDir Path elsewhere) throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("out"), elsewhere);
    Writing.into(link).write("week.md", "x\n", Existing.KEEP_FOREIGN);
    assertThat(elsewhere.resolve("week.md")).exists();
  }

  @Test
  void whatAKilledRunLeftIsClearedAndNeverFollowed(@TempDir Path elsewhere) throws IOException {
    Path victim = Files.writeString(elsewhere.resolve("victim"), "mine");
    Files.createSymbolicLink(folder.resolve(".a.md.kitwright-part"), victim);
    Files.writeString(folder.resolve(".b.md.kitwright-part"), "half");
    writing.write("a.md", "x\n", Existing.KEEP_FOREIGN);
    writing.write("b.md", "x\n", Existing.KEEP_FOREIGN);
    assertThat(left()).containsExactly("a.md", "b.md");
    assertThat(victim).hasContent("mine");
  }

  /** Two of 24 runs at once failed when all wrote under one name beside the file. */
  @Test
  void manyAtOnceHarmNothingAndAllAreHeard() throws Exception {
    ExecutorService crew = Executors.newFixedThreadPool(8);
    try {
      List<Future<Written>> all = new ArrayList<>();
      for (int i = 0; i < 200; i++) {
        String text = "run " + i % 3 + "\n";
        all.add(crew.submit(() -> writing.write("week.md", text, Existing.KEEP_FOREIGN)));
      }
      for (Future<Written> each : all) {
        assertThat(each.get()).isNotInstanceOf(Written.Refused.class);
      }
    } finally {
      crew.shutdownNow();
    }
    assertThat(left()).containsExactly("week.md");
    assertThat(Files.readString(folder.resolve("week.md"))).startsWith("run ");
  }

  @Test
  void ofManyThatMakeOneNewFileOneDoes() throws Exception {
    ExecutorService crew = Executors.newFixedThreadPool(8);
    try {
      List<Future<Boolean>> all = new ArrayList<>();
      for (int i = 0; i < 100; i++) {
        byte[] text = ("run " + i).getBytes(StandardCharsets.UTF_8);
        all.add(crew.submit(() -> Beside.create(folder.resolve("new.yaml"), text)));
      }
      int made = 0;
      for (Future<Boolean> each : all) {
        made += each.get() ? 1 : 0;
      }
      assertThat(made).isOne();
    } finally {
      crew.shutdownNow();
    }
    assertThat(left()).containsExactly("new.yaml");
  }

  @Test
  void aNameTooLongIsRefusedAndLeavesNothing() throws IOException {
    assertThat(why(writing.write("x".repeat(250) + ".md", "x", Existing.KEEP_FOREIGN)))
        .startsWith("It cannot be written: ");
    assertThat(left()).isEmpty();
  }

  @Test
  void aFolderThatTakesNoFilesIsToldOf() {
    Path kernel = Path.of("/proc"); // refuses new files even to root
    assumeTrue(Files.isDirectory(kernel), "needs Linux");
    assertThat(why(Writing.into(kernel).write("week.md", "x", Existing.REPLACE)))
        .startsWith("It cannot be written: ");
  }

  @Test
  void aReadOnlyFolderIsToldOf() throws IOException {
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
    assumeFalse(Files.isWritable(folder), "root may write everywhere");
    assertThat(why(writing.write("week.md", "x", Existing.REPLACE)))
        .startsWith("It cannot be written: writing there is not allowed");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "../a.md", "/a.md", "a//b.md", "a/../b.md", ".", "a\\b.md", "C:a.md"})
  void aNameThatLeavesTheFolderIsABrokenPromise(String name) {
    assertThatThrownBy(() -> writing.write(name, "x", Existing.REPLACE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static String why(Written written) {
    return written.match(done -> "done", unchanged -> "unchanged", refused -> refused.why().what());
  }

  private List<String> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
