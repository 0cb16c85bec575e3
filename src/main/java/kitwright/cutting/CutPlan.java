package kitwright.cutting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Parting;
import kitwright.cutting.saw.Rect;
import kitwright.cutting.solve.Effort;
import kitwright.cutting.solve.Outcome;
import kitwright.cutting.verify.PlanCheck;
import kitwright.kit.Positions;
import kitwright.ledger.Build;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.value.Money;
import kitwright.value.Ref;
import kitwright.value.Size;

/**
 * Which piece of the rack yields which parts of a cut, and by which cuts.
 *
 * @param rack what could be drawn on
 * @param tape how its lengths are told
 * @param pieces what is cut, in the order of the stock
 * @param missing how many of each part cannot be made, by its mark
 * @param refused why some parts cannot be made at all, a sentence each, by their marks
 * @param worth of the stock used; empty where nothing has a worth
 * @param notes what was assumed, a sentence each
 * @param keep the smallest left-over that is kept
 * @param bestInStrips whether nothing better can be had in strips, whatever other cuts may
 * @param laps by how much the lengths of a scarfed part lap, by its mark
 */
public record CutPlan(
    Cut cut,
    Rack rack,
    Tape tape,
    List<PieceCut> pieces,
    Map<String, Integer> missing,
    Map<String, String> refused,
    Optional<Money> worth,
    List<String> notes,
    Outcome outcome,
    Manner manner,
    boolean bestInStrips,
    Keep keep,
    Map<String, Long> laps) {

  /** A plan that a second look refuses is never told. */
  public static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Refused(String why) {
      super(why);
    }
  }

  /**
   * Plans a cut on a day, after those that are made before it. Asked only where {@link CutFaults}
   * finds nothing that spoils the whole cut.
   *
   * @throws Refused where the plan does not stand up to a second look
   */
  public static CutPlan of(Cut cut, Facts day, Effort effort) {
    return new Planning(day, effort).of(cut);
  }

  /** Plans several cuts with one effort each, every one once. */
  static final class Planning {
    private final Facts day;
    private final Effort effort;
    private final Map<String, CutPlan> known = new HashMap<>();

    Planning(Facts day, Effort effort) {
      this.day = day;
      this.effort = effort;
    }

    CutPlan of(Cut cut) {
      CutPlan plan = known.get(cut.id());
      if (plan == null) {
        plan = plan(cut, effort);
        known.put(cut.id(), plan);
      }
      return plan;
    }

    /** Which of its parts a cut can make, from whatever stock. */
    CutPlan partsOf(Cut cut) {
      return known.containsKey(cut.id()) ? of(cut) : plan(cut, Effort.forParts(effort.steps()));
    }

    private CutPlan plan(Cut cut, Effort most) {
      OpenCuts cuts = new OpenCuts(day.ledger());
      List<Rack.Gone> gone = new ArrayList<>();
      if (cut.done().isEmpty()) {
        cuts.before(cut).forEach(other -> gone(other, gone));
        cuts.unsaid(cut).forEach(other -> gone(other, gone));
      }
      return CutPlan.from(cut, Rack.of(cut, day, gone), day, most);
    }

    private void gone(Cut other, List<Rack.Gone> gone) {
      if (CutFaults.spoiling(other, day.ledger()).isEmpty()) {
        gone.add(new Rack.Gone(other, of(other).used()));
      }
    }
  }

  static CutPlan from(Cut cut, Rack rack, Facts day, Effort effort) {
    Wanted wanted = Wanted.of(cut, rack, day.ledger());
    Worths worths =
        Worths.of(rack.pieces().stream().map(Rack.Free::stock).toList(), day.ledger(), day.day());
    Solving.Found found = Solving.of(wanted, worths, effort);
    Map<String, Integer> missing = new LinkedHashMap<>();
    for (Cut.Part part : cut.parts()) {
      int lacks =
          wanted.refused().containsKey(part.mark())
              ? part.qty()
              : found.missing().getOrDefault(part.mark(), 0);
      if (lacks > 0) {
        missing.put(part.mark(), lacks);
      }
    }
    List<PieceCut> pieces = found.pieces().stream().map(on -> parted(on, wanted)).toList();
    List<String> notes = new ArrayList<>(worths.notes());
    rack.pieces().forEach(free -> Suits.doubt(free.stock()).ifPresent(notes::add));
    cut.from().stream()
        .filter(ref -> isUnknown(ref, day))
        .map(ref -> "How much of " + ref.id() + " there is nobody can tell; it might serve better.")
        .distinct()
        .forEach(notes::add);
    Unnamed.in(cut, day.ledger()).forEach(notes::add);
    notes.addAll(AnyThickness.in(cut, rack.pieces()));
    CutPlan plan =
        new CutPlan(
            cut,
            rack,
            new Tape(day.ledger().build().units() == Build.Units.IMPERIAL),
            pieces,
            missing,
            wanted.refused(),
            worth(pieces, worths, day),
            notes,
            found.outcome(),
            found.manner(),
            found.bestInStrips(),
            Keep.of(cut, day.ledger()),
            wanted.laps());
    plan.lookOver();
    return plan;
  }

  /** Whether nobody can read what there is of some stock: nothing is proved without it. */
  private static boolean isUnknown(Ref stock, Facts day) {
    return Positions.on(day)
        .ofStock(stock)
        .map(position -> !position.doubts().isEmpty())
        .orElse(day.written().stock(stock).isEmpty());
  }

  private static PieceCut parted(Solving.On on, Wanted wanted) {
    Size size = on.stock().size().orElseThrow();
    Rect whole = new Rect(0, 0, Tenths.side(size.length()), Tenths.side(size.width()));
    Board board =
        Parting.of(whole, Clearance.flaws(on.stock()), on.parts(), wanted.saw())
            .orElseThrow(
                () -> new Refused("no straight cuts part what lies on " + on.stock().id()));
    return new PieceCut(on.stock(), on.number(), board);
  }

  private static Optional<Money> worth(List<PieceCut> pieces, Worths worths, Facts day) {
    return worths.isPriced()
        ? Optional.of(
            Money.rounded(
                pieces.stream()
                    .map(piece -> worths.money().getOrDefault(piece.stock().id(), BigDecimal.ZERO))
                    .reduce(BigDecimal.ZERO, BigDecimal::add),
                day.ledger().build().currency()))
        : Optional.empty();
  }

  private void lookOver() {
    List<PlanCheck.Bench> bench =
        pieces.stream()
            .map(piece -> new PlanCheck.Bench(piece.stock(), piece.number(), piece.board()))
            .toList();
    Map<String, Integer> free = new HashMap<>();
    rack.pieces().forEach(each -> free.put(each.stock().id(), each.first() - 1 + each.count()));
    List<String> faults = PlanCheck.faults(cut, free, bench, missing);
    if (!faults.isEmpty()) {
      throw new Refused(String.join("; ", faults));
    }
  }

  Optional<Long> lap(Cut.Part part) {
    return Optional.ofNullable(laps.get(part.mark()));
  }

  /** How many pieces of each stock it takes, in the order of the plan. */
  public Map<String, Integer> used() {
    Map<String, Integer> used = new LinkedHashMap<>();
    pieces.forEach(piece -> used.merge(piece.stock().id(), 1, Integer::sum));
    return used;
  }

  /**
   * The better of this and another plan of the same cut, with what both know of the bound where
   * they make the same parts.
   */
  public CutPlan orBetter(CutPlan other) {
    int parts = Arrays.compare(missingByLevel(), other.missingByLevel());
    boolean mine = parts < 0 || (parts == 0 && outcome.value() <= other.outcome.value());
    CutPlan best = mine ? this : other;
    if (!missing.equals(other.missing) || manner != other.manner) {
      return best;
    }
    long bound = Math.min(best.outcome.value(), Math.max(outcome.bound(), other.outcome.bound()));
    boolean most = outcome.mostParts() || other.outcome.mostParts();
    boolean strips =
        (bestInStrips && outcome.value() == best.outcome.value())
            || (other.bestInStrips && other.outcome.value() == best.outcome.value());
    return best.with(
        strips,
        new Outcome(best.outcome.value(), bound, most, outcome.steps() + other.outcome.steps()));
  }

  private CutPlan with(boolean strips, Outcome known) {
    return new CutPlan(
        cut, rack, tape, pieces, missing, refused, worth, notes, known, manner, strips, keep, laps);
  }

  /** How many parts are missing of each priority, the first first. */
  private int[] missingByLevel() {
    TreeMap<Integer, Integer> levels = new TreeMap<>();
    cut.parts()
        .forEach(
            part ->
                levels.merge(
                    part.priority().orElse(1), missing.getOrDefault(part.mark(), 0), Integer::sum));
    return levels.values().stream().mapToInt(n -> n).toArray();
  }

  /** How many of each part it makes, in the order of the cut. */
  public Map<String, Integer> made() {
    Map<String, Integer> made = new LinkedHashMap<>();
    cut.parts()
        .forEach(part -> made.put(part.mark(), part.qty() - missing.getOrDefault(part.mark(), 0)));
    return made;
  }

  /** Whether nothing better exists, and all that this leans on is stated. */
  public boolean isProvedBest() {
    return outcome.isProvedBest() && notes.isEmpty() && !pieces.isEmpty();
  }

  /** How good the plan is known to be, in words that name the kind of cutting. */
  public String quality() {
    if (pieces.isEmpty()) {
      return "Nothing can be cut.";
    }
    String less = worth.isPresent() ? "uses stock worth less" : "uses less stock by its area";
    String plan = "no plan " + manner.words();
    if (outcome.isProvedBest()) {
      return best("")
          + ": "
          + plan
          + (missing.isEmpty()
              ? " " + less + "."
              : " makes more of the parts, nor " + less + " for them.");
    }
    if (bestInStrips) {
      return best(" in strips") + "; by any straight cuts from edge to edge " + straight(less);
    }
    String stock =
        outcome.value() <= outcome.bound()
            ? "no plan for these parts " + manner.words() + " " + less
            : outcome.bound() == 0
                ? "how much less stock could do is not known"
                : "at most "
                    + outcome.percentAboveBound()
                    + " % more stock than the least there could be "
                    + manner.words();
    return "Good"
        + ifNoted()
        + ": "
        + stock
        + (outcome.mostParts() ? "." : "; whether more parts could be made is not proved.");
  }

  private String best(String where) {
    return notes.isEmpty() ? "Proved best" + where : "Best" + where + ifNoted();
  }

  private String ifNoted() {
    return notes.isEmpty() ? "" : ", if what is noted below holds";
  }

  private String straight(String less) {
    if (outcome.value() <= outcome.bound()) {
      return "no plan for these parts " + less + ".";
    }
    return outcome.bound() == 0
        ? "less stock might do."
        : "it may be up to " + outcome.percentAboveBound() + " % more stock than the least.";
  }
}
