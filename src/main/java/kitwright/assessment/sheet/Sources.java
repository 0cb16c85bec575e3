package kitwright.assessment.sheet;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import kitwright.ledger.Assessment;

/**
 * The sources that an assessment names, each for what stands before its colon: “larch: test of the
 * yard, 2026-02-01” vouches for the values of larch and for nothing else.
 */
public record Sources(List<String> all) {
  /** Words that stand where a source belongs and are none. */
  private static final Pattern NONE =
      Pattern.compile(
          "(unknown|not known|none|no source|n/?a|tbd|tbc|todo|to do|later|to be (confirmed|found)"
              + "|[?.x–—-]*|.*\\bguess(ed|es|work)?\\b.*|.*\\bfrom memory\\b.*)",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.DOTALL);

  public Sources {
    all = List.copyOf(all);
  }

  public static Sources none() {
    return new Sources(List.of());
  }

  public static Sources of(Assessment assessment) {
    return new Sources(assessment.sources());
  }

  /** What is said of a material or factor, if something is. */
  public Optional<String> about(String name) {
    String head = name + ":";
    return all.stream()
        .map(String::strip)
        .filter(source -> source.startsWith(head))
        .map(source -> source.substring(head.length()).strip())
        .filter(Sources::isOne)
        .findFirst();
  }

  /** Whether it tells where a value comes from: “unknown”, “?” and “my guess” do not. */
  public static boolean isOne(String source) {
    return !NONE.matcher(source.strip()).matches();
  }

  /** Whether something is said, but not of what. */
  public boolean areOfNothing() {
    return all.stream().anyMatch(source -> !source.contains(":"));
  }
}
