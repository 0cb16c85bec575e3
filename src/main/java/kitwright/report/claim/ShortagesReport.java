package kitwright.report.claim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Value;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Shortage;
import kitwright.openmatter.OpenMatter;
import kitwright.openmatter.OpenMatters;
import kitwright.report.words.Amounts;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.shortage.Cover;
import kitwright.shortage.ShortageStanding;
import kitwright.shortage.ShortageStandings;
import kitwright.substitution.SubstitutionStanding;
import kitwright.value.Money;

/** Shortages by how they stand, the oldest first, with claim, way out and worth. */
public final class ShortagesReport {
  private ShortagesReport() {}

  public static List<Sheet> sheets(Facts now) {
    List<ShortageStanding> open = oldestFirst(ShortageStandings.on(now).open());
    List<ShortageStanding> over =
        ShortageStandings.on(now).all().stream().filter(each -> !each.isOpen()).toList();
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("today", Cells.spoken(now.day()))
            .sentence("summary", summary(open, over))
            .block("open", open(open, neededBy(now)).toArray(Block[]::new))
            .block("covered", over.isEmpty() ? new Block[0] : new Block[] {covered(over)});
    return List.of(new Sheet("shortages.md", "shortages", slots));
  }

  /** The last day on which the work that a shortage stops can start, by id of the shortage. */
  private static Map<String, LocalDate> neededBy(Facts now) {
    Map<String, LocalDate> days = new HashMap<>();
    for (OpenMatter matter : OpenMatters.on(now).all()) {
      if (matter.sort() == OpenMatter.Sort.SHORTAGE) {
        matter.neededBy().ifPresent(day -> days.put(matter.record(), day));
      }
    }
    return days;
  }

  private static List<ShortageStanding> oldestFirst(List<ShortageStanding> all) {
    return all.stream().sorted(Comparator.comparing(ShortageStanding::age).reversed()).toList();
  }

  private static String summary(List<ShortageStanding> open, List<ShortageStanding> over) {
    if (open.isEmpty()) {
      return over.isEmpty()
          ? "No shortage has been recorded."
          : "Nothing is missing any more; "
              + Say.count(over.size(), "shortage is", "shortages are")
              + " over.";
    }
    List<Money> worth =
        Amounts.of(open.stream().flatMap(each -> each.openValue().stream()).toList()).sums();
    long undecided = open.stream().filter(each -> each.shortage().decided().isEmpty()).count();
    return Say.count(open.size(), "shortage is", "shortages are")
        + " open, the oldest for "
        + Say.days(open.get(0).age())
        + (worth.isEmpty() ? "" : "; at the kit’s prices they are worth " + Say.monies(worth))
        + ". "
        + claims(open)
        + (undecided == 0
            ? ""
            : " For " + Say.count(undecided, "no way out is", "no way out is") + " chosen yet.");
  }

  private static String claims(List<ShortageStanding> open) {
    long untold = open.stream().filter(each -> each.claims().isEmpty() && isOwed(each)).count();
    long inPart = open.stream().filter(ShortageStanding::isClaimedInPart).count();
    String part = inPart == 0 ? "" : Say.count(inPart, "is", "are") + " claimed only in part";
    if (untold > 0) {
      return Say.count(untold, "has", "have")
          + " no claim"
          + (part.isEmpty() ? "" : ", " + part)
          + ".";
    }
    if (!part.isEmpty()) {
      return part + ".";
    }
    return open.stream().allMatch(each -> each.claims().isEmpty())
        ? "Nobody owes what was used up."
        : "Each that is owed has a claim or a draft of one.";
  }

  private static boolean isOwed(ShortageStanding each) {
    return each.shortage().cause() != Shortage.Cause.USED_UP;
  }

  private static List<Block> open(List<ShortageStanding> open, Map<String, LocalDate> neededBy) {
    Amounts worth = Amounts.of(open.stream().flatMap(each -> each.openValue().stream()).toList());
    List<Block> blocks = new ArrayList<>();
    for (ShortageStanding.State state : ShortageStanding.State.values()) {
      List<ShortageStanding> some = open.stream().filter(each -> each.state() == state).toList();
      if (!some.isEmpty()) {
        blocks.add(Block.heading(2, title(state)));
        blocks.add(table(some, worth, neededBy));
      }
    }
    return blocks;
  }

