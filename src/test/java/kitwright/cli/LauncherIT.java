package kitwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The sh launcher, as a person meets it: by a link on the PATH, in odd folders, without a locale.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {
  private static final Path LAUNCHER = Path.of("target/kitwright").toAbsolutePath();

  @TempDir Path folder;

  private record Ran(int code, String out) {}

  private Ran run(Map<String, String> locale, Path directory, Path program, String... words)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("/bin/sh", program.toString()));
    command.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(command).directory(directory.toFile());
    builder.environment().keySet().removeAll(List.of("LANG", "LC_ALL", "LC_CTYPE"));
    builder.environment().putAll(locale);
    Path log = folder.resolve("out.txt");
    Process process = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    int code = process.waitFor();
    return new Ran(code, Files.readString(log, UTF_8));
  }

  private Path link(Path at, Path to) throws IOException {
    Files.createDirectories(at.getParent());
    return Files.createSymbolicLink(at, to);
  }

  @Test
  void itStartsThroughALink() throws Exception {
    Path link = link(folder.resolve("bin/kitwright"), LAUNCHER);
    assertThat(run(Map.of(), folder, link, "--version").code()).isZero();
  }

  @Test
  void itStartsThroughALinkToARelativeLink() throws Exception {
    Path near = link(folder.resolve("opt/kitwright"), folder.resolve("opt").relativize(LAUNCHER));
    Path far = link(folder.resolve("bin/kw"), Path.of("../opt").resolve(near.getFileName()));
    assertThat(run(Map.of(), folder, far, "--version").code()).isZero();
  }

  @Test
  void aLedgerInAFolderWithAnUmlautIsFoundWithoutALocale() throws Exception {
    for (Map<String, String> locale :
        List.of(Map.<String, String>of(), Map.of("LC_ALL", "C"), Map.of("LANG", "C.UTF-8"))) {
      Path ledger = Files.createDirectories(folder.resolve("Boot für Åse " + locale.size()));
      Files.writeString(
          ledger.resolve("büild.yaml"),
          """
          build: {name: Jolle Süd, currency: EUR, started: 2026-01-05, launch: 2026-09-26}
          tusk: [{id: 1}]
          """,
          UTF_8);
      Ran inside = run(locale, ledger, LAUNCHER, "check", "--today", "2026-03-29");
      assertThat(inside.out()).as("%s", locale).contains("büild.yaml:2:1");
      Ran named =
          run(
              locale,
              folder,
              LAUNCHER,
              "check",
              "--ledger",
              ledger.toString(),
              "--today",
              "2026-03-29");
      assertThat(named.out()).as("%s", locale).isEqualTo(inside.out());
    }
  }

  @Test
  void itStartsFromAFolderWithASpaceAndAnUmlaut() throws Exception {
    Path moved = Files.createDirectories(folder.resolve("Werkzeug für Boote"));
    for (String file :
        List.of("kitwright", "kitwright-0.1.0.jar", "kitwright.jsa", "kitwright.jsa.for")) {
      Path from = LAUNCHER.resolveSibling(file);
      if (Files.exists(from)) {
        Files.copy(from, moved.resolve(file));
      }
    }
    for (Map<String, String> locale : List.of(Map.<String, String>of(), Map.of("LC_ALL", "C"))) {
      Ran ran = run(locale, folder, moved.resolve("kitwright"), "--version");
      assertThat(ran.out()).as("%s", locale).contains("0.1.0");
      assertThat(ran.code()).isZero();
    }
  }
}
