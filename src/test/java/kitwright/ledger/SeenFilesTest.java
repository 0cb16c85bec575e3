package kitwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.Sample;
import kitwright.finding.Findings;
import org.junit.jupiter.api.Test;

class SeenFilesTest {
  private static final EvidenceFile THERE =
      new EvidenceFile(EvidenceFile.State.PRESENT, Optional.of("0".repeat(64)));

  private final List<String> asked = new ArrayList<>();

  private Map<String, EvidenceFile> look(List<String> paths) {
    asked.addAll(paths);
    return Map.of("crate.jpg", THERE);
  }

  @Test
  void aFileIsLookedAtOnceAndNotBeforeItIsAskedFor() {
    SeenFiles files = new SeenFiles(this::look);
    assertThat(asked).isEmpty();
    assertThat(List.of(files.at("crate.jpg"), files.at("crate.jpg"))).containsOnly(THERE);
    assertThat(asked).containsExactly("crate.jpg");
    assertThat(files.at("gone.jpg").state()).isEqualTo(EvidenceFile.State.ABSENT);
  }

  @Test
  void aLedgerLooksAtAllOnlyWhereItIsTold() {
    String yaml =
        """
        kit: [{id: cleat, what: cleat, qty: 2}]
        shortages:
          - {id: s, item: cleat, qty: 1, found: 2026-02-01, cause: damaged, evidence: [crate.jpg]}
        """;
    SourceFile file =
        new SourceFile(
            "all.yaml", "build: {name: Sample, currency: EUR, started: 2026-01-05}\n" + yaml);
    Ledger ledger = LedgerReader.read(List.of(file), this::look, new Findings()).orElseThrow();
    assertThat(asked).isEmpty();
    ledger.lookAtEvidence();
    assertThat(asked).containsExactly("crate.jpg");
    assertThat(ledger.asOf(Sample.TODAY).evidence(ledger.shortages().get(0).evidence().get(0)))
        .isEqualTo(THERE);
    assertThat(asked).hasSize(1);
  }
}
