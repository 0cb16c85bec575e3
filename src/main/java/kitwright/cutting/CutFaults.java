package kitwright.cutting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import kitwright.kit.Positions;
import kitwright.ledger.Cut;
import kitwright.ledger.Ledger;
import kitwright.ledger.Stock;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Size;
import kitwright.value.Unit;

/** What makes a cut impossible to plan, whatever the stock. */
public final class CutFaults {
  /** More parts than this are no bench's work. */
  private static final int MOST_PARTS = 20_000;

  /** Three metres of kerf or thirty of plank are slips of a unit. */
  private static final Quantity LONGEST = Quantity.of("30", Unit.M);

  private static final Quantity WIDEST_KERF = Quantity.of("20", Unit.MM);

  private final Cut cut;
  private final Rack rack;
  private final List<Fault> faults = new ArrayList<>();

  private CutFaults(Cut cut, Rack rack) {
    this.cut = cut;
    this.rack = rack;
  }

  /** One fault. */
  public record Fault(Place at, String what, String mend) {}

  /** Everything wrong with a cut; empty where it can be planned. */
  public static List<Fault> of(Cut cut, Ledger ledger, Positions positions) {
    CutFaults judge = new CutFaults(cut, Rack.of(cut, ledger, positions));
    judge.stock(ledger);
    judge.saw();
    judge.marks();
    cut.parts().forEach(judge::part);
    return List.copyOf(judge.faults);
  }

  private void stock(Ledger ledger) {
    if (cut.parts().isEmpty()) {
      add(cut.at().record(), "The cut names no part.", "List the parts wanted under “parts”.");
    }
    if (cut.from().isEmpty()) {
      add(
          cut.at().record(),
          "The cut names no stock.",
          "List the pieces it may draw on under “from”.");
    }
    for (var ref : cut.from()) {
      ledger
          .stock(ref)
          .filter(stock -> stock.size().isEmpty())
          .ifPresent(
              stock ->
                  add(
                      ref.at(),
                      "The stock " + stock.id() + " has no size.",
                      "Give it “size: 2450 x 110 x 32 mm” and “pieces”."));
    }
    for (Rack.Free free : rack.pieces()) {
      flaws(free.stock());
    }
  }

  private void flaws(Stock stock) {
    long end = Wanted.tenths(Wanted.size(stock).length());
    for (Stock.Flaw flaw : stock.flaws()) {
      if (flaw.from().compareAmount(flaw.to()) >= 0 || Tenths.atMost(flaw.from()) >= end) {
        add(
            flaw.at().record(),
            "A flaw of "
                + stock.id()
                + " runs from "
                + flaw.from()
                + " to "
                + flaw.to()
                + " on a piece of "
                + Tenths.mm(end)
                + " mm.",
            "Measure it from one end, the nearer edge first.");
      }
    }
  }

  private void saw() {
    for (String key : List.of("kerf", "rip-kerf")) {
      Quantity kerf = key.equals("kerf") ? cut.kerf() : cut.ripKerf().orElse(cut.kerf());
      if (cut.at().has(key) && kerf.compareAmount(WIDEST_KERF) > 0) {
        add(
            cut.at().of(key),
            "A kerf of " + kerf + " is wider than any blade.",
            "Write what the blade takes, such as 3 mm.");
      }
    }
  }

  private void marks() {
    Set<String> seen = new HashSet<>();
    long all = 0;
    for (Cut.Part part : cut.parts()) {
      all += part.qty();
      if (!seen.add(part.mark())) {
        add(
            part.at().of("mark"),
            "The mark " + part.mark() + " stands for two parts.",
            "Give each part its own mark, or add their numbers.");
      }
    }
    if (all > MOST_PARTS) {
      add(
          cut.at().record(),
          "The cut asks for "
              + all
              + " parts; no more than "
              + MOST_PARTS
              + " are planned at once.",
          "Check the numbers, or split the cut.");
    }
  }

