package kitwright.money;

import kitwright.ledger.Shortage;

/**
 * An open shortage of which nobody has said what it will cost: no way out states it, and what is
 * missing is neither sent, ordered nor promised. It is in no sum.
 *
 * @param line the budget line that it falls on; empty text where nothing tells
 */
public record UnpricedShortage(Shortage shortage, String line) {}
