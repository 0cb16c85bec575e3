package kitwright.substitution;

import java.util.List;
import java.util.Optional;
import kitwright.assessment.Assessments;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;

/**
 * Fires where figures come out otherwise now than the signer saw, though nothing signed changed.
 */
public final class SignedResultsDiffer implements Rule {
  @Override
  public void examine(Facts day, Findings out) {
    for (SubstitutionStanding standing : SubstitutionStandings.on(day).all()) {
      Optional<Seen> now =
          standing
              .substitution()
              .assessment()
              .flatMap(ref -> Assessments.on(day).of(ref.id()))
              .map(Seen::of);
      if (!standing.isWithdrawn() && now.isPresent()) {
        standing.signatures().stream()
            .filter(signature -> !signature.lacks().contains(Lack.STALE))
            .forEach(signature -> examine(standing, signature, now.get(), out));
      }
    }
  }

  private void examine(SubstitutionStanding standing, Signature signature, Seen now, Findings out) {
    List<String> moved = Seen.of(signature.signOff()).map(saw -> saw.moved(now)).orElse(List.of());
    if (!moved.isEmpty()) {
      out.add(
          note(
              signature.signOff().at().of("saw"),
              "Under "
                  + standing.substitution().id()
                  + " the signer saw other figures than come out now: "
                  + String.join("; ", moved)
                  + ".",
              "Nothing signed has changed, so the signature stands; this program works them out"
                  + " otherwise.",
              "Tell the signer when you next write. Do not change what was seen.",
              List.of(standing.substitution().named())));
    }
  }
}
