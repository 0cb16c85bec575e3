package kitwright.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Place;

/** The folder of a ledger on disk: the only reader of its files. Links are never followed. */
public final class LedgerFolder {
  /** A file larger than this is no ledger file; 32 MiB hold some 200,000 records. */
  private static final long LARGEST = 32L << 20;

  /** Where a build record begins: behind a byte order mark, in quotes or in brackets too. */
  private static final Pattern BUILD = Pattern.compile("\\uFEFF?(\\{ *)?[\"']?build[\"']? *:");

  private static final Set<String> NOT_OURS =
      Set.of("reports", "templates", "node_modules", "target");

  /** Of those, what a builder may take for a folder of records. */
  private static final Set<String> FOR_PEOPLE = Set.of("reports", "templates");

  private final Path root;

  private LedgerFolder(Path root) {
    this.root = root;
  }

  public static LedgerFolder at(Path root) {
    return new LedgerFolder(root.toAbsolutePath().normalize());
  }

  /**
   * The ledger that is meant where none is named: {@code ledger} in the given folder, else the
   * nearest folder upward that holds a file with a {@code build:} record.
   */
  public static Optional<LedgerFolder> near(Path here) {
    Path start = here.toAbsolutePath().normalize();
    Path below = start.resolve("ledger");
    if (Files.isDirectory(below)) {
      return Optional.of(at(below));
    }
    for (Path folder = start; folder != null; folder = folder.getParent()) {
      if (holdsBuild(folder)) {
        return Optional.of(at(folder));
      }
    }
    // What nobody may open can be the build's own: better that is told than that there is none.
    return holds(start, file -> !Files.isReadable(file))
        ? Optional.of(at(start))
        : Optional.empty();
  }

  private static boolean holdsBuild(Path folder) {
    return holds(folder, LedgerFolder::startsBuild);
  }

  private static boolean holds(Path folder, Predicate<Path> wanted) {
    try (var files = Files.list(folder)) {
      return files
          .filter(file -> isYaml(file.getFileName().toString()))
          .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
          .anyMatch(wanted);
    } catch (IOException unreadable) {
      return false;
    }
  }

  private static boolean startsBuild(Path file) {
    try {
      return Files.size(file) <= LARGEST
          && new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
              .lines()
              .anyMatch(line -> BUILD.matcher(line).lookingAt());
    } catch (IOException unreadable) {
      return false;
    }
  }

  public Path root() {
    return root;
  }

  /** Reads everything; empty where there is no readable build record. */
  public Optional<Ledger> read(Findings out) {
    return LedgerReader.read(files(out), this::evidence, out);
  }

  /** The ledger's files in order of path, those among them that could not be opened. */
  public List<SourceFile> files(Findings out) {
    List<Path> paths = new ArrayList<>();
    List<SourceFile> files = new ArrayList<>();
    try {
      Files.walkFileTree(root, new Walk(paths, files, out));
    } catch (IOException broken) {
      out.add(unreadable(root, broken));
    }
    paths.forEach(path -> files.add(file(path, out)));
    files.sort(Comparator.comparing(SourceFile::path));
    return List.copyOf(files);
  }

  private final class Walk extends SimpleFileVisitor<Path> {
    private final List<Path> paths;
    private final List<SourceFile> unopened;
    private final Findings out;

    Walk(List<Path> paths, List<SourceFile> unopened, Findings out) {
      this.paths = paths;
      this.unopened = unopened;
      this.out = out;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes attributes)
        throws IOException {
      String name = dir.equals(root) ? "" : dir.getFileName().toString();
      boolean ours = !name.startsWith(".") && !NOT_OURS.contains(name);
      if (ours && isYaml(name)) {
        out.add(folderNamedLikeFile(dir));
      }
      if (name.equals("templates") && root.equals(dir.getParent())) {
        try (var templates = Files.list(dir)) {
          templates.filter(Files::isSymbolicLink).sorted().forEach(file -> out.add(link(file)));
        }
      }
      if (FOR_PEOPLE.contains(name)) {
        recordsAmongReports(dir);
      }
      return ours ? FileVisitResult.CONTINUE : FileVisitResult.SKIP_SUBTREE;
    }

    private void recordsAmongReports(Path dir) throws IOException {
      try (var files = Files.walk(dir)) {
        files
            .filter(file -> isYaml(file.getFileName().toString()))
            .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
            .sorted()
            .forEach(
                file ->
                    PassedOver.inFolderOfReports(name(file), file)
                        .ifPresent(finding -> passedOver(file, finding)));
      } catch (UncheckedIOException unreadable) {
        throw unreadable.getCause();
      }
    }

    private void passedOver(Path file, Finding finding) {
      out.add(finding);
      unopened.add(PassedOver.unread(name(file), file));
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      String name = file.getFileName().toString();
      if (name.startsWith(".")) {
        return FileVisitResult.CONTINUE;
      }
      boolean read = isYaml(name) || name.endsWith(".md");
      if (attributes.isSymbolicLink()) {
        if (read || (Files.isDirectory(file) && !NOT_OURS.contains(name))) {
          out.add(link(file));
        }
        if (isYaml(name) && !isReadByItself(file)) {
          unopened.add(SourceFile.unopened(name(file)));
        }
      } else if (!read) {
        PassedOver.finding(name(file), file, attributes)
            .ifPresent(finding -> passedOver(file, finding));
      } else if (!attributes.isRegularFile()) {
        out.add(fault(file, "It is neither a file nor a folder.", "Remove it from the ledger."));
      } else if (attributes.size() > LARGEST) {
        out.add(tooLarge(file, attributes.size()));
        unopened.add(SourceFile.unopened(name(file)));
      } else {
        paths.add(file);
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException broken) {
      out.add(unreadable(file, broken));
      if (!file.equals(root)) {
        unopened.add(SourceFile.unopened(name(file)));
      }
      return FileVisitResult.CONTINUE;
    }
  }

