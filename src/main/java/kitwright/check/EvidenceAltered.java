package kitwright.check;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Evidence;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where a file of evidence is no longer what it was when its SHA-256 was recorded. */
public final class EvidenceAltered implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Kind kind : Kind.values()) {
      for (Entry entry : day.written().entries(kind)) {
        for (Evidence piece : Evidence.in(entry)) {
          if (isAltered(piece, day.written())) {
            out.add(altered(entry, piece, day.written()));
          }
        }
      }
    }
  }

  private static boolean isAltered(Evidence piece, Ledger ledger) {
    return piece.sha256().isPresent()
        && ledger
            .evidence(piece)
            .sha256()
            .filter(found -> !found.equals(piece.sha256().get()))
            .isPresent();
  }

  private Finding altered(Entry entry, Evidence piece, Ledger ledger) {
    String found = ledger.evidence(piece).sha256().orElse("");
    return stop(
        piece.at().of("sha256"),
        "The file “"
            + piece.file()
            + "” has changed since it was recorded; its SHA-256 now begins with "
            + found.substring(0, Math.min(found.length(), 12))
            + ".",
        "It proves nothing for the " + entry.named() + ".",
        "Fetch the first version from Git, or from whoever sent it. Only a file of your own that"
            + " you meant to change is recorded anew: under “sha256” what “kitwright hash FILE”"
            + " prints, under “says” why.",
        List.of(entry.named()));
  }
}
