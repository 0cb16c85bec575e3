package kitwright.money;

/** Why a line ends elsewhere than planned. */
public enum Cause {
  /** Spent, ordered or still to be spent because something was missing, less what came back. */
  SHORTAGE,
  /** Spent on building something otherwise than drawn. */
  SUBSTITUTION,
  /** Spent, or still to be spent, on making a borrowed tool good. */
  REPAIR,
  /** Nobody had thought of it. */
  FORGOTTEN,
  /** Dearer, or cheaper, than the kit's price. */
  PRICE,
  /** More of it than planned. */
  QUANTITY,
  /** The rate has moved since the budget was made. */
  CURRENCY,
  /** What is left: planned purchases and what is still to come, against the budget. */
  REST
}
