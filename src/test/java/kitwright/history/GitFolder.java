package kitwright.history;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A repository made by the git program itself, for tests. */
final class GitFolder {
  private final Path top;

  private GitFolder(Path top) {
    this.top = top;
  }

  static GitFolder made(Path top) throws Exception {
    GitFolder folder = new GitFolder(Files.createDirectories(top));
    folder.git("init", "-q", "-b", "main");
    return folder;
  }

  static GitFolder at(Path top) {
    return new GitFolder(top);
  }

  Path top() {
    return top;
  }

  GitFolder write(String file, String text) throws IOException {
    Path path = top.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text, UTF_8);
    return this;
  }

  /** Commits everything, as somebody, at noon of a day. */
  GitFolder commit(String by, String day, String subject) throws Exception {
    git("add", "--all");
    return run(by, day, List.of("git", "commit", "-q", "--allow-empty", "-m", subject));
  }

  GitFolder git(String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of("git"));
    command.addAll(List.of(words));
    return run("Nora", "2026-03-21", command);
  }

  /** Runs another program beside the repository. */
  GitFolder ran(String... command) throws Exception {
    return run("Nora", "2026-03-21", List.of(command));
  }

  private GitFolder run(String by, String day, List<String> command) throws Exception {
    ProcessBuilder builder = new ProcessBuilder(command).directory(top.toFile());
    var environment = builder.environment();
    for (String who : List.of("AUTHOR", "COMMITTER")) {
      environment.put("GIT_" + who + "_NAME", by);
      environment.put("GIT_" + who + "_EMAIL", "somebody@example.org");
      environment.put("GIT_" + who + "_DATE", day + "T12:00:00+0000");
    }
    environment.put("GIT_CONFIG_GLOBAL", "/dev/null");
    environment.put("GIT_CONFIG_SYSTEM", "/dev/null");
    Path log = Files.createTempFile("git", ".txt");
    Process process = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    int code = process.waitFor();
    String said = Files.readString(log, UTF_8);
    Files.delete(log);
    assertThat(code).as("%s: %s", command, said).isZero();
    return this;
  }
}
