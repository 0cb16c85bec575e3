package kitwright.ledger;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;

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
    static Event read(Keys k) {
      return new Event(
          k.key("on", "when", "2026-02-19").notBefore("sent").happened(),
          k.key("what", "what happened", "answered").choice(What.class, What.ANSWERED),
          k.key(
                  "of",
                  "the shortages it is about; all of the claim where none is named",
                  "[short-2026-02-09-plank]")
              .refs(Kind.SHORTAGES),
          k.key("qty", "how much of each", "2 each").maybeQuantity(),
          k.key("amount", "money granted, promised or paid", "63.00 EUR").maybeMoney(),
          k.key("text", "what was said, in a line", "two planks credited").maybeText(),
          k.key(
                  "expect",
                  "the day for which something was promised; it stands all that day",
                  "2026-04-16")
              .notBefore("on")
              .maybePlanned(),
          k.key("evidence", "files that show it", "[evidence/letter.txt]")
              .each("file", Evidence::read),
          k.at());
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
    static Asked read(Keys k) {
      return new Asked(
          k.key("shortage", "the shortage", "short-2026-02-09-plank").ref(Kind.SHORTAGES),
          k.key(
                  "qty",
                  "how much of it; all that no other line of the claim names where nothing is said",
                  "2 each")
              .maybeQuantity(),
          k.key("remedy", "what is asked, where it differs from the claim’s", "cost")
              .maybeChoice(Remedy.class),
          k.key(
                  "costs",
                  "the spending that bought the replacement, where its cost is asked",
                  "[spend-2026-02-12-screws]")
              .refs(Kind.SPENDING),
          k.key("settled", "how it ended, part by part").each(Settlement::read),
          k.at());
    }
  }

  /**
   * The end of a claim, or of a part of it.
   *
   * @param qty how much of a line; all that is left of it where it does not say
   */
  public record Settlement(
      LocalDate on, Outcome how, Optional<Quantity> qty, Optional<Money> amount, At at) {

    static Settlement read(Keys k) {
      return new Settlement(
          k.key("on", "when", "2026-02-20").notBefore("sent").happened(),
          k.key("how", "how it ended", "credited").choice(Outcome.class, Outcome.WITHDRAWN),
          k.key("qty", "how much of a line; all that is left of it where nothing is said", "2 each")
              .maybeQuantity(),
          k.key("amount", "what was credited or refunded", "63.00 EUR").maybeMoney(),
          k.at());
    }
  }

  /** The day by which an answer is asked where nobody says another. Common practice, no source. */
  public static LocalDate usualReplyBy(LocalDate sent) {
    return sent.plusWeeks(2);
  }

  static Claim read(Keys k) {
    return new Claim(
        k.id("claim-2026-02-10"),
        k.key("against", "the supplier", "kit-maker").ref(Kind.PARTIES),
        k.key("shortages", "the shortages it is about", "[short-2026-02-09-plank]")
            .begins("[]")
            .each("shortage", Asked::read),
        k.key("sent", "the day it went out; leave it out while it is a draft", "2026-02-10")
            .notBefore("shortages.shortage.found")
            .maybeHappened(),
        k.key("by", "how it was sent", "e-mail").maybeText(),
        k.key("remedy", "what is asked for the shortages that do not say", "credit")
            .choice(Remedy.class, Remedy.REPLACEMENT),
        k.key(
                "reply-by",
                "the day by which an answer is asked; late from the next day on; common practice is"
                    + " two weeks, your contract may say otherwise",
                "2026-02-24")
            .begins("IN-TWO-WEEKS")
            .notBefore("sent")
            .maybePlanned(),
        k.key(
                "costs",
                "spending that the shortages caused and the claim asks back",
                "[spend-2026-02-12-screws]")
            .refs(Kind.SPENDING),
        k.key("letter", "the file that was sent", "letters/claim-2026-02-10.md")
            .each("file", Evidence::read),
        k.key("events", "the correspondence, as it came").each(Event::read),
        k.key("settled", "how all of it ended that has no end of its own")
            .maybeGroup(Settlement::read),
        k.key(
                "then",
                "what you will do if nobody answers",
                "we buy the planks elsewhere and claim the price")
            .maybeText(),
        k.at());
  }

  /** The shortages that it names, each once. */
  public List<Ref> shortages() {
    Map<String, Ref> all = new LinkedHashMap<>();
    asked.forEach(each -> all.putIfAbsent(each.shortage().id(), each.shortage()));
    return List.copyOf(all.values());
  }

  /** The spending that it names, for all of it or for a line, as written. */
  public List<Ref> spends() {
    return Stream.concat(costs.stream(), asked.stream().flatMap(line -> line.costs().stream()))
        .toList();
  }

  @Override
  public Kind kind() {
    return Kind.CLAIMS;
  }
}
