package kitwright.finding;

import java.util.List;
import java.util.stream.Stream;

/**
 * A finding, and those that follow from it and go when it is mended.
 *
 * @param cause what is to be mended
 * @param following by place; often none
 */
public record Matter(Finding cause, List<Finding> following) {
  public Matter {
    following = List.copyOf(following);
  }

  /** Each finding a matter of its own. */
  public static List<Matter> each(List<Finding> findings) {
    return findings.stream().map(finding -> new Matter(finding, List.of())).toList();
  }

  /** Those in which a record by its id, a file or a rule has a part. */
  public static List<Matter> concerning(String name, List<Matter> matters) {
    return matters.stream()
        .filter(matter -> matter.findings().anyMatch(finding -> concerns(name, finding)))
        .toList();
  }

  private static boolean concerns(String name, Finding finding) {
    return finding.rule().equals(name)
        || name.equals(finding.at().file())
        || name.endsWith("/" + finding.at().file())
        || finding.records().stream().anyMatch(record -> record.endsWith(" " + name));
  }

  /** The cause first. */
  public Stream<Finding> findings() {
    return Stream.concat(Stream.of(cause), following.stream());
  }

  /** All findings of several, in their order. */
  public static List<Finding> findings(List<Matter> matters) {
    return matters.stream().flatMap(Matter::findings).toList();
  }
}
