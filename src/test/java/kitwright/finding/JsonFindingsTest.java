package kitwright.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonFindingsTest {
  private static final Examination MARCH =
      new Examination("0.1.0", LocalDate.of(2026, 3, 2), "dunlin");

  @Test
  void everyPartOfAFindingHasItsField() {
    assertThat(JsonFindings.render(MARCH, List.of(Samples.SHORT)))
        .isEqualTo(
            """
            {
              "kitwright": "0.1.0",
              "ledger": "dunlin",
              "today": "2026-03-02",
              "counts": {
                "stop": 1,
                "warn": 0,
                "note": 0
              },
              "findings": [
                {
                  "rule": "counted-short-unrecorded",
                  "severity": "stop",
                  "file": "crates/three.yaml",
                  "line": 8,
                  "column": 34,
                  "endLine": 8,
                  "endColumn": 38,
                  "message": "20 m of larch-plank were counted, 26 m were promised, and no shortage is recorded.",
                  "why": "The starboard planking needs the missing 6 m on 14 May and will stand still.",
                  "mend": "Record a shortage of 6 m, or correct the count.",
                  "records": [
                    "kit larch-plank",
                    "delivery crate-3"
                  ]
                }
              ]
            }
            """);
  }

  @Test
  void aWholeFileHasNoLine() {
    assertThat(JsonFindings.render(MARCH, List.of(Samples.WHOLE)))
        .contains("\"file\": \"log/friday.md\",\n      \"message\"")
        .contains("\"records\": []");
  }

  @Test
  void nothingFoundIsAnEmptyList() {
    assertThat(JsonFindings.render(MARCH, List.of())).endsWith("  \"findings\": []\n}\n");
  }

  @Test
  void hiddenCharactersAreEscaped() {
    assertThat(
            JsonFindings.render(new Examination("0", LocalDate.EPOCH, "a\u202eb\u009b"), List.of()))
        .contains("\"a\\u202eb\\u009b\"");
  }
}
