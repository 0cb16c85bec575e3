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
 * @param doubts what does not fit, in the order of weight
 */
public record Arrival(
    Substitution substitution,
    SignOff signOff,
    Optional<Commit> first,
    CommitSignature signature,
    List<Doubt> doubts) {
  /** A sign-off that comes into Git later than so many days is told. Common practice, no source. */
  public static final int LATE_DAYS = 7;

  /** What git says of a commit's own signature. */
  public enum CommitSignature {
    NONE,
    GOOD,
    BAD,
    /** Signed, and nothing here can tell by whom. */
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
        all.add(of(substitution, signOff, added, now));
      }
    }
    return all;
  }

  private static Arrival of(
      Substitution substitution, SignOff signOff, List<History.Added> added, Facts now) {
    if (signOff.covers().isEmpty()) {
      return new Arrival(
          substitution,
          signOff,
          Optional.empty(),
          CommitSignature.NONE,
          List.of(Doubt.COVERS_NOTHING));
    }
    String digits = signOff.covers().get();
    for (History.Added each : added) {
      if (each.lines().stream().anyMatch(line -> line.contains(digits))) {
        return new Arrival(
            substitution,
            signOff,
            Optional.of(each.commit()),
            signature(each.signature()),
            doubts(substitution, signOff, each.commit().day(), now));
      }
    }
    return new Arrival(
        substitution,
        signOff,
        Optional.empty(),
        CommitSignature.NONE,
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

  /** Git's letters: G and X, Y good; B, R bad; N none; U and E cannot be told. */
  private static CommitSignature signature(String letter) {
    return switch (letter) {
      case "G" -> CommitSignature.GOOD;
      case "B", "R" -> CommitSignature.BAD;
      case "N", "" -> CommitSignature.NONE;
      default -> CommitSignature.NOT_CHECKED; // expired, of unknown worth, or no key here
    };
  }
}
