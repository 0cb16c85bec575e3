package kitwright.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import kitwright.finding.Finding;
import kitwright.finding.Severity;
import kitwright.value.Place;

/** Files that look like records but have a name that is not read. */
final class PassedOver {
  /** So much of a file tells what it is. */
  private static final int START = 4096;

  private PassedOver() {}

  /** What holds no records under any name: pictures, papers, tables, drawings, copies kept. */
  private static final Set<String> NO_RECORDS =
      Set.of(
          ("jpg jpeg png gif webp heic heif tif tiff bmp svg pdf mp4 mov avi mkv mp3 wav zip gz 7z"
                  + " tar doc docx odt xls xlsx ods csv tsv dxf dwg step stp stl html htm ics eml msg"
                  + " sig asc pub bak orig old swp swo tmp part")
              .split(" "));

  /**
   * What is told of a file that is not read; empty where it is none of the ledger’s, such as a
   * photograph.
   */
  static Optional<Finding> finding(String named, Path file, BasicFileAttributes attributes) {
    String name = file.getFileName().toString();
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    String bare = named.substring(0, named.length() - ending.length());
    if (ending.equals("yaml") || ending.equals("yml") || ending.equals("md")) {
      return Optional.of(told(named, file, "Its ending is not in small letters.", bare + ending));
    }
    if (ending.equals("markdown")) {
      return Optional.of(told(named, file, "It ends in .markdown.", bare + "md"));
    }
    boolean mayBeText = !NO_RECORDS.contains(ending) && !name.endsWith("~");
    return mayBeText && attributes.isRegularFile() ? ofText(named, file) : Optional.empty();
  }

  private static Optional<Finding> ofText(String named, Path file) {
    List<String> lines = lines(file);
    if (lines.stream().anyMatch(PassedOver::isRecords)) {
      String what = "It holds records, but is not named like a file of them.";
      return Optional.of(told(named, file, what, bare(named) + ".yaml"));
    }
    String what = "It holds a day of the log, but is not named like one.";
    return isLog(lines)
        ? Optional.of(told(named, file, what, bare(named) + ".md"))
        : Optional.empty();
  }

  /** Whether a kind of record stands at the beginning of the line. */
  private static boolean isRecords(String line) {
    int colon = line.indexOf(':');
    return colon > 0 && Kind.of(line.substring(0, colon).stripTrailing()).isPresent();
  }

  private static boolean isLog(List<String> lines) {
    return !lines.isEmpty()
        && lines.get(0).stripTrailing().equals("---")
        && lines.stream().anyMatch(line -> line.startsWith("day:"));
  }

  private static String bare(String named) {
    return named.strip().replaceFirst("(\\.(?:ya?ml?|md))?(\\.\\p{Alnum}{1,8})?$", "");
  }

  private static List<String> lines(Path file) {
    return start(file).replace("\uFEFF", "").lines().toList();
  }

  /** A file of records in a folder whose files are the program’s own. */
  static Optional<Finding> inFolderOfReports(String named, Path file) {
    return lines(file).stream().anyMatch(PassedOver::isRecords)
        ? Optional.of(
            finding(
                named,
                "It holds records, but lies in a folder of reports or templates.",
                "Move it to another folder; any name but “reports” and “templates” will do."))
        : Optional.empty();
  }

  /** A file of records in which nothing stands: what stood there may be lost. */
  static Finding empty(String named) {
    return new Finding(
        "file-passed-over",
        Severity.WARN,
        Place.wholeFile(named),
        "Nothing stands in it.",
        "If it held records, they are gone: a disk that was full, or a copy that broke off.",
        "Take it back from a copy or from Git (“git log -- "
            + named
            + "” shows its past); remove it if it never held any.",
        List.of());
  }

  /** What can be seen of it, so that what it names is in doubt. */
  static SourceFile unread(String named, Path file) {
    try {
      return new SourceFile(named, Files.readString(file), false);
    } catch (IOException unreadable) {
      return SourceFile.unopened(named);
    }
  }

  private static String start(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return new String(in.readNBytes(START), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      return "";
    }
  }

  /** A Markdown file among the days of the log that is none of them. */
  static Finding logWithoutKeys(String named) {
    return new Finding(
        "file-passed-over",
        Severity.WARN,
        new Place(named, 1, 1, 1, 2),
        "It lies among the days of the log, but has no keys between two lines of hyphens.",
        "It is read by nobody, so that the day is missing from the log.",
        "Begin it with a line of three hyphens, “day: "
            + day(named)
            + "”, and another line of three hyphens; or move it elsewhere.",
        List.of());
  }

  /** The day that a file’s name tells; else how one is written. */
  private static String day(String named) {
    Matcher day =
        Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}")
            .matcher(named.substring(named.lastIndexOf('/') + 1));
    return day.find() ? day.group() : "YYYY-MM-DD";
  }

  private static Finding told(String named, Path file, String what, String better) {
    String name = better.substring(better.lastIndexOf('/') + 1);
    return finding(
        named,
        what,
        isTaken(file, name)
            ? "Give it a name of its own with that ending, since “"
                + better
                + "” is there already; or move it out of the ledger."
            : "Rename it to “" + better + "”, or move it out of the ledger.");
  }

  /** Whether another file has a name; not where the file system takes both for one. */
  private static boolean isTaken(Path file, String name) {
    Path other = file.resolveSibling(name);
    try {
      return Files.exists(other) && !Files.isSameFile(file, other);
    } catch (IOException unreadable) {
      return true;
    }
  }

  private static Finding finding(String named, String what, String mend) {
    return new Finding(
        "file-passed-over",
        Severity.WARN,
        Place.wholeFile(named),
        what,
        "It is read by nobody, and whatever it records is missing everywhere; work that it names"
            + " may not start.",
        mend,
        List.of());
  }
}
