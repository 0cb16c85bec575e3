package kitwright.assessment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.assessment.sheet.Judgement;
import kitwright.assessment.sheet.Verdict;
import kitwright.ledger.Assessment;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Ledger;
import kitwright.value.Decimal;
import kitwright.value.Ref;

/**
 * Judges an assessment that was worked out elsewhere: by whom, when, its numbers, and the document
 * that shows them. The numbers are compared with what the assessment itself requires and allows;
 * whether they are right is the signer's to judge.
 */
public final class External {
  private External() {}

  /** Fails where a number misses its limit; cannot tell where something is lacking. */
  public static Verdict verdict(Assessment assessment, Ledger ledger) {
    Map<String, BigDecimal> numbers = byName(assessment.numbers());
    List<String> failing = new ArrayList<>();
    List<String> lacking = lacking(assessment, ledger);
    assessment
        .require()
        .forEach((name, least) -> compare(name, "at least", least, -1, numbers, failing, lacking));
    assessment
        .allow()
        .forEach((name, most) -> compare(name, "at most", most, 1, numbers, failing, lacking));
    if (!failing.isEmpty()) {
      return Verdict.fail(failing);
    }
    return lacking.isEmpty() ? Verdict.pass() : Verdict.cannotTell(lacking);
  }

  /** The verdict as a result without figures of our own. */
  static Result result(Assessment assessment, Ledger ledger) {
    return Result.without(assessment, verdict(assessment, ledger));
  }

  private static List<String> lacking(Assessment assessment, Ledger ledger) {
    List<String> lacking = new ArrayList<>();
    if (assessment.by().isEmpty()) {
      lacking.add("it does not say who worked it out (“by”)");
    }
    if (assessment.on().isEmpty()) {
      lacking.add("it does not say when (“on”)");
    }
    if (assessment.require().isEmpty() && assessment.allow().isEmpty()) {
      lacking.add("it requires nothing (“require”)");
    } else if (Judgement.asksOfNoLoad(assessment)) {
      lacking.add(Judgement.NO_STRENGTH);
    }
    if (assessment.evidence().isEmpty()) {
      lacking.add("it names no document (“evidence”)");
    }
    assessment.evidence().stream()
        .filter(piece -> !isThere(piece, ledger))
        .forEach(piece -> lacking.add("its document “" + piece.file() + "” is not there"));
    return lacking;
  }

  private static boolean isThere(Evidence piece, Ledger ledger) {
    return ledger.evidence(piece).state() == EvidenceFile.State.PRESENT;
  }

  private static Map<String, BigDecimal> byName(Map<Ref, BigDecimal> numbers) {
    Map<String, BigDecimal> all = new HashMap<>();
    numbers.forEach((name, number) -> all.put(name.id(), number));
    return all;
  }

  /**
   * @param wrongSide the sign of number minus limit that misses it
   */
  private static void compare(
      Ref name,
      String side,
      BigDecimal limit,
      int wrongSide,
      Map<String, BigDecimal> numbers,
      List<String> failing,
      List<String> lacking) {
    BigDecimal number = numbers.get(name.id());
    if (number == null) {
      lacking.add("it gives no number for " + name);
    } else if (number.compareTo(limit) == wrongSide) {
      failing.add(
          name
              + " is "
              + Decimal.print(number)
              + ", where "
              + side
              + " "
              + Decimal.print(limit)
              + " is required");
    }
  }
}