  /** Whether what a link points to is read under its own name. */
  private boolean isReadByItself(Path link) {
    try {
      Path real = link.toRealPath();
      return real.startsWith(root.toRealPath())
          && isOurs(name(root.resolve(root.toRealPath().relativize(real))));
    } catch (IOException leadsNowhere) {
      return false;
    }
  }

  /** Whether a file is the ledger's own, by its path from the ledger's folder. */
  public static boolean isOurs(String path) {
    String[] names = path.split("/");
    for (int i = 0; i < names.length; i++) {
      if (names[i].startsWith(".") || (i < names.length - 1 && NOT_OURS.contains(names[i]))) {
        return false;
      }
    }
    return isYaml(path) || path.endsWith(".md");
  }

  private static boolean isYaml(String name) {
    return name.endsWith(".yaml") || name.endsWith(".yml");
  }

  private SourceFile file(Path path, Findings out) {
    try {
      SourceFile file = SourceFile.decoded(name(path), Files.readAllBytes(path), out);
      if (isYaml(file.path()) && file.text().isBlank()) {
        out.add(PassedOver.empty(file.path()));
      }
      return file;
    } catch (IOException broken) {
      out.add(unreadable(path, broken));
      return SourceFile.unopened(name(path));
    }
  }

  private Finding tooLarge(Path file, long size) {
    return fault(
        file,
        "The file has " + (size >> 20) + " MiB; no more than " + (LARGEST >> 20) + " are read.",
        "Split it, or move what is no record out of the ledger.");
  }

  private Finding link(Path file) {
    return new Finding(
        "link-not-followed",
        Severity.WARN,
        Place.wholeFile(name(file)),
        Files.isDirectory(file)
            ? "This is a link to a folder, and links are not followed."
            : "This is a link, and links are not followed.",
        Files.isDirectory(file)
            ? "What it points to is not part of the ledger."
            : "What it points to is not part of the ledger; where it is no file of the ledger,"
                + " nothing counts as known to be here.",
        Files.isDirectory(file)
            ? "Put the folder itself here, or name the other ledger with --ledger."
            : "Put the file itself here.",
        List.of());
  }

  private Finding folderNamedLikeFile(Path folder) {
    return new Finding(
        "file-unreadable",
        Severity.NOTE,
        Place.wholeFile(name(folder)),
        "This is a folder, though its name looks like a file’s.",
        "The files in it are read all the same.",
        "Rename it if it was meant as a file.",
        List.of());
  }

  private Finding unreadable(Path file, IOException broken) {
    String why =
        switch (broken.getClass().getSimpleName()) {
          case "NoSuchFileException" -> "It is not there.";
          case "AccessDeniedException" -> "You have no permission to read it.";
          default -> "It cannot be read (" + broken.getMessage() + ").";
        };
    return fault(file, why, "Check its name and who may read it.");
  }

  private Finding fault(Path file, String what, String mend) {
    return new Finding(
        "file-unreadable",
        Severity.STOP,
        Place.wholeFile(name(file)),
        what,
        "The whole file is passed over, and its records are missing everywhere.",
        mend,
        List.of());
  }

  private String name(Path path) {
    return root.equals(path) ? "." : root.relativize(path).toString().replace('\\', '/');
  }

  /** What stands at the paths of evidence; nothing outside the ledger is opened. */
  public Map<String, EvidenceFile> evidence(List<String> paths) {
    Map<String, EvidenceFile> all = new LinkedHashMap<>();
    paths.forEach(path -> all.put(path, evidence(path)));
    return all;
  }

  private EvidenceFile evidence(String named) {
    try {
      Path path = root.resolve(named).normalize();
      if (!path.startsWith(root)) {
        return EvidenceFile.without(EvidenceFile.State.OUTSIDE);
      }
      if (!Files.exists(path)) {
        return EvidenceFile.without(EvidenceFile.State.ABSENT);
      }
      if (!path.toRealPath().startsWith(root.toRealPath())) {
        return EvidenceFile.without(EvidenceFile.State.OUTSIDE);
      }
      return Files.isRegularFile(path)
          ? new EvidenceFile(EvidenceFile.State.PRESENT, Optional.of(sha256(path)))
          : EvidenceFile.without(EvidenceFile.State.NOT_A_FILE);
    } catch (InvalidPathException nonsense) {
      return EvidenceFile.without(EvidenceFile.State.ABSENT);
    } catch (IOException broken) {
      return EvidenceFile.without(EvidenceFile.State.UNREADABLE);
    }
  }

  /** The SHA-256 of a file, as 64 hexadecimal digits. */
  public static String sha256(Path path) throws IOException {
    try (InputStream in =
        new DigestInputStream(Files.newInputStream(path), MessageDigest.getInstance("SHA-256"))) {
      in.transferTo(java.io.OutputStream.nullOutputStream());
      return HexFormat.of().formatHex(((DigestInputStream) in).getMessageDigest().digest());
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
