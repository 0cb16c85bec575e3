package kitwright.report.claim;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import kitwright.choice.Timing;
import kitwright.choice.Wait;
import kitwright.claim.ClaimStanding;
import kitwright.claim.Line;
import kitwright.ledger.Facts;
import kitwright.ledger.Shortage;
import kitwright.report.words.Say;
import kitwright.value.Days;
import kitwright.value.Ref;
import kitwright.value.Word;

/** What the work loses while a claim waits for its answer, for the letter to the supplier. */
public final class WaitingCost {
  private WaitingCost() {}

  /**
   * A sentence a shortage whose wait holds work; empty where the claim is closed or nothing waits.
   */
  public static String of(ClaimStanding claim, Facts now) {
    if (claim.settled().isPresent() || claim.lines().stream().noneMatch(WaitingCost::isOpen)) {
      return "";
    }
    List<String> sentences = new ArrayList<>();
    for (Line line : claim.lines()) {
      Shortage shortage = line.shortage().shortage();
      Ref ref = new Ref(shortage.id(), shortage.at().record());
      if (isOpen(line)) {
        Wait.of(now, ref).ifPresent(wait -> sentences.addAll(sentences(wait, line)));
      }
    }
    return String.join(" ", new LinkedHashSet<>(sentences));
  }

  private static boolean isOpen(Line line) {
    return line.shortage().isOpen();
  }

  private static List<String> sentences(Wait wait, Line line) {
    List<String> sentences = new ArrayList<>();
    wait.timing().flatMap(timing -> sentence(timing, line)).ifPresent(sentences::add);
    wait.neededBy()
        .ifPresent(
            day ->
                sentences.add(
                    Word.capital(what(line))
                        + " is needed by "
                        + Say.day(day)
                        + ", so that the end of our work does not move."));
    return sentences;
  }

  private static String what(Line line) {
    return ShortagesReport.what(line.shortage());
  }

  private static Optional<String> sentence(Timing timing, Line line) {
    String held = timing.held().filter(each -> each.days() > 0).map(WaitingCost::held).orElse("");
    String end =
        timing
            .launch()
            .filter(day -> day.later() > 0)
            .map(day -> "the end of our work moves by " + Days.told(day.later()))
            .orElse("");
    if (held.isEmpty() && end.isEmpty()) {
      return Optional.empty();
    }
    String both = held.isEmpty() ? end : end.isEmpty() ? held : held + ", and " + end;
    return Optional.of("While we wait for " + what(line) + ", " + both + ".");
  }

  private static String held(Timing.Held held) {
    return "the work “" + held.what() + "” is held up by " + Days.told(held.days());
  }
}
