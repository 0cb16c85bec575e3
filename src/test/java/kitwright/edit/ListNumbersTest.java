package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import kitwright.value.Misread;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A full stop or a comma may part thousands only where the list itself leaves that open. */
class ListNumbersTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // the list's other numbers | what parts its cells, which of a workbook is a comma | told
        "12,5 m        | , | 1250, else 1,2500",
        "1.204,50      | , | 1250, else 1,2500",
        "0,25 kg       | , | 1250, else 1,2500",
        "12.5 m        | , | clear",
        "1,204.50      | , | clear",
        "1,204,500     | , | clear",
        "7             | , | clear",
        "7             | ; | 1250, else 1,2500",
        "12.5 m        | ; | clear",
        "1.500         | ; | 1250, else 1,2500",
        "plank, larch  | ; | 1250, else 1,2500",
      })
  void aThousandIsNotTakenForOneAndAQuarter(String other, String parted, String told) {
    List<Csv.Row> rows = new ArrayList<>();
    rows.add(new Csv.Row(2, List.of("K1", other.strip())));
    rows.add(new Csv.Row(3, List.of("K2", "1.250 kg")));
    rows.add(new Csv.Row(4, List.of("too short")));
    ListNumbers numbers = ListNumbers.of(rows, Set.of(1), parted.strip().charAt(0));
    assertThat(told(numbers, "1.250 kg")).isEqualTo(told.strip());
    assertThat(told(numbers, "1.25 kg")).isEqualTo("clear");
    assertThat(told(numbers, "0.250 kg")).isEqualTo("clear");
    assertThat(told(numbers, "1234.567")).isEqualTo("clear");
  }

  private static String told(ListNumbers numbers, String cell) {
    try {
      numbers.requireClear(cell);
      return "clear";
    } catch (Misread open) {
      return open.mend().replace("write ", "").replace(" if thousands are meant", "");
    }
  }
}
