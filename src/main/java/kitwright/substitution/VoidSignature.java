package kitwright.substitution;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Assessment;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Facts;
import kitwright.ledger.Grade;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Rule;
import kitwright.ledger.Substitution.SignOff;
import kitwright.value.Days;
import kitwright.value.Word;

/** Fires where a signature does not count for one reason, and no other makes up for it. */
public final class VoidSignature implements Rule {
  /** The reasons, each a rule of its own. Of the words in braces the record's own are put in. */
  public enum Why {
    NOT_ENTITLED(
        Lack.NOT_ENTITLED,
        "signer-not-entitled",
        "by",
        "{who}{being} is not entitled to sign a {grade} substitution such as {sub} on {on}.",
        "The signature does not count, so the substitution is not approved.",
        "Have it signed by {entitled} whose “may-sign” holds this grade on that day; {or}.",
        Severity.STOP),
    BY_PROPOSER(
        Lack.BY_PROPOSER,
        "signed-by-proposer",
        "by",
        "{who} proposed the structural substitution {sub} and signed it as well.",
        "Nobody else has looked at it, so the signature does not count.",
        "Have a second person sign who is entitled to structural substitutions.",
        Severity.STOP),
    BY_BUILDER(
        Lack.BY_BUILDER,
        "signed-by-builder",
        "by",
        "{who} signed the structural substitution {sub} and builds it.",
        "Whoever builds a part does not release it, so the signature does not count.",
        "Have somebody sign who is entitled and neither proposed it nor works on it.",
        Severity.STOP),
    BEFORE_ASSESSMENT(
        Lack.BEFORE_ASSESSMENT,
        "signed-before-assessment",
        "on",
        "{who} signed {sub} on {on}, before its assessment was made ({made}).",
        "What was signed was not yet worked out, so the signature does not count.",
        "Show the assessment to the signer and have it signed again.",
        Severity.STOP),
    COVERS_NOTHING(
        Lack.COVERS_NOTHING,
        "signature-covers-nothing",
        "by",
        "{who} signed {sub}, but the signature quotes no fingerprint.",
        "Nobody can prove later what was signed, so the signature does not count.",
        "If the statement that “kitwright fingerprint {sub} --statement” prints is what was signed,"
            + " add covers: {now} to the sign-off.",
        Severity.WARN),
    STALE(
        Lack.STALE,
        "signature-stale",
        "covers",
        "{who} signed another statement of {sub}: the signature covers {covers}, the records now"
            + " make {now}.",
        "The substitution, what it replaces or uses, its assessment, a section, a material, a"
            + " document, a condition or the signer has changed, and nobody entitled has seen the"
            + " change.",
        "Undo the change, or show it to the signer and add the new signature with covers: {now}."
            + " “kitwright fingerprint {sub} --since {covers}” tells what has changed.",
        Severity.STOP),
    NO_LETTER(
        Lack.NO_LETTER,
        "signature-without-letter",
        "by",
        "The signature of {who} under the structural substitution {sub} has no letter with its"
            + " hash.",
        "Nothing but this line shows that it was given, so it does not count.",
        "Put the signer’s letter under “evidence” with the sha256 that “kitwright hash FILE”"
            + " prints.",
        Severity.STOP),
    LETTER_ALTERED(
        Lack.LETTER_ALTERED,
        "signature-letter-altered",
        "evidence",
        "A letter behind the signature of {who} under {sub} is not the one that was recorded, or is"
            + " not there.",
        "What it says now, nobody has signed; the signature does not count.",
        "Put the letter back as it came, or ask the signer for a new one and record its hash.",
        Severity.STOP),
    KEY_MISSING(
        Lack.KEY_MISSING,
        "signature-without-key",
        "by",
        "{who} signs with a key of their own, and the sign-off under {sub} has no signature of it.",
        "Anybody could have typed the line, so it does not count.",
        "Have the statement signed: write it with “kitwright fingerprint {sub} --by {by} --out"
            + " FILE”, FILE in the ledger’s folder, and the signer runs “ssh-keygen -Y sign -f KEY"
            + " -n kitwright-statement FILE”; name FILE.sig under “signature”.",
        Severity.STOP),
    KEY_FORGED(
        Lack.KEY_FORGED,
        "signature-forged",
        "signature",
        "{forged}",
        "Nothing shows that {who} made it over this text and for this purpose; it does not count.",
        "{proof}",
        Severity.STOP),
    KEY_UNCHECKED(
        Lack.KEY_UNCHECKED,
        "signature-unchecked",
        "signature",
        "The signature that the key of {who} made under {sub} is not checked here.",
        "Nothing says that it is good, so it does not count on this machine.",
        "Install OpenSSH, which brings ssh-keygen, or check the ledger where it is.",
        Severity.WARN),
    VERDICT_TURNED(
        Lack.VERDICT_TURNED,
        "signed-verdict-turned",
        "saw",
        "{who} signed {sub} seeing another verdict than the assessment comes to now.",
        "Nothing signed has changed, but this program works it out otherwise than the one that the"
            + " signer saw.",
        "Show the signer what “kitwright assess” tells now, and have it signed anew.",
        Severity.STOP);

