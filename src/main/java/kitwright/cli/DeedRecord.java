package kitwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Answers;
import kitwright.edit.Change;
import kitwright.edit.Deed;
import kitwright.ledger.Claim;
import kitwright.ledger.Entry;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Shortage;
import kitwright.ledger.Task;
import kitwright.value.Decimal;
import kitwright.value.Nearest;
import kitwright.value.Ref;

/** A deed with all that tells it, as a change of a record or as a new one. */
final class DeedRecord {
  /** The key by which the record that is named first then names the new one. */
  private static final String TIE = "assessment";

  private final Deed deed;
  private final Map<String, Answers.Answer> all;
  private final Map<String, List<String>> said;
  private final Recording recording;

  DeedRecord(
      Deed deed,
      Map<String, Answers.Answer> all,
      Map<String, List<String>> said,
      Recording recording) {
    this.deed = deed;
    this.all = all;
    this.said = said;
    this.recording = recording;
  }

  /** Takes the change of a record up; says which records are concerned. */
  List<String> change(Entry entry) {
    recording.add(entry, changed(entry));
    return List.of(entry.named());
  }

  private Change changed(Entry entry) {
    Map<String, String> values = written();
    if (!deed.into().isEmpty()) {
      String group = Answers.Answer.group(values).written();
      if (!deed.word().equals("settle")) {
        return Change.adding(deed.into(), group);
      }
      return said.containsKey("of")
          ? Change.adding("settled", group).in(line((Claim) entry))
          : Change.of("settled", group);
    }
    if (entry instanceof Task task && deed.word().equals("finish") && task.started().isEmpty()) {
      Map<String, String> both = new LinkedHashMap<>();
      both.put("started", values.getOrDefault("finished", ""));
      both.putAll(values);
      return Change.of(both);
    }
    return Change.of(values);
  }

  private Change.Line line(Claim claim) {
    String of = said.getOrDefault("of", List.of("")).get(0);
    List<String> lines = claim.shortages().stream().map(Ref::id).toList();
    if (!lines.contains(of)) {
      throw Refusal.unknown(
          "The " + claim.named() + " has no line “" + of + "”.",
          Nearest.to(of, lines),
          "Its lines are: " + String.join(", ", lines) + ".");
    }
    return new Change.Line("shortages", "shortage", of);
  }

  private Map<String, String> written() {
    Map<String, String> values = new LinkedHashMap<>();
    all.forEach((key, answer) -> values.put(key, answer.written()));
    return values;
  }

  private static void refuseSecond(Entry entry) {
    throw new Refusal(
        "The " + entry.named() + " names its assessment already, at " + entry.at().of(TIE) + ".",
        "Nothing was changed. To replace it, which voids what was signed, begin another with"
            + " “kitwright new assessment” and name it with “kitwright amend "
            + entry.kind().word()
            + " "
            + entry.id()
            + " assessment=ID”.");
  }

  /** Takes a new record up; says which records are concerned. */
  List<String> begin(Optional<Entry> tied) {
    tied.filter(entry -> entry.at().has(TIE)).ifPresent(DeedRecord::refuseSecond);
    String words = said.getOrDefault("words", List.of("")).get(0);
    Optional<Entry> day =
        deed.kind() == Kind.LOG
            ? recording.ledger().find(Kind.LOG, written().getOrDefault("day", ""))
            : Optional.empty();
    if (deed.kind() == Kind.LOG && all.size() == 1 && words.isBlank()) {
      throw new Refusal(
          "Nothing is said of " + written().getOrDefault("day", "") + ".",
          "Write such as --words \"Rain all day.\"");
    }
    if (day.isPresent()) {
      addTo(day.get(), words);
      return List.of(day.get().named());
    }
    String id = recording.begin(deed.kind(), about(tied, recording.ledger()), written(), words);
    tied.ifPresent(entry -> recording.add(entry, Change.of(TIE, id)));
    return List.of(deed.kind().word() + " " + id);
  }

  /** What is told of a day that was told of before goes behind the rest. */
  private void addTo(Entry day, String words) {
    Map<String, String> set = new LinkedHashMap<>();
    Map<String, List<String>> added = new LinkedHashMap<>();
    Map<String, Map<String, String>> named = new LinkedHashMap<>();
    all.forEach(
        (key, answer) -> {
          if (!answer.named().isEmpty()) {
            named.put(key, answer.named());
            answer.named().forEach((name, value) -> told(day, key, name, value));
          } else if (!answer.items().isEmpty()) {
            added.put(key, answer.items());
          } else if (!key.equals("day")) {
            set.put(key, answer.written());
          }
        });
    Change change = new Change(set, added, named, Optional.empty());
    if (!change.told().isEmpty()) {
      recording.add(day, change);
    }
    if (!words.isBlank()) {
      recording.append(day, words);
    }
  }

  /** A number of the day that takes another’s place: hours are those of the whole day. */
  private void told(Entry day, String key, String name, String value) {
    if (day instanceof LogDay log && key.equals("hours")) {
      log.hours().entrySet().stream()
          .filter(each -> each.getKey().id().equals(name))
          .map(each -> Decimal.print(each.getValue()))
          .filter(before -> !before.equals(value))
          .forEach(
              before ->
                  recording.note(
                      "In place of the "
                          + before
                          + " hours of "
                          + name
                          + " that the day told before: write the sum, where both were worked."));
    }
  }

  /** What its id is made of: what was bought, or the item that a shortage is about. */
  private String about(Optional<Entry> tied, Ledger ledger) {
    if (tied.isPresent()) {
      return tied.get().id();
    }
    String first =
        deed.kind() == Kind.SPENDING ? "what" : deed.given().isEmpty() ? "" : deed.given().get(0);
    String about =
        said.containsKey(first)
            ? said.getOrDefault(first, List.of("")).get(0).split(",", 2)[0]
            : written().getOrDefault(first, "");
    return ledger
        .<Shortage>find(Kind.SHORTAGES, about)
        .map(shortage -> shortage.item().id())
        .orElse(about);
  }
}
