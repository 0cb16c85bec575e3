package kitwright.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;
import kitwright.yaml.Fields;

/**
 * Money spent, promised or got back.
 *
 * @param on the day of the order, the payment or the refund
 * @param line the budget line
 * @param amount with tax and duty, always above zero; the state says which way it went
 * @param expected the day an ordered thing shall come
 * @param because the shortage that caused it
 * @param replaces the shortage whose missing goods this buys; all of them where it has no {@code
 *     qty}
 * @param substitution the substitution that caused it
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
    Optional<Ref> because,
    Optional<Ref> replaces,
    Optional<Ref> substitution,
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

  static Spend read(Fields f) {
    Optional<Ref> replaces = f.maybeRef("replaces");
    Optional<Ref> because = f.maybeRef("because").or(() -> replaces);
    return new Spend(
        f.id(),
        f.day("on"),
        f.ref("line"),
        f.text("what"),
        f.money("amount"),
        f.maybeText("to"),
        f.choice("state", State.class, State.PAID),
        f.maybeDay("expected"),
        because,
        replaces,
        f.maybeRef("substitution"),
        f.maybeChoice("cause", Cause.class),
        f.maybeMoney("tax"),
        f.maybeMoney("duty"),
        f.maybeNumber("rate"),
        f.maybeRef("pays"),
        f.flag("in-full"),
        f.maybeRef("refunds"),
        f.maybeDay("withdrawn"),
        f.maybeQuantity("qty", Unit.EACH),
        f.maybeRef("item"),
        f.maybeRef("material"),
        Evidence.list(f, "receipt"),
        At.of(f));
  }

  @Override
  public Kind kind() {
    return Kind.SPENDING;
  }
}
