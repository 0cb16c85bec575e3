package kitwright.ledger;

import java.util.EnumMap;
import java.util.Map;

/** The layouts of the kinds, each learnt when a record of its kind is first met. */
public final class Layouts {
  private final Map<Kind, Layout> learnt = new EnumMap<>(Kind.class);

  /** The keys of a kind. */
  public synchronized Layout of(Kind kind) {
    Layout known = learnt.get(kind);
    if (known == null) {
      known = Layout.of(k -> read(kind, k, ""));
      learnt.put(kind, known);
    }
    return known;
  }

  static Entry read(Kind kind, Keys k, String body) {
    return switch (kind) {
      case BUILD -> Build.read(k);
      case PARTIES -> Party.read(k);
      case RATES -> Rate.read(k);
      case BUDGET -> BudgetLine.read(k);
      case KIT -> KitItem.read(k);
      case DELIVERIES -> Delivery.read(k);
      case STOCK -> Stock.read(k);
      case TASKS -> Task.read(k);
      case SHORTAGES -> Shortage.read(k);
      case CLAIMS -> Claim.read(k);
      case SUBSTITUTIONS -> Substitution.read(k);
      case MATERIALS -> Material.read(k);
      case SECTIONS -> Section.read(k);
      case ASSESSMENTS -> Assessment.read(k);
      case SPENDING -> Spend.read(k);
      case BORROWED -> Loan.read(k);
      case CUTS -> Cut.read(k);
      case FORECAST -> ForecastDay.read(k);
      case LOG -> LogDay.read(k, body);
    };
  }
}
