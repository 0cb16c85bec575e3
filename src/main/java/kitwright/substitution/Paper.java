package kitwright.substitution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.assessment.Assessments;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Party;
import kitwright.value.Ref;

/**
 * A statement as it is handed to somebody: the sealed text, a line of hyphens, and below it what is
 * not sealed.
 *
 * @param signer who signed or would sign
 * @param how the same in words: {@code signed by A. Osterlund}
 * @param seen what came out of the assessment; empty where there is none
 */
public record Paper(
    String substitution, Ref signer, Statement statement, String how, Optional<String> seen) {

  /**
   * What was signed under a substitution, and what others may sign.
   *
   * @param by only what this party signed or would sign, entitled or not; all where it is empty
   */
  public static List<Paper> of(SubstitutionStanding standing, Optional<String> by, Facts now) {
    List<Paper> all = new ArrayList<>();
    for (Signature signature : standing.signatures()) {
      Ref signer = signature.signOff().by();
      String how = "signed by " + now.ledger().nameOf(signer.id());
      add(
          standing,
          signer,
          signature.statement(),
          signature.counts() ? how : how + ", which does not count",
          now,
          all);
    }
    for (Signer signer : standing.signers()) {
      Ref ref = new Ref(signer.party().id(), signer.party().at().record());
      add(standing, ref, signer.statement(), "to be signed by " + signer.party().name(), now, all);
    }
    by.ifPresent(party -> all.removeIf(paper -> !paper.signer.id().equals(party)));
    if (all.isEmpty()) {
      by.flatMap(id -> now.ledger().<Party>find(Kind.PARTIES, id))
          .ifPresent(party -> add(standing, party, now, all));
    }
    return List.copyOf(all);
  }

  private static void add(SubstitutionStanding standing, Party party, Facts now, List<Paper> all) {
    Ref ref = new Ref(party.id(), party.at().record());
    Statement statement = Statement.of(standing.substitution(), ref, List.of(), now.ledger());
    add(standing, ref, statement, "for " + party.name() + ", who may not sign it", now, all);
  }

  /** The same text is handed over once. */
  private static void add(
      SubstitutionStanding standing,
      Ref signer,
      Statement text,
      String how,
      Facts now,
      List<Paper> all) {
    if (all.stream().noneMatch(paper -> paper.statement.equals(text))) {
      all.add(new Paper(standing.substitution().id(), signer, text, how, seen(standing, now)));
    }
  }

  private static Optional<String> seen(SubstitutionStanding standing, Facts now) {
    return standing
        .substitution()
        .assessment()
        .flatMap(ref -> Assessments.on(now).of(ref.id()))
        .map(result -> Seen.of(result).written());
  }

  /** The digits with what they are of. */
  public String line() {
    return statement.fingerprint() + "  " + substitution + ", " + how;
  }

  /** The whole, as it is printed. */
  public String text() {
    return statement.text()
        + "\n-----\nThe text above, up to the end of its last line, makes these digits (SHA-256):\n"
        + statement.fingerprint()
        + "\n\nNot sealed:\n  "
        + how
        + "\n"
        + seen.map(
                result ->
                    "  what came out of the assessment, to be kept in the sign-off: saw: "
                        + result
                        + "\n")
            .orElse("  nothing was worked out: there is no assessment\n")
        + "  A screening calculation replaces neither the designer nor a licensed engineer.\n"
        + "  Files cannot prove who wrote a sign-off, or on which day.\n\n";
  }
}
