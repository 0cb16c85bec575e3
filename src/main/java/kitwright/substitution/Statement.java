package kitwright.substitution;

import java.util.List;
import java.util.Optional;
import kitwright.ledger.Evidence;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Spend;
import kitwright.ledger.Stock;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.Condition;
import kitwright.ledger.Substitution.SignOff;
import kitwright.ledger.Substitution.Take;
import kitwright.ledger.Task;
import kitwright.value.Ref;
import kitwright.value.Word;

/**
 * What somebody signs, as a text that a person can read: what is replaced and by what, the part's
 * grade, the task it holds, the assessment with its load, factors and requirement, every section
 * and material, the signer's own conditions, and who signs in what capacity. The digits that a
 * sign-off quotes are the SHA-256 of exactly this text in UTF-8.
 *
 * <p>Values are in one form each, so that another unit, another order of keys, quotes, comments,
 * file names and signs that nobody sees change nothing. Left out on purpose: the day of signing,
 * which files cannot prove; prices, and how much lies in the shed; where a document lies, since its
 * hash says what it is; the menu of a remedy, which is not built.
 */
public record Statement(String text) {
  /** The form of the text. A signature of an earlier form is judged by that form. */
  public static final int FORM = 2;

  /** What a signer would sign, on conditions of theirs. */
  public static Statement of(
      Substitution substitution, Ref signer, List<Condition> conditions, Ledger ledger) {
    Lines lines = new Lines();
    lines.bare("Kitwright statement, form " + FORM);
    what(substitution, ledger, lines);
    replaced(substitution, ledger, lines);
    used(substitution, ledger, lines);
    new Grounds(ledger, lines).tell(substitution, conditions);
    conditions(conditions, lines);
    signer(signer, ledger, lines);
    return new Statement(lines.text());
  }

  /** What a sign-off signs, as the ledger now tells it. */
  public static Statement of(Substitution substitution, SignOff signOff, Ledger ledger) {
    return of(substitution, signOff.by(), signOff.conditions(), ledger);
  }

  /** Its digits. */
  public Fingerprint fingerprint() {
    return Fingerprint.of(text);
  }

  private static void what(Substitution substitution, Ledger ledger, Lines lines) {
    lines
        .heading("Substitution " + Plain.name(substitution.id()))
        .words("why", substitution.why())
        .word("grade", substitution.grade())
        .name("for the shortage", substitution.shortage());
    substitution
        .proposed()
        .ifPresent(made -> lines.line("proposed", party(made.by(), ledger) + ", on " + made.on()));
    substitution
        .hold()
        .ifPresent(
            task ->
                lines.within(
                    "must be signed before: " + Plain.name(task.id()),
                    () -> ledger.task(task).ifPresentOrElse(t -> task(t, lines), absent(lines))));
  }

  private static void task(Task task, Lines lines) {
    lines.words("what", task.what()).word("grade", task.grade());
  }

  private static void replaced(Substitution substitution, Ledger ledger, Lines lines) {
    lines
        .heading("Instead of")
        .words("what", substitution.insteadOf().what())
        .quantity("quantity", substitution.insteadOf().qty());
    substitution.insteadOf().item().ifPresent(item -> item(item, ledger, lines));
  }

  private static void used(Substitution substitution, Ledger ledger, Lines lines) {
    for (Take take : substitution.use()) {
      lines.heading("Used").quantity("quantity", take.qty());
      take.stock().ifPresent(stock -> stock(stock, ledger, lines));
      take.item().ifPresent(item -> item(item, ledger, lines));
      take.spend().ifPresent(spend -> spend(spend, ledger, lines));
    }
  }

  private static void item(Ref ref, Ledger ledger, Lines lines) {
    Optional<KitItem> found = ledger.kitItem(ref);
    lines.within(
        "kit item " + Plain.name(ref.id()),
        () ->
            found.ifPresentOrElse(
                item ->
                    lines
                        .words("what", item.what())
                        .words("drawing", item.drawing())
                        .size("size", item.size())
                        .name("material", item.material())
                        .word("grade", item.grade()),
                absent(lines)));
  }

  private static void stock(Ref ref, Ledger ledger, Lines lines) {
    Optional<Stock> found = ledger.stock(ref);
    lines.within(
        "stock " + Plain.name(ref.id()),
        () ->
            found.ifPresentOrElse(
                stock ->
                    lines
                        .words("what", stock.what())
                        .size("size", stock.size())
                        .name("material", stock.material())
                        .words("grain", stock.grain()),
                absent(lines)));
  }

  private static void spend(Ref ref, Ledger ledger, Lines lines) {
    Optional<Spend> found = ledger.spend(ref);
    lines.within(
        "bought " + Plain.name(ref.id()),
        () ->
            found.ifPresentOrElse(
                spend ->
                    lines
                        .words("what", spend.what())
                        .quantity("quantity", spend.qty())
                        .name("kit item", spend.item())
                        .name("material", spend.material()),
                absent(lines)));
  }

  private static void conditions(List<Condition> conditions, Lines lines) {
    for (Condition condition : conditions) {
      lines
          .heading("On condition")
          .words("that", condition.text())
          .name("section", condition.section())
          .each("at least", condition.atLeast(), Plain::quantity);
    }
  }

  private static void signer(Ref signer, Ledger ledger, Lines lines) {
    lines.heading("Signed by").line("signer", party(signer, ledger));
  }

  /** Somebody with what they are: {@code A. Osterlund (office), designer}. */
  static String party(Ref ref, Ledger ledger) {
    Optional<Party> found = ledger.party(ref);
    return found
        .map(
            party ->
                Plain.words(party.name())
                    + " ("
                    + Plain.name(ref.id())
                    + "), "
                    + Word.key(party.role()))
        .orElse(Plain.name(ref.id()) + ", whom the ledger does not name");
  }

  /** A record that is named but absent is part of what was signed, too. */
  static Runnable absent(Lines lines) {
    return () -> lines.bare("not in the ledger");
  }

  /** A document by what is in it, wherever it lies. */
  static void document(Evidence piece, Ledger ledger, Lines lines) {
    lines.within(
        "document",
        () ->
            lines
                .line(
                    "SHA-256",
                    ledger
                        .evidence(piece)
                        .sha256()
                        .orElseGet(() -> Word.key(ledger.evidence(piece).state())))
                .words("says", piece.says()));
  }

  @Override
  public String toString() {
    return text;
  }
}
