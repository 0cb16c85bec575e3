package kitwright.network;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Build;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.value.Days;

/** Fires where two stretches of days off share a day. */
public final class DaysOffOverlap implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    Build build = day.ledger().build();
    List<Days> off =
        build.off().stream()
            .map(Build.Off::days)
            .sorted(Comparator.comparing(Days::first))
            .toList();
    Days longest = off.isEmpty() ? new Days(LocalDate.MIN, LocalDate.MIN) : off.get(0);
    for (Days each : off.stream().skip(1).toList()) {
      if (longest.overlaps(each)) {
        out.add(finding(build, longest, each));
      }
      longest = each.last().isAfter(longest.last()) ? each : longest;
    }
  }

  private Finding finding(Build build, Days one, Days other) {
    return note(
        build.at().of("off"),
        "The days off " + one.named() + " and " + other.named() + " overlap.",
        "Each day counts once, so that no date is false; but one of the two may be a slip.",
        "Write them as one stretch, or correct the day that is wrong.",
        List.of(build.named()));
  }
}
