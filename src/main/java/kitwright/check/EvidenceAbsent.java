package kitwright.check;

import java.util.List;
import kitwright.finding.Findings;
import kitwright.ledger.Entry;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;

/** Fires where evidence is named but is not there, or lies outside the ledger. */
public final class EvidenceAbsent implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Kind kind : Kind.values()) {
      for (Entry entry : day.written().entries(kind)) {
        Evidence.in(entry).forEach(piece -> examine(entry, piece, day.written(), out));
      }
    }
  }

  private void examine(Entry entry, Evidence piece, Ledger ledger, Findings out) {
    EvidenceFile.State state = ledger.evidence(piece).state();
    switch (state) {
      case PRESENT -> {}
      case ABSENT ->
          add(
              entry,
              piece,
              out,
              "is not there",
              piece.file().indexOf('\\') < 0
                  ? "Put it back, or correct the path; it counts from the ledger’s folder, and"
                      + " capitals count."
                  : "Write “/” between the folders and the file; the path counts from the ledger’s"
                      + " folder.");
      case OUTSIDE ->
          add(
              entry,
              piece,
              out,
              "lies outside the ledger and is not opened",
              "Copy it into the ledger’s folder, so that it travels with the records, and write its"
                  + " path from there.");
      case NOT_A_FILE -> add(entry, piece, out, "is a folder or a device", "Name one file.");
      case UNREADABLE -> add(entry, piece, out, "cannot be opened", "Check who may read it.");
    }
  }

  private void add(Entry entry, Evidence piece, Findings out, String what, String mend) {
    out.add(
        stop(
            piece.at().of("file"),
            "The evidence “" + piece.file() + "” " + what + ".",
            "What the " + entry.named() + " says cannot be shown to anybody.",
            mend,
            List.of(entry.named())));
  }
}
