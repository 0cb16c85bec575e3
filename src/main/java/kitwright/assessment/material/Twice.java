package kitwright.assessment.material;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.ledger.Assessment;
import kitwright.ledger.Entry;
import kitwright.ledger.Ledger;
import kitwright.ledger.WeakLink;
import kitwright.value.Ref;

/** Records of one id that an assessment names: which of them is meant nobody can tell. */
public record Twice(Set<String> sections, Set<String> materials, Set<String> assessments) {
  public static Twice of(Ledger ledger) {
    return new Twice(
        twice(ledger.sections()), twice(ledger.materials()), twice(ledger.assessments()));
  }

  private static Set<String> twice(List<? extends Entry> entries) {
    Set<String> seen = new HashSet<>();
    Set<String> twice = new HashSet<>();
    entries.stream().map(Entry::id).filter(id -> !seen.add(id)).forEach(twice::add);
    return twice;
  }

  /** What two sections of one id leave open, a clause. */
  Optional<String> section(Ref ref) {
    return sections.contains(ref.id())
        ? Optional.of("two sections are called “" + ref.id() + "”")
        : Optional.empty();
  }

  /** What cannot be told of an assessment and the materials of its sections, each a clause. */
  public List<String> lacking(Assessment assessment, List<kitwright.ledger.Material> used) {
    List<String> lacking = new ArrayList<>();
    if (assessments.contains(assessment.id())) {
      lacking.add("two assessments are called “" + assessment.id() + "”");
    }
    Stream.concat(
            Stream.of(assessment.designed(), assessment.built())
                .flatMap(java.util.Optional::stream),
            assessment.weakLink().stream().flatMap(WeakLink::parts))
        .map(Ref::id)
        .distinct()
        .filter(sections::contains)
        .forEach(id -> lacking.add("two sections are called “" + id + "”"));
    used.stream()
        .map(kitwright.ledger.Material::id)
        .distinct()
        .filter(materials::contains)
        .forEach(id -> lacking.add("two materials are called “" + id + "”"));
    return lacking;
  }
}
