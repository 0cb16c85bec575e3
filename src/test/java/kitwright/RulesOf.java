package kitwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import kitwright.check.Check;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Rule;

/**
 * What the rules of a room say of the samples on their pages, whole: read it aloud before accepting
 * it. The near misses of the pages are silent.
 */
public final class RulesOf {
  private static final Pattern SAMPLE = Pattern.compile("(?s)```yaml\\n(.*?)```");
  private static final Pattern TODAY = Pattern.compile("(?m)^Today: (\\S+)$");

  private RulesOf() {}

  /** Holds the words of all rules in the room of a class to {@code golden/rules/ROOM.txt}. */
  public static void room(Class<?> test) {
    StringBuilder told = new StringBuilder();
    Check.rules().stream()
        .filter(rule -> file(rule.getClass()).equals(file(test)))
        .forEach(rule -> told.append(told(rule)));
    Golden.check(file(test), told.toString());
    Golden.checkFolder(
        "rules",
        Check.rules().stream().map(rule -> file(rule.getClass())).collect(Collectors.toSet()));
  }

  private static String file(Class<?> in) {
    return "rules/" + in.getPackageName().split("\\.")[1] + ".txt";
  }

  private static String told(Rule rule) {
    String page = page(rule.name());
    Matcher today = TODAY.matcher(page);
    LocalDate day = today.find() ? LocalDate.parse(today.group(1)) : Sample.TODAY;
    List<String> samples = new ArrayList<>();
    Matcher found = SAMPLE.matcher(page);
    while (found.find()) {
      samples.add(found.group(1));
    }
    assertThat(found(rule, samples.get(1), day)).as("near miss of " + rule.name()).isEmpty();
    StringBuilder told = new StringBuilder();
    for (Finding finding : found(rule, samples.get(0), day)) {
      told.append(
          """
          %s, %s, line %d, column %d
            %s
            %s
            %s
            %s

          """
              .formatted(
                  finding.rule(),
                  finding.severity().name().toLowerCase(java.util.Locale.ROOT),
                  Sample.lineOf(finding.at()),
                  finding.at().column(),
                  finding.what(),
                  finding.follows(),
                  finding.mend(),
                  finding.records()));
    }
    return told.toString();
  }

  private static List<Finding> found(Rule rule, String yaml, LocalDate day) {
    return Sample.findings(rule, Sample.read(yaml, new Findings()).orElseThrow(), day);
  }

  private static String page(String rule) {
    Path page = Path.of("src/main/resources/kitwright/rules").resolve(rule + ".md");
    try {
      assertThat(Files.exists(page)).as("the page of " + rule).isTrue();
      return Files.readString(page);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
