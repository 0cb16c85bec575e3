package kitwright.history;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The past of a ledger's folder, as Git keeps it. */
public final class History {
  private final Git git;
  private final boolean shallow;

  private History(Git git, boolean shallow) {
    this.git = git;
    this.shallow = shallow;
  }

  /**
   * The past of a folder.
   *
   * @throws NoHistory where git is not there, the folder lies in no repository, or nothing was
   *     committed yet
   */
  public static History of(Path folder) throws NoHistory {
    Git git = new Git(folder);
    boolean shallow = workTree(git, folder).get(1).equals("true");
    if (!git.ask("rev-parse", "--verify", "--quiet", "HEAD").isWell()) {
      throw new NoHistory(
          "Nothing was committed yet.", "Commit the ledger: git add --all && git commit.");
    }
    return new History(git, shallow);
  }

  /** What git says of the work tree that a folder lies in: that it is one, and whether shallow. */
  static List<String> workTree(Git git, Path folder) throws NoHistory {
    Git.Said inside = git.ask("rev-parse", "--is-inside-work-tree", "--is-shallow-repository");
    if (!inside.isWell()) {
      throw outside(folder, inside.err());
    }
    if (!inside.lines().get(0).equals("true")) {
      throw new NoHistory(
          "“" + folder + "” lies in a repository without a work tree.",
          "Clone it with its files, and ask there.");
    }
    return inside.lines();
  }

  private static NoHistory outside(Path folder, String err) {
    return err.contains("dubious ownership")
        ? new NoHistory(
            "Git does not trust “" + folder + "”: it belongs to somebody else.",
            "If you do, say so once: git config --global --add safe.directory “" + folder + "”.")
        : new NoHistory(
            "“" + folder + "” lies in no Git repository.",
            "Keep the ledger in Git: git init, git add --all, git commit.");
  }

