package kitwright.check;

import java.util.List;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.References;
import kitwright.ledger.Rule;
import kitwright.value.Nearest;
import kitwright.value.Ref;

/** Fires where a record names another that is not there. */
public final class ReferenceDangling implements Rule {
  @Override
  public String name() {
    return "reference-dangling";
  }

  @Override
  public void examine(Facts day, Findings out) {
    for (Kind kind : Kind.values()) {
      for (Entry entry : day.ledger().entries(kind)) {
        References.of(
            entry,
            (wanted, ref) -> {
              if (!day.ledger().knows(wanted, ref.id())) {
                out.add(dangling(entry, wanted, ref, day.ledger()));
              }
            });
      }
    }
  }

  private Finding dangling(Entry entry, Kind kind, Ref ref, Ledger ledger) {
    String id = ref.id();
    String word = kind.word();
    Optional<String> near = Nearest.to(id, ledger.ids(kind));
    return new Finding(
        name(),
        Severity.STOP,
        ref.at(),
        "There is no " + word + " “" + id + "”.",
        "The " + entry.named() + " leads nowhere here, and sums and dates leave it out.",
        near.map(found -> "Did you mean “" + found + "”?")
            .or(() -> elsewhere(id, ledger))
            .orElse(
                "Record the "
                    + word
                    + ", or correct the name."
                    + (kind == Kind.MATERIALS
                        ? " “kitwright materials” lists those that are built in."
                        : "")),
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
