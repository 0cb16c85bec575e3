package kitwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.RulePage;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every rule's page is true: its first sample fires at the marked lines, its second is silent. */
class RulePagesTest {
  private static final Path PAGES = Path.of("src/main/resources/kitwright/rules");

  /** Faults of files, and of the program: no sample of a ledger shows them. */
  private static final Set<String> ABOUT_FILES =
      Set.of(
          "document-not-written",
          "file-passed-over",
          "file-unreadable",
          "link-not-followed",
          "public-photo-unreadable",
          "public-words-private",
          "report-broken",
          "rule-broken",
          "template-broken");

  private static final Pattern SAMPLE = Pattern.compile("(?s)```yaml\\n(.*?)```");
  private static final Pattern TODAY = Pattern.compile("(?m)^Today: (\\S+)$");

  @TestFactory
  Stream<DynamicTest> everyPageFiresWhereMarkedAndIsSilentOnTheNearMiss() throws IOException {
    return pages()
        .filter(page -> !ABOUT_FILES.contains(name(page)))
        .map(page -> DynamicTest.dynamicTest(name(page), () -> run(page)));
  }

  @Test
  void everyRuleHasAPageAndEveryPageARule() throws IOException {
    assertThat(pages().map(RulePagesTest::name))
        .containsExactlyInAnyOrderElementsOf(RuleNames.all());
  }

  @Test
  void pagesSayInOneSentenceWhatTheRuleFinds() throws IOException {
    for (Path page : pages().toList()) {
      RulePage read = RulePages.of(name(page)).orElseThrow();
      assertThat(read.summary()).as(name(page)).endsWith(".").hasSizeLessThan(200);
    }
  }

  private static void run(Path page) throws IOException {
    String text = Files.readString(page);
    Matcher today = TODAY.matcher(text);
    LocalDate day = today.find() ? LocalDate.parse(today.group(1)) : Sample.TODAY;
    Matcher samples = SAMPLE.matcher(text);
    List<String> found = new ArrayList<>();
    while (samples.find()) {
      found.add(samples.group(1));
    }
    assertThat(found).as("samples of the page").hasSize(2);
    assertThat(lines(name(page), found.get(0), day)).isEqualTo(marked(found.get(0))).isNotEmpty();
    assertThat(lines(name(page), found.get(1), day)).as("lines of the near miss").isEmpty();
  }

  private static List<Integer> lines(String rule, String yaml, LocalDate today) {
    Findings out = new Findings();
    Optional<Ledger> ledger = Sample.read(yaml, out);
    ledger.ifPresent(
        read -> {
          if (Check.rules().stream().anyMatch(each -> each.name().equals(rule))) {
            assertThat(out.inOrder()).as("faults in reading the sample").isEmpty();
          }
          Check.examine(Facts.of(read, today), out);
        });
    return out.inOrder().stream()
        .filter(finding -> finding.rule().equals(rule))
        .map(Finding::at)
        .map(Sample::lineOf)
        .distinct()
        .sorted()
        .toList();
  }

  private static List<Integer> marked(String yaml) {
    List<String> lines = yaml.lines().toList();
    return Stream.iterate(1, i -> i <= lines.size(), i -> i + 1)
        .filter(i -> lines.get(i - 1).contains("# <- here"))
        .toList();
  }

  private static Stream<Path> pages() throws IOException {
    try (Stream<Path> all = Files.list(PAGES)) {
      return all.sorted().toList().stream();
    }
  }

  private static String name(Path page) {
    return page.getFileName().toString().replaceFirst("\\.md$", "");
  }
}
