package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import kitwright.choice.Spars;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ways out of a shortage read back from JSON; the sums by hand stand in ChoiceTest. */
class OptionsJsonTest {
  @TempDir private Path folder;

  private JsonNode small() throws Exception {
    Files.writeString(folder.resolve("ledger.yaml"), Spars.decided(Spars.LEDGER));
    Run run = Run.in(folder, "options", "short", "--format", "json", "--today", "2026-03-02");
    assertThat(run.err()).isEmpty();
    return new ObjectMapper().readTree(run.out());
  }

  private static JsonNode way(JsonNode choice, String name) {
    for (JsonNode way : choice.get("ways")) {
      if (way.get("name").asText().equals(name)) {
        return way;
      }
    }
    throw new AssertionError("no way out “" + name + "” in " + choice);
  }

  private static List<String> texts(JsonNode array) {
    List<String> texts = new ArrayList<>();
    array.forEach(each -> texts.add(each.asText()));
    return texts;
  }

  @Test
  void moneyAndHoursAreThereWithAndWithoutTheirValue() throws Exception {
    JsonNode buy = way(small(), "buy");
    assertThat(buy.get("cash-now").asText()).isEqualTo("310.00 EUR");
    assertThat(buy.get("cost-low").asText()).isEqualTo("280.00 EUR");
    assertThat(buy.get("cost-high").asText()).isEqualTo("360.00 EUR");
    assertThat(buy.get("forecast").asText()).isEqualTo("510.00 EUR");
    assertThat(buy.get("claimable").asText()).isEqualTo("310.00 EUR");
    assertThat(buy.get("own-hours").decimalValue()).isEqualByComparingTo("2");
    assertThat(buy.get("own-hours-worth").asText()).isEqualTo("28.00 EUR");
    assertThat(buy.get("cost-with-hours").asText()).isEqualTo("338.00 EUR");
  }

  @Test
  void daysTellWhatIsHeldAndWhenTheBoatIsLaunched() throws Exception {
    JsonNode choice = small();
    assertThat(choice.get("launch-if-here").asText()).isEqualTo("2026-03-31");
    assertThat(choice.get("needed-by").asText()).isEqualTo("2026-03-25");
    JsonNode wait = way(choice, "wait");
    assertThat(wait.get("arrives").asText()).isEqualTo("2026-04-20");
    assertThat(wait.get("delays").asText()).isEqualTo("plane");
    assertThat(wait.get("delays-days").asLong()).isEqualTo(49);
    assertThat(wait.get("launch").asText()).isEqualTo("2026-04-24");
    assertThat(wait.get("launch-later").asLong()).isEqualTo(24);
    JsonNode buy = way(choice, "buy");
    assertThat(buy.get("float-used").decimalValue()).isEqualByComparingTo("10.25");
    assertThat(buy.get("float-left").decimalValue()).isEqualByComparingTo("6.75");
  }

  @Test
  void offCutsAndSignaturesAreNamed() throws Exception {
    JsonNode substitute = way(small(), "substitute");
    JsonNode taken = substitute.get("takes").get(0);
    assertThat(taken.get("thing").asText()).isEqualTo("larch-a");
    assertThat(taken.get("qty").asText()).isEqualTo("4 each");
    assertThat(taken.get("left").asText()).isEqualTo("1 each");
    assertThat(texts(taken.get("meant-for"))).containsExactly("Locker fronts");
    assertThat(texts(substitute.get("signers"))).containsExactly("A. Osterlund");
    assertThat(substitute.get("sign-by").asText()).isEqualTo("2026-03-27");
    assertThat(texts(substitute.get("lacks"))).contains("no assessment", "nobody has signed");
  }

  @Test
  void theBeatenOneIsMarkedAndWhatWouldTurnTheChoiceIsSaid() throws Exception {
    JsonNode choice = small();
    JsonNode dear = way(choice, "dear");
    assertThat(dear.get("beaten-by").asText()).isEqualTo("buy");
    assertThat(dear.get("because").asText()).isEqualTo("cheaper, here sooner");
    assertThat(way(choice, "buy").has("beaten-by")).isFalse();
    JsonNode turn = choice.get("turning").get(0);
    assertThat(turn.get("way").asText()).isEqualTo("buy");
    assertThat(turn.get("against").asText()).isEqualTo("wait");
    assertThat(turn.get("day-worth-above").asText()).isEqualTo("14.08 EUR");
    assertThat(choice.get("decided").asText()).isEqualTo("buy");
  }

  @Test
  void theVerdictOfTheDemonstrationsPlywoodIsThereWithItsMarginAndWeight() throws Exception {
    Run run =
        Run.in(
            Path.of("").toAbsolutePath(),
            "options",
            "short-2026-02-18-ply-9",
            "--format",
            "json",
            "--today",
            "2026-03-29");
    JsonNode substitute = way(new ObjectMapper().readTree(run.out()), "substitute");
    assertThat(substitute.get("strength").asText()).isEqualTo("fail");
    assertThat(substitute.get("governing").asText()).contains("first failure");
    assertThat(substitute.get("margin").asDouble()).isNegative();
    assertThat(substitute.get("mass-ratio").asDouble()).isGreaterThan(1);
  }
}
