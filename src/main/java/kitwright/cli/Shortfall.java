package kitwright.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kitwright.edit.Answers;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.KitItem;
import kitwright.ledger.Layouts;
import kitwright.ledger.Ledger;
import kitwright.shortage.Balance;
import kitwright.shortage.Causes;
import kitwright.shortage.CountedShortUnrecorded;
import kitwright.value.Misread;

/** What a count shows to be short and nobody has recorded: as shortages, and as a claim. */
final class Shortfall {
  private final Recording recording;
  private final Answers answers;
  private final String supplier;
  private final LocalDate today;
  private final List<Balance> balances;
  private final List<String> concerned = new ArrayList<>();
  private final List<String> recorded = new ArrayList<>();

  private Shortfall(Recording recording, Answers answers, String supplier, List<Balance> balances) {
    this.recording = recording;
    this.answers = answers;
    this.supplier = supplier;
    this.today = recording.opened().today();
    this.balances = balances;
  }

  /**
   * What is short once the count that was taken up is on record.
   *
   * @param lines the count, as it is written
   */
  static Shortfall of(List<String> lines, Recording recording, Answers answers, String supplier) {
    Set<String> items = new HashSet<>();
    recording.after().kit().stream()
        .map(KitItem::id)
        .filter(id -> lines.stream().anyMatch(line -> line.startsWith("{item: " + id + ",")))
        .forEach(items::add);
    return of(items, recording.after(), recording, answers, supplier);
  }

  /** What is short by a count that is on record. */
  static Shortfall of(Delivery counted, Recording recording, Answers answers) {
    Set<String> items = new HashSet<>();
    counted.counted().forEach(line -> items.add(line.item().id()));
    return of(items, recording.ledger(), recording, answers, counted.from().id());
  }

  static boolean isCounted(Delivery delivery) {
    return !delivery.counted().isEmpty();
  }

  private static Shortfall of(
      Set<String> items, Ledger ledger, Recording recording, Answers answers, String supplier) {
    Facts now = Facts.of(ledger, recording.opened().today());
    List<Balance> balances =
        CountedShortUnrecorded.all(now).stream()
            .filter(balance -> items.contains(balance.position().item().id()))
            .toList();
    Shortfall shortfall = new Shortfall(recording, answers, supplier, balances);
    now.ledger().kit().stream()
        .filter(item -> items.contains(item.id()))
        .forEach(item -> shortfall.concerned.add(item.named()));
    return shortfall;
  }

  /** The records to tell of, once all is written. */
  List<String> concerned() {
    return concerned;
  }

  /** Offers to record them one after the other, with what shows each, and to begin the claim. */
  void offer(Dialogue talk) {
    String photo = "";
    for (Balance balance : balances) {
      KitItem item = balance.position().item();
      for (Causes.Part part : Causes.of(balance)) {
        String what =
            part.qty().told(item.what()) + ", " + Causes.word(part.cause()).replace('-', ' ');
        if (talk.yes("Record as short: " + what + "?", true)) {
          photo = evidence(talk, photo, item, part);
        }
      }
    }
    if (!recorded.isEmpty() && talk.yes("Begin the claim against " + supplier + "?", true)) {
      Key remedy = key(Kind.CLAIMS, "remedy");
      begin(talk.value(remedy, "replacement", true, List.of()).orElseThrow().written());
    }
  }

  private String evidence(Dialogue talk, String usual, KitItem item, Causes.Part part) {
    while (true) {
      String photo = talk.line("A file that shows it (or nothing)", usual);
      try {
        shortage(item, part, photo.isEmpty() ? List.of() : List.of(photo));
        return photo;
      } catch (Misread misread) {
        talk.tell(misread);
      }
    }
  }

  /** Records what the command line asks for; whether anything was to be recorded. */
  boolean record(boolean shortages, boolean claim, List<String> photos) {
    if (!shortages && !claim) {
      return false;
    }
    for (Balance balance : balances) {
      for (Causes.Part part : Causes.of(balance)) {
        try {
          shortage(balance.position().item(), part, photos);
        } catch (Misread misread) {
          throw Refusal.of("--photo", misread);
        }
      }
    }
    if (claim && !recorded.isEmpty()) {
      begin("replacement");
    }
    return !recorded.isEmpty();
  }

  private void shortage(KitItem item, Causes.Part part, List<String> photos) throws Misread {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("id", part.id(item, today));
    values.put("item", item.id());
    values.put("qty", part.qty().toString());
    values.put("found", today.toString());
    values.put("cause", Causes.word(part.cause()));
    if (!photos.isEmpty()) {
      values.put("evidence", answers.answer(key(Kind.SHORTAGES, "evidence"), photos).written());
    }
    recorded.add(recording.begin(Kind.SHORTAGES, item.id(), values, ""));
  }

  private void begin(String remedy) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("against", supplier);
    values.put("shortages", "[" + String.join(", ", recorded) + "]");
    values.put("remedy", remedy);
    values.put("reply-by", today.plusWeeks(2).toString());
    String id = recording.begin(Kind.CLAIMS, "count", values, "");
    concerned.add(Kind.CLAIMS.word() + " " + id);
  }

  private static Key key(Kind kind, String name) {
    return new Layouts()
        .of(kind).keys().stream().filter(key -> key.name().equals(name)).findFirst().orElseThrow();
  }
}
