package kitwright.openmatter;

import java.util.List;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Substitution;
import kitwright.ledger.Task;
import kitwright.network.Plan;
import kitwright.substitution.Lack;
import kitwright.substitution.SubstitutionStanding;
import kitwright.substitution.SubstitutionStandings;

/** Substitutions that may not be built yet: assessments that fail, signatures that lack. */
final class SignatureMatters {
  private static final List<Lack> OF_ASSESSMENT =
      List.of(
          Lack.NO_ASSESSMENT,
          Lack.ASSESSMENT_FAILS,
          Lack.ASSESSMENT_OPEN,
          Lack.ASKS_TOO_LITTLE,
          Lack.ASSESSED_OTHERWISE,
          Lack.LIMIT_UNEXPLAINED);

  private final Facts now;
  private final Needed needed;

  SignatureMatters(Facts now, Needed needed) {
    this.now = now;
    this.needed = needed;
  }

  List<OpenMatter> all() {
    return SubstitutionStandings.on(now).all().stream()
        .filter(standing -> standing.state() == SubstitutionStanding.State.WAITING)
        .map(this::matter)
        .toList();
  }

  private OpenMatter matter(SubstitutionStanding standing) {
    Substitution substitution = standing.substitution();
    boolean assess = standing.lacks().stream().anyMatch(OF_ASSESSMENT::contains);
    boolean begun = standing.hold().begun().isPresent();
    return new OpenMatter(
        assess ? OpenMatter.Sort.ASSESSMENT : OpenMatter.Sort.SIGN_OFF,
        substitution.named(),
        standing.because() + (begun ? "; and the held work has begun" : ""),
        needed.of(stopped(standing)),
        assess ? "you" : standing.whoMaySign(),
        next(standing, assess),
        begun ? Optional.of(now.day()) : Optional.empty(),
        Optional.empty());
  }

  /**
   * The held task; where it is finished, what comes after it must not close the part up further;
   * where nobody knows which it is, all that it may be; where it names none, what it touches.
   */
  private List<String> stopped(SubstitutionStanding standing) {
    Substitution substitution = standing.substitution();
    if (substitution.hold().isEmpty()) {
      return SubstitutionStandings.on(now).touchedBy(standing).stream()
          .filter(Plan.on(now)::isOpen)
          .toList();
    }
    if (substitution.hold().filter(ref -> now.ledger().task(ref).isEmpty()).isPresent()) {
      return Plan.on(now).tasks().stream().map(Task::id).filter(Plan.on(now)::isOpen).toList();
    }
    List<String> held =
        substitution.hold().flatMap(ref -> Plan.on(now).task(ref.id())).stream()
            .map(Task::id)
            .toList();
    return held.stream().anyMatch(Plan.on(now)::isOpen) ? held : Plan.on(now).nextAfter(held);
  }

  private String next(SubstitutionStanding standing, boolean assess) {
    String stop =
        standing.hold().isBreached()
                && standing.hold().task().filter(ref -> Plan.on(now).isOpen(ref.id())).isPresent()
            ? "stop the held work, and "
            : "";
    if (standing.lacks(Lack.NO_ASSESSMENT)) {
      return stop + "have it assessed";
    }
    if (assess) {
      return stop + "strengthen it or its assessment until it passes, then have it signed";
    }
    if (standing.lacks(Lack.CONDITION_UNMET)) {
      return stop + "meet the condition, or ask the signer to change it";
    }
    return stop
        + "have "
        + (standing.lacks(Lack.STALE) ? "signed anew" : "signed")
        + " what “kitwright fingerprint "
        + standing.substitution().id()
        + " --statement” prints";
  }
}
