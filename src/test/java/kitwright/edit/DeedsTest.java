package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import kitwright.ledger.Key;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is asked of each deed is declared with its record, and nowhere else. */
class DeedsTest {
  static Stream<Deed> deeds() {
    return Deeds.all().stream();
  }

  @ParameterizedTest
  @MethodSource("deeds")
  void everyKeyThatADeedNamesIsOneOfItsRecord(Deed deed) {
    List<String> keys = deed.keys().stream().map(Key::name).toList();
    assertThat(keys).containsAll(deed.given()).containsAll(deed.asked()).doesNotHaveDuplicates();
    for (String offered : deed.offered()) {
      assertThat(keys).contains(offered.split("\\.")[0]);
    }
    deed.fixed().keySet().forEach(fixed -> assertThat(keys).doesNotContain(fixed));
  }

  @ParameterizedTest
  @MethodSource("deeds")
  void itsExampleBeginsWithItsWord(Deed deed) {
    assertThat(deed.example()).startsWith("kitwright " + deed.word() + " ");
    assertThat(Deeds.named(deed.word())).contains(deed);
  }
}
