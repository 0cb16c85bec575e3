package kitwright.report.writing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import kitwright.finding.Finding;
import kitwright.finding.Severity;
import kitwright.value.Place;

/**
 * Writes documents into a folder. A reader of the file sees the old text or the new one, never a
 * part: the new text is written beside it, forced to the disk, and then put in its place by one
 * rename. Nobody's own file is overwritten, and no link is followed out of the folder. Two runs
 * that write one file at the same time do not harm it; the later one stands.
 */
public final class Writing {
  private static final String RULE = "document-not-written";
  private static final Pattern SEGMENT = Pattern.compile("[^/\\\\:*?\"<>|\\p{Cntrl}]+");

  private final Path folder;

  private Writing(Path folder) {
    this.folder = folder;
  }

  /** Into {@code folder}, which is made when it is needed. It may itself be a link. */
  public static Writing into(Path folder) {
    return new Writing(folder);
  }

  /**
   * Writes {@code text}, in UTF-8, and below it the mark by which Kitwright knows its own files. A
   * kind of file without a place for the mark (CSV, JSON) is only replaced if it is told to.
   *
   * @param name path below the folder, with forward slashes
   */
  public Written write(String name, String text, Existing existing) {
    return write(name, text.getBytes(UTF_8), existing);
  }

  /** Writes bytes, as {@link #write(String, String, Existing)} does text. */
  public Written write(String name, byte[] content, Existing existing) {
    requireName(name);
    NewFolders folders = new NewFolders();
    Written written = write(name, Mark.put(name, content), existing, folders);
    if (written instanceof Written.Refused) {
      folders.takeBack();
    }
    return written;
  }

  private Written write(String name, byte[] marked, Existing existing, NewFolders folders) {
    try {
      Path file = folders.make(folder).toRealPath();
      String[] segments = name.split("/");
      for (int i = 0; i < segments.length - 1; i++) {
        file = file.resolve(segments[i]);
        makeFolder(file, folders);
      }
      file = file.resolve(segments[segments.length - 1]);
      if (holds(file, marked)) {
        return new Written.Unchanged(file);
      }
      requireReplaceable(name, file, existing);
      Beside.replace(file, marked);
      return new Written.Done(file);
    } catch (InTheWay e) {
      return refused(name, e.what, e.mend);
    } catch (FileAlreadyExistsException e) {
      return refused(name, e.getFile() + " is in the way.", "Move it, or write to another place.");
    } catch (IOException e) {
      return refused(
          name,
          "It cannot be written: " + reason(e) + ".",
          "See that the folder " + folder + " can be written to and the disk has room.");
    }
  }

  private static void requireName(String name) {
    for (String segment : name.split("/", -1)) {
      if (!SEGMENT.matcher(segment).matches() || segment.equals(".") || segment.equals("..")) {
        throw new IllegalArgumentException("not a path below a folder: " + name);
      }
    }
  }

  private static void makeFolder(Path part, NewFolders folders) throws IOException, InTheWay {
    if (Files.isSymbolicLink(part)) {
      throw new InTheWay(
          part + " is a link to another place.", "Put a folder there instead of the link.");
    }
    if (!Files.isDirectory(part, NOFOLLOW_LINKS)) {
      folders.make(part);
    }
  }

  private static boolean holds(Path file, byte[] content) throws IOException {
    return Files.isRegularFile(file, NOFOLLOW_LINKS)
        && Files.size(file) == content.length
        && Arrays.equals(Files.readAllBytes(file), content);
  }

  private static void requireReplaceable(String name, Path file, Existing existing)
      throws IOException, InTheWay {
    if (!Files.exists(file, NOFOLLOW_LINKS)) {
      return;
    }
    if (Files.isSymbolicLink(file)) {
      throw new InTheWay("A link to another place is in the way.", "Take the link out.");
    }
    if (!Files.isRegularFile(file, NOFOLLOW_LINKS)) {
      throw new InTheWay(
          "A folder of this name is in the way.", "Move it, or write to another place.");
    }
    if (existing == Existing.KEEP_FOREIGN && !Mark.isOn(name, Files.readAllBytes(file))) {
      throw new InTheWay(
          "The file that stands there was not written by Kitwright.",
          "Move it, write to another place, or replace it with --force.");
    }
  }

  private static String reason(IOException e) {
    String kind =
        e instanceof AccessDeniedException
            ? "writing there is not allowed"
            : e instanceof NoSuchFileException ? "the place does not exist" : "the system said no";
    String said = e.getMessage();
    return said == null ? kind : kind + " (" + said + ")";
  }

  private static Written refused(String name, String what, String mend) {
    return new Written.Refused(
        new Finding(
            RULE,
            Severity.STOP,
            Place.wholeFile(name),
            what,
            "The document " + name + " is as it was before.",
            mend,
            List.of()));
  }

  private static final class InTheWay extends Exception {
    private final String what;
    private final String mend;

    InTheWay(String what, String mend) {
      super(what);
      this.what = what;
      this.mend = mend;
    }
  }
}
