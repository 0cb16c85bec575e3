package kitwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import kitwright.claim.ClaimStanding;
import kitwright.claim.ClaimStandings;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.kit.Position;
import kitwright.kit.Positions;
import kitwright.ledger.Evidence;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.LogDay;
import kitwright.ledger.Party;
import kitwright.ledger.SourceFile;
import kitwright.ledger.Spend;
import kitwright.network.Plan;
import kitwright.openmatter.Readiness;
import kitwright.openmatter.WorkDay;
import kitwright.shortage.LookAhead;
import kitwright.shortage.ShortageStandings;
import kitwright.shortage.Undelivered;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Ref;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Nothing becomes free by being spoilt: whatever value of the demonstration cannot be read, has a
 * unit that does not convert, or names nothing, no work may start for it, nothing is released,
 * covered, settled or here that was not before.
 */
class SpoiledLedgerTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 29);
  private static final LedgerFolder FOLDER = LedgerFolder.at(Path.of("ledger"));

  /** A value in a file: which key it has, where that begins, and where its own text stands. */
  private record Spot(int file, String key, String value, int begins, int from, int to) {}

  private final List<SourceFile> files = FOLDER.files(new Findings());
  private final Map<List<String>, Map<String, kitwright.ledger.EvidenceFile>> evidence =
      new LinkedHashMap<>();

  private Optional<Ledger> read(List<SourceFile> texts) {
    return LedgerReader.read(
        texts, paths -> evidence.computeIfAbsent(paths, FOLDER::evidence), new Findings());
  }

  private List<SourceFile> with(Spot spot, String value) {
    return with(spot, spot.from(), value, spot.to());
  }

  private List<SourceFile> with(Spot spot, int from, String value, int to) {
    List<SourceFile> all = new ArrayList<>(files);
    SourceFile file = files.get(spot.file());
    String text = file.text();
    all.set(
        spot.file(),
        new SourceFile(file.path(), text.substring(0, from) + value + text.substring(to)));
    return all;
  }

  /** Without a key, its value, and the comma behind it. */
  private List<SourceFile> without(Spot spot) {
    String behind = files.get(spot.file()).text().substring(spot.to());
    int comma = behind.matches("(?s)\\s*,.*") ? behind.indexOf(',') + 1 : 0;
    return with(spot, spot.begins(), "", spot.to() + comma);
  }

  /** Every yes of a ledger, and how much is here of each thing. */
  private static final class Yes {
    private final Set<String> all = new TreeSet<>();
    private final Map<String, BigDecimal> here = new TreeMap<>();

    Yes(Ledger ledger) {
      Facts now = Facts.of(ledger, TODAY);
      Plan.on(now).ahead().stream()
          .flatMap(each -> Plan.on(now).task(each.id()).stream())
          .filter(task -> Readiness.of(task, now).isReady())
          .forEach(task -> all.add("may start " + task.id()));
      WorkDay.of(WorkDay.after(now), now)
          .ready()
          .forEach(each -> all.add("tomorrow " + each.task().id()));
      SubstitutionStandings.on(now).all().stream()
          .filter(each -> each.isApproved())
          .forEach(each -> all.add("released " + each.substitution().id()));
      ShortageStandings.on(now).all().stream()
          .filter(each -> !each.isOpen())
          .forEach(each -> all.add("covered " + each.shortage().id()));
      ClaimStandings.on(now).all().stream()
          .filter(each -> each.state() == ClaimStanding.State.SETTLED)
          .forEach(each -> all.add("settled " + each.claim().id()));
      ClaimStandings.on(now).all().stream()
          .filter(each -> !each.granted().isEmpty() && each.open().isEmpty())
          .forEach(each -> all.add("paid " + each.claim().id()));
      ledger.log().forEach(this::published);
      ledger.parties().stream()
          .filter(Party::isPublic)
          .forEach(each -> all.add("public " + each.id()));
      LookAhead ahead = LookAhead.on(now);
      boolean isAllReckoned =
          Plan.on(now).ahead().stream()
              .flatMap(each -> Plan.on(now).task(each.id()).stream())
              .allMatch(task -> ahead.unreckoned(task).isEmpty());
      ledger.kit().stream()
          .filter(each -> isAllReckoned && ahead.ordersOf(each).isEmpty())
          .filter(each -> lacksNothing(each, ahead))
          .forEach(each -> all.add("nothing to order of " + each.id()));
      Set<Spend> awaited = Undelivered.on(now).map(Undelivered::spend).collect(Collectors.toSet());
      ledger.spending().stream()
          .filter(each -> !awaited.contains(each))
          .forEach(each -> all.add("nothing under way by " + each.id()));
      for (Position each : Positions.on(now).all()) {
        if (each.doubts().isEmpty()) {
          here.put("kit " + each.item().id(), ahead.atHand(each.item()).amount());
        }
      }
      Positions.on(now).allStock().stream()
          .filter(each -> each.doubts().isEmpty())
          .forEach(each -> here.put("stock " + each.stock().id(), each.left().amount()));
    }

    private static boolean lacksNothing(KitItem item, LookAhead ahead) {
      return ahead.ofItem(new Ref(item.id(), item.at().record())).stream()
          .allMatch(wanted -> wanted.missing().isNone());
    }

    /** What the public may read of a day, and see of its pictures. */
    private void published(LogDay day) {
      here.put(
          "public text of " + day.id(),
          BigDecimal.valueOf(day.bodyFor(LogDay.Audience.PUBLIC).strip().length()));
      here.put(
          "public pictures of " + day.id(),
          BigDecimal.valueOf(day.photos().stream().filter(Evidence::isPublic).count()));
    }

    /** What is said here and was not there. */
    Set<String> beyond(Yes before, Set<String> known) {
      Set<String> more = new TreeSet<>(all);
      more.removeAll(before.all);
      more.removeIf(yes -> !known.contains(yes.substring(yes.lastIndexOf(' ') + 1)));
      here.forEach(
          (thing, amount) -> {
            BigDecimal was = before.here.get(thing);
            if (was != null && amount.compareTo(was) > 0) {
              more.add("more here of " + thing);
            }
          });
      return more;
    }
  }

  @Test
  void nothingBecomesFreeByAFileThatBreaksOff() {
    Ledger plain = read(files).orElseThrow();
    Yes before = new Yes(plain);
    Map<String, Set<String>> found = new TreeMap<>();
    Set<String> seen = new TreeSet<>();
    for (int i = 0; i < files.size(); i++) {
      String text = files.get(i).text();
      boolean first = seen.add(files.get(i).path().replaceFirst("/.*", ""));
      List<String> ways = broken(text);
      boolean takes = text.contains("used:");
      for (String broken : first ? ways : takes ? ways.subList(i % 3, i % 3 + 1) : NONE) {
        List<SourceFile> all = new ArrayList<>(files);
        all.set(i, new SourceFile(files.get(i).path(), broken));
        Set<String> more = beyond(all, plain, before);
        if (!more.isEmpty()) {
          found.put(files.get(i).path() + ": " + broken, more);
        }
      }
    }
    assertThat(found).isEmpty();
  }

  private static final List<String> NONE = List.of();

  /** A bracket in front; one in the middle; front matter that never ends; a key of no kind. */
  private static List<String> broken(String text) {
    int middle = text.indexOf('\n', text.length() / 2) + 1;
    return text.startsWith("---")
        ? List.of(
            "[" + text, text.replaceFirst("\n([a-z]+):", "\n$1: ]"), text.replace("\n---", "\n--"))
        : List.of(
            "[" + text,
            text.substring(0, middle) + "  - ] : [\n" + text.substring(middle),
            text.replaceFirst("(?m)^([a-z]+):", "$1x:"));
  }

  private Set<String> beyond(List<SourceFile> texts, Ledger plain, Yes before) {
    return read(texts).map(spoilt -> new Yes(spoilt).beyond(before, known(plain))).orElse(Set.of());
  }

  private static Set<String> known(Ledger plain) {
    Set<String> known = new TreeSet<>();
    for (Kind kind : Kind.values()) {
      plain.entries(kind).forEach(entry -> known.add(entry.id()));
    }
    return known;
  }

  private List<Spot> spots() {
    List<Spot> all = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      SourceFile file = files.get(i);
      boolean log = file.path().endsWith(".md");
      if (log && !file.text().startsWith("---\n")) {
        continue;
      }
      int from = log ? 4 : 0;
      int to = log ? file.text().indexOf("\n---", from) + 1 : file.text().length();
      Node root =
          new Yaml(new LoaderOptions())
              .compose(new java.io.StringReader(file.text().substring(from, to)));
      if (root != null) {
        gather(root, i, from, log ? "log" : "", -1, all);
      }
    }
    return all;
  }

  private static void gather(
      Node node, int file, int from, String key, int begins, List<Spot> all) {
    if (node instanceof MappingNode mapping) {
      for (NodeTuple each : mapping.getValue()) {
        String name = ((ScalarNode) each.getKeyNode()).getValue();
        gather(
            each.getValueNode(),
            file,
            from,
            key.isEmpty() ? name : key + "." + name,
            from + each.getKeyNode().getStartMark().getIndex(),
            all);
      }
    } else if (node instanceof SequenceNode list) {
      list.getValue().forEach(each -> gather(each, file, from, key, -1, all));
    } else if (node instanceof ScalarNode scalar) {
      int start = from + scalar.getStartMark().getIndex();
      int end = from + scalar.getEndMark().getIndex();
      all.add(new Spot(file, key, scalar.getValue(), begins, start, end));
    }
  }

  /** What can be reckoned with only by rooms that have a test of this kind of their own. */
  private static final Set<String> ELSEWHERE =
      Set.of("build", "materials", "sections", "assessments", "budget", "rates", "forecast");

  private static String spoilt(String value) {
    if (value.matches("[0-9.,]+( [a-z]+.*)?")) {
      return value.replaceAll("^([0-9.,]+).*", "$1") + (value.contains(" kg") ? " m" : " kg");
    }
    return value.matches("[a-z0-9-]*[a-z][a-z0-9-]*") ? value + "x" : "\"?!\"";
  }

  @Test
  void nothingBecomesFreeByBeingSpoilt() {
    free(spot -> Optional.of(with(spot, spoilt(spot.value()))));
  }

  @Test
  void norByANumberBelowNothing() {
    free(
        spot ->
            Optional.of(spot)
                .filter(each -> each.value().matches("[0-9]+([.,][0-9]+)?( .*)?"))
                .map(each -> with(each, "-" + each.value())));
  }

  /** A task that is finished only then is not finished: check tells the day. */
  @Test
  void norByADayInAnotherCentury() {
    free(
        spot ->
            Optional.of(spot)
                .filter(each -> each.value().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}"))
                .filter(each -> !each.key().equals("tasks.finished"))
                .map(each -> with(each, "2062" + each.value().substring(4))));
  }

  /**
   * Where a key may be left out, whoever leaves it out says something else; and where the name of a
   * thing is gone, nobody can tell what was meant.
   */
  @Test
  void norByAKeyThatIsLeftOut() {
    Set<String> named = known(read(files).orElseThrow());
    free(
        spot ->
            Optional.of(spot)
                .filter(each -> each.begins() >= 0 && !named.contains(each.value()))
                .map(this::without)
                .filter(texts -> !faults(texts).isEmpty()));
  }

  private static List<Finding> faults(List<SourceFile> texts) {
    Findings faults = new Findings();
    LedgerReader.read(texts, paths -> Map.of(), faults);
    return faults.inOrder();
  }

  @Test
  void norByAFileThatNobodyCanOpen() {
    Ledger plain = read(files).orElseThrow();
    Yes before = new Yes(plain);
    Set<String> folders = new TreeSet<>();
    for (SourceFile file : files) {
      if (folders.add(file.path().replaceFirst("/.*", ""))) {
        List<SourceFile> all = new ArrayList<>(files);
        all.set(files.indexOf(file), new SourceFile(file.path(), "", false));
        assertThat(beyond(all, plain, before)).as(file.path()).isEmpty();
      }
    }
  }

  /** Of each key the first value; it stands for all. */
  private void free(Function<Spot, Optional<List<SourceFile>>> spoil) {
    Ledger plain = read(files).orElseThrow();
    Yes before = new Yes(plain);
    Map<String, Set<String>> found = new TreeMap<>();
    Set<String> seen = new TreeSet<>(ELSEWHERE);
    int tried = 0;
    for (Spot spot : spots()) {
      if (seen.contains(spot.key().replaceFirst("\\..*", "")) || seen.contains(spot.key())) {
        continue;
      }
      Optional<List<SourceFile>> texts = spoil.apply(spot);
      if (texts.isPresent()) {
        seen.add(spot.key());
        tried++;
        Set<String> more = beyond(texts.get(), plain, before);
        if (!more.isEmpty()) {
          found.put(files.get(spot.file()).path() + " " + spot.key() + ": " + spot.value(), more);
        }
      }
    }
    assertThat(tried).as("keys tried").isGreaterThan(20);
    assertThat(found).isEmpty();
  }
}
