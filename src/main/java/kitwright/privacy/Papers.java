package kitwright.privacy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.ledger.Claim;
import kitwright.ledger.Delivery;
import kitwright.ledger.Entry;
import kitwright.ledger.Evidence;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;

/** Numbers of papers: claims, delivery notes, and the files of letters and receipts. */
final class Papers implements Ear {
  private static final int DIGITS = 3;
  private static final String APART = "[ ./:]{0,2}";
  private final CommonWords common = CommonWords.read();
  private final Map<Pattern, String> folded = new LinkedHashMap<>();
  private final Map<Pattern, String> written = new LinkedHashMap<>();

  Papers(Ledger ledger) {
    ledger.claims().stream().map(Claim::id).forEach(this::claim);
    ledger.deliveries().stream()
        .map(Delivery::note)
        .flatMap(note -> note.stream())
        .forEach(note -> code(note, "a delivery note"));
    ledger.all().stream().filter(entry -> !(entry instanceof LogDay)).forEach(this::files);
  }

  /** An id of plain words is one only where it is written as one. */
  private void claim(String id) {
    boolean plain =
        Stream.of(Folded.of(id).split(" ")).allMatch(common::isEnglish) && !id.matches(".*\\d.*");
    if (!plain) {
      folded.put(alone(parts(id)), "the id of a claim");
    } else if (!id.matches("\\p{L}+")) {
      written.put(
          Pattern.compile("(?i)(?<!\\p{L})" + Pattern.quote(id) + "(?!\\p{L})"),
          "the id of a claim");
    }
  }

  private void files(Entry entry) {
    for (Evidence evidence : Evidence.in(entry)) {
      String name = evidence.file().replaceFirst(".*/", "").replaceFirst("\\.[^.]*$", "");
      code(name, "the name of a file");
    }
  }

  private void code(String text, String why) {
    String code = text.strip();
    if (code.chars().filter(Character::isDigit).count() >= DIGITS && !code.contains(" of ")) {
      folded.put(alone(parts(code)), why);
    }
  }

  private static String parts(String code) {
    return Stream.of(Folded.of(code).split("[^\\p{L}\\p{N}]+"))
        .filter(part -> !part.isEmpty())
        .map(Pattern::quote)
        .collect(Collectors.joining(APART));
  }

  private static Pattern alone(String parts) {
    return Pattern.compile("(?<![\\p{L}\\p{N}])" + parts + "(?![\\p{L}\\p{N}])");
  }

  @Override
  public void hear(AsRead text, Heard heard) {
    folded.forEach((pattern, why) -> heard.first(pattern, text.folded(), why));
    written.forEach((pattern, why) -> heard.first(pattern, text.seen(), why));
  }
}
