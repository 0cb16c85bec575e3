package kitwright.ledger;

import java.util.stream.Stream;

/** The evidence that records name. */
public final class EvidencePaths {
  private EvidencePaths() {}

  /** Each piece of evidence of a record, in the order written. */
  public static Stream<Evidence> in(Entry entry) {
    if (entry instanceof Delivery delivery) {
      return delivery.evidence().stream();
    }
    if (entry instanceof Shortage shortage) {
      return shortage.evidence().stream();
    }
    if (entry instanceof Claim claim) {
      return claim.events().stream().flatMap(event -> event.evidence().stream());
    }
    if (entry instanceof Substitution substitution) {
      return substitution.signOffs().stream().flatMap(signOff -> signOff.evidence().stream());
    }
    if (entry instanceof Assessment assessment) {
      return assessment.evidence().stream();
    }
    if (entry instanceof Spend spend) {
      return spend.receipt().stream();
    }
    return entry instanceof LogDay day ? day.photos().stream() : Stream.of();
  }

  static Stream<String> of(Entry entry) {
    return in(entry).map(Evidence::file);
  }
}
