package kitwright.assessment.joint;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import kitwright.ledger.Assessment.WeakLink;
import kitwright.value.Decimal;

/** Whether a weak link asks for an order at all: a limit that everything meets is no limit. */
public final class LinkStated {
  /** From memory: an order that is wrong more often than this orders nothing. */
  private static final BigDecimal MOST = new BigDecimal("0.1");

  private LinkStated() {}

  /** What is wrong with it, each a clause. */
  public static List<String> lacking(WeakLink link) {
    List<String> lacking = new ArrayList<>();
    if (link.margin().compareTo(BigDecimal.ONE) < 0) {
      lacking.add(
          "the margin of its weak link is "
              + Decimal.print(link.margin())
              + ", and it is at least 1: below it the protected part breaks first");
    }
    link.chance()
        .filter(chance -> chance.signum() <= 0 || chance.compareTo(MOST) > 0)
        .ifPresent(
            chance ->
                lacking.add(
                    "the chance that its weak link allows is "
                        + Decimal.print(chance.movePointRight(2))
                        + " %, and it is above 0 and at most 10 %"));
    return lacking;
  }
}
