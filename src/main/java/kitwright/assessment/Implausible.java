package kitwright.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.ledger.Assessment;
import kitwright.ledger.At;
import kitwright.ledger.Entry;
import kitwright.ledger.Key;
import kitwright.ledger.Section;
import kitwright.ledger.WeakLink;

/**
 * Measures of an assessment and of its sections that lie outside what their keys plausibly hold. A
 * slip of the unit may as well help as hurt: nothing passes on one.
 */
final class Implausible {
  private Implausible() {}

  /** Each a clause. */
  static List<String> of(Case of) {
    List<String> told = new ArrayList<>(of(of.assessment()));
    sections(of).forEach(section -> told.addAll(of(section)));
    return told;
  }

  /** Those it names, and what they taper to, each once. */
  private static List<Section> sections(Case of) {
    Assessment assessment = of.assessment();
    Map<String, Section> sections = new LinkedHashMap<>();
    Stream.concat(
            Stream.of(assessment.designed(), assessment.built()).flatMap(Optional::stream),
            assessment.weakLink().stream().flatMap(WeakLink::parts))
        .flatMap(ref -> of.sections().apply(ref).stream())
        .flatMap(
            section ->
                Stream.concat(
                    Stream.of(section), section.tapersTo().flatMap(of.sections()).stream()))
        .forEach(section -> sections.putIfAbsent(section.id(), section));
    return List.copyOf(sections.values());
  }

  private static List<String> of(Entry entry) {
    Seen seen = new Seen(entry, new ArrayList<>());
    entry.at().each(seen);
    return seen.told();
  }

  /** A class, not a lambda: one is made for every record. */
  private record Seen(Entry entry, List<String> told) implements At.Visitor {
    @Override
    public void see(List<At> within, Key key, Object value) {
      key.implausible(value)
          .ifPresent(
              why ->
                  told.add(
                      "“" + key.name() + ": " + value + "” of the " + entry.named() + " " + why));
    }
  }
}
