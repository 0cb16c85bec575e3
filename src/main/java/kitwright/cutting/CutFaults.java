package kitwright.cutting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Stock;
import kitwright.value.Place;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Unit;

/** What is wrong with a cut before it is planned. */
public final class CutFaults {
  /** More parts than this are no bench's work. */
  private static final int MOST_PARTS = 20_000;

  private static final Quantity WIDEST_KERF = Quantity.of("20", Unit.MM);

  private final Cut cut;
  private final Ledger ledger;
  private final List<Fault> faults = new ArrayList<>();

  private CutFaults(Cut cut, Ledger ledger) {
    this.cut = cut;
    this.ledger = ledger;
  }

  /**
   * One fault.
   *
   * @param part the mark of the only part that it spoils; empty where it spoils the whole cut, or
   *     none
   */
  public record Fault(Place at, String what, String mend, Optional<String> part, boolean spoils) {}

  /** What keeps the whole cut from being planned. */
  public static List<Fault> spoiling(Cut cut, Ledger ledger) {
    CutFaults judge = new CutFaults(cut, ledger);
    judge.whole();
    return List.copyOf(judge.faults);
  }

  /** Everything wrong with a cut: what spoils it, what spoils a part, what is odd in its stock. */
  public static List<Fault> of(Cut cut, Facts day) {
    CutFaults judge = new CutFaults(cut, day.ledger());
    judge.whole();
    judge.stock();
    if (judge.faults.stream().noneMatch(Fault::spoils)) {
      judge.parts(day);
    }
    return List.copyOf(judge.faults);
  }

  private void whole() {
    if (cut.parts().isEmpty()) {
      spoils(cut.at().record(), "The cut names no part.", "List the parts wanted under “parts”.");
    }
    if (cut.from().isEmpty()) {
      spoils(
          cut.at().record(),
          "The cut names no stock.",
          "List the pieces it may draw on under “from”.");
    }
    saw();
    marks();
  }

  private void saw() {
    for (String key : List.of("kerf", "rip-kerf")) {
      Quantity kerf = key.equals("kerf") ? cut.kerf() : cut.ripKerf().orElse(cut.kerf());
      if (cut.at().has(key) && kerf.compareAmount(WIDEST_KERF) > 0) {
        spoils(
            cut.at().of(key),
            "A kerf of " + kerf + " is wider than any blade.",
            "Write what the blade takes, such as 3 mm.");
      }
    }
    if (cut.stages().filter(n -> n < 2 || n > 3).isPresent()) {
      spoils(
          cut.at().of("stages"),
          "Cuts in " + cut.stages().get() + " stages are not planned.",
          "Write 2 for strips and parts, or 3 for blocks, strips and parts.");
    }
  }

  private void marks() {
    Set<String> seen = new HashSet<>();
    long all = 0;
    for (Cut.Part part : cut.parts()) {
      all += part.qty();
      if (!seen.add(part.mark())) {
        spoils(
            part.at().of("mark"),
            "The mark “" + part.mark() + "” stands for two parts.",
            "Give each part its own mark, or add their numbers.");
      }
    }
    if (all > MOST_PARTS) {
      spoils(
          cut.at().record(),
          "The cut asks for "
              + all
              + " parts; no more than "
              + MOST_PARTS
              + " are planned at once.",
          "Check the numbers, or split the cut.");
    }
  }

  private void stock() {
    Set<String> seen = new HashSet<>();
    for (Ref ref : cut.from()) {
      if (!seen.add(ref.id())) {
        odd(ref.at(), ref.id() + " is named twice.", "Name it once; its “pieces” say how many.");
        continue;
      }
      ledger.stock(ref).ifPresent(stock -> stock(stock, ref));
    }
    for (Cut.Part part : cut.parts()) {
      for (Ref ref : part.from()) {
        if (cut.from().stream().noneMatch(own -> own.id().equals(ref.id()))) {
          odd(
              ref.at(),
              "“"
                  + part.mark()
                  + "” may come from "
                  + ref.id()
                  + ", but the cut does not draw on it.",
              "Add it to the “from” of the cut.");
        }
      }
    }
  }

  private void stock(Stock stock, Ref ref) {
    if (stock.size().isEmpty()) {
      odd(
          ref.at(),
          "The stock " + stock.id() + " has no size.",
          "Give it “size: 2450 x 110 x 32 mm” and “pieces”.");
      return;
    }
    if (stock.grain().isPresent() && Suits.grain(stock).isEmpty()) {
      odd(
          stock.at().of("grain"),
          "The grain of " + stock.id() + " is “" + stock.grain().get() + "”.",
          "Write along or across, against the first side of its size; any where it has none.");
    }
    Clearance.uncounted(stock)
        .ifPresent(
            says ->
                odd(
                    stock.at().of("qty"),
                    "How many pieces of "
                        + stock.id()
                        + " there are is not known: it says "
                        + says
                        + ".",
                    "Write “pieces: 3”, with their number, in place of “qty”."));
    Clearance.unclear(stock)
        .ifPresent(
            flaw ->
                odd(
                    flaw.at().record(),
                    "A flaw of "
                        + stock.id()
                        + " runs from "
                        + flaw.from()
                        + " to "
                        + flaw.to()
                        + " on a piece of "
                        + Tenths.mm(Tenths.side(stock.size().get().length()))
                        + " mm.",
                    "Measure it from one end, the nearer edge first."));
  }

  private void parts(Facts day) {
    Rack rack = Rack.of(cut, day, List.of());
    Map<String, String> refused = Wanted.of(cut, rack, ledger).refused();
    for (Cut.Part part : cut.parts()) {
      String why = refused.get(part.mark());
      if (why != null) {
        faults.add(
            new Fault(
                part.at().of(part.at().has("length") ? "length" : "mark"),
                why,
                mend(part),
                Optional.of(part.mark()),
                false));
      }
    }
  }

  private String mend(Cut.Part part) {
    if (PartFaults.of(part, cut).isPresent()) {
      return "Correct what the part asks for, or take it out.";
    }
    return "Draw on stock that suits, or say of the stock what is not said"
        + (part.scarf().isPresent() || part.butt() || !isTooLong(part)
            ? "."
            : "; or let the part be joined, with “scarf: 8” or “butt: yes”.");
  }

  /** For every piece of a size that the cut draws on. */
  private boolean isTooLong(Cut.Part part) {
    long length = Sawn.length(part);
    List<Stock> sized =
        cut.from().stream()
            .flatMap(ref -> ledger.stock(ref).stream())
            .filter(stock -> stock.size().isPresent())
            .toList();
    return !sized.isEmpty()
        && sized.stream().allMatch(stock -> length > Clearance.of(stock, cut).longest());
  }

  private void spoils(Place at, String what, String mend) {
    faults.add(new Fault(at, what, mend, Optional.empty(), true));
  }

  private void odd(Place at, String what, String mend) {
    faults.add(new Fault(at, what, mend, Optional.empty(), false));
  }
}
