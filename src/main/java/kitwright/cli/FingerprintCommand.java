package kitwright.cli;

import java.util.List;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Substitution;
import kitwright.substitution.Fingerprint;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Prints what a signature must cover. */
@picocli.CommandLine.Command(
    name = "fingerprint",
    description = {
      "Prints the fingerprint of each substitution: what to write behind “covers:” in a sign-off.",
      "It changes with every change of meaning in the substitution, its assessment, sections, materials and evidence."
    })
final class FingerprintCommand implements Command {
  @Mixin private LedgerOptions options = new LedgerOptions();

  @Parameters(
      paramLabel = "SUBSTITUTION",
      arity = "0..*",
      description = "Which; all where none is named.")
  private List<String> ids = List.of();

  @Override
  public int run(Session session) {
    Ledger ledger = Opened.of(options, session).ledger(session);
    for (String id : ids) {
      if (ledger.find(Kind.SUBSTITUTIONS, id).isEmpty()) {
        throw Refusal.unknown(
            "There is no substitution “" + id + "”.",
            id,
            ledger.ids(Kind.SUBSTITUTIONS),
            "“kitwright fingerprint” alone lists them.");
      }
    }
    for (Substitution substitution : ledger.substitutions()) {
      if (ids.isEmpty() || ids.contains(substitution.id())) {
        session.out().println(Fingerprint.of(substitution, ledger) + "  " + substitution.id());
      }
    }
    return CLEAN;
  }
}
