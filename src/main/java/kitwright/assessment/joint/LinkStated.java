package kitwright.assessment.joint;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import kitwright.assessment.sheet.Sources;
import kitwright.ledger.Material.Basis;
import kitwright.ledger.WeakLink;
import kitwright.value.Decimal;

/** Whether a weak link asks for an order at all: a limit that everything meets is no limit. */
public final class LinkStated {
  /** From memory: an order that is wrong more often than this orders nothing. */
  private static final BigDecimal MOST = new BigDecimal("0.1");

  /** Of what breaks; common practice, no source: as bolts are banded. */
  private static final double LEAST_SCATTER = 0.005;

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
    boolean bent = link.by() == WeakLink.By.BENDING;
    if (link.protectedPart().isPresent() == link.rating().isPresent()) {
      lacking.add(
          "its weak link names what it protects: either a section (“protected”) or a rating");
    } else if (bent && link.rating().isPresent()) {
      lacking.add("the rating of its weak link is a force: say by: tension or by: shear");
    }
    if (bent && link.breaksAt().isEmpty()) {
      lacking.add(
          "its weak link does not say where along the part the break is meant: add breaks-at, such"
              + " as breaks-at: 0 mm for at the support");
    }
    if (!bent && link.breaksAt().isPresent()) {
      lacking.add(
          "its weak link is sheared or pulled, and “breaks-at” is a place along a bent one");
    }
    link.rating().ifPresent(rating -> rating(rating, lacking));
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

  private static void rating(WeakLink.Rating rating, List<String> lacking) {
    if (rating.source().filter(Sources::isOne).isEmpty()) {
      lacking.add("the rating of its weak link has no source");
    }
    if (rating.basis().isEmpty()) {
      lacking.add(
          "the rating of its weak link does not say what it is: write basis: mean, characteristic"
              + " or minimum");
    } else if (rating.basis().get() != Basis.MINIMUM && rating.scatter().isEmpty()) {
      lacking.add("the rating of its weak link is no minimum and does not state its scatter");
    } else if (rating.scatter().filter(one -> one.doubleValue() < LEAST_SCATTER).isPresent()) {
      lacking.add(
          "the rating of its weak link says that it scatters by less than 0.5 %, which nothing that"
              + " breaks does");
    }
  }
}
