package kitwright.edit;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import kitwright.report.writing.Beside;

/**
 * Puts a new text in place of a file’s old one: written beside, synced and renamed, so that either
 * is there whole whatever happens. One at a time for a file; a file that somebody changed since it
 * was read is left alone. The file’s lock keeps programs apart; within one program Java’s table of
 * locks now and then lets two threads hold the same file, so a monitor keeps threads apart.
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
  public static synchronized void write(Path root, String file, String read, String now)
      throws IOException {
    Path path = root.resolve(file);
    Optional<Object> before = key(path);
    try (FileChannel there =
            FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE);
        FileLock held = there.lock()) {
      String text = text(there);
      String mark = text.startsWith("\uFEFF") ? "\uFEFF" : "";
      boolean isThat = before.equals(key(path)) && held.isValid();
      if (!isThat || !text.equals(mark + read)) {
        throw new Changed(path);
      }
      Beside.replace(path, (mark + now).getBytes(StandardCharsets.UTF_8));
    }
  }

  /** What tells the file from the one that another run puts in its place. */
  private static Optional<Object> key(Path path) throws IOException {
    return Optional.ofNullable(Files.readAttributes(path, BasicFileAttributes.class).fileKey());
  }

  /**
   * Through the channel that holds the lock: POSIX lets go of a lock as soon as the program closes
   * any other channel to the same file.
   */
  private static String text(FileChannel there) throws IOException {
    ByteBuffer all = ByteBuffer.allocate((int) there.size());
    while (all.hasRemaining() && there.read(all, all.position()) >= 0) {}
    return StandardCharsets.UTF_8.decode(all.flip()).toString();
  }
}
