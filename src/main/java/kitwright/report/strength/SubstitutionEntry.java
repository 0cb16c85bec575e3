package kitwright.report.strength;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.document.Block;
import kitwright.document.Inline;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Spend;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.report.words.Cells;
import kitwright.report.words.Say;
import kitwright.substitution.HoldPoint;
import kitwright.substitution.Lack;
import kitwright.substitution.Signature;
import kitwright.substitution.Signer;
import kitwright.substitution.SubstitutionStanding;
import kitwright.value.Days;
import kitwright.value.Ref;
import kitwright.value.Word;

/** One substitution as the register tells it: what, why, who, and by what right. */
public final class SubstitutionEntry {
  private SubstitutionEntry() {}

  public static List<Block> of(SubstitutionStanding each, Ledger ledger) {
    Substitution substitution = each.substitution();
    List<Inline> facts = new ArrayList<>();
    facts.add(Cells.fact("Instead of", insteadOf(substitution, ledger)));
    facts.add(
        Cells.fact(
            "Taken", Say.list(substitution.use().stream().map(t -> take(t, ledger)).toList())));
    facts.add(Cells.fact("Grade", grade(each)));
    substitution
        .proposed()
        .ifPresent(p -> facts.add(Cells.fact("Proposed", by(p.by(), p.on(), ledger))));
    facts.add(Cells.fact("Assessment", assessment(each)));
    each.signatures()
        .forEach(signed -> facts.add(Cells.fact("Signature", signature(signed, ledger))));
    if (each.signatures().isEmpty()) {
      facts.add(Cells.fact("Signature", "none"));
    }
    facts.add(Cells.fact("Hold point", holdInFull(each, ledger)));
    substitution.withdrawn().ifPresent(day -> facts.add(Cells.fact("Withdrawn", day.toString())));
    List<Signer> open =
        each.isWithdrawn() || each.signedOn().isPresent() ? List.of() : each.signers();
    open.forEach(signer -> facts.add(toSign(signer)));
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading(2, Inline.code(substitution.id())));
    blocks.add(Block.paragraph(Word.capital(substitution.why()) + "."));
    blocks.add(Block.bullets(facts));
    if (!open.isEmpty()) {
      blocks.add(Block.paragraph("What would be signed, in full:"));
      blocks.add(
          Block.code(String.join("\n", open.stream().map(SubstitutionEntry::whole).toList())));
    }
    return blocks;
  }

  private static String whole(Signer signer) {
    return signer.statement().fingerprint().digits() + "  " + signer.party().name();
  }

  private static String grade(SubstitutionStanding each) {
    return each.grading().because().isEmpty()
        ? Word.spoken(each.grade())
        : Word.spoken(each.grade())
            + ", though it says "
            + Word.spoken(each.substitution().grade())
            + ": "
            + Say.list(each.grading().because());
  }

  /** The first digits of what somebody would sign today. */
  private static Inline toSign(Signer signer) {
    return Inline.together(
        Inline.strong("To be signed by " + signer.party().name()),
        Inline.text(": "),
        Inline.code(signer.statement().fingerprint().brief()));
  }

  private static String insteadOf(Substitution substitution, Ledger ledger) {
    Optional<String> item = substitution.insteadOf().item().map(ref -> kitItem(ref, ledger));
    return Say.so(
        substitution.insteadOf().qty(),
        item.or(() -> substitution.insteadOf().what()).orElse("something unnamed"));
  }

  private static String kitItem(Ref ref, Ledger ledger) {
    return ledger.kitItem(ref).map(KitItem::what).orElse(ref.id());
  }

  private static String take(Substitution.Take take, Ledger ledger) {
    Optional<String> what =
        Stream.of(
                take.stock().map(r -> ledger.stock(r).map(Stock::what).orElse(r.id())),
                take.item().map(r -> kitItem(r, ledger)),
                take.spend().map(r -> ledger.spend(r).map(Spend::what).orElse(r.id())))
            .flatMap(Optional::stream)
            .findFirst();
    return Say.so(take.qty(), what.orElse("something unnamed"));
  }

  private static String by(Ref who, LocalDate on, Ledger ledger) {
    return ledger.party(who).map(Party::name).orElse(who.id()) + ", " + on;
  }

  private static String assessment(SubstitutionStanding each) {
    String id = each.substitution().assessment().map(Ref::id).orElse("");
    if (id.isEmpty()) {
      return each.needsAssessment() ? "none, and this grade needs one" : "none";
    }
    return each.verdict()
        .map(
            verdict ->
                id
                    + ": "
                    + SubstitutionsReport.outcome(verdict)
                    + (verdict.reasons().isEmpty() ? "" : " (" + verdict.because() + ")"))
        .orElse(id + ", which is not in the ledger");
  }

  private static String signature(Signature signed, Ledger ledger) {
    List<String> conditions =
        signed.signOff().conditions().stream().map(SubstitutionEntry::condition).toList();
    String covers = signed.signOff().covers().map(digits -> ", covers " + brief(digits)).orElse("");
    String counts =
        signed.counts()
            ? "counts" + (signed.earlierForm() ? ", by an older form, which covers less" : "")
            : "does not count: " + Say.list(signed.lacks().stream().map(Lack::words).toList());
    return by(signed.signOff().by(), signed.signOff().on(), ledger)
        + covers
        + "; "
        + counts
        + (conditions.isEmpty() ? "" : "; on condition that " + Say.list(conditions));
  }

  private static String brief(String digits) {
    return digits.substring(0, Math.min(12, digits.length()));
  }

  private static String condition(Substitution.Condition condition) {
    List<String> parts = new ArrayList<>();
    condition.text().ifPresent(parts::add);
    condition
        .atLeast()
        .forEach(
            (measure, least) ->
                parts.add(
                    measure.id()
                        + condition.section().map(section -> " of " + section.id()).orElse("")
                        + " is at least "
                        + least));
    return Say.list(parts);
  }

  private static String holdInFull(SubstitutionStanding each, Ledger ledger) {
    HoldPoint hold = each.hold();
    if (each.isWithdrawn()) {
      return "none any more: withdrawn";
    }
    String task =
        hold.task()
            .map(ref -> "“" + ledger.task(ref).map(Task::what).orElse(ref.id()) + "” ")
            .orElse("");
    String begun = hold.begun().map(day -> " on " + Days.named(day)).orElse("");
    return switch (hold.state()) {
      case NONE -> "none named";
      case HOLDS -> task + "must not start before it may be built";
      case RELEASED ->
          task
              + hold.begun()
                  .map(d -> "was released and begun on " + Days.named(d))
                  .orElse("is released as far as this goes");
      case OVERTAKEN ->
          task + "was started" + begun + ", under a signature that no longer stands" + ended(hold);
      case PASSED -> task + "was started" + begun + passed(each) + ended(hold);
    };
  }

  private static String passed(SubstitutionStanding each) {
    return each.signedOn()
        .map(
            day ->
                each.hold().begun().isPresent()
                    ? ", before the signature of " + Days.named(day)
                    : " on a day that nothing tells, perhaps before the signature of "
                        + Days.named(day))
        .orElse(" without a signature that counts");
  }

  private static String ended(HoldPoint hold) {
    return hold.finished() ? ", and has ended" : "; stop it";
  }
}
