package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import kitwright.OutsideProgram;
import kitwright.cli.Run;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A ledger as {@code start} lays it out, in the hands of a real YAML language server (the npm
 * package yaml-language-server), and its schema in those of a second validator (ajv). {@code
 * .ci/run} installs both into {@code target/editor}.
 */
class EditorIT {
  private static final Path EDITOR = Path.of("target/editor").toAbsolutePath();

  private static final String TEXT =
      """
      # yaml-language-server: $schema=../.schema/ledger.json
      shortages:
        - id: short-1
          itme: plank
          qty: 4 each
          found: 2026-03-02
          cause: rotten
          re
      """;

  @TempDir Path ledger;

  @BeforeEach
  void aLedger() {
    OutsideProgram.needed("node", "nodejs");
    OutsideProgram.neededIn(EDITOR.resolve("node_modules/yaml-language-server"), ".ci/run");
    assertThat(Run.in(ledger, "start", ".").code()).isZero();
  }

  @Test
  void aMisspeltKeyIsUnderlinedKeysAreCompletedAndTheirMeaningShown() throws IOException {
    Path file = ledger.resolve("shortages/mine.yaml");
    List<String> command =
        List.of(
            "node",
            EDITOR.resolve("node_modules/yaml-language-server/bin/yaml-language-server").toString(),
            "--stdio");
    try (LanguageServer server = LanguageServer.start(command, ledger)) {
      JsonNode underlined = server.open(file, TEXT);
      assertThat(told(underlined))
          .anyMatch(line -> line.startsWith("3: ") && line.contains("itme"))
          .anyMatch(line -> line.startsWith("6: ") && line.contains("not-packed"))
          .noneMatch(line -> line.startsWith("4: ") || line.startsWith("5: "));
      assertThat(server.at("hover", file, 4, 5).toString()).contains("how much is missing");
      JsonNode offered = server.at("completion", file, 7, 6);
      assertThat(offered.findValuesAsText("label")).contains("remark", "evidence", "decided");
    }
  }

  @Test
  void everyFileThatStartLaysDownIsWithoutAnUnderline() throws IOException {
    List<String> command =
        List.of(
            "node",
            EDITOR.resolve("node_modules/yaml-language-server/bin/yaml-language-server").toString(),
            "--stdio");
    try (LanguageServer server = LanguageServer.start(command, ledger);
        Stream<Path> files = Files.walk(ledger)) {
      for (Path file : files.filter(each -> each.toString().endsWith(".yaml")).sorted().toList()) {
        assertThat(told(server.open(file, Files.readString(file)))).as(file.toString()).isEmpty();
      }
    }
  }

  private static List<String> told(JsonNode diagnostics) {
    return StreamSupport.stream(diagnostics.spliterator(), false)
        .map(
            each ->
                each.path("range").path("start").path("line").asInt()
                    + ": "
                    + each.path("message").asText())
        .toList();
  }

  /** The demonstration, and files with one fault each, judged alike by both validators. */
  @Test
  void aSecondValidatorAgrees() throws Exception {
    ArrayNode files = new ObjectMapper().createArrayNode();
    try (Stream<Path> all = Files.walk(Path.of("ledger"))) {
      all.filter(file -> file.toString().endsWith(".yaml"))
          .sorted()
          .forEach(file -> files.add(YamlAsJson.of(text(file))));
    }
    int sound = files.size();
    for (String faulty :
        List.of(
            "kit: [{id: a, what: b, qty: many}]\n",
            "kit: [{id: a, what: b, qty: 4, colour: red}]\n",
            "kit: [{id: a, qty: 4}]\n",
            "shortages: [{id: s, item: a, qty: 1, found: 2026-13-01, cause: wrong}]\n",
            "claims: [{id: c, against: y, remedy: goods}]\n",
            "unknown: []\n")) {
      files.add(YamlAsJson.of(faulty));
    }
    Path schema = Files.writeString(ledger.resolve("schema.json"), KeySchema.text());
    Path data = Files.writeString(ledger.resolve("files.json"), files.toString());
    String script =
        "const A=require('"
            + EDITOR.resolve("node_modules/ajv/dist/2020")
            + "').default;const f=require('fs');const v=new"
            + " A({strict:false,allowUnionTypes:true}).compile(JSON.parse(f.readFileSync('"
            + schema
            + "')));console.log(JSON.parse(f.readFileSync('"
            + data
            + "')).map(x=>v(x)?1:0).join(''))";
    Process node = new ProcessBuilder("node", "-e", script).redirectErrorStream(true).start();
    String said = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    assertThat(node.waitFor()).as(said).isZero();
    assertThat(said).isEqualTo("1".repeat(sound) + "0".repeat(files.size() - sound));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
