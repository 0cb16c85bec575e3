package kitwright.report.strength;

import java.util.ArrayList;
import java.util.List;
import kitwright.assessment.sheet.Verdict;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.ledger.Facts;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.report.words.Sheet;
import kitwright.substitution.HoldPoint;
import kitwright.substitution.Lack;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Word;

/** The register of everything built otherwise than drawn, for builder, designer and surveyor. */
public final class SubstitutionsReport {
  private SubstitutionsReport() {}

  public static List<Sheet> sheets(Facts now) {
    List<SubstitutionStanding> all = SubstitutionStandings.on(now).all();
    List<Block> each = new ArrayList<>();
    all.forEach(standing -> each.addAll(SubstitutionEntry.of(standing, now.ledger())));
    Slots slots =
        Slots.none()
            .sentence("build", now.ledger().build().name())
            .value("today", Cells.spoken(now.day()))
            .sentence("summary", summary(all))
            .block("overview", all.isEmpty() ? new Block[0] : new Block[] {overview(all)})
            .block("register", each.toArray(Block[]::new));
    return List.of(new Sheet("substitutions.md", "substitutions", slots));
  }

  private static String summary(List<SubstitutionStanding> all) {
    if (all.isEmpty()) {
      return "Nothing is built otherwise than drawn.";
    }
    List<SubstitutionStanding> passed =
        all.stream().filter(each -> each.hold().state() == HoldPoint.State.PASSED).toList();
    List<SubstitutionStanding> waiting =
        all.stream().filter(each -> each.state() == SubstitutionStanding.State.WAITING).toList();
    String text =
        Say.count(all.size(), "substitution is", "substitutions are")
            + " on record: "
            + all.stream().filter(SubstitutionStanding::isApproved).count()
            + " may be built, "
            + waiting.size()
            + " may not yet, "
            + all.stream().filter(SubstitutionStanding::isWithdrawn).count()
            + " withdrawn.";
    return Say.sentences(
        List.of(
            text,
            told(
                passed,
                false,
                "passed without a signature",
                "stop there and ask whoever may sign."),
            told(
                passed,
                true,
                "passed before the signature",
                "tell whoever signed that the part was begun by then."),
            overtaken(all)));
  }

  private static String overtaken(List<SubstitutionStanding> all) {
    List<String> some =
        all.stream()
            .filter(each -> each.hold().state() == HoldPoint.State.OVERTAKEN)
            .map(each -> each.substitution().id())
            .toList();
    return some.isEmpty()
        ? ""
        : "The signature was overtaken by a change at "
            + Say.list(some)
            + ", where work has begun: stop there and show the change to whoever signed.";
  }

  private static String told(
      List<SubstitutionStanding> passed, boolean signed, String how, String then) {
    List<String> some =
        passed.stream()
            .filter(each -> each.signedOn().isPresent() == signed)
            .map(each -> each.substitution().id())
            .toList();
    return some.isEmpty()
        ? ""
        : "The hold point was " + how + " at " + Say.list(some) + ": " + then;
  }

  private static Block overview(List<SubstitutionStanding> all) {
    return Block.table(
        Column.columns(
            Column.left("Substitution"),
            Column.left("Grade"),
            Column.left("Assessment"),
            Column.left("Signed"),
            Column.left("Hold point"),
            Column.left("Status").named("stands")),
        all.stream()
            .map(
                each ->
                    Row.row(
                        Inline.code(each.substitution().id()),
                        Inline.text(Word.spoken(each.grade())),
                        Inline.text(each.verdict().map(v -> outcome(v)).orElse(Cells.NONE)),
                        Inline.text(Cells.maybe(each.signedOn())),
                        Inline.text(each.isWithdrawn() ? Cells.NONE : hold(each.hold())),
                        stands(each)))
            .toList());
  }

  public static String outcome(Verdict verdict) {
    return switch (verdict.outcome()) {
      case PASS -> "passes";
      case FAIL -> "fails";
      case CANNOT_TELL -> "no result";
    };
  }

  private static String hold(HoldPoint hold) {
    return switch (hold.state()) {
      case NONE -> "none named";
      case HOLDS -> "holds";
      case RELEASED -> "released";
      case OVERTAKEN -> "overtaken";
      case PASSED -> "passed";
    };
  }

  private static Inline stands(SubstitutionStanding each) {
    return switch (each.state()) {
      case APPROVED -> Inline.text("may be built");
      case WITHDRAWN -> Inline.text("withdrawn");
      case WAITING ->
          Inline.strong("not yet: " + Say.list(each.lacks().stream().map(Lack::words).toList()));
    };
  }
}
