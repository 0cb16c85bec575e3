package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * Money spent, promised or got back.
 *
 * @param on the day of the order, the payment or the refund
 * @param line the budget line
 * @param amount with tax and duty, always above zero; the state says which way it went
 * @param expected the day an ordered thing shall come
 * @param came the day it came, where it was ordered or paid before
 * @param because the shortage that caused it
 * @param replaces the shortage whose missing goods this buys; all of them where it has no {@code
 *     qty}
 * @param substitution the substitution that caused it
 * @param repairs the borrowed tool that it makes good
 * @param cause why it was more than planned, where it was
 * @param tax of the amount, tax
 * @param duty of the amount, customs duty
 * @param rate units of the build's currency for one of the amount's
 * @param pays the order that this payment pays
 * @param inFull whether nothing more is owed on that order, though less than ordered was paid
 * @param refunds the payment that this refund gives back
 * @param withdrawn the day an order was given up
 * @param item what was bought, where it is an item of the kit's list
 * @param material what was bought, where it is a material
 */
public record Spend(
    String id,
    LocalDate on,
    Ref line,
    String what,
    Money amount,
    Optional<String> to,
    State state,
    Optional<LocalDate> expected,
    Optional<LocalDate> came,
    Optional<Ref> because,
    Optional<Ref> replaces,
    Optional<Ref> substitution,
    Optional<Ref> repairs,
    Optional<Cause> cause,
    Optional<Money> tax,
    Optional<Money> duty,
    Optional<BigDecimal> rate,
    Optional<Ref> pays,
    boolean inFull,
    Optional<Ref> refunds,
    Optional<LocalDate> withdrawn,
    Optional<Quantity> qty,
    Optional<Ref> item,
    Optional<Ref> material,
    List<Evidence> receipt,
    At at)
    implements Entry {
  /** Which way the money went. */
  public enum State {
    ORDERED,
    PAID,
    REFUNDED
  }

  /** Why something cost more than planned. */
  public enum Cause {
    SHORTAGE,
    SUBSTITUTION,
    PRICE,
    QUANTITY,
    FORGOTTEN
  }

  /** What was bought, by name, if it is an item or a material. */
  public Optional<Ref> thing() {
    return item.or(() -> material);
  }

  static Spend read(Keys k) {
    String id = k.id("spend-2026-02-12-screws");
    LocalDate on =
        k.key("on", "the day of the order, the payment or the refund", "2026-02-12")
            .begins("TODAY")
            .toldBy("paid-in-future")
            .happened();
    Ref line =
        k.key("line", "the budget line", "timber").toldBy("budget-line-unknown").ref(Kind.BUDGET);
    String what =
        k.key("what", "what it was for, in a few words", "screws and plugs for the oak boards")
            .text();
    Money amount =
        k.key(
                "amount",
                "with tax and duty, always above zero; the state says which way it went",
                "18.40 EUR")
            .money();
    Optional<String> to = k.key("to", "who got it, or gave it back", "ironmonger").maybeText();
    State state =
        k.key("state", "which way the money went", "paid")
            .begins("paid")
            .choice(State.class, State.PAID);
    Optional<LocalDate> expected =
        k.key(
                "expected",
                "the day an ordered thing shall come; it stands all that day",
                "2026-03-20")
            .notBefore("on")
            .maybePlanned();
    Optional<LocalDate> came =
        k.key("came", "the day it came, where it was ordered or paid before", "2026-03-21")
            .notBefore("on")
            .maybeHappened();
    Optional<Ref> because =
        k.key("because", "the shortage that caused it", "short-2026-02-09-plank")
            .maybeRef(Kind.SHORTAGES);
    Optional<Ref> replaces =
        k.key(
                "replaces",
                "the shortage whose missing goods this buys; all of them where nothing is said of"
                    + " qty",
                "short-2026-02-09-plank")
            .maybeRef(Kind.SHORTAGES);
    return new Spend(
        id,
        on,
        line,
        what,
        amount,
        to,
        state,
        expected,
        came,
        because.or(() -> replaces),
        replaces,
        k.key("substitution", "the substitution that caused it", "sub-2026-02-10-oak")
            .maybeRef(Kind.SUBSTITUTIONS),
        k.key("repairs", "the borrowed tool that it makes good", "jigsaw").maybeRef(Kind.BORROWED),
        k.key("cause", "why it was more than planned, where it was", "price")
            .maybeChoice(Cause.class),
        k.key("tax", "of the amount, tax", "2.94 EUR").maybeMoney(),
        k.key("duty", "of the amount, customs duty", "0.50 EUR").maybeMoney(),
        k.key(
                "rate",
                "units of the build’s currency for one of the amount’s, as the bank reckoned",
                "0.54")
            .maybeNumber(),
        k.key("pays", "the order that this payment pays", "spend-2026-02-01-order")
            .maybeRef(Kind.SPENDING),
        k.key(
                "in-full",
                "yes where nothing more is owed on that order, though less than ordered was paid",
                "yes")
            .flag(),
        k.key("refunds", "the payment that this refund gives back", "spend-2026-02-02-kit")
            .maybeRef(Kind.SPENDING),
        k.key("withdrawn", "the day an order was given up", "2026-03-01")
            .notBefore("on")
            .maybeHappened(),
        k.key("qty", "how much was bought", "4 each").maybeQuantity(),
        k.key("item", "what was bought, where it is an item of the kit", "plank")
            .maybeRef(Kind.KIT),
        k.key("material", "what was bought, where it is a material", "epoxy-slow")
            .maybeRef(Kind.MATERIALS),
        k.key("receipt", "files that show it", "[evidence/receipt.jpg]")
            .each("file", Evidence::read),
        k.at());
  }

  @Override
  public Kind kind() {
    return Kind.SPENDING;
  }
}
