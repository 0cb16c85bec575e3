package kitwright.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Which room may use which: the table is the architecture. */
class ArrowsTest {
  private static final Set<String> LEDGER = Set.of("ledger", "finding", "value");
  private static final Map<String, Set<String>> MAY_USE =
      Map.ofEntries(
          entry("value", Set.of()),
          entry("numbers", Set.of()),
          entry("mechanics", Set.of("numbers")),
          entry("finding", Set.of("value")),
          entry("yaml", Set.of("finding", "value")),
          entry("ledger", Set.of("yaml", "finding", "value")),
          feature("spending"),
          feature("kit", "network"), // what work keeps until it has ended
          feature("weather"),
          feature("network", "weather", "numbers"),
          feature("assessment", "mechanics"),
          feature("substitution", "assessment", "network"),
          feature("takeoff"),
          feature("shortage", "kit", "substitution", "network", "weather", "takeoff"),
          feature("claim", "kit", "shortage", "spending"),
          feature("money", "shortage", "network", "substitution", "claim", "spending", "numbers"),
          feature("loan", "network"),
          feature("cutting", "kit", "network", "spending", "numbers"), // whether the work has ended
          feature(
              "openmatter",
              "shortage",
              "claim",
              "substitution",
              "takeoff",
              "loan",
              "network",
              "kit",
              "money",
              "weather",
              "assessment"),
          feature("choice", before("choice")),
          feature("daybook", before("daybook")),
          entry("check", union(LEDGER, Set.of(before("check")))),
          entry("drawing", Set.of("value")),
          entry("document", Set.of("value", "finding")),
          entry("privacy", union(LEDGER, Set.of("document"))),
          entry(
              "report",
              union(
                  LEDGER,
                  Set.of(before("report")),
                  Set.of("document", "drawing", "history", "privacy"))),
          entry("edit", union(LEDGER, Set.of("yaml", "report"), Set.of(before("edit")))),
          entry("history", union(LEDGER, Set.of(before("history")))),
          entry("cli", Set.of(everything())));

  private static final Map<String, Set<String>> SUB_ROOMS =
      Map.ofEntries(
          inside("cutting.solve", "numbers"),
          inside("cutting.saw"),
          inside("cutting.verify", "cutting.saw", "ledger", "value"),
          inside("assessment.sheet", "ledger", "finding", "value", "mechanics.beam"),
          inside(
              "assessment.material",
              "assessment.sheet",
              "ledger",
              "finding",
              "value",
              "mechanics.beam",
              "mechanics.laminate",
              "mechanics.scatter",
              "mechanics.timber"),
          inside(
              "assessment.part",
              "assessment.material",
              "assessment.sheet",
              "ledger",
              "finding",
              "value",
              "mechanics.beam",
              "mechanics.laminate"),
          inside(
              "assessment.method",
              "assessment.part",
              "assessment.material",
              "assessment.sheet",
              "ledger",
              "value",
              "mechanics.beam",
              "mechanics.column",
              "mechanics.laminate",
              "mechanics.load",
              "mechanics.panel",
              "mechanics.timber"),
          inside(
              "assessment.joint",
              "assessment.method",
              "assessment.part",
              "assessment.material",
              "assessment.sheet",
              "ledger",
              "finding",
              "value",
              "mechanics.beam",
              "mechanics.fastener",
              "mechanics.scatter",
              "mechanics.load"));

  private static final Map<String, Set<String>> DOCUMENTS =
      Map.ofEntries(
          inside("report.words"),
          inside("report.writing"),
          inside("report.photo"),
          inside("report.ahead", "report.words"),
          inside("report.budget", "report.words"),
          inside("report.claim", "report.words"),
          inside("report.past", "report.words"),
          inside("report.stores", "report.words"),
          inside("report.strength", "report.words"),
          inside("report.week", "report.words"));

  private static JavaClasses all;

  @BeforeAll
  static void readTheClasses() {
    all =
        new ClassFileImporter()
            .withImportOption(new DoNotIncludeTests())
            .importPackages("kitwright");
  }

  private static Map.Entry<String, Set<String>> feature(String room, String... others) {
    return entry(room, union(LEDGER, Set.of(others)));
  }

  private static Map.Entry<String, Set<String>> inside(String room, String... others) {
    return entry(room, Set.of(others));
  }

