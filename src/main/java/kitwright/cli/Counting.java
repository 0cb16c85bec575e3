package kitwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Answers;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.ledger.Delivery;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.value.Misread;
import kitwright.value.Quantity;
import kitwright.value.Unit;

/**
 * A count at the crate: item after item against the promise, a line each, short enough for cold
 * hands. What was counted is kept when the input ends, since nobody counts twice gladly.
 */
final class Counting {
  private final Dialogue talk;
  private final Answers answers;
  private final Facts now;
  private final List<String> lines = new ArrayList<>();
  private int asked;
  private int shortOnes;

  Counting(Dialogue talk, Answers answers, Facts now) {
    this.talk = talk;
    this.answers = answers;
    this.now = now;
  }

  static Refusal nothing(String id) {
    return new Refusal(
        "It is not said what was counted.",
        "Write such as: kitwright count " + id + " cleat=4 stave-s=38,damaged=1");
  }

  /** The lines of the count. */
  List<String> lines(Optional<Delivery> delivery) {
    List<Position> all = wanted(delivery);
    talk.tell(
        "Found, then of these damaged, then wrong: “12”, “12 1”, “12, 2 undersize”. An empty");
    talk.tell("line passes an item over, a full stop ends the count. " + all.size() + " to count.");
    for (Position position : all) {
      if (!isAsked(position, delivery)) {
        break;
      }
    }
    return lines;
  }

  /** What the note says was packed and is not counted in it yet; else all that is missing. */
  private List<Position> wanted(Optional<Delivery> delivery) {
    List<Position> all = new ArrayList<>();
    List<String> counted =
        delivery.stream()
            .flatMap(found -> found.counted().stream())
            .map(line -> line.item().id())
            .toList();
    List<String> packed =
        delivery.stream()
            .flatMap(found -> found.packed().stream())
            .map(line -> line.item().id())
            .toList();
    for (Position position : Positions.on(now).all()) {
      String id = position.item().id();
      boolean here = packed.isEmpty() ? !position.missing().isNone() : packed.contains(id);
      if (here && !counted.contains(id)) {
        all.add(position);
      }
    }
    return all;
  }

  /** Asks for an item until it is answered; no more where the count ends. */
  private boolean isAsked(Position position, Optional<Delivery> delivery) {
    String question = question(position, delivery);
    while (true) {
      Optional<String> line = talk.maybeLine(question, "");
      if (line.isEmpty() || line.get().equals(".")) {
        return false;
      }
      if (line.get().isEmpty()) {
        return true;
      }
      try {
        take(position, line.get());
        return true;
      } catch (Misread misread) {
        talk.tell(misread);
      }
    }
  }

  private static String question(Position position, Optional<Delivery> delivery) {
    KitItem item = position.item();
    String packed =
        delivery.stream()
            .flatMap(found -> found.packed().stream())
            .filter(line -> line.item().id().equals(item.id()))
            .map(line -> ", the note says " + line.qty().told())
            .findFirst()
            .orElse("");
    String before = position.isCounted() ? ", " + position.good().told() + " good so far" : "";
    String crate = item.crate().map(name -> ", crate " + name).orElse("");
    return item.id()
        + "  "
        + item.what()
        + crate
        + ": "
        + position.promised().told()
        + " promised"
        + before
        + packed;
  }

  private void take(Position position, String line) throws Misread {
    String[] parts = line.split(line.matches("[0-9. ]+") ? " +" : " *, *", -1);
    String[] names = {"qty", "damaged", "wrong"};
    Map<String, String> said = new LinkedHashMap<>();
    said.put("item", position.item().id());
    for (int i = 0; i < parts.length; i++) {
      String part = parts[i].strip();
      String name =
          switch (part.isEmpty() ? ' ' : part.charAt(0)) {
            case 'd' -> "damaged";
            case 'w' -> "wrong";
            case 'u' -> "undersize";
            default -> names[Math.min(i, 2)];
          };
      said.put(name, withUnit(part.replaceFirst("^[a-z]+ *=? *", ""), position.promised()));
    }
    List<String> text = new ArrayList<>();
    said.forEach((key, value) -> text.add(key + "=" + value));
    Quantity left = left(position, said); // first: what is no quantity of this is not taken
    lines.addAll(answers.answer(CountCommand.counted(), List.of(String.join(",", text))).items());
    asked++;
    if (!left.isNone()) {
      shortOnes++;
      talk.tell(
          left.told(position.item().id())
              + " short; "
              + shortOnes
              + " of "
              + asked
              + " items so far.");
    }
  }

  /** A bare number counts in what the promise is reckoned in. */
  static String withUnit(String qty, Quantity promised) {
    boolean bare = qty.matches("[0-9]+(\\.[0-9]+)?") && promised.unit() != Unit.EACH;
    return bare ? qty + " " + promised.unit().symbol() : qty;
  }

  /** What is short of the promise with this. */
  private static Quantity left(Position position, Map<String, String> said) throws Misread {
    Quantity promised = position.promised();
    Quantity good = position.good().plus(read(said.get("qty"), promised));
    Quantity bad =
        read(said.get("damaged"), promised)
            .plus(read(said.get("wrong"), promised))
            .plus(read(said.get("undersize"), promised));
    return promised.less(good.less(bad));
  }

  private static Quantity read(@org.jspecify.annotations.Nullable String text, Quantity like)
      throws Misread {
    if (text == null) {
      return Quantity.none(like.unit());
    }
    Quantity read = Quantity.parse(text, like.unit());
    if (!read.convertsTo(like)) {
      throw new Misread(
          "“" + text + "” is no " + like.unit().dimension().word() + ", as the promise is",
          "write it such as " + like);
    }
    return read;
  }
}