  private static String title(ShortageStanding.State state) {
    return switch (state) {
      case FOUND -> "Found, and nobody told";
      case CLAIMED -> "Claimed, and no answer";
      case ANSWERED -> "Answered, without a day that holds";
      case PROMISED -> "Promised for a day";
      case COVERED -> "Over";
    };
  }

  private static Block table(
      List<ShortageStanding> some, Amounts worth, Map<String, LocalDate> neededBy) {
    return Block.table(
        Column.columns(
            Column.left("Missing"),
            Column.left("Open"),
            Column.data("days"),
            Column.left("Needed by"),
            Column.left("Claim"),
            Column.left("Way out"),
            worth.column("Worth")),
        some.stream()
            .map(
                each ->
                    Row.row(
                        Cell.of(Cells.named(what(each), each.shortage().id())),
                        Cell.of(
                                amount(each) + " for " + Say.days(each.age()),
                                Value.of(amount(each)))
                            .with(Value.parts(each.open())),
                        Cell.number(each.age()),
                        Cell.day(Optional.ofNullable(neededBy.get(each.shortage().named()))),
                        Cell.of(claim(each)).with("ids", ids(each)),
                        Cell.text(wayOut(each)).with("promised-for", each.promisedFor()),
                        worth.cell(each.openValue())))
            .toList());
  }

  private static Value ids(ShortageStanding each) {
    return new Value.Several(
        each.claims().stream().<Value>map(claim -> new Value.Id(claim.id())).toList());
  }

  public static String what(ShortageStanding each) {
    return each.item().map(KitItem::what).orElse(each.shortage().item().id());
  }

  private static String amount(ShortageStanding each) {
    String open = Say.qty(each.open());
    return each.covered().isNone() ? open : open + " of " + Say.qty(each.shortage().qty());
  }

  private static Inline claim(ShortageStanding each) {
    if (each.claims().isEmpty()) {
      return isOwed(each) ? Inline.strong("none") : Inline.text("not owed");
    }
    List<Inline> parts = new ArrayList<>();
    each.claims()
        .forEach(
            claim -> {
              parts.add(Inline.code(claim.id()));
              parts.add(Inline.text(claim.sent().isPresent() ? " " : " draft "));
            });
    if (each.isClaimedInPart()) {
      parts.add(Inline.strong(Say.qty(each.unclaimed()) + " in no claim"));
    }
    return Inline.together(parts.toArray(Inline[]::new));
  }

  /** What was chosen and how far it has come, in a few words. */
  static String wayOut(ShortageStanding each) {
    Optional<Shortage.Decision> decided = each.shortage().decided();
    String promised =
        each.promisedFor().map(day -> "; promised for " + day).orElse("") + lapsed(each);
    if (decided.isEmpty()) {
      return "not chosen" + promised;
    }
    List<String> answers =
        each.substitutions().stream()
            .filter(s -> !s.isWithdrawn())
            .map(ShortagesReport::answer)
            .toList();
    return decided.get().option() + (answers.isEmpty() ? "" : ": " + Say.list(answers)) + promised;
  }

  /** What did not come on its day. */
  private static String lapsed(ShortageStanding each) {
    return each.lapsed().stream()
        .flatMap(part -> part.lapsed().stream())
        .max(LocalDate::compareTo)
        .map(day -> "; was to come " + day)
        .orElse("");
  }

  private static String answer(SubstitutionStanding substitution) {
    return substitution.isApproved()
        ? "signed"
        : Say.list(substitution.lacks().stream().map(lack -> lack.words()).toList());
  }

  private static Block covered(List<ShortageStanding> over) {
    return Block.table(
        Column.columns(
            Column.left("Was missing"),
            Column.right("Short"),
            Column.left("Found"),
            Column.left("How it ended"),
            Column.left("On")),
        over.stream()
            .map(
                each ->
                    Row.row(
                        Cell.of(Cells.named(what(each), each.shortage().id())),
                        Cells.told(each.shortage().qty()),
                        Cell.day(each.shortage().found()),
                        Cell.text(ended(each)),
                        Cell.day(each.coveredOn())))
            .toList());
  }

  private static String ended(ShortageStanding each) {
    return Say.list(each.covers().stream().map(ShortagesReport::cover).distinct().toList());
  }

  private static String cover(Cover cover) {
    return switch (cover.how()) {
      case DELIVERED -> "delivered";
      case SUBSTITUTED -> "substituted";
      case BOUGHT -> "bought";
      case DONE_WITHOUT -> "done without";
    };
  }
}