  private void part(Cut.Part part) {
    boolean sound = side(part, "length", part.length());
    sound &= part.width().map(width -> side(part, "width", width)).orElse(true);
    if (part.qty() == 0) {
      add(
          part.at().of("qty"),
          "None of " + part.mark() + " are wanted.",
          "Write how many, or delete the part.");
      return;
    }
    if (part.priority().filter(priority -> priority < 1).isPresent()) {
      add(
          part.at().of("priority"),
          "A priority of 0.",
          "Write 1 for what is wanted first, then 2, 3 …");
      return;
    }
    if (sound && !rack.pieces().isEmpty()) {
      fits(part);
    }
  }

  private boolean side(Cut.Part part, String key, Quantity side) {
    if (side.isNone()) {
      add(
          part.at().of(key),
          "The " + key + " of " + part.mark() + " is zero.",
          "Write its true " + key + ".");
      return false;
    }
    if (side.compareAmount(LONGEST) > 0) {
      add(
          part.at().of(key),
          "A " + key + " of " + side + " for " + part.mark() + " is beyond any boat’s bench.",
          "Check the unit.");
      return false;
    }
    if (side.compareAmount(cut.kerf()) < 0) {
      add(
          part.at().of(key),
          "The "
              + key
              + " of "
              + part.mark()
              + ", "
              + side
              + ", is less than the kerf of "
              + cut.kerf()
              + ".",
          "Check both; the saw would turn the part into dust.");
      return false;
    }
    return true;
  }

  private void fits(Cut.Part part) {
    if (part.scarf().isPresent() && Wanted.thickness(part, rack).isEmpty()) {
      add(
          part.at().of("scarf"),
          "A scarf of " + part.mark() + " needs a thickness, and neither part nor stock has one.",
          "Add “thickness: 32 mm” to the part, or a third side to the stock’s size.");
      return;
    }
    if (part.grain().filter(grain -> grain != Cut.Grain.ANY).isPresent()) {
      rack.pieces().stream()
          .filter(free -> free.stock().grain().isEmpty())
          .findFirst()
          .ifPresent(
              free ->
                  add(
                      part.at().of("grain"),
                      "The grain of "
                          + part.mark()
                          + " matters, but "
                          + free.stock().id()
                          + " does not say how its grain runs.",
                      "Add “grain: along” to the stock, or “grain: any” to the part."));
    }
    boolean joined = part.scarf().isPresent() || part.butt();
    boolean some =
        rack.pieces().stream().anyMatch(free -> goesInto(part, Wanted.size(free.stock()), joined));
    if (!some) {
      add(
          part.at().of("length"),
          "No piece that the cut draws on is large enough for "
              + part.mark()
              + ", "
              + part.length()
              + part.width().map(w -> " x " + w).orElse("")
              + ".",
          "Draw on larger stock, or permit a joint with “scarf: 8” or “butt: yes”.");
    }
  }

  private boolean goesInto(Cut.Part part, Size size, boolean joined) {
    long trim = 2 * cut.trim().map(Tenths::atLeast).orElse(0L);
    long length = Tenths.atLeast(part.length());
    long width = part.width().map(Tenths::atLeast).orElse(0L);
    long pieceLength = Wanted.tenths(size.length()) - trim;
    long pieceWidth = Wanted.width(size);
    boolean thick =
        part.thickness().isEmpty()
            || size.thickness().isEmpty()
            || part.thickness().get().in(Unit.MM).amount().compareTo(size.thickness().get()) <= 0;
    Cut.Grain grain = part.grain().orElse(Cut.Grain.ANY);
    boolean straight =
        grain != Cut.Grain.ACROSS && (joined || length <= pieceLength) && width <= pieceWidth;
    boolean turned =
        grain != Cut.Grain.ALONG && !joined && width <= pieceLength && length <= pieceWidth;
    return thick && (straight || turned);
  }

  private void add(Place at, String what, String mend) {
    faults.add(new Fault(at, what, mend));
  }
}
