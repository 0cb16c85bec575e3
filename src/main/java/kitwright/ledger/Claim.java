package kitwright.ledger;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.Ref;
import kitwright.yaml.Fields;

/**
 * A claim against the supplier for shortages.
 *
 * @param sent the day it went out; empty while it is a draft
 * @param by how it was sent
 * @param replyBy the day by which an answer is asked
 * @param costs spending that the shortage caused and the claim asks back
 * @param settled how it ended
 */
public record Claim(
    String id,
    Ref against,
    List<Ref> shortages,
    Optional<LocalDate> sent,
    Optional<String> by,
    Remedy remedy,
    Optional<LocalDate> replyBy,
    List<Ref> costs,
    List<Event> events,
    Optional<Settlement> settled,
    Optional<String> then,
    At at)
    implements Entry {
  /** What is asked. */
  public enum Remedy {
    REPLACEMENT,
    CREDIT,
    REFUND,
    PRICE_REDUCTION
  }

  /** What happened in the correspondence. */
  public enum What {
    SENT,
    ACKNOWLEDGED,
    ANSWERED,
    REMINDED,
    PROMISED,
    DISPUTED,
    DELIVERED,
    PAID
  }

  /** How it ended. */
  public enum Outcome {
    REPLACED,
    CREDITED,
    REFUNDED,
    REFUSED,
    WITHDRAWN
  }

  /**
   * An entry of the correspondence.
   *
   * @param expect the day for which something was promised
   */
  public record Event(
      LocalDate on,
      What what,
      Optional<String> text,
      Optional<LocalDate> expect,
      List<Evidence> evidence,
      At at) {
    static Event read(Fields f) {
      return new Event(
          f.day("on"),
          f.choice("what", What.class, What.ANSWERED),
          f.maybeText("text"),
          f.maybeDay("expect"),
          Evidence.list(f, "evidence"),
          At.of(f));
    }
  }

  /** The end of a claim. */
  public record Settlement(LocalDate on, Outcome how, Optional<Money> amount, At at) {
    static Settlement read(Fields f) {
      return new Settlement(
          f.day("on"),
          f.choice("how", Outcome.class, Outcome.WITHDRAWN),
          f.maybeMoney("amount"),
          At.of(f));
    }
  }

  static Claim read(Fields f) {
    return new Claim(
        f.id(),
        f.ref("against"),
        f.refs("shortages"),
        f.maybeDay("sent"),
        f.maybeText("by"),
        f.choice("remedy", Remedy.class, Remedy.REPLACEMENT),
        f.maybeDay("reply-by"),
        f.refs("costs"),
        f.each("events", Event::read),
        f.maybeGroup("settled", Settlement::read),
        f.maybeText("then"),
        At.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.CLAIMS;
  }
}
