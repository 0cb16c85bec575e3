package kitwright.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import kitwright.OutsideProgram;
import kitwright.cli.Run;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The hook that is laid down, run by git itself before real commits. */
class GuardIT {
  private static final String BUILD = "build: {name: S, currency: EUR, started: 2026-01-05}\n";

  @TempDir Path temp;
  private GitFolder folder;

  @BeforeEach
  void aRepository() throws Exception {
    OutsideProgram.needed("git", "git");
    folder = GitFolder.made(temp.resolve("boat's yard"));
    folder.write("my ledger/build.yaml", BUILD);
    Path bin = Files.createDirectories(temp.resolve("bin"));
    Path program = bin.resolve("kitwright");
    Files.writeString(
        program,
        "#!/bin/sh\nexec '%s' -XX:TieredStopAtLevel=1 -cp '%s' kitwright.cli.Main \"$@\"\n"
            .formatted(
                Path.of(System.getProperty("java.home"), "bin", "java"),
                System.getProperty("java.class.path")));
    assertThat(program.toFile().setExecutable(true)).isTrue();
  }

  private Run guard() {
    return Run.in(folder.top().resolve("my ledger"), "guard", "--ledger", ".");
  }

  /** What a commit said, with its exit code at the end. */
  private String commit(String path, String... more) throws Exception {
    var command = new java.util.ArrayList<>(List.of("git", "commit", "-qm", "try"));
    command.addAll(List.of(more));
    ProcessBuilder builder =
        new ProcessBuilder(command).directory(folder.top().toFile()).redirectErrorStream(true);
    builder.environment().put("PATH", path);
    for (String who : List.of("AUTHOR", "COMMITTER")) {
      builder.environment().put("GIT_" + who + "_NAME", "Nora");
      builder.environment().put("GIT_" + who + "_EMAIL", "somebody@example.org");
    }
    Process git = builder.start();
    String said = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return said + "exit " + git.waitFor();
  }

  private String path() {
    return temp.resolve("bin") + ":" + System.getenv("PATH");
  }

  @Test
  void whatMustStopIsNotCommittedAndWhatIsStagedCounts() throws Exception {
    Run laid = guard();
    assertThat(laid.err()).isEmpty();
    assertThat(laid.out()).contains("new      ", "pre-commit", ".ci-example/check.sh");
    folder.write("my ledger/kit.yaml", "kit: [{id: a, what: plank, qty: many}]\n");
    folder.git("add", "--all");
    folder.write("my ledger/kit.yaml", "kit: [{id: a, what: plank, qty: 4}]\n");
    assertThat(commit(path())).contains("“many” is not a quantity").endsWith("exit 1");
    assertThat(commit(path(), "--all")).endsWith("exit 0");
  }

  @Test
  void withoutTheProgramNothingIsCommittedUnjudgedAndOneLineSaysWhy() throws Exception {
    guard();
    folder.git("add", "--all");
    assertThat(commit("/usr/bin:/bin"))
        .isEqualTo(
            "pre-commit: kitwright is not on the PATH, so nothing was judged and nothing"
                + " committed.\nexit 1");
  }

  /** Git commits nothing where its hook was killed. */
  @Test
  void aKilledHookCommitsNothing() throws Exception {
    guard();
    folder.git("add", "--all");
    Files.writeString(temp.resolve("bin/kitwright"), "#!/bin/sh\nkill -9 $$\n");
    assertThat(commit(path())).doesNotEndWith("exit 0");
  }

  @Test
  void aHookThatIsThereIsLeftAndToldWhatToAdd() throws Exception {
    Path hook = Files.createDirectories(folder.top().resolve(".git/hooks")).resolve("pre-commit");
    Files.writeString(hook, "#!/bin/sh\nexit 0\n");
    Run run = guard();
    assertThat(run.out())
        .contains("kept     ", "It is another’s.")
        .contains("kitwright check --staged --fail-on stop --ledger 'my ledger' || exit 1");
    assertThat(hook).hasContent("#!/bin/sh\nexit 0\n");
    Files.delete(hook);
    guard();
    assertThat(guard().out()).contains("kept     ").doesNotContain("another’s");
  }

  @Test
  void withoutGitOrWithoutFilesItIsRefusedInOneLine() throws Exception {
    Path plain = Files.createDirectories(temp.resolve("plain"));
    Files.writeString(plain.resolve("build.yaml"), BUILD);
    assertThat(Run.in(plain, "guard").err()).startsWith("kitwright: ").hasLineCount(1);
    GitFolder bare = GitFolder.made(temp.resolve("bare"));
    bare.git("config", "core.bare", "true").write("build.yaml", BUILD);
    assertThat(Run.in(bare.top(), "guard").err()).contains("without a work tree").hasLineCount(1);
    assertThat(plain.toFile().list()).containsExactly("build.yaml");
  }

  @Test
  void aFolderStartedInGitIsGuardedFromTheStart() {
    Run run = Run.in(folder.top(), "start", "new one");
    assertThat(run.out()).contains("pre-commit");
    assertThat(folder.top().resolve(".git/hooks/pre-commit")).content().contains("'new one'");
  }
}
