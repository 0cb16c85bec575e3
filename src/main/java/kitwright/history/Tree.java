package kitwright.history;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import kitwright.finding.Findings;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;

/** The files of a ledger as Git holds them: at a commit, or staged for the next. */
public final class Tree {
  private final Git git;
  private final Map<String, String> blobs;

  /**
   * @param blobs the names of contents, by path from the ledger's folder
   */
  Tree(Git git, Map<String, String> blobs) {
    this.git = git;
    this.blobs = blobs;
  }

  /** The ledger's own files, in order of path, as {@link LedgerFolder} would read them. */
  public List<SourceFile> files(Findings out) throws NoHistory {
    List<String> paths = blobs.keySet().stream().filter(LedgerFolder::isOurs).sorted().toList();
    Set<String> names = new LinkedHashSet<>();
    paths.forEach(path -> names.add(blobs.getOrDefault(path, "")));
    Map<String, byte[]> contents = git.blobs(names);
    List<SourceFile> files = new ArrayList<>();
    for (String path : paths) {
      byte[] content = contents.getOrDefault(blobs.getOrDefault(path, ""), new byte[0]);
      files.add(SourceFile.decoded(path, content, out));
    }
    return files;
  }

  /** The ledger that these files hold; empty where no file holds a readable build record. */
  public Optional<Ledger> ledger(Findings out) throws NoHistory {
    return ledger(files(out), out);
  }

  /** The same, of files that were read already. */
  public Optional<Ledger> ledger(List<SourceFile> files, Findings out) throws NoHistory {
    Pieces pieces = new Pieces();
    Optional<Ledger> ledger = LedgerReader.read(files, pieces, out);
    ledger.ifPresent(Ledger::lookAtEvidence);
    if (pieces.broken.isPresent()) {
      throw pieces.broken.get();
    }
    return ledger;
  }

  /** What stands at the paths of evidence. */
  private final class Pieces implements Function<List<String>, Map<String, EvidenceFile>> {
    private Optional<NoHistory> broken = Optional.empty();

    @Override
    public Map<String, EvidenceFile> apply(List<String> paths) {
      Map<String, EvidenceFile> all = new LinkedHashMap<>();
      List<String> there = paths.stream().filter(blobs::containsKey).toList();
      try {
        Set<String> names = new LinkedHashSet<>();
        there.forEach(path -> names.add(blobs.getOrDefault(path, "")));
        Map<String, String> digests = git.digests(names);
        for (String path : paths) {
          all.put(path, evidence(Optional.ofNullable(digests.get(blobs.getOrDefault(path, "")))));
        }
      } catch (NoHistory lacking) {
        broken = Optional.of(lacking);
      }
      return all;
    }
  }

  /** What stands at a path from the ledger’s folder; empty where no file is, or Git lacks it. */
  public Optional<byte[]> content(String path) {
    String name = blobs.getOrDefault(path, "");
    try {
      return name.isEmpty()
          ? Optional.empty()
          : Optional.ofNullable(git.blobs(List.of(name)).get(name));
    } catch (NoHistory lacking) {
      return Optional.empty();
    }
  }

  private static EvidenceFile evidence(Optional<String> digest) {
    return new EvidenceFile(
        digest.isPresent() ? EvidenceFile.State.PRESENT : EvidenceFile.State.ABSENT, digest);
  }
}
