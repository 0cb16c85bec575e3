package kitwright.privacy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kitwright.ledger.Claim;
import kitwright.ledger.Ledger;

/** Words that speak of a claim, and passages of what was written about one. */
final class Letters implements Ear {
  /** So many words in a row are nobody's by chance (common practice, no source). */
  private static final int ROW = 6;

  private static final Pattern CLAIM_WORD =
      Pattern.compile(
          "(?i)(?<!\\p{L})(?:claim(?:s|ed|ing)?|lawyers?|solicitors?|attorneys?|court|sued?|suing"
              + "|disput(?:e[sd]?|ing)|compensation|complain(?:s|ed|ing|ts?)?|warranty|guarantee"
              + "|legal|reminders?|settled?\\s+with|settlement|refus(?:e[sd]?|ing|al)\\s+to"
              + "|refusal|blam(?:e[sd]?|ing)|fault\\s+of|their\\s+fault|liab\\w+|arbitration"
              + "|arbitrator|ombudsman|mediat(?:ion|or)|tribunal|credit\\s+notes?|money\\s+back"
              + "|in\\s+default|breach\\s+of)(?!\\p{L})");

  private final Set<List<String>> rows = new HashSet<>();

  Letters(Ledger ledger) {
    ledger.claims().forEach(this::claim);
  }

  private void claim(Claim claim) {
    claim
        .at()
        .each(
            (within, key, value) -> {
              if (value instanceof String text) {
                rows(text).forEach(rows::add);
              }
            });
  }

  private static Stream<List<String>> rows(String text) {
    List<String> words =
        Stream.of(Folded.of(text).split("[^\\p{L}\\p{N}]+")).filter(w -> !w.isEmpty()).toList();
    return Stream.iterate(0, at -> at + ROW <= words.size(), at -> at + 1)
        .map(at -> words.subList(at, at + ROW));
  }

  @Override
  public void hear(AsRead text, Heard heard) {
    heard.all(CLAIM_WORD, text.seen(), "it speaks of a claim");
    rows(text.folded())
        .filter(rows::contains)
        .findFirst()
        .ifPresent(row -> heard.put(String.join(" ", row), "it stands in the papers of a claim"));
  }
}
