package kitwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import kitwright.finding.Finding;
import kitwright.finding.Matter;
import kitwright.value.Place;

/**
 * Puts findings in the order in which they are mended: what stops first, and each cause before what
 * follows from it. Nothing is put under a cause that weighs less.
 */
public final class Causes {
  private static final Set<String> UNREADABLE =
      Set.of("yaml-unreadable", "yaml-not-plain", "file-unreadable", "link-not-followed");
  private static final Set<String> FAILED =
      Set.of("substitution-unassessed", "assessment-fails", "assessment-inconclusive");

  /** Which rules' findings at the same record explain that of another. */
  static final Map<String, Set<String>> CAUSES =
      Map.of(
          "dates-disordered", Set.of("date-impossible"),
          "substitution-unsigned", FAILED,
          "signature-letter-altered", Set.of("evidence-altered", "evidence-absent"),
          "hold-point-near",
              Set.of(
                  "substitution-unassessed",
                  "assessment-fails",
                  "assessment-inconclusive",
                  "substitution-unsigned",
                  "signer-not-entitled",
                  "signed-by-proposer",
                  "signed-by-builder",
                  "signed-before-assessment",
                  "signature-covers-nothing",
                  "signature-stale",
                  "signature-without-letter",
                  "signature-letter-altered",
                  "signature-without-key",
                  "signature-forged",
                  "signature-unchecked",
                  "signed-verdict-turned"));

  private final Function<String, List<String>> source;
  private final Map<String, List<String>> lines = new HashMap<>();
  private final Map<Finding, Set<String>> unreadable = new LinkedHashMap<>();
  private final Map<String, List<Finding>> byRecord = new HashMap<>();

  private Causes(Function<String, List<String>> source) {
    this.source = source;
  }

  /**
   * The same findings, each once.
   *
   * @param source the lines of a file by its path; an empty list where it cannot be read
   */
  public static List<Matter> of(List<Finding> findings, Function<String, List<String>> source) {
    Map<String, Integer> rank = new HashMap<>();
    RuleNames.all().forEach(name -> rank.putIfAbsent(name, rank.size()));
    List<Finding> ordered =
        findings.stream()
            .sorted(
                Comparator.comparing(Finding::severity)
                    .thenComparing(finding -> rank.getOrDefault(finding.rule(), rank.size()))
                    .thenComparing(Comparator.naturalOrder()))
            .toList();
    return new Causes(source).matters(ordered);
  }

  private List<Matter> matters(List<Finding> findings) {
    Map<Finding, List<Finding>> following = new LinkedHashMap<>();
    Map<Finding, Finding> roots = new HashMap<>();
    for (Finding finding : findings) {
      Finding cause = cause(finding).orElse(finding);
      Finding root = roots.getOrDefault(cause, cause);
      roots.put(finding, root);
      following.computeIfAbsent(root, none -> new ArrayList<>());
      if (!root.equals(finding)) {
        following.get(root).add(finding);
      }
      keep(finding);
    }
    List<Matter> matters = new ArrayList<>();
    following.forEach((cause, rest) -> matters.add(new Matter(cause, rest)));
    return matters;
  }

  /** As something from which later ones may follow. */
  private void keep(Finding finding) {
    if (UNREADABLE.contains(finding.rule())) {
      unreadable.put(finding, words(finding.at().file()));
    }
    for (String record : finding.records()) {
      byRecord.computeIfAbsent(record, none -> new ArrayList<>()).add(finding);
    }
  }

  /** The first finding, in the order of mending, from which this one follows. */
  private Optional<Finding> cause(Finding finding) {
    if (finding.rule().equals("reference-dangling")) {
      String id = text(finding.at());
      return unreadable.entrySet().stream()
          .filter(each -> each.getValue().contains(id))
          .map(Map.Entry::getKey)
          .findFirst();
    }
    Set<String> causes = CAUSES.getOrDefault(finding.rule(), Set.of());
    return causes.isEmpty()
        ? Optional.empty()
        : finding.records().stream()
            .flatMap(record -> byRecord.getOrDefault(record, List.of()).stream())
            .filter(each -> causes.contains(each.rule()))
            .filter(each -> each.severity().atLeast(finding.severity()))
            .findFirst();
  }

  private List<String> lines(String file) {
    return lines.computeIfAbsent(file, source);
  }

  /** What stands at a place within one line; empty for a longer one. */
  private String text(Place at) {
    List<String> all = lines(at.file());
    if (at.line() < 1 || at.line() != at.endLine() || at.line() > all.size()) {
      return "";
    }
    int[] points = all.get(at.line() - 1).codePoints().toArray();
    int from = Math.min(at.column() - 1, points.length);
    int to = Math.min(at.endColumn() - 1, points.length);
    return new String(points, from, Math.max(0, to - from)).replaceAll("[\"']", "");
  }

  /** What is written in a file between blanks, brackets, commas, colons and quotes. */
  private Set<String> words(String file) {
    Set<String> words = new HashSet<>();
    lines(file).forEach(line -> words.addAll(List.of(line.split("[\\s\\[\\]{},:\"']+", -1))));
    words.remove("");
    return words;
  }
}