  private static String[] features() {
    return new String[] {
      "spending",
      "kit",
      "weather",
      "network",
      "assessment",
      "mechanics",
      "substitution",
      "takeoff",
      "shortage",
      "claim",
      "money",
      "loan",
      "cutting",
      "openmatter",
      "choice",
      "daybook"
    };
  }

  /** The features that stand above a room in the list; all of them for what tells and does. */
  private static String[] before(String room) {
    return Stream.of(features()).takeWhile(feature -> !feature.equals(room)).toArray(String[]::new);
  }

  private static String[] everything() {
    return Stream.concat(
            Stream.of(features()),
            Stream.of(
                "check",
                "drawing",
                "document",
                "report",
                "edit",
                "history",
                "ledger",
                "yaml",
                "finding",
                "value"))
        .toArray(String[]::new);
  }

  @SafeVarargs
  @SuppressWarnings("varargs") // the array is only read
  private static Set<String> union(Set<String>... sets) {
    Set<String> union = new HashSet<>();
    for (Set<String> set : sets) {
      union.addAll(set);
    }
    return Set.copyOf(union);
  }

  @Test
  void everyRoomStandsInTheTable() {
    assertThat(MAY_USE.keySet()).isEqualTo(rooms());
    assertThat(all.size()).as("classes seen").isGreaterThan(100);
  }

  @Test
  void everyPackageIsNullMarked() {
    Set<String> unmarked =
        all.stream()
            .map(JavaClass::getPackage)
            .filter(room -> !room.isAnnotatedWith(NullMarked.class))
            .map(room -> room.getName())
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(unmarked).isEmpty();
  }

  @Test
  void roomsUseOnlyWhatTheirLineNames() {
    MAY_USE.forEach(
        (room, others) ->
            classes()
                .that()
                .resideInAPackage("kitwright." + room + "..")
                .should()
                .onlyDependOnClassesThat(
                    describe(
                        "stand in " + room + " or " + others,
                        used -> {
                          String of = room(used);
                          return of.isEmpty() || of.equals(room) || others.contains(of);
                        }))
                .allowEmptyShould(true)
                .check(all));
  }

  /**
   * Inside a room that has rooms of its own: which of them uses which, no arrow more and none less.
   * Documents may use what the line of {@code report} names; of one another they know the words.
   * The search for cuts is pure, and the second look at a plan shares nothing with it.
   */
  @Test
  void subRoomsUseWhatTheirLineNames() {
    assertThat(union(SUB_ROOMS.keySet(), DOCUMENTS.keySet()))
        .isEqualTo(
            all.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> name.matches("kitwright\\.(assessment|cutting|report)\\..*"))
                .map(name -> name.substring("kitwright.".length()))
                .collect(Collectors.toSet()));
    SUB_ROOMS.forEach(
        (room, others) -> assertThat(usedBy("kitwright." + room)).as(room).isEqualTo(others));
    DOCUMENTS.forEach(
        (room, others) ->
            assertThat(usedBy("kitwright." + room))
                .as(room)
                .filteredOn(each -> each.startsWith("report"))
                .containsExactlyInAnyOrderElementsOf(others));
  }

  private static Set<String> usedBy(String room) {
    return all.stream()
        .filter(each -> each.getPackageName().equals(room))
        .flatMap(each -> each.getDirectDependenciesFromSelf().stream())
        .map(each -> each.getTargetClass().getBaseComponentType().getPackageName())
        .filter(name -> name.startsWith("kitwright.") && !name.equals(room))
        .map(name -> name.substring("kitwright.".length()))
        .collect(Collectors.toSet());
  }

  @Test
  void librariesAreKnownOnlyWhereTheyAreNeeded() {
    onlyIn("yaml", "org.yaml.snakeyaml..");
    onlyIn("document", "org.commonmark..", "report");
    onlyIn("cli", "picocli..");
    onlyIn("cutting", "org.ojalgo..");
  }

  private static void onlyIn(String room, String library, String... others) {
    String[] rooms =
        Stream.concat(Stream.of(room), Stream.of(others))
            .map(each -> "kitwright." + each + "..")
            .toArray(String[]::new);
    noClasses()
        .that()
        .resideOutsideOfPackages(rooms)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(all);
  }

  private static Set<String> rooms() {
    return all.stream()
        .map(ArrowsTest::room)
        .filter(room -> !room.isEmpty())
        .collect(Collectors.toSet());
  }

  private static String room(JavaClass used) {
    String name = used.getPackageName();
    return name.startsWith("kitwright.")
        ? name.substring("kitwright.".length()).split("\\.")[0]
        : "";
  }
}
