package kitwright.ledger;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Place;
import kitwright.yaml.Node;
import kitwright.yaml.Recall;
import kitwright.yaml.YamlText;

/** Texts to a ledger: pure, so that a test or another commit's files can be read as well. */
public final class LedgerReader {
  /** The key, plain or in quotes, and whatever white space YAML allows before its colon. */
  private static final Pattern BUILD_KEY = Pattern.compile("build[\"']?\\s*:");

  /** No more files than these share what {@link Recall} holds. */
  private static final int LONGEST_RUN = 100;

  /** So many runs at least, that no core waits long for another’s last one. */
  private static final int RUNS = 8;

  private LedgerReader() {}

  /**
   * Reads a ledger from its files' texts. Every fault of every file goes to {@code out}; what could
   * be read is in the ledger.
   *
   * @param files in the order in which their records shall stand
   * @param evidence tells what is found at paths of evidence, asked when somebody wants to know
   * @return empty where no file holds a readable {@code build:} record
   */
  public static Optional<Ledger> read(
      List<SourceFile> files,
      Function<List<String>, Map<String, EvidenceFile>> evidence,
      Findings out) {
    Ledger.Gathering gathering = gather(files, out);
    List<Build> builds =
        gathering.entries().filter(Build.class::isInstance).map(Build.class::cast).toList();
    builds.stream().skip(1).forEach(second -> out.add(secondBuild(second, builds.get(0))));
    return builds.stream().findFirst().map(build -> close(gathering, build, evidence));
  }

  /**
   * Reads a ledger whose build record has faults, by what could be read of that record, so that its
   * faults do not hide what else is wrong. Nothing is to be worked out of it but findings.
   *
   * @return empty where there is no build record at all, or none that says its currency
   */
  public static Optional<Ledger> readByFaultyBuild(
      List<SourceFile> files, Function<List<String>, Map<String, EvidenceFile>> evidence) {
    Ledger.Gathering gathering = gather(files, new Findings());
    return gathering
        .faultyBuild()
        .filter(build -> build.at().isRead("currency"))
        .map(build -> close(gathering, build, evidence));
  }

  private static Ledger.Gathering gather(List<SourceFile> files, Findings out) {
    Layouts layouts = new Layouts();
    Currency currency = currency(files, layouts);
    Ledger.Gathering gathering = new Ledger.Gathering();
    // No file hangs on another, so all cores read; their order is put right behind them.
    runs(files).parallelStream()
        .map(run -> Part.of(run, layouts, currency))
        .forEachOrdered(part -> part.addTo(gathering, out));
    return gathering;
  }

  private static Ledger close(
      Ledger.Gathering gathering,
      Build build,
      Function<List<String>, Map<String, EvidenceFile>> evidence) {
    return gathering.close(build, new SeenFiles(evidence));
  }

  /** The files in runs, each of which one core reads in one go. */
  private static List<List<SourceFile>> runs(List<SourceFile> files) {
    int run = Math.min(LONGEST_RUN, files.size() / RUNS + 1);
    return IntStream.iterate(0, from -> from < files.size(), from -> from + run)
        .mapToObj(from -> files.subList(from, Math.min(from + run, files.size())))
        .toList();
  }

  /** What a run of files gave. */
  private static final class Part {
    private final Recall recall = new Recall();
    private final Ledger.Gathering gathering = new Ledger.Gathering();
    private final Findings faults = new Findings();
    private final Records records;

    private Part(Layouts layouts, Currency currency) {
      records = new Records(layouts, currency, recall, gathering, faults);
    }

    static Part of(List<SourceFile> run, Layouts layouts, Currency currency) {
      Part part = new Part(layouts, currency);
      run.forEach(part::read);
      return part;
    }

    private void read(SourceFile file) {
      if (!file.opened()) {
        gathering.addUnread(Unread.unopened(file));
      } else if (file.isMarkdown()) {
        FrontMatter.of(file, faults, gathering::addUnread).ifPresent(front -> read(file, front));
      } else {
        YamlText.read(file.path(), file.text(), recall, records::take, faults)
            .ifPresent(line -> gathering.addUnread(Unread.from(file, line)));
      }
    }

    private void read(SourceFile file, FrontMatter front) {
      List<Node.Entry> entries = new ArrayList<>();
      front
          .read(recall, (key, value) -> entries.add(new Node.Entry(key, value)), faults)
          .ifPresent(line -> gathering.addUnread(Unread.from(file, 1)));
      Place at = new Place(file.path(), 1, 1, 1, 4);
      records.takeLogDay(new Node.Mapping(entries, at), front.body());
    }

    void addTo(Ledger.Gathering all, Findings out) {
      all.addAll(gathering);
      out.addAll(faults);
    }
  }

  /** The build's currency, which bare amounts of money are in, must be known before the rest. */
  private static Currency currency(List<SourceFile> files, Layouts layouts) {
    Findings unheard = new Findings();
    Ledger.Gathering builds = new Ledger.Gathering();
    Records records =
        new Records(layouts, Currency.getInstance("EUR"), new Recall(), builds, unheard);
    for (SourceFile file : files) {
      if (file.opened() && !file.isMarkdown() && mayHoldBuild(file.text())) {
        YamlText.first(file.path(), file.text(), Kind.BUILD.key())
            .ifPresent(build -> records.take(build.key(), build.value()));
      }
    }
    return builds
        .entries()
        .filter(Build.class::isInstance)
        .map(entry -> ((Build) entry).currency())
        .findFirst()
        .orElse(Currency.getInstance("EUR"));
  }

  /** Whether a text may hold the build's record: cheap, and never wrongly no. */
  static boolean mayHoldBuild(String text) {
    return text.contains("build") && BUILD_KEY.matcher(text).find();
  }

  private static Finding secondBuild(Build second, Build first) {
    return new Finding(
        "build-twice",
        Severity.STOP,
        second.at().record(),
        "This is the second build record; the first is at " + first.at().record() + ".",
        "Only the first is used.",
        "Keep one build in one ledger; move the other into a folder of its own elsewhere.",
        List.of("build " + second.id()));
  }
}
