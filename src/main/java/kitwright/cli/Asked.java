package kitwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.edit.Answers;
import kitwright.edit.Deed;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.value.Misread;

/** All that tells a deed: what was said, what the records answer, and what is asked for. */
final class Asked {
  private static final Answers.Answer NOTHING = new Answers.Answer("", List.of(), Map.of());

  private final Deed deed;
  private final Answers answers;
  private final Map<String, List<String>> said;
  private final Facts now;

  Asked(Deed deed, Answers answers, Map<String, List<String>> said, Facts now) {
    this.deed = deed;
    this.answers = answers;
    this.said = said;
    this.now = now;
  }

  /** The answers by key, in the order of the record. */
  Map<String, Answers.Answer> all(Optional<Dialogue> dialogue) {
    List<Key> missing = missing();
    boolean talk = dialogue.isPresent() && (!missing.isEmpty() || nothingSaid());
    if (!talk && !missing.isEmpty()) {
      throw new Refusal(
          "It is not said: "
              + missing.stream().map(key -> "--" + key.name()).collect(Collectors.joining(", "))
              + ".",
          "Add to the command, such as "
              + missing.stream()
                  .map(key -> "--" + key.name() + " \"" + Answers.example(key) + "\"")
                  .collect(Collectors.joining(" "))
              + ".");
    }
    Map<String, Answers.Answer> found = new LinkedHashMap<>();
    for (Key key : inOrderOfAsking()) {
      answer(key, talk ? dialogue : Optional.empty()).ifPresent(a -> found.put(key.name(), a));
    }
    Map<String, Answers.Answer> all = new LinkedHashMap<>();
    deed.fixed()
        .forEach((key, value) -> all.put(key, new Answers.Answer(value, List.of(), Map.of())));
    deed.keys().stream()
        .map(Key::name)
        .filter(found::containsKey)
        .forEach(key -> all.put(key, found.getOrDefault(key, NOTHING)));
    return all;
  }

  /** Whether a record shall begin of which nothing was said but its day. */
  boolean nothingSaid() {
    return deed.begins()
        && said.keySet().stream().allMatch(key -> key.equals("day") || key.equals("on"));
  }

  private List<Key> missing() {
    Usual usual = usual();
    return deed.keys().stream()
        .filter(deed::needs)
        .filter(key -> !said.containsKey(key.name()) && !usual.sure().containsKey(key.name()))
        .toList();
  }

  private List<Key> inOrderOfAsking() {
    List<Key> all = new ArrayList<>();
    deed.given()
        .forEach(
            name -> deed.keys().stream().filter(key -> key.name().equals(name)).forEach(all::add));
    deed.keys().stream().filter(key -> !all.contains(key)).forEach(all::add);
    return all;
  }

  private Usual usual() {
    Map<String, String> first = new LinkedHashMap<>();
    said.forEach((key, texts) -> first.put(key, texts.get(0)));
    return Usual.of(deed, first, now);
  }

  private Optional<Answers.Answer> answer(Key key, Optional<Dialogue> dialogue) {
    Usual usual = usual();
    if (said.containsKey(key.name())) {
      return Optional.of(read(key, said.getOrDefault(key.name(), List.of())));
    }
    if (usual.sure().containsKey(key.name())) {
      return Optional.of(read(key, List.of(usual.sure().getOrDefault(key.name(), ""))));
    }
    boolean asked = deed.needs(key) || deed.offered().contains(key.name());
    if (dialogue.isEmpty() || !asked) {
      return Optional.empty();
    }
    Optional<Answers.Answer> answer =
        dialogue
            .get()
            .value(
                key, usual.offered().getOrDefault(key.name(), ""), deed.needs(key), deed.offered());
    answer.ifPresent(a -> said.put(key.name(), List.of(a.written())));
    return answer;
  }

  private Answers.Answer read(Key key, List<String> texts) {
    try {
      return answers.answer(key, texts);
    } catch (Misread misread) {
      throw Refusal.of("--" + key.name(), misread);
    }
  }
}
