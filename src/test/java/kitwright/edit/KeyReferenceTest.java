package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.ledger.Kind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class KeyReferenceTest {
  @ParameterizedTest
  @EnumSource(Kind.class)
  void everyKindHasItsSection(Kind kind) {
    assertThat(KeyReference.page()).contains("\n## " + kind.key() + "\n");
    assertThat(KeyReference.of(kind)).startsWith("## " + kind.key() + "\n");
  }
}
