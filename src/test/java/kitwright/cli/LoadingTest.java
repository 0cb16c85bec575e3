package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.Yaml;
import picocli.CommandLine;

/** What a run loads, told by a Java of its own: facts are worked out only when they are asked. */
class LoadingTest {
  private static final String LEDGER =
      """
      build: {name: T, currency: EUR, started: 2026-01-05}
      parties:
        - {id: kit-maker, name: Redshank, role: supplier}
        - {id: me, name: Nora, role: builder, may-sign: [finish]}
      kit: [{id: plank, what: plank, qty: 4, price: 9 EUR}]
      deliveries: [{id: d, received: 2026-01-22, from: kit-maker, counted: [{item: plank, qty: 3}]}]
      shortages: [{id: s, item: plank, qty: 1, found: 2026-01-24, cause: not-packed}]
      claims: [{id: c, against: kit-maker, shortages: [s], remedy: credit, sent: 2026-02-01}]
      tasks: [{id: t, what: lay it, takes: 2 d, uses: [{item: plank, qty: 4}]}]
      substitutions: [{id: sub, instead-of: {what: paint, qty: 1 l}, why: here, grade: finish, sign-offs: [{by: me, on: 2026-02-01}]}]
      """;

  @TempDir private Path folder;

  private List<String> loaded(String... words) throws IOException, InterruptedException {
    Files.writeString(folder.resolve("ledger.yaml"), LEDGER);
    Path list = folder.resolve("loaded.txt");
    List<String> command =
        Stream.concat(
                Stream.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-XX:TieredStopAtLevel=1",
                    "-Xlog:class+load:file=" + list + "::filecount=0",
                    "-cp",
                    classPath(),
                    "kitwright.cli.Main"),
                Stream.of(words))
            .toList();
    Process run =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("out.txt").toFile())
            .start();
    assertThat(run.waitFor()).as(Files.readString(folder.resolve("out.txt"))).isZero();
    return Files.readAllLines(list).stream()
        .map(line -> line.replaceFirst("^\\[.*\\] *", "").replaceFirst(" .*", ""))
        .toList();
  }

  private static String classPath() {
    return Stream.of(
            Main.class,
            CommandLine.class,
            Yaml.class,
            JsonFactory.class,
            Node.class,
            TablesExtension.class)
        .map(each -> each.getProtectionDomain().getCodeSource().getLocation().getPath())
        .collect(Collectors.joining(java.io.File.pathSeparator));
  }

  @Test
  void thePlainLetterOfAClaimLoadsNoMechanics() throws IOException, InterruptedException {
    List<String> loaded = loaded("claim", "c", "--today", "2026-03-01");
    assertThat(loaded).contains("kitwright.claim.ClaimStandings");
    assertThat(loaded)
        .filteredOn(
            each ->
                each.startsWith("kitwright.mechanics.")
                    || each.startsWith("kitwright.assessment.Assessments")
                    || each.startsWith("kitwright.assessment.Examiner"))
        .isEmpty();
  }

  @Test
  void theLetterOfAClaimIsToldByItsOwnDayAndItsOwnItems() throws IOException, InterruptedException {
    for (String claim : List.of("claim-2026-01-26", "claim-2026-01-30")) {
      List<String> loaded =
          loaded(
              "claim",
              claim,
              "--ledger",
              Path.of("ledger").toAbsolutePath().toString(),
              "--today",
              "2026-03-29");
      assertThat(loaded).contains("kitwright.report.claim.ClaimLetter");
      assertThat(loaded)
          .as("what was proposed later, and what answers other shortages, is not assessed")
          .noneMatch(
              each ->
                  each.startsWith("kitwright.mechanics.")
                      || each.startsWith("kitwright.assessment.Examiner"));
    }
  }

  @Test
  void theVersionReadsNoRecordAndLoadsNoRoomOfTheMatter() throws IOException, InterruptedException {
    assertThat(loaded("--version"))
        .filteredOn(each -> each.startsWith("kitwright."))
        .allMatch(
            each ->
                each.startsWith("kitwright.cli.")
                    || each.startsWith("kitwright.finding.")
                    || each.startsWith("kitwright.value."))
        .noneMatch(each -> each.contains("$$Lambda"));
  }
}
