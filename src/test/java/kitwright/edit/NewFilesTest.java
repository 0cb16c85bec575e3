package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

  @Test
  void addsNoExamplesToALedgerThatHasRecords() throws IOException {
    Files.writeString(folder.resolve("build.yaml"), "build: {}");
    NewFiles.Outcome outcome =
        NewFiles.start(folder, Map.of("kit/example.yaml", "x"), Map.of("README.md", "y"));
    assertThat(outcome.written()).containsExactly("README.md");
  }
}
