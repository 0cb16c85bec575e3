package kitwright.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What stands at paths of evidence. Each is looked at once, and not before it is asked for: photos
 * are large, and a letter names few of them.
 */
final class SeenFiles {
  private final Function<List<String>, Map<String, EvidenceFile>> look;
  private final Map<String, EvidenceFile> seen = new HashMap<>();

  SeenFiles(Function<List<String>, Map<String, EvidenceFile>> look) {
    this.look = look;
  }

  synchronized EvidenceFile at(String path) {
    EvidenceFile known = seen.get(path);
    if (known == null) {
      known =
          look.apply(List.of(path))
              .getOrDefault(path, EvidenceFile.without(EvidenceFile.State.ABSENT));
      seen.put(path, known);
    }
    return known;
  }

  /** Looks at several at once. */
  synchronized void lookAt(List<String> paths) {
    List<String> unseen = new ArrayList<>();
    for (String path : paths) {
      if (!seen.containsKey(path)) {
        unseen.add(path);
      }
    }
    if (!unseen.isEmpty()) {
      seen.putAll(look.apply(unseen));
    }
  }
}
