package kitwright.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.LedgerFolder;

/** What stands at paths of evidence; each file is read once, since photos are large. */
final class SeenEvidence implements Function<List<String>, Map<String, EvidenceFile>> {
  private final LedgerFolder folder;
  private final Map<String, EvidenceFile> seen = new HashMap<>();

  SeenEvidence(LedgerFolder folder) {
    this.folder = folder;
  }

  @Override
  public Map<String, EvidenceFile> apply(List<String> paths) {
    List<String> fresh = new ArrayList<>(paths);
    fresh.removeAll(seen.keySet());
    seen.putAll(folder.evidence(fresh));
    return seen;
  }
}
