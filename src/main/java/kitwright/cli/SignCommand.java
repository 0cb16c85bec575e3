package kitwright.cli;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import kitwright.edit.Answers;
import kitwright.edit.Change;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.Layouts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.SignOff;
import kitwright.substitution.Lack;
import kitwright.substitution.Paper;
import kitwright.substitution.Signature;
import kitwright.substitution.Statement;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Misread;
import kitwright.value.Ref;

/** Records a signature under a substitution, once its statement was read. */
final class SignCommand implements Command {
  /** A signer may ask what is yet to be built: such a signature counts once it is met. */
  private static final Set<Lack> LATER = Set.of(Lack.CONDITION_UNMET, Lack.CONDITION_UNCHECKED);

  private final LedgerOptions options = new LedgerOptions();
  private boolean print;
  private String id = "";
  private Optional<String> by = Optional.empty();
  private Optional<String> on = Optional.empty();
  private List<String> conditions = List.of();
  private List<String> evidence = List.of();
  private List<String> signature = List.of();
  private Optional<String> covers = Optional.empty();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Records that somebody signs a substitution. Shows the statement that is signed, in words;"
            + " refuses whoever may not sign it, and what is not fit to be signed. Only the signer"
            + " may answer for it.",
        "For example: kitwright sign sub-oak --by designer --evidence evidence/letter.txt");
    options.declare(to);
    to.flag("--print", () -> print = true, "Print what would be written, and write nothing.");
    to.place(0, "SUBSTITUTION", given -> id = given, "The substitution.");
    to.option("--by", "PARTY", given -> by = Optional.of(given), "Who signs.");
    to.option(
        "--on", "DATE", given -> on = Optional.of(given), "The day; today where none is said.");
    to.options(
        "--condition",
        "TEXT",
        given -> conditions = given,
        "What the signer asks: words, or section=ID,at-least={thickness: 22 mm}; may stand"
            + " several times.");
    to.options(
        "--evidence",
        "FILE",
        given -> evidence = given,
        "The signer’s letter, in the ledger’s folder; recorded with its hash.");
    to.options(
        "--signature",
        "FILE",
        given -> signature = given,
        "What the signer’s own key made over the statement.");
    to.option(
        "--covers",
        "DIGITS",
        given -> covers = Optional.of(given),
        "The digits of the statement that the signer has read: stands for the answer where nobody"
            + " can be asked.");
  }

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, print);
    Answers answers = recording.answers();
    Ledger ledger = recording.ledger();
    Optional<Dialogue> dialogue =
        session
            .person()
            .get()
            .map(p -> new Dialogue(session, p, ledger, answers, recording.opened().today()));
    Substitution substitution = (Substitution) recording.record(Kind.SUBSTITUTIONS, id);
    Map<String, String> keys = keys(answers, signer(dialogue, substitution, recording));
    Facts bare = with(substitution, keys, recording);
    SubstitutionStanding standing = standing(bare);
    Signature own = standing.signatures().get(standing.signatures().size() - 1);
    Statement statement = own.statement();
    Optional<String> saw =
        Paper.of(standing, Optional.empty(), bare).stream().findFirst().flatMap(Paper::seen);
    keys.put("covers", statement.fingerprint().digits());
    saw.ifPresent(numbers -> keys.put("saw", numbers));
    refuseUnfit(standing(with(substitution, keys, recording)));
    session.print(shown(statement, saw));
    confirm(dialogue, statement, own.signOff(), ledger);
    return recording.write(List.of(substitution.named()));
  }

  private String signer(
      Optional<Dialogue> dialogue, Substitution substitution, Recording recording) {
    if (by.isPresent()) {
      return by.get();
    }
    Facts now = Facts.of(recording.ledger(), recording.opened().today());
    Optional<SubstitutionStanding> standing =
        SubstitutionStandings.on(now).of(new Ref(substitution.id(), substitution.at().record()));
    return dialogue
        .orElseThrow(
            () ->
                new Refusal(
                    "It is not said who signs.",
                    "Write --by PARTY" + standing.map(SignCommand::may).orElse("") + "."))
        .which(Kind.PARTIES);
  }

  /** Who may be named, by id. */
  private static String may(SubstitutionStanding standing) {
    if (standing.lacks().isEmpty()) {
      return " for another signature; it is released already";
    }
    return standing.signers().isEmpty()
        ? "; no party of the ledger is entitled, as its “may-sign” would say"
        : "; may sign: "
            + standing.signers().stream()
                .map(signer -> signer.party().id() + " (" + signer.party().name() + ")")
                .collect(Collectors.joining(", "));
  }

  private Map<String, String> keys(Answers answers, String signer) {
    Map<String, String> keys = new LinkedHashMap<>();
    put("by", List.of(signer), answers, keys);
    put("on", on.map(List::of).orElse(List.of()), answers, keys);
    put("conditions", conditions, answers, keys);
    put("evidence", evidence, answers, keys);
    put("signature", signature, answers, keys);
    return keys;
  }

  private static void put(
      String name, List<String> texts, Answers answers, Map<String, String> keys) {
    try {
      if (!texts.isEmpty()) {
        keys.put(name, answers.answer(key(name), texts).written());
      } else if (name.equals("on")) {
        keys.put(name, answers.today());
      }
    } catch (Misread misread) {
      throw Refusal.of("--" + name, misread);
    }
  }

  private static Key key(String name) {
    return new Layouts()
        .of(Kind.SUBSTITUTIONS).keys().stream()
            .filter(key -> key.name().equals("sign-offs"))
            .flatMap(key -> key.inner().orElseThrow().keys().stream())
            .filter(key -> key.name().equals(name))
            .findFirst()
            .orElseThrow();
  }

  /** The ledger as it reads with this signature. */
  private static Facts with(
      Substitution substitution, Map<String, String> keys, Recording recording) {
    recording.reset();
    recording.add(substitution, Change.adding("sign-offs", Answers.Answer.group(keys).written()));
    return Facts.of(recording.after(), recording.opened().today());
  }

  private SubstitutionStanding standing(Facts facts) {
    SubstitutionStanding standing =
        SubstitutionStandings.on(facts).all().stream()
            .filter(each -> each.substitution().id().equals(id))
            .findFirst()
            .orElseThrow();
    if (standing.isWithdrawn()) {
      throw new Refusal("“" + id + "” was withdrawn.", "Nothing is left to be signed.");
    }
    if (standing.signatures().size() < standing.substitution().signOffs().size()) {
      throw new Refusal("The day of the signature has not come.", "Sign on the day itself.");
    }
    return standing;
  }

  private static String shown(Statement statement, Optional<String> saw) {
    return statement.text()
        + "\n-----\nDigits of the text above: "
        + statement.fingerprint()
        + "\n"
        + saw.map(numbers -> "What came out of the assessment, not sealed: " + numbers)
            .orElse("Nothing was worked out: there is no assessment.")
        + "\nA screening calculation replaces neither the designer nor a licensed engineer.\n\n";
  }

  private static void refuseUnfit(SubstitutionStanding standing) {
    Signature own = standing.signatures().get(standing.signatures().size() - 1);
    List<Lack> lacks = new ArrayList<>(own.lacks());
    if (standing.needsAssessment()) {
      standing.lacks().stream()
          .filter(EnumSet.range(Lack.NO_ASSESSMENT, Lack.PROPOSER_UNKNOWN)::contains)
          .forEach(lacks::add);
    } else if (standing.lacks(Lack.ASSESSMENT_FAILS)) {
      lacks.add(Lack.ASSESSMENT_FAILS);
    }
    lacks.removeAll(LATER);
    if (!lacks.isEmpty()) {
      throw new Refusal(
          "This signature would not count: "
              + lacks.stream().map(Lack::words).distinct().collect(Collectors.joining("; "))
              + ".",
          "Nothing was recorded. “kitwright fingerprint "
              + standing.substitution().id()
              + "” tells who may sign.");
    }
  }

  private void confirm(
      Optional<Dialogue> dialogue, Statement statement, SignOff own, Ledger ledger) {
    String digits = statement.fingerprint().digits();
    if (covers.isPresent()) {
      if (!statement.fingerprint().matches(covers.get()) || covers.get().length() < 12) {
        throw new Refusal(
            "The statement above is not the one of “" + covers.get() + "”.",
            "Let the signer read it; its digits are " + statement.fingerprint().brief() + ".");
      }
      return;
    }
    String who = ledger.nameOf(own.by().id());
    boolean yes =
        dialogue
            .orElseThrow(
                () ->
                    new Refusal(
                        "Nobody has said that " + who + " signs the statement above.",
                        "Once "
                            + who
                            + " has read it, add --covers "
                            + digits.substring(0, 12)
                            + "."))
            .yes("Does " + who + " sign exactly this?", false);
    if (!yes) {
      throw new Refusal(who + " has not signed.", "Nothing was recorded.");
    }
  }
}
