package kitwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Answers;
import kitwright.ledger.Entry;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.value.Misread;
import kitwright.value.Visible;
import kitwright.value.Word;

/**
 * Asks somebody at a terminal for what is missing, one line a question, by the keys’ own
 * declarations. A wrong answer is told and asked again; the end of the input ends all.
 */
final class Dialogue {
  /** So many choices are listed; more are looked up by typing. */
  private static final int MOST = 15;

  private final Session session;
  private final BufferedReader person;
  private final Ledger ledger;
  private final Answers answers;
  private final String today;

  Dialogue(
      Session session, BufferedReader person, Ledger ledger, Answers answers, LocalDate today) {
    this.session = session;
    this.person = person;
    this.ledger = ledger;
    this.answers = answers;
    this.today = today.toString();
  }

  /** What a person types; the usual where nothing is typed. */
  String line(String question, String usual) {
    return maybeLine(question, usual)
        .orElseThrow(
            () -> new Refusal("The answers ended before all was said.", "Nothing was recorded."));
  }

  /** The same; empty at the end of the input. */
  Optional<String> maybeLine(String question, String usual) {
    session.ask(Visible.line(question + (usual.isEmpty() ? "" : " [" + usual + "]") + ": "));
    try {
      String line = person.readLine();
      if (line == null) {
        session.say("");
        return Optional.empty();
      }
      return Optional.of(line.isBlank() ? usual : line.strip());
    } catch (IOException broken) {
      throw new Refusal("The terminal cannot be read.", "Give all answers as options.");
    }
  }

  /** A question for yes or no. */
  boolean yes(String question, boolean usual) {
    while (true) {
      String line = line(question + " (yes or no)", usual ? "yes" : "no").toLowerCase(Locale.ROOT);
      if (line.equals("y") || line.equals("yes")) {
        return true;
      }
      if (line.equals("n") || line.equals("no")) {
        return false;
      }
      session.say("  Write yes or no.");
    }
  }

  void tell(String line) {
    session.say("  " + line);
  }

  void tell(Misread misread) {
    tell(Refusal.of(misread).said());
  }

  /**
   * The value of a key as YAML.
   *
   * @param usual what an empty line means; none where it is empty
   * @param needed whether it cannot be left out
   * @param also keys of groups in it that are asked though they could be left out, as {@code
   *     used.task}
   */
  Optional<Answers.Answer> value(Key key, String usual, boolean needed, List<String> also) {
    return switch (key.form()) {
      case GROUPS -> groups(key, needed, also);
      case GROUP ->
          needed || yes("Anything to say under “" + key.name() + "”, " + key.says() + "?", false)
              ? group(key, also)
              : Optional.empty();
      case NAMED -> named(key);
      default -> plain(key, usual, needed);
    };
  }

  private Optional<Answers.Answer> plain(Key key, String usual, boolean needed) {
    List<String> choices = choices(key);
    while (true) {
      String line = line(question(key, needed), usual);
      if (line.isEmpty() && !needed) {
        return Optional.empty();
      }
      try {
        return Optional.of(answers.answer(key, List.of(chosen(line, choices))));
      } catch (Misread misread) {
        tell(
            line.isEmpty()
                ? new Misread("this must be said", "write it, or end with Ctrl-D")
                : misread);
      }
    }
  }

  private static String question(Key key, boolean needed) {
    String says = Word.capital(key.says());
    boolean shown =
        key.kinds().isEmpty() && key.sort().words().isEmpty() && !key.example().isEmpty();
    return says + (shown ? ", such as " + key.example() : "") + (needed ? "" : " (or nothing)");
  }

  /** Lists what may be answered, where it is a few, each with a number that stands for it. */
  private List<String> choices(Key key) {
    List<String> words = key.sort().words();
    return choices(key.kinds(), words.contains("true") ? List.of("yes", "no") : words);
  }

  private List<String> choices(List<Kind> kinds, List<String> words) {
    Map<String, String> all = new LinkedHashMap<>();
    words.forEach(word -> all.put(word, ""));
    kinds.forEach(kind -> ledger.entries(kind).forEach(e -> all.put(e.id(), what(e))));
    if (all.isEmpty() || all.size() > MOST) {
      return List.of();
    }
    List<String> ids = new ArrayList<>(all.keySet());
    for (int i = 0; i < ids.size(); i++) {
      String what = all.getOrDefault(ids.get(i), "");
      tell((i + 1) + "  " + ids.get(i) + (what.isEmpty() ? "" : "  " + what));
    }
    return ids;
  }

  /** What a record is, in its own words. */
  static String what(Entry entry) {
    for (String key : new String[] {"what", "tool", "name", "title", "item"}) {
      Optional<Object> value = entry.at().value(key);
      if (value.isPresent()) {
        return value.get() instanceof kitwright.value.Ref ref ? ref.id() : value.get().toString();
      }
    }
    return "";
  }

  private static String chosen(String line, List<String> choices) {
    boolean number = line.matches("\\d{1,2}") && !choices.contains(line);
    int at = number ? Integer.parseInt(line) - 1 : -1;
    return at >= 0 && at < choices.size() ? choices.get(at) : line;
  }

  private Optional<Answers.Answer> groups(Key key, boolean needed, List<String> also) {
    List<String> all = new ArrayList<>();
    boolean more =
        needed || yes("Anything to say under “" + key.name() + "”, " + key.says() + "?", false);
    while (more) {
      group(key, also).ifPresent(one -> all.add(one.written()));
      more = yes("One more?", false);
    }
    return all.isEmpty() ? Optional.empty() : Optional.of(Answers.Answer.several(all));
  }

  /**
   * A group, key by key. Keys before the first that is needed are ways to say one thing: once one
   * is answered the others are not asked.
   */
  private Optional<Answers.Answer> group(Key key, List<String> also) {
    List<Key> keys = key.inner().orElseThrow().keys();
    boolean ways = keys.stream().anyMatch(Key::needed);
    Map<String, String> said = new LinkedHashMap<>();
    for (Key each : keys) {
      ways &= !each.needed();
      boolean asked = each.needed() || also.contains(key.name() + "." + each.name());
      if (asked || (ways && said.isEmpty())) {
        String usual = each.isHappened() && each.needed() ? today : "";
        value(each, usual, each.needed(), also)
            .ifPresent(answer -> said.put(each.name(), answer.written()));
      }
    }
    return said.isEmpty() ? Optional.empty() : Optional.of(Answers.Answer.group(said));
  }

  private Optional<Answers.Answer> named(Key key) {
    Map<String, String> all = new LinkedHashMap<>();
    List<String> choices = choices(key);
    while (true) {
      String name = chosen(line(question(key, false) + ", the name", ""), choices);
      if (name.isEmpty()) {
        return all.isEmpty() ? Optional.empty() : Optional.of(Answers.Answer.group(all));
      }
      try {
        all.putAll(answers.answer(key, List.of(name + "=" + line("  how much", ""))).named());
      } catch (Misread misread) {
        tell(misread);
      }
    }
  }

  /** Which record of a kind is meant. */
  String which(Kind kind) {
    List<String> choices = choices(List.of(kind), List.of());
    return chosen(line("Which " + kind.word(), ""), choices);
  }

  /** Lines of the person's own, up to an empty one. */
  String words(String question) {
    StringBuilder all = new StringBuilder();
    Optional<String> line = maybeLine(question + ", an empty line ends", "");
    while (line.filter(each -> !each.isEmpty()).isPresent()) {
      all.append(line.get()).append('\n');
      line = maybeLine("", "");
    }
    return all.toString();
  }
}
