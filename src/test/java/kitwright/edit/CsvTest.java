package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RFC 4180, section 2: the examples of its seven definitions. */
class CsvTest {
  @Test
  void theExamplesOfTheStandardAreRead() {
    assertThat(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"))
        .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    assertThat(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx")).hasSize(2);
    assertThat(cells("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"))
        .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    assertThat(cells("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"))
        .containsExactly(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    assertThat(cells("\"aaa\",\"b\"\"bb\",\"ccc\""))
        .containsExactly(List.of("aaa", "b\"bb", "ccc"));
  }

  @Test
  void aRowWrittenIsReadAgain() {
    List<String> row = List.of("a", "b,c", "d\"e", "f\r\ng", "", " h ");
    assertThat(cells(Csv.row(row))).containsExactly(row);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {"a;b;c ! ;", "a,b ! ','", "'a;b',c,d ! ','", "a|b ! |"})
  void theDelimiterIsFound(String header, String delimiter) {
    assertThat(Csv.delimiter(header.replace("'", "\""))).isEqualTo(delimiter.charAt(0));
  }

  @Test
  void textsAreDecodedAsTheyAreSent() {
    for (Charset charset :
        List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16, Charset.forName("windows-1252"))) {
      assertThat(Csv.decoded("Größe;5 €".getBytes(charset)))
          .as(charset.name())
          .isEqualTo("Größe;5 €");
    }
  }

  @ParameterizedTest
  @CsvSource({"=1+1, '''=1+1'", "+49 30, '''+49 30'", "@SUM, '''@SUM'", "plank, plank"})
  void whatBeginsAFormulaIsMadeHarmless(String text, String written) {
    assertThat(Csv.harmless(text)).isEqualTo(written);
  }

  private static List<List<String>> cells(String text) {
    return Csv.rows(text, ',').stream().map(Csv.Row::cells).toList();
  }
}
