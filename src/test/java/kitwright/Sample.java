package kitwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.Rule;
import kitwright.ledger.SourceFile;
import kitwright.value.Place;

/** Small ledgers for tests, written as YAML where they are used. */
public final class Sample {
  /** The day on which samples are judged unless a test says otherwise. */
  public static final LocalDate TODAY = LocalDate.of(2026, 3, 2);

  private static final String BUILD =
      """
      build: {name: Sample, currency: EUR, started: 2026-01-05, launch: 2026-09-26}
      """;

  private static final String PARTIES =
      """
      parties:
        - {id: kit-maker, name: Redshank Kit Boats, role: supplier}
        - {id: office, name: A. Osterlund, role: designer, may-sign: [structural, systems, finish]}
        - {id: nora, name: Nora, role: builder, may-sign: [finish]}
        - {id: pell, name: Pell, role: lender}
      """;

  /** A log day is a file of its own; its name tells how many lines stand above it. */
  private static final String LOG = "log/below-line-";

  private Sample() {}

  /** Reads a sample, adding a build and the usual parties where it has none; must be faultless. */
  public static Ledger ledger(String yaml) {
    Findings faults = new Findings();
    Ledger ledger = read(yaml, faults).orElseThrow();
    assertThat(faults.inOrder()).as("faults of the sample").isEmpty();
    return ledger;
  }

  /** Reads a sample that may have faults. */
  public static Optional<Ledger> read(String yaml, Findings faults) {
    return LedgerReader.read(files(yaml), paths -> evidence(paths), faults);
  }

  /** Reads several files, by path. */
  public static Optional<Ledger> read(Map<String, String> files, Findings faults) {
    List<SourceFile> all = new ArrayList<>();
    files.forEach((path, text) -> all.add(new SourceFile(path, text)));
    return LedgerReader.read(all, Sample::evidence, faults);
  }

  /** What a rule finds in a sample. */
  public static List<Finding> findings(Rule rule, Ledger ledger, LocalDate today) {
    Findings out = new Findings();
    rule.examine(Facts.of(ledger, today), out);
    return out.inOrder();
  }

  /** What a rule finds in a sample on {@link #TODAY}. */
  public static List<Finding> findings(Rule rule, String yaml) {
    return findings(rule, ledger(yaml), TODAY);
  }

  /**
   * What a rule finds in a sample on {@link #TODAY}, in all its words: severity, rule and line,
   * then what, what follows, how to mend it, and the records concerned, a line each; with plain
   * blanks.
   */
  public static List<String> words(Rule rule, String yaml) {
    return words(rule, yaml, TODAY);
  }

  /** The same on a day. */
  public static List<String> words(Rule rule, String yaml, LocalDate today) {
    return findings(rule, ledger(yaml), today).stream()
        .map(
            each ->
                String.join(
                    "\n",
                    each.severity() + " " + each.rule() + " " + lineOf(each.at()),
                    each.what(),
                    each.follows(),
                    each.mend(),
                    String.join(", ", each.records())))
        .map(words -> words.replace('\u00a0', ' '))
        .toList();
  }

  private static List<SourceFile> files(String yaml) {
    List<SourceFile> files = new ArrayList<>();
    if (!yaml.contains("build:")) {
      files.add(new SourceFile("build.yaml", BUILD));
    }
    if (!yaml.contains("parties:")) {
      files.add(new SourceFile("parties.yaml", PARTIES));
    }
    List<String> lines = yaml.lines().toList();
    int end = firstLogDay(lines);
    files.add(new SourceFile("sample.yaml", end == lines.size() ? yaml : text(lines, 0, end)));
    files.addAll(logDays(lines, end));
    return files;
  }

  /** Below the YAML, a sample may hold days of the log, each between two lines of three hyphens. */
  private static List<SourceFile> logDays(List<String> lines, int start) {
    List<SourceFile> days = new ArrayList<>();
    int from = start;
    while (from < lines.size()) {
      int to = from + 1 + lines.subList(from + 1, lines.size()).indexOf("---");
      days.add(new SourceFile(LOG + from + ".md", text(lines, from, to + 1)));
      from = to + 1;
    }
    return days;
  }

  private static int firstLogDay(List<String> lines) {
    for (int i = 0; i + 1 < lines.size(); i++) {
      if (lines.get(i).equals("---") && lines.get(i + 1).startsWith("day:")) {
        return i;
      }
    }
    return lines.size();
  }

  private static String text(List<String> lines, int from, int to) {
    return String.join("\n", lines.subList(from, to)) + "\n";
  }

  /** The line of the sample's text that a place means, whichever file it was split into. */
  public static int lineOf(Place place) {
    String file = place.file();
    return file.startsWith(LOG)
        ? place.line() + Integer.parseInt(file.substring(LOG.length(), file.length() - 3))
        : place.line();
  }

  /**
   * Evidence under {@code there/} is present with the SHA-256 of an empty file; the rest absent.
   */
  private static Map<String, EvidenceFile> evidence(List<String> paths) {
    Map<String, EvidenceFile> all = new java.util.HashMap<>();
    String empty = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
    for (String path : paths) {
      if (path.startsWith("there/")) {
        all.put(path, new EvidenceFile(EvidenceFile.State.PRESENT, Optional.of(empty)));
      } else if (path.startsWith("..") || path.startsWith("/")) {
        all.put(path, new EvidenceFile(EvidenceFile.State.OUTSIDE, Optional.empty()));
      }
    }
    return all;
  }
}
