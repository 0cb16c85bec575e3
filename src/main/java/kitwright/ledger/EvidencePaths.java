package kitwright.ledger;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The evidence that records name. */
public final class EvidencePaths {
  private EvidencePaths() {}

  /** Each piece of evidence of a record, in the order written. */
  public static List<Evidence> in(Entry entry) {
    return switch (entry.kind()) {
      case DELIVERIES -> delivery((Delivery) entry);
      case SHORTAGES -> ((Shortage) entry).evidence();
      case CLAIMS ->
          join(((Claim) entry).letter(), all(((Claim) entry).events(), Claim.Event::evidence));
      case PARTIES -> all(((Party) entry).maySign(), Party.Right::letter);
      case SUBSTITUTIONS -> all(((Substitution) entry).signOffs(), EvidencePaths::of);
      case ASSESSMENTS -> ((Assessment) entry).evidence();
      case SPENDING -> ((Spend) entry).receipt();
      case BORROWED -> ((Loan) entry).repair().map(Loan.Repair::evidence).orElse(List.of());
      case LOG -> ((LogDay) entry).photos();
      default -> List.of();
    };
  }

  private static List<Evidence> delivery(Delivery delivery) {
    return join(
        delivery.evidence(),
        join(
            all(delivery.counted(), Delivery.Counted::evidence),
            all(delivery.sentBack(), Delivery.SentBack::evidence)));
  }

  private static List<Evidence> join(List<Evidence> some, List<Evidence> more) {
    return Stream.concat(some.stream(), more.stream()).toList();
  }

  private static List<Evidence> of(Substitution.SignOff signOff) {
    return Stream.of(signOff.evidence(), signOff.statement(), signOff.signature())
        .flatMap(List::stream)
        .toList();
  }

  private static <T> List<Evidence> all(List<T> parts, Function<T, List<Evidence>> evidence) {
    return parts.stream().flatMap(part -> evidence.apply(part).stream()).toList();
  }

  static Stream<String> of(Entry entry) {
    return in(entry).stream().map(Evidence::file);
  }
}
