package kitwright.report.writing;

import static java.nio.file.StandardCopyOption.ATOMIC_MOVE;
import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.List;
import java.util.stream.Stream;

/**
 * Puts a file in its place in one step: the text is written beside it, forced to the disk, and then
 * given its name. Every run writes under a name of its own, so that two at once do not meet; what a
 * killed run left is cleared by the next.
 */
public final class Beside {
  private static final String PART = ".kitwright-part";

  private Beside() {}

  /** Puts the content there, in place of what stands there; who may read and write it stays. */
  public static void replace(Path file, byte[] content) throws IOException {
    Path part = written(file, content);
    try {
      if (Files.isRegularFile(file)) {
        keepRights(file, part);
      }
      Files.move(part, file, ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
    forceFolder(file);
  }

  private static void keepRights(Path from, Path to) throws IOException {
    PosixFileAttributeView rights =
        Files.getFileAttributeView(from, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (rights != null) {
      Files.setPosixFilePermissions(to, rights.readAttributes().permissions());
    }
  }

  /** Puts the content there if nothing stands there; says whether it did. */
  public static boolean create(Path file, byte[] content) throws IOException {
    Path part = written(file, content);
    try {
      link(part, file);
    } catch (FileAlreadyExistsException there) {
      return false;
    } finally {
      Files.deleteIfExists(part);
    }
    forceFolder(file);
    return true;
  }

  /** A second name for one file is given or refused in one step; some disks know none. */
  private static void link(Path part, Path file) throws IOException {
    try {
      Files.createLink(file, part);
    } catch (FileAlreadyExistsException there) {
      throw there;
    } catch (IOException | UnsupportedOperationException none) {
      Files.move(part, file); // refuses what stands there
    }
  }

  private static Path written(Path file, byte[] content) throws IOException {
    clear(file);
    String own = ProcessHandle.current().pid() + "-" + Thread.currentThread().getId();
    Path part = file.resolveSibling("." + file.getFileName() + "." + own + PART);
    Files.deleteIfExists(part);
    try (FileChannel channel = FileChannel.open(part, CREATE_NEW, WRITE)) {
      ByteBuffer rest = ByteBuffer.wrap(content);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    } catch (IOException failed) {
      Files.deleteIfExists(part);
      throw failed;
    }
    return part;
  }

  /** Takes away what runs that are no more left of this file. */
  private static void clear(Path file) throws IOException {
    String name = "." + file.getFileName();
    Path folder = file.toAbsolutePath().getParent();
    if (folder == null) {
      return;
    }
    List<Path> parts;
    try (Stream<Path> all = Files.list(folder)) {
      parts =
          all.filter(path -> isPart(path.getFileName().toString(), name))
              .filter(path -> !isAtWork(path.getFileName().toString(), name))
              .toList();
    }
    for (Path part : parts) {
      Files.deleteIfExists(part);
    }
  }

  private static boolean isPart(String name, String of) {
    return name.startsWith(of)
        && name.endsWith(PART)
        && name.substring(of.length(), name.length() - PART.length()).matches("|\\.[0-9]+-[0-9]+");
  }

  private static boolean isAtWork(String name, String of) {
    String own = name.substring(of.length(), name.length() - PART.length());
    return !own.isEmpty()
        && ProcessHandle.of(Long.parseLong(own.substring(1, own.indexOf('-')))).isPresent();
  }

  /** Puts the name on the disk. Some systems do not open folders; there the name is enough. */
  private static void forceFolder(Path file) {
    Path parent = file.getParent();
    if (parent == null) {
      return;
    }
    try (FileChannel channel = FileChannel.open(parent, READ)) {
      channel.force(true);
    } catch (IOException e) {
      return;
    }
  }
}
