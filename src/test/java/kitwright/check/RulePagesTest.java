package kitwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.RulePage;
import kitwright.finding.Severity;
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

  /** What has happened stays told, or the mend is made with a key that only its owner has. */
  private static final Set<String> NOT_MENDED_IN_THE_LEDGER =
      Set.of(
          "hold-point-passed",
          "signature-forged",
          "signature-unchecked",
          "signature-without-key",
          "signed-results-differ");

  private static final Pattern MENDED = Pattern.compile("(?s)## Mended\\n(.*?)```diff\\n(.*?)```");
  private static final Pattern NEXT = Pattern.compile("`([a-z-]+)`");
  private static final Pattern SAMPLE = Pattern.compile("(?s)```yaml\\n(.*?)```");
  private static final Pattern TODAY = Pattern.compile("(?m)^Today: (\\S+)$");

  @TestFactory
  Stream<DynamicTest> everyPageFiresWhereMarkedAndIsSilentOnTheNearMiss() throws IOException {
    return pages()
        .filter(page -> !ABOUT_FILES.contains(name(page)))
        .map(page -> DynamicTest.dynamicTest(name(page), () -> run(page)));
  }

  /** Followed as it is written, a mend silences its rule and brings nothing graver than a note. */
  @TestFactory
  Stream<DynamicTest> everyMendShownSilencesItsRuleAndBringsNothingWorse() throws IOException {
    return pages()
        .filter(page -> !ABOUT_FILES.contains(name(page)))
        .filter(page -> !NOT_MENDED_IN_THE_LEDGER.contains(name(page)))
        .map(page -> DynamicTest.dynamicTest(name(page), () -> mend(page)));
  }

  private static void mend(Path page) throws IOException {
    String text = Files.readString(page);
    Matcher mended = MENDED.matcher(text);
    assertThat(mended.find()).as("the page shows what its mend makes of the sample").isTrue();
    Matcher sample = SAMPLE.matcher(text);
    assertThat(sample.find()).isTrue();
    LocalDate day = day(text);
    String fires = sample.group(1).replaceAll("(?m) *# <- here$", "");
    Map<String, Integer> before = graver(found(fires, day));
    List<Finding> after = found(Hunk.of(mended.group(2)).in(fires), day);
    assertThat(after).extracting(Finding::rule).doesNotContain(name(page));
    Map<String, Integer> worse = graver(after);
    Matcher next = NEXT.matcher(mended.group(1));
    while (next.find()) {
      assertThat(worse.remove(next.group(1))).as(next.group(1) + " is next").isNotNull();
    }
    worse.forEach(
        (rule, count) ->
            assertThat(count).as(rule).isLessThanOrEqualTo(before.getOrDefault(rule, 0)));
  }

  private static Map<String, Integer> graver(List<Finding> all) {
    Map<String, Integer> counts = new TreeMap<>();
    all.stream()
        .filter(finding -> finding.severity() != Severity.NOTE)
        .forEach(finding -> counts.merge(finding.rule(), 1, Integer::sum));
    return counts;
  }

  private static List<Finding> found(String yaml, LocalDate day) {
    Findings out = new Findings();
    Sample.read(yaml, out).ifPresent(read -> Check.examine(Facts.of(read, day), out));
    return out.inOrder();
  }

  private static LocalDate day(String page) {
    Matcher today = TODAY.matcher(page);
    return today.find() ? LocalDate.parse(today.group(1)) : Sample.TODAY;
  }

  /** Lines as a diff shows them: left out behind “-”, new behind “+”, as they were behind “ ”. */
  private record Hunk(List<String> lines) {
    static Hunk of(String diff) {
      return new Hunk(diff.lines().toList());
    }

    String in(String text) {
      List<String> all = new ArrayList<>(text.lines().toList());
      int at = 0;
      for (String line : lines) {
        String rest = line.substring(1);
        if (line.startsWith("+")) {
          all.add(at++, rest);
        } else {
          int found = all.subList(at, all.size()).indexOf(rest);
          assertThat(found).as("the sample has the line: " + rest).isNotNegative();
          at += found;
          if (line.startsWith("-")) {
            all.remove(at);
          } else {
            at++;
          }
        }
      }
      return String.join("\n", all) + "\n";
    }
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
    LocalDate day = day(text);
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
