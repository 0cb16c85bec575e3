package kitwright.kit;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/** Fires where more pieces of a count are damaged or wrong than were found at all. */
public final class CountContradictory implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (Position position : Positions.on(day).all()) {
      if (position.sentBack().compareAmount(position.counted()) > 0) {
        out.add(sentBack(position));
      }
      position.counts().stream()
          .filter(count -> count.noGood().compareAmount(count.found()) > 0)
          .forEach(count -> out.add(finding(position, count)));
    }
  }

  private Finding sentBack(Position position) {
    SentBack last = position.back().get(position.back().size() - 1);
    return stop(
        last.at(),
        "With this, "
            + position.sentBack().told(position.item().id())
            + " are said to have gone back, but only "
            + position.counted().told()
            + " were ever counted.",
        "What is here is told as nothing, and what is missing as more than it is.",
        "Correct what went back, or count the delivery that it came in.",
        List.of(last.delivery().named(), position.item().named()));
  }

  private Finding finding(Position position, Count count) {
    return stop(
        count.at(),
        "Found: "
            + count.found().told(position.item().id())
            + "; of these "
            + count.damaged().told()
            + " are said to be damaged and "
            + count.wrong().told()
            + " wrong"
            + (count.undersize().isNone() ? "" : ", and " + count.undersize().told() + " undersize")
            + ".",
        "The good ones come out below nothing, so the count is taken as none good.",
        "“qty” is everything found, good or not; put the damaged and the wrong ones into it.",
        List.of(count.delivery().named(), position.item().named()));
  }
}
