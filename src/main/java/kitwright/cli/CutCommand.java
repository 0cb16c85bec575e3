package kitwright.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.cutting.Buying;
import kitwright.cutting.CutFaults;
import kitwright.cutting.CutPlan;
import kitwright.cutting.DoneCut;
import kitwright.cutting.Remnants;
import kitwright.cutting.Steps;
import kitwright.cutting.solve.Effort;
import kitwright.ledger.Cut;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.report.stores.CutPicture;
import kitwright.report.stores.CutTold;

/** Plans cuts. */
final class CutCommand implements Command {
  private static final long BUYING_STEPS = 200_000_000;

  private final LedgerOptions options = new LedgerOptions();
  private final PictureOptions picture = new PictureOptions();
  private Optional<String> id = Optional.empty();
  private final Telling telling = new Telling();
  private boolean labels;
  private boolean record;
  private boolean done;
  private int seconds;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Plans a cut: which piece of stock yields which parts, what is left, what is short. Without"
            + " an ID, lists the cuts.",
        "Stock that other work needs is left alone. The same ledger gives the same plan, unless"
            + " --seconds ends the search.",
        "For example: kitwright cut berth-bearers");
    options.declare(to);
    picture.declare(to);
    to.mayPlace("ID", given -> id = Optional.of(given), "The cut.");
    telling.declare(to);
    to.flag("--labels", () -> labels = true, "Print only what to write on each part, a line each.");
    to.flag(
        "--record",
        () -> record = true,
        "After the cut: print what --done would write, to be written by hand.");
    to.flag(
        "--done",
        () -> done = true,
        "After the cut: write into the ledger that it is done, what it took, and its left-overs.");
    to.option(
        "--seconds",
        "N",
        int.class,
        given -> seconds = given,
        "Search for at most so many seconds.");
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Facts day = Facts.of(opened.ledger(session), opened.today());
    Ledger ledger = day.ledger();
    if (id.isEmpty()) {
      return telling.tell(CutTold.list(ledger), opened, session);
    }
    Cut cut = cut(ledger, id.get());
    Optional<LocalDate> written = day.written().<Cut>find(Kind.CUTS, cut.id()).flatMap(Cut::done);
    if (written.isPresent() && done) {
      throw new Refusal(
          "The cut " + cut.id() + " is done since " + written.get() + ".",
          "Take “done” out of its record first if that is not so.");
    }
    if (written.isPresent() && cut.done().isEmpty()) {
      session.note(
          "The cut "
              + cut.id()
              + " is said to be done on "
              + written.get()
              + ", still to come: this is its plan. Correct “done” if that is a slip.");
    }
    if (cut.done().isPresent()) {
      DoneCut came = DoneCut.of(cut, day, Effort.usual());
      return telling.tell(CutTold.of(came), opened, session);
    }
    List<CutFaults.Fault> faults = CutFaults.spoiling(cut, ledger);
    if (!faults.isEmpty()) {
      CutFaults.Fault first = faults.get(0);
      throw new Refusal(first.at() + ": " + first.what(), first.mend());
    }
    CutPlan plan = plan(cut, day, session);
    if (done) {
      if (plan.pieces().isEmpty()) {
        throw new Refusal(
            "Nothing of " + cut.id() + " can be cut.", "See “kitwright cut " + cut.id() + "”.");
      }
      return new CutBooking(plan, opened, session).run();
    }
    int told = tell(plan, day, opened, session);
    picture.draw(() -> CutPicture.of(plan), session);
    return told == CLEAN && !(plan.missing().isEmpty() && plan.refused().isEmpty()) ? FOUND : told;
  }

  private CutPlan plan(Cut cut, Facts day, Session session) {
    try {
      return new CutSearch(cut, day, seconds, session).plan();
    } catch (CutPlan.Refused refused) {
      throw new Refusal(
          "A plan for "
              + cut.id()
              + " was found, but a second look refused it: "
              + refused.getMessage()
              + ".",
          "It is not shown. Please report this with the ledger’s cuts and stock.");
    }
  }

  private int tell(CutPlan plan, Facts day, Opened opened, Session session) {
    if (record) {
      Remnants.keys(plan, opened.today())
          .forEach(key -> session.say("# in the cut " + plan.cut().id() + ": " + key));
      session.print(Remnants.records(plan, opened.today()));
      return CLEAN;
    }
    if (labels) {
      Steps.labels(plan).forEach(session::say);
      return CLEAN;
    }
    Optional<Buying> buying = Buying.of(plan, day, Effort.steps(BUYING_STEPS));
    return telling.tell(CutTold.of(plan, buying, day), opened, session);
  }

  private static Cut cut(Ledger ledger, String id) {
    Optional<Cut> cut = ledger.find(Kind.CUTS, id);
    return cut.orElseThrow(
        () -> Refusal.unknown(ledger, Kind.CUTS, id, "“kitwright cut” alone lists them."));
  }
}
