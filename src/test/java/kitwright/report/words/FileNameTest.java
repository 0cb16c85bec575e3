package kitwright.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** No two ids of a ledger make one file. */
class FileNameTest {
  private static List<String> names(String... ids) {
    List<String> all = List.of(ids);
    return all.stream().map(id -> FileName.of(id, all)).toList();
  }

  @Test
  void anIdThatMayBeAFileNameIsOne() {
    assertThat(names("first", "zweite-Kiste_2.b")).containsExactly("first", "zweite-Kiste_2.b");
  }

  @Test
  void signsThatNoFileNameMayHoldBecomeHyphens() {
    assertThat(names("d/1", "e:\\2")).containsExactly("d-1", "e--2");
  }

  @Test
  void idsThatDifferInSuchASignOnlyHaveFilesOfTheirOwn() {
    assertThat(names("d/1", "d:1", "d-1")).containsExactly("d-1-2", "d-1-3", "d-1");
    assertThat(names("d/1", "d:1")).containsExactly("d-1", "d-1-2");
  }

  @Test
  void capitalsTellNoFilesApartOnEveryDisk() {
    assertThat(names("Kiste", "kiste")).containsExactly("Kiste", "kiste-2");
  }

  @Test
  void aNumberThatAnotherIdHasIsPassedOver() {
    List<String> names = names("d/1", "d:1", "d-1-2");
    assertThat(names.stream().map(name -> name.toLowerCase(Locale.ROOT)).distinct()).hasSize(3);
    assertThat(names).contains("d-1-2");
  }

  @Test
  void theOrderInTheFilesChangesNoName() {
    List<String> ids = new ArrayList<>(List.of("a/b", "a:b", "a b", "a-b"));
    List<String> before = ids.stream().map(id -> FileName.of(id, ids)).toList();
    List<String> turned = new ArrayList<>(ids);
    Collections.reverse(turned);
    assertThat(ids.stream().map(id -> FileName.of(id, turned))).isEqualTo(before);
  }
}
