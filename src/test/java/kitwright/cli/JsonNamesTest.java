package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import kitwright.Golden;
import org.junit.jupiter.api.Test;

/**
 * The names that other programs read, of the demonstration. They are a promise: one may be added,
 * none may go or change what it means.
 */
class JsonNamesTest {
  private static final String[] COMMANDS = {
    "open",
    "ahead --range --late d-fourth=14d",
    "tomorrow",
    "budget",
    "budget --line tools",
    "kit",
    "kit ply-9",
    "claim",
    "claim claim-2026-02-20",
    "options",
    "options short-2026-03-20-board-winch",
    "cut",
    "cut berth-bearers",
    "cut locker-fronts",
    "materials",
    "assess",
    "week",
    "week --audience public",
    "rules",
    "report list",
    "report shortages",
    "report tools"
  };

  @Test
  void namesStay() throws IOException {
    StringBuilder out = new StringBuilder();
    for (String command : COMMANDS) {
      String[] words = (command + " --format json --today 2026-03-29").split(" ", -1);
      JsonNode json = new ObjectMapper().readTree(Run.in(Path.of(""), words).out());
      TreeSet<String> names = new TreeSet<>();
      names("", json, names);
      out.append(command).append('\n');
      names.forEach(name -> out.append("  ").append(name).append('\n'));
    }
    Golden.check("cli/json-names.txt", out.toString());
  }

  private static void names(String path, JsonNode node, Set<String> names) {
    if (node.isArray()) {
      node.forEach(each -> names(path + "[]", each, names));
    } else if (node.isObject() && !path.endsWith(".criticality") && !path.endsWith(".values")) {
      node.fields()
          .forEachRemaining(
              each -> {
                names.add(path + "." + each.getKey());
                names(path + "." + each.getKey(), each.getValue(), names);
              });
    }
  }

  @Test
  void everyFormTellsTheSameFigures() throws IOException {
    JsonNode json =
        new ObjectMapper()
            .readTree(
                Run.in(Path.of(""), "budget", "--format", "json", "--today", "2026-03-29").out());
    String text = Run.in(Path.of(""), "budget", "--today", "2026-03-29").out();
    String markdown =
        Run.in(Path.of(""), "budget", "--format", "markdown", "--today", "2026-03-29").out();
    assertThat(json.get("lines")).isNotEmpty();
    for (JsonNode line : json.get("lines")) {
      for (String name : new String[] {"budget", "paid", "to-come", "forecast"}) {
        String amount = line.get(name).asText().replaceFirst(" [A-Z]{3}$", "");
        assertThat(plain(text)).contains(amount);
        assertThat(plain(markdown)).contains(amount);
      }
    }
  }

  private static String plain(String text) {
    return text.replaceAll("(?<=\\d)\u00a0(?=\\d)", "").replace('−', '-');
  }
}
