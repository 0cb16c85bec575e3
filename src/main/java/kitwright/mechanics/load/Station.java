package kitwright.mechanics.load;

import kitwright.mechanics.Refuse;

/**
 * A place along the span where capacity is set against demand. Where a part ends and the next
 * begins, give one station for each.
 *
 * @param at distance from the root, m
 * @param part the part whose section this is
 * @param strong what it carries there
 */
public record Station(double at, String part, Strong strong) {
  public Station {
    Refuse.ifNegative("station", at);
  }
}
