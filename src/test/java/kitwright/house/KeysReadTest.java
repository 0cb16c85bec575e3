package kitwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A key that a builder writes is read by something other than its declaration: what is asked for
 * and never told would be a lie.
 */
class KeysReadTest {
  /**
   * Its keeping follows from the declaration: files are hashed, places are told of with a fault.
   */
  private static final Set<String> BY_THEMSELVES = Set.of("kitwright.ledger.At");

  @Test
  void everyKeyThatIsDeclaredIsReadBySomething() {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("kitwright");
    List<String> unread =
        classes.stream()
            .filter(each -> each.getPackageName().equals("kitwright.ledger"))
            .filter(KeysReadTest::isDeclared)
            .flatMap(each -> unread(each))
            .sorted()
            .toList();
    assertThat(unread).isEmpty();
  }

  private static boolean isDeclared(JavaClass each) {
    return each.isRecord()
        && each.getMethods().stream()
            .anyMatch(
                method ->
                    method.getName().equals("read")
                        && method.getRawParameterTypes().stream()
                            .anyMatch(type -> type.getSimpleName().equals("Keys")));
  }

  private static Stream<String> unread(JavaClass declared) {
    return declared.getFields().stream()
        .filter(field -> !field.getModifiers().toString().contains("STATIC"))
        .filter(field -> !BY_THEMSELVES.contains(field.getRawType().getName()))
        .filter(field -> !isRead(declared, field))
        .map(field -> declared.getSimpleName() + "." + field.getName());
  }

  private static boolean isRead(JavaClass declared, JavaField field) {
    JavaMethod told = declared.getMethod(field.getName());
    return !told.getCallsOfSelf().isEmpty()
        || !told.getReferencesToSelf().isEmpty()
        || field.getAccessesToSelf().stream()
            .map(JavaAccess::getOrigin)
            .anyMatch(origin -> !origin.equals(told) && !origin.isConstructor());
  }
}
