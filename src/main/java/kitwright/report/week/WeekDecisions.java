package kitwright.report.week;

import java.util.List;
import java.util.stream.Stream;
import kitwright.daybook.Happenings;
import kitwright.document.Inline;
import kitwright.ledger.Claim;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Shortage;
import kitwright.ledger.Substitution;
import kitwright.report.words.Names;
import kitwright.report.words.Say;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Word;

/** What was decided, proposed, signed and written in a week, in a sentence each. */
public record WeekDecisions(Happenings happened, Facts now, Names names) {

  public List<Inline> all() {
    Stream<String> decided =
        happened.decided().stream()
            .flatMap(each -> each.decided().stream().map(made -> decision(each, made)));
    Stream<String> proposed =
        happened.proposed().stream()
            .flatMap(each -> each.proposed().stream().map(made -> proposal(each, made)));
    Stream<String> signed =
        happened.signed().stream().map(each -> signature(each.substitution(), each.signOff()));
    return Stream.of(decided, proposed, signed).flatMap(all -> all).map(Inline::text).toList();
  }

  private String decision(Shortage shortage, Shortage.Decision made) {
    return names.of(made.by())
        + " chose for "
        + what(shortage)
        + ": "
        + made.option()
        + made.why().map(why -> ", since " + why).orElse("")
        + ".";
  }

  private String proposal(Substitution substitution, Substitution.Proposal made) {
    return names.of(made.by()) + " proposed " + substitution.id() + ": " + substitution.why() + ".";
  }

  private String signature(Substitution substitution, Substitution.SignOff signed) {
    boolean conditions = !signed.conditions().isEmpty();
    boolean counts = SubstitutionStandings.on(now).counts(signed);
    return names.of(signed.by())
        + " signed "
        + substitution.id()
        + (conditions ? ", on conditions" : "")
        + (counts ? "." : "; the signature does not count as things stand.");
  }

  public List<Inline> claims() {
    Stream<String> sent =
        happened.claimsSent().stream()
            .map(each -> each.id() + ": sent to " + names.of(each.against()) + ".");
    Stream<String> letters =
        happened.letters().stream()
            .map(
                each ->
                    each.claim().id()
                        + ": "
                        + Word.spoken(each.event().what())
                        + each.event().text().map(text -> ", " + text).orElse("")
                        + ".");
    Stream<String> ended =
        happened.claimsSettled().stream()
            .flatMap(each -> each.settled().stream().map(end -> ended(each, end)));
    return Stream.of(sent, letters, ended).flatMap(all -> all).map(Inline::text).toList();
  }

  private static String ended(Claim claim, Claim.Settlement end) {
    return claim.id()
        + ": closed, "
        + Word.spoken(end.how())
        + end.amount().map(amount -> " with " + Say.money(amount)).orElse("")
        + ".";
  }

  public String what(Shortage shortage) {
    return now.ledger().kitItem(shortage.item()).map(KitItem::what).orElse(shortage.item().id());
  }
}
