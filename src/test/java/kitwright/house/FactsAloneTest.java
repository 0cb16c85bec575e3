package kitwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import org.junit.jupiter.api.Test;

/** Every fact can be asked alone and first: none waits for another to have been asked before. */
class FactsAloneTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 29);

  @Test
  void everyFactIsWorkedOutAloneAndFirst() throws ReflectiveOperationException {
    Ledger empty = Sample.ledger("rates: []\n");
    Ledger demonstration = LedgerFolder.at(Path.of("ledger")).read(new Findings()).orElseThrow();
    List<Method> facts = facts();
    for (Method fact : facts) {
      for (Ledger ledger : List.of(empty, demonstration)) {
        assertThat(fact.invoke(null, Facts.of(ledger, DAY))).as(fact.toString()).isNotNull();
        assertThat(fact.invoke(null, Facts.of(ledger, DAY.minusDays(40)))).isNotNull();
      }
    }
    assertThat(facts).hasSizeGreaterThan(12);
  }

  @Test
  void aFactIsTheSameHoweverOftenItIsAsked() throws ReflectiveOperationException {
    Facts day = Facts.of(Sample.ledger("rates: []\n"), DAY);
    for (Method fact : facts()) {
      assertThat(fact.invoke(null, day)).as(fact.toString()).isSameAs(fact.invoke(null, day));
    }
  }

  /** The methods {@code X.on(Facts)} of the classes that hold a fact. */
  private static List<Method> facts() throws ClassNotFoundException {
    List<Method> all = new ArrayList<>();
    for (JavaClass each :
        new ClassFileImporter()
            .withImportOption(new DoNotIncludeTests())
            .importPackages("kitwright")) {
      if (each.getAllFields().stream()
          .anyMatch(field -> field.getRawType().isEquivalentTo(Facts.Fact.class))) {
        for (Method method : Class.forName(each.getName()).getDeclaredMethods()) {
          if (method.getName().equals("on")
              && Modifier.isStatic(method.getModifiers())
              && List.of(method.getParameterTypes()).equals(List.of(Facts.class))) {
            method.setAccessible(true);
            all.add(method);
          }
        }
      }
    }
    return all;
  }
}
