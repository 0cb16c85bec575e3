package kitwright.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The jar's classes are not those that the compiler wrote: each lambda was made a class, and the
 * command line library got the frames by which Java verifies it.
 */
class PackedClassesIT {
  private static final Path JAR = Path.of("target/kitwright-0.1.0.jar").toAbsolutePath();
  private static final Path COMPILED = Path.of("target/classes").toAbsolutePath();

  @TempDir private Path folder;

  @Test
  void eachOfThemIsSoundToJava() throws Exception {
    List<String> names = rewritten();
    assertThat(names).contains("picocli.CommandLine");
    assertThat(names).anyMatch(name -> name.matches(".*\\$\\$\\d+")).hasSizeGreaterThan(3000);
    ClassLoader java = ClassLoader.getPlatformClassLoader();
    try (URLClassLoader jar = new URLClassLoader(new URL[] {JAR.toUri().toURL()}, java)) {
      for (String name : names) {
        assertThat(Class.forName(name, true, jar)).isNotNull(); // verifies it
      }
    }
  }

  private static List<String> rewritten() throws IOException {
    try (JarFile jar = new JarFile(JAR.toFile())) {
      return jar.stream()
          .map(ZipEntry::getName)
          .filter(name -> name.startsWith("kitwright/") || name.startsWith("picocli/"))
          .filter(name -> name.endsWith(".class"))
          .map(name -> name.substring(0, name.length() - ".class".length()).replace('/', '.'))
          .toList();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "report --out told",
        "check --fail-on never",
        "check --fail-on never --format json",
        "ahead",
        "cut",
        "budget",
        "assess bowsprit"
      })
  void theyTellWhatTheCompiledOnesTell(String words) throws Exception {
    String with = words + " --today 2026-03-29 --ledger " + Path.of("ledger").toAbsolutePath();
    assertThat(told(JAR.toString(), with))
        .isEqualTo(told(COMPILED + File.pathSeparator + JAR, with))
        .isNotEmpty();
  }

  /** All that a command prints and writes. */
  private String told(String classPath, String words) throws Exception {
    Path here = Files.createTempDirectory(folder, "told");
    Path printed = here.resolve("printed.txt");
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    List<String> command =
        new ArrayList<>(
            List.of(java, "-XX:TieredStopAtLevel=1", "-cp", classPath, "kitwright.cli.Main"));
    command.addAll(List.of(words.split(" ", -1)));
    Process run =
        new ProcessBuilder(command)
            .directory(here.toFile())
            .redirectErrorStream(true)
            .redirectOutput(printed.toFile())
            .start();
    assertThat(run.waitFor()).as(Files.readString(printed, UTF_8)).isZero();
    StringBuilder all = new StringBuilder();
    try (var files = Files.walk(here)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        all.append(here.relativize(file)).append('\n').append(Files.readString(file, UTF_8));
      }
    }
    return all.toString().replace(here.toString(), "here");
  }
}