  /**
   * The commit that a person means.
   *
   * @param named a day, for the last commit up to its end, or any name that git knows
   */
  public Commit commit(String named) throws NoHistory {
    Optional<LocalDate> day = day(named);
    return day.isPresent() ? upTo(day.get()) : named(named);
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException noDay) {
      return Optional.empty();
    }
  }

  private Commit named(String named) throws NoHistory {
    Git.Said said =
        named.startsWith("-")
            ? Git.Said.refused()
            : git.ask("rev-parse", "--verify", "--quiet", named + "^{commit}");
    if (!said.isWell()) {
      throw new NoHistory(
          "Git knows no commit “" + named + "”." + cut(),
          "Name a day (2026-03-22), a tag, a branch or a commit; “git log” lists them.");
    }
    return one("log", "-1", "--format=" + Commit.FORMAT, said.lines().get(0)).orElseThrow();
  }

  private Commit upTo(LocalDate day) throws NoHistory {
    // Git reckons with the clock of this machine, a commit’s day is that of the place where it was
    // made: all the world is within two days.
    String before = "--before=" + day.plusDays(2) + " 23:59:59";
    for (String line : git.must("log", before, "--format=" + Commit.FORMAT, "HEAD").lines()) {
      Commit commit = Commit.read(line);
      if (!commit.day().isAfter(day)) {
        return commit;
      }
    }
    Commit first = commits().get(0);
    throw new NoHistory(
        "No commit is as old as " + day + "." + cut(),
        "The first is of " + first.day() + ": name that day or a later one.");
  }

  private String cut() {
    return shallow ? " This clone holds only a part of the past (git fetch --unshallow)." : "";
  }

  private Optional<Commit> one(String... words) throws NoHistory {
    return git.must(words).lines().stream().findFirst().map(Commit::read);
  }

  /** The commits that touched the ledger, oldest first. */
  public List<Commit> commits() throws NoHistory {
    List<Commit> all =
        git
            .must("log", "--reverse", "--format=" + Commit.FORMAT, "HEAD", "--", ".")
            .lines()
            .stream()
            .map(Commit::read)
            .toList();
    return all.isEmpty() ? List.of(named("HEAD")) : all;
  }

  /** Who touched which file since a commit: authors by path from the ledger's folder. */
  public Map<String, Set<String>> hands(Commit after) throws NoHistory {
    Map<String, Set<String>> hands = new LinkedHashMap<>();
    String by = "";
    for (String line :
        git.must(
                "log",
                "--relative",
                "--name-only",
                "--no-renames",
                "--format=%x1f%aN",
                after.id() + "..HEAD",
                "--",
                ".")
            .lines()) {
      if (line.startsWith("\u001f")) {
        by = line.substring(1);
      } else if (!line.isEmpty()) {
        hands.computeIfAbsent(line, any -> new LinkedHashSet<>()).add(by);
      }
    }
    return hands;
  }

  /** Files of the ledger's folder that differ from the last commit, new ones among them. */
  public Set<String> uncommitted() throws NoHistory {
    Set<String> files =
        new LinkedHashSet<>(git.must("diff", "--name-only", "-z", "--relative", "HEAD").parts());
    files.addAll(git.must("ls-files", "--others", "--exclude-standard", "-z").parts());
    return files;
  }

  /** The ledger's folder as a commit has it. */
  public Tree tree(Commit commit) throws NoHistory {
    Map<String, String> blobs = new LinkedHashMap<>();
    for (String line : git.must("ls-tree", "-r", "-z", commit.id()).parts()) {
      String[] parts = line.split("\t", 2);
      String[] head = parts[0].split(" ");
      if (head[0].startsWith("100")) { // a file, neither a link nor another repository
        blobs.put(parts[1], head[2]);
      }
    }
    return new Tree(git, blobs);
  }

  /** A ledger’s folder as it is staged for the next commit, which may be the first. */
  public static Tree staged(Path folder) throws NoHistory {
    Git git = new Git(folder);
    workTree(git, folder);
    Map<String, String> blobs = new LinkedHashMap<>();
    List<String> unmerged = new ArrayList<>();
    for (String line : git.must("ls-files", "--stage", "-z").parts()) {
      String[] parts = line.split("\t", 2);
      String[] head = parts[0].split(" ");
      if (!head[2].equals("0")) {
        unmerged.add(parts[1]);
      } else if (head[0].startsWith("100")) {
        blobs.put(parts[1], head[1]);
      }
    }
    if (!unmerged.isEmpty()) {
      throw new NoHistory(
          "The merge is not finished: two versions of “"
              + unmerged.get(0)
              + "” stand side by side.",
          "Keep what is right in the file, then git add it.");
    }
    return new Tree(git, blobs);
  }

  /** Lines that commits added, oldest first, of those that hold a text. */
  List<Added> added(String text) throws NoHistory {
    List<Added> all = new ArrayList<>();
    Optional<Commit> commit = Optional.empty();
    for (String line :
        git.must(
                "log",
                "--reverse",
                "-p",
                "--unified=0",
                "--no-ext-diff",
                "--no-textconv",
                "--no-color",
                "-G" + text,
                "--format=%x1e" + Commit.FORMAT + "%x1f%G?%x1f%GS",
                "HEAD",
                "--",
                ".")
            .lines()) {
      if (line.startsWith("\u001e")) {
        commit = Optional.of(Commit.read(line.substring(1)));
        String[] parts = line.split("\u001f", -1);
        String letter = parts[parts.length - 2];
        String signer = parts[parts.length - 1];
        all.add(new Added(commit.get(), letter, signer, new ArrayList<>()));
      } else if (line.startsWith("+") && line.contains(text) && !all.isEmpty()) {
        all.get(all.size() - 1).lines().add(line.substring(1));
      }
    }
    return all;
  }

  /**
   * What a commit added.
   *
   * @param signature git's letter for the commit's own signature
   * @param signer whose key made it, as git knows; blank where it does not
   */
  record Added(Commit commit, String signature, String signer, List<String> lines) {}

  /** Whether a commit bears a signature, whether or not git is set up to look at it. */
  boolean isSigned(Commit commit) throws NoHistory {
    for (String line : git.must("cat-file", "commit", commit.id()).lines()) {
      if (line.startsWith("gpgsig")) {
        return true;
      }
      if (line.isEmpty()) {
        return false;
      }
    }
    return false;
  }
}