    private final Lack lack;
    private final String rule;
    private final String key;
    private final String what;
    private final String follows;
    private final String mend;
    private final Severity weight;

    Why(
        Lack lack,
        String rule,
        String key,
        String what,
        String follows,
        String mend,
        Severity weight) {
      this.lack = lack;
      this.rule = rule;
      this.key = key;
      this.what = what;
      this.follows = follows;
      this.mend = mend;
      this.weight = weight;
    }
  }

  private static final String RIGHT =
      "or, if {who} was entitled then, write “{grade}” into their “may-sign”";
  private static final String ROLE =
      "or, if the role of {who} is wrong, correct it, and write “{grade}” into their “may-sign”";

  private final Why why;

  public VoidSignature(Why why) {
    this.why = why;
  }

  @Override
  public String name() {
    return why.rule;
  }

  @Override
  public void examine(Facts day, Findings out) {
    for (SubstitutionStanding standing : SubstitutionStandings.on(day).all()) {
      if (!standing.isWithdrawn() && standing.signedOn().isEmpty()) {
        standing.signatures().stream()
            .filter(signature -> signature.lacks().contains(why.lack))
            .forEach(signature -> out.add(finding(standing, signature, day.ledger())));
      }
    }
  }

  private Finding finding(SubstitutionStanding standing, Signature signature, Ledger ledger) {
    return new Finding(
        why.rule,
        standing.grade() == Grade.FINISH ? Severity.WARN : why.weight,
        signature.signOff().at().of(why.key),
        told(why.what, standing, signature, ledger),
        told(why.follows, standing, signature, ledger),
        told(why.mend, standing, signature, ledger),
        List.of(standing.substitution().named()));
  }

  private static String told(
      String words, SubstitutionStanding standing, Signature signature, Ledger ledger) {
    SignOff signOff = signature.signOff();
    String covers = signOff.covers().orElse("");
    return words
        .replace("{forged}", forged(signOff, ledger))
        .replace("{proof}", proof(signOff, ledger))
        .replace("{by}", signOff.by().id())
        .replace(
            "{entitled}",
            standing.grade() == Grade.STRUCTURAL ? "a designer, engineer or surveyor" : "somebody")
        .replace("{or}", being(standing, signOff, ledger).isEmpty() ? RIGHT : ROLE)
        .replace("{who}", ledger.party(signOff.by()).map(Party::name).orElse(signOff.by().id()))
        .replace("{being}", being(standing, signOff, ledger))
        .replace("{grade}", Word.key(standing.grade()))
        .replace("{sub}", standing.substitution().id())
        .replace("{on}", Days.named(signOff.on()))
        .replace("{covers}", covers.substring(0, Math.min(covers.length(), 12)))
        .replace("{now}", signature.statement().fingerprint().brief())
        .replace(
            "{made}",
            standing
                .substitution()
                .assessment()
                .flatMap(ledger::assessment)
                .flatMap(Assessment::on)
                .map(Days::named)
                .orElse(""));
  }

  private static boolean hasKey(SignOff signOff, Ledger ledger) {
    return ledger.party(signOff.by()).flatMap(Party::signingKey).isPresent();
  }

  /** The file of the key’s signature, where it is named and not there. */
  private static Optional<String> absent(SignOff signOff, Ledger ledger) {
    return signOff.signature().stream()
        .filter(piece -> ledger.evidence(piece).state() != EvidenceFile.State.PRESENT)
        .map(Evidence::file)
        .findFirst();
  }

  private static String forged(SignOff signOff, Ledger ledger) {
    if (!hasKey(signOff, ledger)) {
      return "A key made a signature under {sub}, and the record of {who} names no key of theirs.";
    }
    return absent(signOff, ledger)
        .map(file -> "The signature of the key of {who} under {sub} is not there: “" + file + "”.")
        .orElse(
            "The signature of a key under {sub} was not made by the key of {who} over this"
                + " statement.");
  }

  /** How it is shown who made it. */
  private static String proof(SignOff signOff, Ledger ledger) {
    if (!hasKey(signOff, ledger)) {
      return "Have {who} give you the line of their public key, and write it under “signing-key” of"
          + " the party {by}.";
    }
    return absent(signOff, ledger).isPresent()
        ? "Put the file where “signature” names it, or have the statement signed that stands now."
        : "Ask {who} whether they signed, and what; have the statement signed that stands now.";
  }

  /** What somebody is, where nobody of that role can hold the right. */
  private static String being(SubstitutionStanding standing, SignOff signOff, Ledger ledger) {
    return ledger
        .party(signOff.by())
        .filter(party -> !Rights.fits(party.role(), standing.grade()))
        .map(party -> ", being a " + Word.key(party.role()) + ",")
        .orElse("");
  }
}
