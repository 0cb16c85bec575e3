package kitwright.edit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import kitwright.report.writing.Beside;
import kitwright.report.writing.NewFolders;

/** Writes files that are not there yet; what is there is never touched. */
public final class NewFiles {
  private NewFiles() {}

  /**
   * What was done.
   *
   * @param written paths that are new
   * @param left paths that were there already and stay as they are
   */
  public record Outcome(List<String> written, List<String> left) {
    public Outcome {
      written = List.copyOf(written);
      left = List.copyOf(left);
    }
  }

  /**
   * Lays out a new ledger in a folder, which may exist. Where it holds records already, no examples
   * are added to them.
   */
  public static Outcome start(Path root, Map<String, String> all, Map<String, String> frame)
      throws IOException {
    return write(root, holdsRecords(root) ? frame : all);
  }

  private static boolean holdsRecords(Path root) throws IOException {
    if (!Files.isDirectory(root)) {
      return false;
    }
    try (Stream<Path> files = Files.find(root, 3, (path, is) -> is.isRegularFile())) {
      return files
          .map(path -> root.relativize(path).toString())
          .filter(name -> !name.startsWith("."))
          .anyMatch(name -> name.endsWith(".yaml") || name.endsWith(".yml"));
    }
  }

  /**
   * Writes each file that is not there, with the folders it needs.
   *
   * @param files by path from {@code root}, with forward slashes
   * @throws IOException where a folder cannot be made or a link leads out of {@code root}; says
   *     what was written before, and leaves no empty folder
   */
  public static Outcome write(Path root, Map<String, String> files) throws IOException {
    List<String> written = new ArrayList<>();
    List<String> left = new ArrayList<>();
    for (Map.Entry<String, String> file : files.entrySet()) {
      NewFolders folders = new NewFolders();
      try {
        boolean isNew = create(root, file.getKey(), file.getValue(), folders);
        (isNew ? written : left).add(file.getKey());
      } catch (IOException broken) {
        folders.takeBack();
        throw written.isEmpty() ? broken : partly(broken, file.getKey(), written);
      }
    }
    return new Outcome(written, left);
  }

  private static boolean create(Path root, String name, String text, NewFolders folders)
      throws IOException {
    Path real = folders.make(root).toRealPath();
    Path path = root.resolve(name);
    Path folder = folders.make(Objects.requireNonNullElse(path.getParent(), root));
    if (!folder.toRealPath().startsWith(real)) {
      throw new IOException(name + " would lie outside the folder, by way of a link");
    }
    return Beside.create(path, text.getBytes(StandardCharsets.UTF_8));
  }

  private static IOException partly(IOException broken, String at, List<String> written) {
    return new IOException(
        at + ": " + broken.getMessage() + "; written before it: " + String.join(", ", written),
        broken);
  }
}
