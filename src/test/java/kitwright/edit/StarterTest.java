package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import kitwright.check.Check;
import kitwright.finding.Findings;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class StarterTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  @ParameterizedTest
  @ValueSource(strings = {"2026-03-02", "2028-02-29", "2031-12-31"})
  void readsAndChecksCleanlyFromTheDayItIsStarted(LocalDate today) {
    Findings out = new Findings();
    Ledger ledger = read(Starter.files("Dunlin", today), out);
    Check.examine(Facts.of(ledger, today), out);
    assertThat(out.inOrder()).isEmpty();
    Check.examine(Facts.of(ledger, today.plusDays(60)), out);
    assertThat(out.inOrder()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void showsEveryKind(Kind kind) {
    Ledger ledger = read(Starter.files("Dunlin", DAY), new Findings());
    assertThat(ledger.entries(kind)).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Dunlin", "Nora's \"boat\": #1", "\u202Eevil\n", "- x", "1e400", "ß"})
  void takesAnyName(String name) {
    assertThat(read(Starter.files(name, DAY), new Findings()).build().name())
        .isEqualTo(name.strip());
  }

  /** The schema’s path is written from where each file lies. */
  @Test
  void namesTheSchemaToEditors() {
    Map<String, String> files = Starter.files("Dunlin", DAY);
    assertThat(files).containsEntry(Starter.SCHEMA, KeySchema.text());
    assertThat(files.get("build.yaml"))
        .startsWith("# yaml-language-server: $schema=.schema/ledger.json\n");
    assertThat(files.get("kit/example.yaml"))
        .startsWith("# yaml-language-server: $schema=../.schema/ledger.json\n");
    assertThat(files.get("log/example.md")).startsWith("---\n");
  }

  private static Ledger read(Map<String, String> files, Findings out) {
    List<SourceFile> sources =
        files.entrySet().stream()
            .filter(file -> !file.getKey().startsWith("."))
            .filter(file -> file.getKey().matches(".*\\.(yaml|md)"))
            .map(file -> new SourceFile(file.getKey(), file.getValue()))
            .toList();
    return LedgerReader.read(sources, paths -> evidence(paths, files), out).orElseThrow();
  }

  private static Map<String, EvidenceFile> evidence(List<String> paths, Map<String, String> files) {
    return paths.stream()
        .filter(files::containsKey)
        .collect(
            Collectors.toMap(
                path -> path,
                path ->
                    new EvidenceFile(
                        EvidenceFile.State.PRESENT, java.util.Optional.of("0".repeat(64))),
                (a, b) -> a,
                LinkedHashMap::new));
  }
}
