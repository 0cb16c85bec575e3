package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.finding.Findings;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExportTest {
  private static final Ledger DUNLIN =
      LedgerFolder.at(Path.of("ledger")).read(new Findings()).orElseThrow();

  static Stream<String> tables() {
    return Export.tables().stream();
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyTableHasTheSameColumnsInEachRowAndInBothForms(String table) {
    Export export = Export.of(DUNLIN, table);
    List<Csv.Row> csv = Csv.rows(export.csv(), ',');
    List<String> header = csv.get(0).cells();
    assertThat(header).doesNotHaveDuplicates().startsWith("ledger", "record");
    List<JsonNode> lines = export.jsonLines().lines().map(YamlAsJson::parsed).toList();
    assertThat(lines).hasSize(csv.size() - 1);
    for (int i = 0; i < lines.size(); i++) {
      assertThat(csv.get(i + 1).cells()).hasSameSizeAs(header);
      TreeSet<String> names = new TreeSet<>();
      lines.get(i).fieldNames().forEachRemaining(names::add);
      assertThat(names).containsExactlyInAnyOrderElementsOf(header);
    }
  }

  @Test
  void amountsAreNumbersWithTheirUnitBesideThem() {
    Ledger ledger =
        Sample.ledger(
            """
            budget: [{line: a, title: '=1+1', amount: 40, remaining: [5, 10, 20]}]
            kit: [{id: b, what: 'bolt, M12', qty: 4 m, price: 1.50 NZD/m}]
            """);
    assertThat(Export.of(ledger, "budget").csv())
        .isEqualTo(
            "ledger,record,line,title,amount,amount.currency,remaining.low,remaining.likely,"
                + "remaining.high,remaining.currency,together\r\n"
                + "Sample,a,a,'=1+1,40,EUR,5,10,20,EUR,\r\n");
    assertThat(Export.of(ledger, "kit").csv())
        .contains("Sample,b,b,\"bolt, M12\",4,m,,,1.5,NZD,m,");
    assertThat(Export.of(ledger, "kit").jsonLines())
        .contains("\"qty\":4,\"qty.unit\":\"m\"")
        .contains("\"crate\":null");
  }
}
