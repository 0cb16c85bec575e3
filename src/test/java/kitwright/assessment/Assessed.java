package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.ledger.Facts;

/** The first assessment of a small ledger, as its sheet tells it. */
public record Assessed(Result result) {
  public static Assessed of(String yaml) {
    return new Assessed(Assessments.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)).all().get(0));
  }

  public Row row(Measure measure) {
    return result.rows().stream().filter(r -> r.measure() == measure).findFirst().orElseThrow();
  }

  public double built(Measure measure) {
    return row(measure).built().orElseThrow().value();
  }

  public double designed(Measure measure) {
    return row(measure).designed().orElseThrow().value();
  }

  public Assessed passes() {
    assertThat(result.verdict().because()).isEmpty();
    assertThat(result.verdict().passes()).isTrue();
    return this;
  }
}
