package kitwright.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Substitution;
import kitwright.ledger.Substitution.SignOff;
import kitwright.network.Headways;

/**
 * When a sign-off came into Git: what its day says is what somebody typed, a commit that others
 * have fetched is harder to date back. Even a commit’s day is only what its maker’s clock said,
 * unless the commit is signed or was pushed to others that day.
 *
 * @param first the commit whose change first held the digits that it covers; empty where it is not
 *     committed yet, or covers nothing
 * @param signature whether that commit is signed, as git tells
 * @param signer whose key signed it, as git knows; empty where it does not
 * @param doubts what does not fit, in the order of weight
 */
public record Arrival(
    Substitution substitution,
    SignOff signOff,
    Optional<Commit> first,
    CommitSignature signature,
    Optional<String> signer,
    List<Doubt> doubts) {
  /** A sign-off that comes into Git later than so many days is told. Common practice, no source. */
  public static final int LATE_DAYS = 7;

  /** What git says of a commit's own signature. */
  public enum CommitSignature {
    NONE,
    GOOD,
    BAD,
    /** By a key that nothing here vouches for. */
    UNVOUCHED,
    /** Signed, and nothing here can look at it. */
    NOT_CHECKED
  }

  /** What does not fit. */
  public enum Doubt {
    /** It is dated long before the commit that brings it. */
    LATE,
    /** The work that it releases had begun when the commit brought it. */
    AFTER_START,
    /** It is not committed yet. */
    NOT_COMMITTED,
    /** It covers nothing, so there is nothing to look for. */
    COVERS_NOTHING
  }

  public Arrival {
    doubts = List.copyOf(doubts);
  }

  /** Every sign-off of the ledger, as its substitutions list them. */
  public static List<Arrival> of(History history, Facts now) throws NoHistory {
    List<History.Added> added = history.added("covers");
    List<Arrival> all = new ArrayList<>();
    for (Substitution substitution : now.ledger().substitutions()) {
      for (SignOff signOff : substitution.signOffs()) {
        all.add(of(substitution, signOff, added, history, now));
      }
    }
    return all;
  }

  private static Arrival of(
      Substitution substitution,
      SignOff signOff,
      List<History.Added> added,
      History history,
      Facts now)
      throws NoHistory {
    if (signOff.covers().isEmpty()) {
      return new Arrival(
          substitution,
          signOff,
          Optional.empty(),
          CommitSignature.NONE,
          Optional.empty(),
          List.of(Doubt.COVERS_NOTHING));
    }
    String digits = signOff.covers().get();
    for (History.Added each : added) {
      if (each.lines().stream().anyMatch(line -> line.contains(digits))) {
        return new Arrival(
            substitution,
            signOff,
            Optional.of(each.commit()),
            signature(each, history),
            Optional.of(each.signer()).filter(signer -> !signer.isBlank()),
            doubts(substitution, signOff, each.commit().day(), now));
      }
    }
    return new Arrival(
        substitution,
        signOff,
        Optional.empty(),
        CommitSignature.NONE,
        Optional.empty(),
        List.of(Doubt.NOT_COMMITTED));
  }

  private static List<Doubt> doubts(
      Substitution substitution, SignOff signOff, LocalDate came, Facts now) {
    List<Doubt> doubts = new ArrayList<>();
    if (signOff.on().plusDays(LATE_DAYS).isBefore(came)) {
      doubts.add(Doubt.LATE);
    }
    Optional<LocalDate> begun =
        substitution.hold().flatMap(now.ledger()::task).flatMap(Headways.on(now)::begun);
    if (begun.isPresent() && begun.get().isBefore(came)) {
      doubts.add(Doubt.AFTER_START);
    }
    return doubts;
  }

  /**
   * Git's letters: G good; U good, by a key that nothing vouches for; B bad, R of a revoked key; N
   * none, which it also says where it is not set up to look.
   */
  private static CommitSignature signature(History.Added added, History history) throws NoHistory {
    return switch (added.signature()) {
      case "G" -> CommitSignature.GOOD;
      case "U" -> CommitSignature.UNVOUCHED;
      case "B", "R" -> CommitSignature.BAD;
      case "N", "" ->
          history.isSigned(added.commit()) ? CommitSignature.NOT_CHECKED : CommitSignature.NONE;
      default -> CommitSignature.NOT_CHECKED; // expired, or no key here
    };
  }
}
