package kitwright.ledger;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * A claim against the supplier for shortages.
 *
 * @param sent the day it went out; empty while it is a draft
 * @param by how it was sent
 * @param replyBy the day by which an answer is asked
 * @param asked the shortages, each with what is asked for it
 * @param remedy what is asked for the shortages that do not say
 * @param costs spending that the shortages caused and the claim asks back
 * @param letter the file that was sent
 * @param settled how all of it ended that has no end of its own
 */
public record Claim(
    String id,
    Ref against,
    List<Asked> asked,
    Optional<LocalDate> sent,
    Optional<String> by,
    Remedy remedy,
    Optional<LocalDate> replyBy,
    List<Ref> costs,
    List<Evidence> letter,
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
    PRICE_REDUCTION,
    /** What its replacement cost, instead of the goods. */
    COST
  }

  /** What happened in the correspondence. */
  public enum What {
    SENT,
    ACKNOWLEDGED,
    ANSWERED,
    REMINDED,
    PROMISED,
    DISPUTED,
    GRANTED,
    REFUSED,
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
   * @param of the shortages that it is about; all of the claim where it names none
   * @param qty how much of each
   * @param amount money granted, promised or paid
   * @param expect the day for which something was promised
   */
  public record Event(
      LocalDate on,
      What what,
      List<Ref> of,
      Optional<Quantity> qty,
      Optional<Money> amount,
      Optional<String> text,
      Optional<LocalDate> expect,
      List<Evidence> evidence,
      At at) {
    static Event read(Fields f) {
      return new Event(
          f.day("on"),
          f.choice("what", What.class, What.ANSWERED),
          f.refs("of"),
          f.maybeQuantity("qty", Unit.EACH),
          f.maybeMoney("amount"),
          f.maybeText("text"),
          f.maybeDay("expect"),
          Evidence.list(f, "evidence"),
          At.of(f));
    }
  }

  /**
   * A shortage in a claim, or so much of it.
   *
   * @param qty how much of it; all that no other line of the claim names where it does not say
   * @param remedy what is asked; what the claim asks where it does not say
   * @param costs the spending that bought the replacement, where its cost is asked
   * @param settled how it ended, part by part
   */
  public record Asked(
      Ref shortage,
      Optional<Quantity> qty,
      Optional<Remedy> remedy,
      List<Ref> costs,
      List<Settlement> settled,
      At at) {
    static Asked read(Fields f) {
      return new Asked(
          f.ref("shortage"),
          f.maybeQuantity("qty", Unit.EACH),
          f.maybeChoice("remedy", Remedy.class),
          f.refs("costs"),
          f.each("settled", Settlement::read),
          At.of(f));
    }
  }

  /**
   * The end of a claim, or of a part of it.
   *
   * @param qty how much of a line; all that is left of it where it does not say
   */
  public record Settlement(
      LocalDate on, Outcome how, Optional<Quantity> qty, Optional<Money> amount, At at) {
    static Settlement read(Fields f) {
      return new Settlement(
          f.day("on"),
          f.choice("how", Outcome.class, Outcome.WITHDRAWN),
          f.maybeQuantity("qty", Unit.EACH),
          f.maybeMoney("amount"),
          At.of(f));
    }
  }

  static Claim read(Fields f) {
    return new Claim(
        f.id(),
        f.ref("against"),
        f.each("shortages", Asked::read, "shortage"),
        f.maybeDay("sent"),
        f.maybeText("by"),
        f.choice("remedy", Remedy.class, Remedy.REPLACEMENT),
        f.maybeDay("reply-by"),
        f.refs("costs"),
        Evidence.list(f, "letter"),
        f.each("events", Event::read),
        f.maybeGroup("settled", Settlement::read),
        f.maybeText("then"),
        At.of(f));
  }

  /** The shortages that it names, each once. */
  public List<Ref> shortages() {
    Map<String, Ref> all = new LinkedHashMap<>();
    asked.forEach(each -> all.putIfAbsent(each.shortage().id(), each.shortage()));
    return List.copyOf(all.values());
  }

  @Override
  public Kind kind() {
    return Kind.CLAIMS;
  }
}
