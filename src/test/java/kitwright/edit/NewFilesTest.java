package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewFilesTest {
  @TempDir private Path folder;

  @Test
  void writesWhatIsNotThere() throws IOException {
    assertThat(NewFiles.write(folder.resolve("new"), Map.of("a/b.yaml", "x\n")).written())
        .containsExactly("a/b.yaml");
    assertThat(folder.resolve("new/a/b.yaml")).hasContent("x\n");
  }

  @Test
  void leavesWhatIsThere() throws IOException {
    Files.writeString(folder.resolve("mine.yaml"), "mine");
    NewFiles.Outcome outcome = NewFiles.write(folder, Map.of("mine.yaml", "theirs"));
    assertThat(outcome.left()).containsExactly("mine.yaml");
    assertThat(folder.resolve("mine.yaml")).hasContent("mine");
  }

  @Test
  void doesNotWriteThroughALinkThatLeadsOut(@TempDir Path elsewhere) throws IOException {
    Files.createSymbolicLink(folder.resolve("kit"), elsewhere);
    assertThatThrownBy(() -> NewFiles.write(folder, Map.of("kit/example.yaml", "x")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("outside");
    assertThat(elsewhere).isEmptyDirectory();
  }

  /** No name of a file is that long, whoever may write what: it fails as a full disk does. */
  private static final String TOO_LONG = "x".repeat(300) + ".yaml";

  @Test
  void whatCouldNotBeWrittenLeavesNoEmptyFolder() {
    assertThatThrownBy(
            () -> NewFiles.write(folder.resolve("new"), Map.of("a/b/" + TOO_LONG, "x\n")))
        .isInstanceOf(IOException.class)
        .hasMessageNotContaining("written before");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void whatWasWrittenBeforeItIsSaidAndStays() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("a/one.yaml", "x\n");
    files.put("a/two.yaml", "x\n");
    files.put("a/b/" + TOO_LONG, "x\n");
    assertThatThrownBy(() -> NewFiles.write(folder, files))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("a/b/" + TOO_LONG + ": ")
        .hasMessageEndingWith("; written before it: a/one.yaml, a/two.yaml");
    assertThat(folder.resolve("a/one.yaml")).exists();
    assertThat(folder.resolve("a/b")).doesNotExist();
  }

  @Test
  void addsNoExamplesToALedgerThatHasRecords() throws IOException {
    Files.writeString(folder.resolve("build.yaml"), "build: {}");
    NewFiles.Outcome outcome =
        NewFiles.start(folder, Map.of("kit/example.yaml", "x"), Map.of("README.md", "y"));
    assertThat(outcome.written()).containsExactly("README.md");
  }
}
