package kitwright.network;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * An order that would cover what neither stock nor expected goods cover.
 *
 * @param item what to order
 * @param amount how much is short on the day
 * @param needed the day on which it is needed
 * @param orderBy last day to order so that it is there in time; may have passed
 * @param arrives when it is there if ordered then, or today if that day has passed
 */
public record PlannedOrder(
    String item, BigDecimal amount, LocalDate needed, LocalDate orderBy, LocalDate arrives) {}
