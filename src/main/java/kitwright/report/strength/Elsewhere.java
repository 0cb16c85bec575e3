package kitwright.report.strength;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Table;
import kitwright.ledger.Assessment;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Ledger;
import kitwright.value.Days;
import kitwright.value.Decimal;
import kitwright.value.Ref;

/** What an assessment says that was worked out elsewhere: who, when, numbers, limits, document. */
public final class Elsewhere {
  private Elsewhere() {}

  static boolean isSo(Assessment assessment) {
    return assessment.method() == Assessment.Method.EXTERNAL;
  }

  /** The whole of it, in blocks. */
  public static List<Block> blocks(Assessment assessment, Ledger ledger) {
    List<Inline> facts = new ArrayList<>();
    facts.add(
        Inline.text(
            "worked out by "
                + assessment.by().map(by -> ledger.nameOf(by.id())).orElse("nobody named")
                + ", "
                + assessment.on().map(Object::toString).orElse("on a day that nothing tells")));
    assessment.evidence().forEach(piece -> facts.add(document(piece, ledger)));
    if (assessment.evidence().isEmpty()) {
      facts.add(Inline.text("no document shows it"));
    }
    assessment.sources().forEach(source -> facts.add(Inline.text("source: " + source)));
    reasons(assessment, ledger).forEach(reason -> facts.add(Inline.text(reason)));
    return List.of(numbers(assessment), Block.bullets(facts));
  }

  private static Inline document(Evidence piece, Ledger ledger) {
    EvidenceFile found = ledger.evidence(piece);
    String state =
        found.sha256().isEmpty()
            ? ", which is not there"
            : piece.sha256().isEmpty()
                ? ", as it is now; no hash was recorded"
                : piece.sha256().equals(found.sha256())
                    ? ", as it was recorded"
                    : ", which was changed since it was recorded";
    return Inline.together(
        Inline.text("document: "),
        Inline.code(piece.file()),
        Inline.text(piece.says().map(says -> ", " + says).orElse("") + state));
  }

  /** A row a number or limit, by name. */
  static Table numbers(Assessment assessment) {
    TreeSet<String> names = new TreeSet<>();
    Stream.of(assessment.numbers(), assessment.require(), assessment.allow())
        .forEach(all -> all.keySet().forEach(name -> names.add(name.id())));
    return new Table(
        "Results",
        Column.columns(
            Column.head("Measure"),
            Column.right("Number"),
            Column.left("Asked"),
            Column.left("Verdict")),
        names.stream().map(name -> row(name, assessment)).toList());
  }

  private static Row row(String name, Assessment assessment) {
    Optional<BigDecimal> number = of(name, assessment.numbers());
    Optional<BigDecimal> least = of(name, assessment.require());
    Optional<BigDecimal> most = of(name, assessment.allow());
    List<String> asked = new ArrayList<>();
    least.ifPresent(limit -> asked.add("at least " + Decimal.print(limit)));
    most.ifPresent(limit -> asked.add("at most " + Decimal.print(limit)));
    return Row.row(
        Cell.text(name),
        number.map(value -> Cell.number(Decimal.print(value), value)).orElseGet(Cell::none),
        Cell.text(String.join(", ", asked)),
        Cell.text(verdict(number, least, most)));
  }

  private static String verdict(
      Optional<BigDecimal> number, Optional<BigDecimal> least, Optional<BigDecimal> most) {
    if (least.isEmpty() && most.isEmpty()) {
      return "";
    }
    if (number.isEmpty()) {
      return "cannot be told";
    }
    boolean met =
        least.filter(limit -> number.get().compareTo(limit) < 0).isEmpty()
            && most.filter(limit -> number.get().compareTo(limit) > 0).isEmpty();
    return met ? "passes" : "fails";
  }

  private static Optional<BigDecimal> of(String name, Map<Ref, BigDecimal> all) {
    return all.entrySet().stream()
        .filter(each -> each.getKey().id().equals(name))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** Why less than as drawn is asked, and who says that nothing structural depends on it. */
  static List<String> reasons(Assessment assessment, Ledger ledger) {
    List<String> reasons = new ArrayList<>();
    assessment
        .require()
        .forEach(
            (measure, limit) -> {
              if (limit.compareTo(BigDecimal.ONE) < 0) {
                reasons.add(
                    "of "
                        + measure.id()
                        + " only "
                        + Decimal.print(limit)
                        + " is asked: "
                        + because(measure, assessment).orElse("no reason is given"));
              }
            });
    assessment
        .notStructural()
        .ifPresent(
            said ->
                reasons.add(
                    "nothing structural depends on it, says "
                        + ledger.nameOf(said.by().id())
                        + " on "
                        + Days.named(said.on())
                        + ": "
                        + said.why()));
    return reasons;
  }

  private static Optional<String> because(Ref measure, Assessment assessment) {
    return assessment.lessBecause().entrySet().stream()
        .filter(each -> each.getKey().id().equals(measure.id()))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
