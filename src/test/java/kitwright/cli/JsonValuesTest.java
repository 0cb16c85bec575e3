package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** No program has to read a number, a sum or a day out of words: they stand beside them. */
class JsonValuesTest {
  private static final String[] COMMANDS = {
    "ahead",
    "budget",
    "claim",
    "claim claim-2026-02-20",
    "claim claim-2026-02-20 --since",
    "claim claim-2026-02-20 --reminder",
    "cut berth-bearers",
    "kit",
    "kit ply-9",
    "materials",
    "open",
    "options",
    "options short-2026-03-20-board-winch",
    "assess bowsprit",
    "week",
    "week --audience public",
    "report budget",
    "report shortages",
    "report tools"
  };

  /** People are shown so many figures of a strength. */
  private static final int FIGURES = 4;

  /** What is nothing but a value: a number, one with a unit or currency, a day in words. */
  private static final Pattern NUMBER =
      Pattern.compile("[−+-]?[0-9][0-9\u00a0]*(?:\\.[0-9]+)?(?:[ \u00a0][^ \u00a0]{1,6})?");

  private static final Pattern SPOKEN =
      Pattern.compile("(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun)[ \u00a0][0-9]+ \\p{Alpha}+ [0-9]{4}");

  @Test
  void whatIsAValueStandsAsOne() throws IOException {
    Set<String> bare = new TreeSet<>();
    List<String> wrong = new ArrayList<>();
    for (String command : COMMANDS) {
      String[] words = (command + " --format json --today 2026-03-29").split(" ", -1);
      JsonNode told = new ObjectMapper().readTree(Run.in(Path.of(""), words).out());
      look(command, told, bare, wrong);
    }
    assertThat(bare).isEmpty();
    assertThat(wrong).isEmpty();
  }

  private static void look(String path, JsonNode node, Set<String> bare, List<String> wrong) {
    if (node.isArray()) {
      node.forEach(each -> look(path + "[]", each, bare, wrong));
    }
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      String name = member.getKey();
      String at = path + " " + name;
      JsonNode said = member.getValue();
      boolean told =
          node.properties().stream().anyMatch(each -> each.getKey().startsWith(name + "."));
      if (said.isTextual() && isBare(said.asText()) && !told) {
        bare.add(at + ": " + said.asText());
      }
      if (said.isTextual() && node.has(name + ".number")) {
        JsonNode number = node.get(name + ".number");
        JsonNode first = number.isArray() ? number.path(0) : number;
        agrees(at, said.asText(), first.decimalValue(), wrong);
      }
      look(at, said, bare, wrong);
    }
  }

  private static boolean isBare(String said) {
    return NUMBER.matcher(said).matches() || SPOKEN.matcher(said).matches();
  }

  /** The first number of the words is the number beside them; “late by 8” is below nothing. */
  private static void agrees(String at, String said, BigDecimal number, List<String> wrong) {
    Matcher first = Pattern.compile("[0-9][0-9\u00a0]*(?:\\.[0-9]+)?").matcher(said);
    if (first.find()) {
      BigDecimal told = new BigDecimal(first.group().replace("\u00a0", ""));
      BigDecimal rounded = number.abs().round(new MathContext(FIGURES, RoundingMode.HALF_EVEN));
      if (told.compareTo(number.abs()) != 0 && told.compareTo(rounded) != 0) {
        wrong.add(at + ": " + said + " against " + number);
      }
    }
  }
}
