package kitwright.report.writing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;

/** Folders that were made for a file; where it could not be written they go again. */
public final class NewFolders {
  private final Deque<Path> made = new ArrayDeque<>();

  /** Makes a folder with those above it, as far as they are not there. */
  public Path make(Path folder) throws IOException {
    Path missing = folder.toAbsolutePath().normalize();
    Deque<Path> toMake = new ArrayDeque<>();
    while (missing != null && !Files.exists(missing)) {
      toMake.push(missing);
      missing = missing.getParent();
    }
    Files.createDirectories(folder);
    toMake.forEach(made::push);
    return folder;
  }

  /** Takes away again what is still empty. */
  public void takeBack() {
    while (!made.isEmpty()) {
      try {
        Files.deleteIfExists(made.pop());
      } catch (IOException holdsSomething) {
        return; // what stands in it was written by somebody, and so do the folders above
      }
    }
  }
}
