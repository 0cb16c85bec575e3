package kitwright.history;

import java.nio.file.Path;
import java.util.List;

/**
 * Where git looks for hooks.
 *
 * @param folder in which they lie
 * @param prefix the ledger’s folder, from the top of the work tree in which hooks run; empty where
 *     it is the top itself
 */
public record Hooks(Path folder, String prefix) {
  /**
   * Of the repository that a folder lies in.
   *
   * @throws NoHistory where there is none, or none with files
   */
  public static Hooks of(Path folder) throws NoHistory {
    Git git = new Git(folder);
    History.workTree(git, folder);
    List<String> said = git.must("rev-parse", "--git-path", "hooks", "--show-prefix").lines();
    String prefix = said.size() > 1 ? said.get(1) : "";
    return new Hooks(folder.resolve(said.get(0)).normalize(), prefix);
  }
}
