package kitwright.finding;

import java.time.LocalDate;

/**
 * What was examined, by which Kitwright and for which day.
 *
 * @param version Kitwright's own version
 * @param today the day the ledger was judged for
 * @param ledger the ledger's folder, as the user named it
 */
public record Examination(String version, LocalDate today, String ledger) {}
