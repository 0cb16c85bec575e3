package kitwright.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Entry;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.References;
import kitwright.ledger.Rule;
import kitwright.value.Nearest;

/** Fires where a record names another that is not there. */
public final class ReferenceDangling implements Rule {
  @Override
  public String name() {
    return "reference-dangling";
  }

  @Override
  public void examine(Ledger ledger, LocalDate today, Findings out) {
    for (Kind kind : Kind.values()) {
      for (Entry entry : ledger.entries(kind)) {
        References.of(entry)
            .filter(reference -> !ledger.knows(reference.kind(), reference.ref().id()))
            .forEach(reference -> out.add(dangling(entry, reference, ledger)));
      }
    }
  }

  private Finding dangling(Entry entry, References.Reference reference, Ledger ledger) {
    String id = reference.ref().id();
    String word = reference.kind().word();
    Optional<String> near = Nearest.to(id, ledger.ids(reference.kind()));
    return new Finding(
        name(),
        Severity.STOP,
        reference.ref().at(),
        "There is no " + word + " “" + id + "”.",
        "The " + entry.named() + " leads nowhere here, and sums and dates leave it out.",
        near.map(found -> "Did you mean “" + found + "”?")
            .orElseGet(
                () ->
                    elsewhere(id, ledger).orElse("Record the " + word + ", or correct the name.")),
        List.of(entry.named()));
  }

  private static Optional<String> elsewhere(String id, Ledger ledger) {
    for (Kind kind : Kind.values()) {
      if (ledger.knows(kind, id)) {
        return Optional.of(
            "“" + id + "” is a " + kind.word() + "; name the right kind, or record it.");
      }
    }
    return Optional.empty();
  }
}
