package kitwright.edit;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import kitwright.report.writing.Beside;

/**
 * Puts a new text in place of a file’s old one: written beside, synced and renamed, so that either
 * is there whole whatever happens. One at a time for a file; a file that somebody changed since it
 * was read is left alone.
 */
public final class Replacing {
  private Replacing() {}

  /** The file holds something else than what was read. */
  public static final class Changed extends IOException {
    private static final long serialVersionUID = 1L;

    Changed(Path file) {
      super(file.getFileName() + " was changed by somebody else meanwhile");
    }
  }

  /**
   * @param root the ledger’s folder
   * @param file from there
   * @param read what the file held when it was read, without a byte order mark
   * @throws Changed where it holds something else now
   */
  public static void write(Path root, String file, String read, String now) throws IOException {
    Path path = root.resolve(file);
    try (FileChannel there =
            FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE);
        FileLock held = there.lock()) {
      String text = Files.readString(path); // not through the channel: it may be replaced already
      String mark = text.startsWith("\uFEFF") ? "\uFEFF" : "";
      if (!text.equals(mark + read) || !held.isValid()) {
        throw new Changed(path);
      }
      Beside.replace(path, (mark + now).getBytes(StandardCharsets.UTF_8));
    } catch (OverlappingFileLockException another) {
      throw new Changed(path);
    }
  }
}
