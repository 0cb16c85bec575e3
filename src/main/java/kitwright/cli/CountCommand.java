package kitwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.edit.Answers;
import kitwright.edit.Change;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.KitItem;
import kitwright.ledger.Layouts;
import kitwright.ledger.Ledger;
import kitwright.value.Misread;

/** Records what was counted in a delivery. */
final class CountCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private boolean print;
  private Optional<String> id = Optional.empty();
  private List<String> items = List.of();
  private Optional<String> on = Optional.empty();
  private Optional<String> from = Optional.empty();
  private boolean shortages;
  private boolean claim;
  private List<String> photos = List.of();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Records what was counted in a delivery, item by item, and tells what is short of the"
            + " promise. At a terminal it asks for each item, and offers the shortages and the"
            + " claim at the end.",
        "For example: kitwright count d-fourth stave-s=38,damaged=1 cleat=4 --shortages --claim");
    options.declare(to);
    to.flag("--print", () -> print = true, "Print what would be written, and write nothing.");
    to.mayPlace("DELIVERY", given -> id = Optional.of(given), "The delivery.");
    to.places(
        1,
        "0..*",
        "ITEM=QTY[,damaged=QTY][,wrong=QTY][,undersize=QTY]",
        given -> items = given,
        "Each item with all that was found, and how much of it is no good.");
    to.option(
        "--on", "DATE", given -> on = Optional.of(given), "The day; today where none is said.");
    to.option(
        "--from",
        "PARTY",
        given -> from = Optional.of(given),
        "Begin the delivery, which nobody has recorded yet: who sent it.");
    to.flag(
        "--shortages",
        () -> shortages = true,
        "Record what is short of the promise too, cause by cause.");
    to.flag("--claim", () -> claim = true, "Begin the claim for these shortages too.");
    to.options(
        "--photo",
        "FILE",
        given -> photos = given,
        "What shows the shortages; recorded with its hash.");
  }

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, print);
    Answers answers = recording.answers();
    Facts now = Facts.of(recording.ledger(), recording.opened().today());
    Optional<Dialogue> dialogue =
        session
            .person()
            .get()
            .map(person -> new Dialogue(session, person, now.ledger(), answers, now.day()));
    Optional<Delivery> delivery = delivery(recording, dialogue);
    List<String> lines = lines(answers, recording.ledger());
    if (lines.isEmpty()
        && (shortages || claim)
        && delivery.filter(Shortfall::isCounted).isPresent()) {
      return recordShort(delivery.get(), recording, answers);
    }
    boolean asks = lines.isEmpty();
    if (asks) {
      Dialogue talk = dialogue.orElseThrow(() -> Counting.nothing(id.orElse("DELIVERY")));
      lines = new Counting(talk, answers, now).lines(delivery);
    }
    if (lines.isEmpty()) {
      throw new Refusal("Nothing was counted.", "Nothing was recorded.");
    }
    String supplier = take(delivery, lines, recording, now);
    Shortfall shortfall = Shortfall.of(lines, recording, answers, supplier);
    if (asks) {
      shortfall.offer(dialogue.orElseThrow());
    } else {
      shortfall.record(shortages, claim, photos);
    }
    return recording.write(shortfall.concerned());
  }

  /** The count is on record already; what it shows to be short is not. */
  private int recordShort(Delivery counted, Recording recording, Answers answers) {
    Shortfall shortfall = Shortfall.of(counted, recording, answers);
    if (!shortfall.record(shortages, claim, photos)) {
      throw new Refusal(
          "Nothing of “" + counted.id() + "” is short that is not recorded.",
          "“kitwright kit ITEM” tells what came of an item; nothing was written.");
    }
    return recording.write(shortfall.concerned());
  }

  private Optional<Delivery> delivery(Recording recording, Optional<Dialogue> dialogue) {
    String wanted =
        id.orElseGet(
            () -> dialogue.orElseThrow(() -> Counting.nothing("DELIVERY")).which(Kind.DELIVERIES));
    id = Optional.of(wanted);
    if (from.isPresent() && !recording.ledger().knows(Kind.DELIVERIES, wanted)) {
      return Optional.empty();
    }
    return Optional.of((Delivery) recording.record(Kind.DELIVERIES, wanted));
  }

  /** Takes the count up; says who sent the goods. */
  private String take(
      Optional<Delivery> delivery, List<String> lines, Recording recording, Facts now) {
    String day = on.orElse(now.day().toString());
    if (delivery.isEmpty()) {
      Map<String, String> all = new LinkedHashMap<>();
      all.put("id", id.orElse(""));
      all.put("received", day);
      all.put("from", from.orElse(""));
      all.put("counted", Answers.Answer.several(lines).written());
      recording.begin(Kind.DELIVERIES, "", all, "");
      return from.orElse("");
    }
    Delivery there = delivery.get();
    recording.add(
        there,
        new Change(
            there.received().isEmpty() ? Map.of("received", day) : Map.of(),
            Map.of("counted", lines)));
    return there.from().id();
  }

  private List<String> lines(Answers answers, Ledger ledger) {
    List<String> lines = new ArrayList<>();
    for (String word : items) {
      if (word.indexOf('=') < 1) {
        throw new Refusal("“" + word + "” says no quantity.", "Write ITEM=QTY, such as cleat=4.");
      }
      try {
        String text = "item=" + withUnits(word, ledger).replaceFirst("=", ",qty=");
        lines.addAll(answers.answer(counted(), List.of(text)).items());
      } catch (Misread misread) {
        throw Refusal.of("“" + word + "”", misread);
      }
    }
    return lines;
  }

  /** The word with the unit of the promise behind bare numbers. */
  private static String withUnits(String word, Ledger ledger) {
    Optional<KitItem> item = ledger.find(Kind.KIT, word.substring(0, word.indexOf('=')));
    return item.map(
            known ->
                Stream.of(word.split(",", -1))
                    .map(
                        part -> {
                          int equals = part.indexOf('=') + 1;
                          String qty = part.substring(equals).strip();
                          return part.substring(0, equals) + Counting.withUnit(qty, known.qty());
                        })
                    .collect(Collectors.joining(",")))
        .orElse(word);
  }

  /** The key that holds the count. */
  static Key counted() {
    return Stream.of(new Layouts().of(Kind.DELIVERIES))
        .flatMap(layout -> layout.keys().stream())
        .filter(key -> key.name().equals("counted"))
        .findFirst()
        .orElseThrow();
  }
}
