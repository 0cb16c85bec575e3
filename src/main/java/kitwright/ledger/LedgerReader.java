package kitwright.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Place;
import kitwright.yaml.Node;
import kitwright.yaml.YamlText;

/** Texts to a ledger: pure, so that a test or another commit's files can be read as well. */
public final class LedgerReader {
  /** The key, plain or in quotes, and whatever white space YAML allows before its colon. */
  private static final Pattern BUILD_KEY = Pattern.compile("build[\"']?\\s*:");

  private static final String BUILT_IN = "/kitwright/materials.yaml";

  private LedgerReader() {}

  /**
   * Reads a ledger from its files' texts. Every fault of every file goes to {@code out}; what could
   * be read is in the ledger.
   *
   * @param files in the order in which their records shall stand
   * @param evidence tells what is found at the paths of evidence
   * @return empty where no file holds a readable {@code build:} record
   */
  public static Optional<Ledger> read(
      List<SourceFile> files,
      Function<List<String>, Map<String, EvidenceFile>> evidence,
      Findings out) {
    Ledger.Gathering gathering = new Ledger.Gathering();
    Records records = new Records(currency(files), gathering, out);
    files.forEach(file -> readFile(file, records, out));
    List<Build> builds =
        gathering.entries().filter(Build.class::isInstance).map(Build.class::cast).toList();
    if (builds.isEmpty()) {
      return Optional.empty();
    }
    builds.stream().skip(1).forEach(second -> out.add(secondBuild(second, builds.get(0))));
    Map<String, EvidenceFile> found = evidence.apply(evidencePaths(gathering));
    return Optional.of(gathering.close(builds.get(0), builtIn(), found));
  }

  private static void readFile(SourceFile file, Records records, Findings out) {
    if (!file.isMarkdown()) {
      YamlText.read(file.path(), file.text(), 0, records::take, out);
      return;
    }
    FrontMatter.of(file, out)
        .ifPresent(
            front -> {
              List<Node.Entry> entries = new ArrayList<>();
              front.read((key, value) -> entries.add(new Node.Entry(key, value)), out);
              Place at = new Place(file.path(), 1, 1, 1, 4);
              records.takeLogDay(new Node.Mapping(entries, at), front.body());
            });
  }

  /** The build's currency, which bare amounts of money are in, must be known before the rest. */
  private static Currency currency(List<SourceFile> files) {
    Findings unheard = new Findings();
    Ledger.Gathering builds = new Ledger.Gathering();
    Records records = new Records(Currency.getInstance("EUR"), builds, unheard);
    for (SourceFile file : files) {
      if (!file.isMarkdown() && mayHoldBuild(file.text())) {
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

  private static List<String> evidencePaths(Ledger.Gathering gathering) {
    return gathering.entries().flatMap(EvidencePaths::of).distinct().sorted().toList();
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

  /** The built-in table of materials, written like a ledger and read like one. */
  private static List<Material> builtIn() {
    Findings faults = new Findings();
    Ledger.Gathering gathering = new Ledger.Gathering();
    Records records = new Records(Currency.getInstance("EUR"), gathering, faults);
    YamlText.read("built-in materials", resource(BUILT_IN), 0, records::take, faults);
    if (!faults.inOrder().isEmpty()) {
      throw new IllegalStateException("the built-in materials are faulty: " + faults.inOrder());
    }
    return gathering.entries().map(Material.class::cast).toList();
  }

  private static String resource(String name) {
    try (InputStream in = LedgerReader.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its own " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
