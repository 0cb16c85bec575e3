package kitwright.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import kitwright.Sample;
import kitwright.assessment.sheet.Measure;
import kitwright.assessment.sheet.Row;
import kitwright.ledger.Facts;

/** The first assessment of a small ledger, as its sheet tells it. */
record Assessed(Result result) {
  static Assessed of(String yaml) {
    return new Assessed(Assessments.on(Facts.of(Sample.ledger(yaml), Sample.TODAY)).all().get(0));
  }

  Row row(Measure measure) {
    return result.rows().stream().filter(r -> r.measure() == measure).findFirst().orElseThrow();
  }

  double built(Measure measure) {
    return row(measure).built().orElseThrow().value();
  }

  double designed(Measure measure) {
    return row(measure).designed().orElseThrow().value();
  }

  Assessed passes() {
    assertThat(result.verdict().because()).isEmpty();
    assertThat(result.verdict().passes()).isTrue();
    return this;
  }
}
