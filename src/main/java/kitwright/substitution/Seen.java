package kitwright.substitution;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kitwright.assessment.Result;
import kitwright.assessment.sheet.Row;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Assessment;
import kitwright.ledger.Substitution.SignOff;
import kitwright.value.Decimal;
import kitwright.value.Ref;

/**
 * What came out of an assessment, as a signer sees it below the statement and the sign-off keeps it
 * under {@code saw}. It is not part of what is sealed: where a later program works a figure out
 * otherwise, the signature stands and the difference is told.
 *
 * @param verdict {@code passes}, {@code fails} or {@code open}; empty where it was not kept
 * @param numbers what is held against each limit, by measure, to four figures
 */
record Seen(Optional<String> verdict, Map<String, BigDecimal> numbers) {
  private static final String VERDICT = "verdict";
  private static final MathContext FIGURES = new MathContext(4);

  Seen {
    numbers = Map.copyOf(numbers);
  }

  /** What comes out now. */
  static Seen of(Result result) {
    Map<String, BigDecimal> numbers = new TreeMap<>();
    if (result.assessment().method() == Assessment.Method.EXTERNAL) {
      result
          .assessment()
          .numbers()
          .forEach((name, number) -> numbers.put(name.id(), round(number)));
    }
    for (Row row : result.asked()) {
      row.compared()
          .ifPresent(
              number ->
                  numbers.merge(
                      row.measure().key(),
                      round(BigDecimal.valueOf(number)),
                      (a, b) -> isMost(row) ? a.max(b) : a.min(b)));
    }
    return new Seen(Optional.of(word(result.verdict())), numbers);
  }

  private static boolean isMost(Row row) {
    return row.limit().filter(limit -> limit.side() == Row.Limit.Side.AT_MOST).isPresent();
  }

  private static BigDecimal round(BigDecimal number) {
    return number.round(FIGURES);
  }

  /** What a sign-off keeps; empty where it keeps nothing. What is no number is passed over. */
  static Optional<Seen> of(SignOff signOff) {
    if (signOff.saw().isEmpty()) {
      return Optional.empty();
    }
    Map<String, BigDecimal> numbers = new TreeMap<>();
    Optional<String> verdict = Optional.empty();
    for (Map.Entry<Ref, String> each : signOff.saw().entrySet()) {
      if (each.getKey().id().equals(VERDICT)) {
        verdict = Optional.of(read(each.getValue().strip().toLowerCase(Locale.ROOT)));
      } else {
        number(each.getValue()).ifPresent(number -> numbers.put(each.getKey().id(), number));
      }
    }
    return Optional.of(new Seen(verdict, numbers));
  }

  private static Optional<BigDecimal> number(String text) {
    try {
      return Optional.of(Decimal.parse(text.strip()));
    } catch (kitwright.value.Misread none) {
      return Optional.empty();
    }
  }

  private static String word(Verdict verdict) {
    return switch (verdict.outcome()) {
      case PASS -> "passes";
      case FAIL -> "fails";
      case CANNOT_TELL -> "open";
    };
  }

  /** The page of the keys once showed it without its ending. */
  private static String read(String verdict) {
    return switch (verdict) {
      case "pass" -> "passes";
      case "fail" -> "fails";
      default -> verdict;
    };
  }

  /** Whether the verdict is another now. */
  boolean isTurned(Optional<Seen> now) {
    return verdict.isPresent() && !verdict.equals(now.flatMap(Seen::verdict));
  }

  /** Each number that has moved by more than a unit of its last figure, as a clause. */
  List<String> moved(Seen now) {
    List<String> moved = new ArrayList<>();
    new TreeMap<>(numbers)
        .forEach(
            (measure, then) -> {
              BigDecimal here = now.numbers.get(measure);
              if (here == null) {
                moved.add(measure + " was " + Decimal.print(then) + " and is not worked out now");
              } else if (here.subtract(then).abs().compareTo(lastFigure(then)) > 0) {
                moved.add(
                    measure + " was " + Decimal.print(then) + " and is " + Decimal.print(here));
              }
            });
    return moved;
  }

  /** One unit of the last of four figures. */
  private static BigDecimal lastFigure(BigDecimal number) {
    int places = FIGURES.getPrecision() - (number.precision() - number.scale());
    return BigDecimal.ONE.movePointLeft(places);
  }

  /** As a sign-off keeps it: {@code {verdict: passes, moment: 1.333}}. */
  String written() {
    String figures =
        new TreeMap<>(numbers)
            .entrySet().stream()
                .map(each -> ", " + each.getKey() + ": " + Decimal.print(each.getValue()))
                .collect(Collectors.joining());
    return "{verdict: " + verdict.orElse("open") + figures + "}";
  }
}
