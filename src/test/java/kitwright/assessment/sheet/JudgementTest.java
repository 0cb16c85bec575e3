package kitwright.assessment.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import kitwright.Sample;
import kitwright.assessment.sheet.Row.Limit;
import kitwright.assessment.sheet.Verdict.Outcome;
import kitwright.ledger.Assessment;
import org.junit.jupiter.api.Test;

/** Nothing passes by not being there. */
class JudgementTest {
  private static final Assessment ASKS =
      Sample.ledger("assessments: [{id: a, method: section, require: {stiffness: 1}}]")
          .assessments()
          .get(0);

  private static Verdict verdict(Row... rows) {
    return judged(rows).verdict(List.of());
  }

  private static Judgement judged(Row... rows) {
    return new Judgement(
        ASKS, List.of(rows), new Inputs(Sources.of(ASKS), false), List.of(), List.of());
  }

  private static Row row(Optional<Figure> built, Optional<Limit> limit) {
    return new Row(Measure.STIFFNESS, Optional.of(Figure.of(1)), built, limit, List.of());
  }

  private static final Optional<Limit> ONE = Optional.of(new Limit(Limit.Side.AT_LEAST, 1));

  @Test
  void whatIsAskedAndIsThere() {
    assertThat(verdict(row(Optional.of(Figure.of(1)), ONE)).passes()).isTrue();
    assertThat(verdict(row(Optional.of(Figure.of(0.9)), ONE)).fails()).isTrue();
  }

  @Test
  void whatIsAskedAndHasNoNumberCannotBeTold() {
    Verdict verdict = verdict(row(Optional.empty(), ONE));
    assertThat(verdict.outcome()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(verdict.because()).isEqualTo("bending stiffness EI could not be worked out");
  }

  @Test
  void whereNothingThatIsAskedIsThereNothingPasses() {
    Verdict verdict = verdict(row(Optional.of(Figure.of(1)), Optional.empty()));
    assertThat(verdict.because()).isEqualTo("nothing that it asks could be worked out");
  }

  /** Closed is what nothing is lacking of: neither a number nor one that is asked at all. */
  @Test
  void nothingIsClosedThatIsNotThere() {
    assertThat(judged(row(Optional.of(Figure.of(1)), ONE)).isClosed()).isTrue();
    assertThat(judged(row(Optional.empty(), ONE)).isClosed()).isFalse();
    assertThat(judged(row(Optional.of(Figure.of(1)), Optional.empty())).isClosed()).isFalse();
    assertThat(judged().isClosed()).isFalse();
    assertThat(judged().verdict(List.of()).outcome()).isEqualTo(Outcome.CANNOT_TELL);
  }

  /** One number that is there does not make up for another that is not. */
  @Test
  void eachThatIsAskedIsThere() {
    Verdict verdict =
        verdict(
            row(Optional.of(Figure.of(1)), ONE),
            new Row(
                Measure.MASS,
                Optional.of(Figure.of(1)),
                Optional.empty(),
                Optional.of(new Limit(Limit.Side.AT_MOST, 1)),
                List.of()));
    assertThat(verdict.outcome()).isEqualTo(Outcome.CANNOT_TELL);
    assertThat(verdict.because()).isEqualTo("mass could not be worked out");
  }

  /** What is allowed is asked as well as what is required. */
  @Test
  void whatIsAllowedIsThereToo() {
    Assessment allows =
        Sample.ledger("assessments: [{id: a, method: section, allow: {deflection: 1}}]")
            .assessments()
            .get(0);
    Verdict verdict =
        new Judgement(
                allows,
                List.of(row(Optional.of(Figure.of(1)), Optional.empty())),
                new Inputs(Sources.of(allows), false),
                List.of(),
                List.of())
            .verdict(List.of());
    assertThat(verdict.because()).isEqualTo("nothing that it asks could be worked out");
  }
}
