package kitwright.house;

import static com.tngtech.archunit.lang.conditions.ArchPredicates.are;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Clock, terminal, files and state stay at the edge. */
class EdgeTest {
  private static JavaClasses all;

  @BeforeAll
  static void readTheClasses() {
    all =
        new ClassFileImporter()
            .withImportOption(new DoNotIncludeTests())
            .importPackages("kitwright");
  }

  @Test
  void onlyTheCommandLineKnowsTheClock() {
    DescribedPredicate<JavaCall<?>> now =
        DescribedPredicate.describe(
            "a now of java.time",
            call ->
                call.getTargetOwner().getPackageName().equals("java.time")
                    && call.getName().equals("now"));
    noClasses()
        .that()
        .resideOutsideOfPackage("kitwright.cli..")
        .should()
        .callMethodWhere(now)
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .check(all);
  }

  @Test
  void onlyTheCommandLineKnowsTheTerminal() {
    noClasses()
        .that()
        .resideOutsideOfPackage("kitwright.cli..")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .accessField(System.class, "in")
        .check(all);
  }

  @Test
  void onlyLoaderWriterEditorAndHistoryTouchFiles() {
    noClasses()
        .that()
        .resideOutsideOfPackages(
            "kitwright.cli..",
            "kitwright.ledger..",
            "kitwright.report..",
            "kitwright.edit..",
            "kitwright.history..")
        .should()
        .dependOnClassesThat(are(filesClass()))
        .check(all);
  }

  private static DescribedPredicate<com.tngtech.archunit.core.domain.JavaClass> filesClass() {
    return DescribedPredicate.describe(
        "java.nio.file.Files",
        used ->
            used.getFullName().equals("java.nio.file.Files")
                || used.getFullName().equals("java.io.File"));
  }

  @Test
  void noStaticFieldCanBeReplaced() {
    fields().that().areStatic().should().beFinal().check(all);
    assertThat(all.size()).as("classes seen").isGreaterThan(100);
  }
}
