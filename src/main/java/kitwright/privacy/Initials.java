package kitwright.privacy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;

/** Initials of people, in capitals as they are written; a first name of two joined by a hyphen. */
final class Initials implements Ear {
  /** What two capitals mean to everybody: initials only where they have their dots. */
  private static final Set<String> ABBREVIATIONS =
      Set.of("AC AM CE CO DC EN ID IT NB OK PC PM PS PU PVC TV UV VAT WC".split(" "));

  private static final int MOST = 5;
  private final Map<Pattern, String> patterns = new LinkedHashMap<>();

  static Initials in(Ledger ledger) {
    Initials initials = new Initials();
    ledger.parties().stream().filter(party -> !party.isPublic()).forEach(initials::add);
    return initials;
  }

  private void add(Party party) {
    String why = "the initials of " + party.id();
    String name = party.name().replaceAll("\\([^)]*\\)", " ").strip();
    add(parts(name, "[\\s.]+", part -> true), why);
    add(parts(name, "[\\s.\\-]+", part -> true), why);
    add(parts(name, "[\\s.]+", part -> Character.isUpperCase(part.codePointAt(0))), why);
    for (String word : name.split("\\s+")) {
      String[] halves = word.split("-");
      if (halves.length == 2 && !halves[0].isEmpty() && !halves[1].isEmpty()) {
        String both = first(halves[0]) + "\\.?-" + first(halves[1]) + "\\.?";
        patterns.put(Pattern.compile("(?<![\\p{L}\\p{N}])" + both + "(?![\\p{L}\\p{N}])"), why);
      }
    }
  }

  private static List<String> parts(String name, String between, Predicate<String> counts) {
    return Stream.of(name.split(between)).filter(part -> !part.isEmpty()).filter(counts).toList();
  }

  private void add(List<String> parts, String why) {
    if (parts.size() < 2 || parts.size() > MOST) {
      return;
    }
    String letters = parts.stream().map(Initials::letter).collect(Collectors.joining());
    String dot = ABBREVIATIONS.contains(letters) ? "\\." : "\\.?";
    String all = parts.stream().map(Initials::first).collect(Collectors.joining(dot + "[\\s-]?"));
    patterns.put(Pattern.compile("(?<![\\p{L}\\p{N}])" + all + "\\.?(?![\\p{L}\\p{N}])"), why);
  }

  private static String first(String part) {
    return Pattern.quote(letter(part));
  }

  private static String letter(String part) {
    return new String(Character.toChars(part.codePointAt(0)));
  }

  @Override
  public void hear(AsRead text, Heard heard) {
    patterns.forEach((pattern, why) -> heard.first(pattern, text.seen(), why));
  }
}
