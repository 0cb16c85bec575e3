package kitwright.history;

import java.util.Optional;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.money.Account;
import kitwright.money.Lacks;
import kitwright.openmatter.Ends;
import kitwright.shortage.ShortageStandings;
import kitwright.substitution.SubstitutionStandings;
import kitwright.value.Word;

/** A figure of the whole build that can be followed from commit to commit. */
public enum Figure {
  SPENT("what was spent, less what came back") {
    @Override
    Optional<Held> on(Facts day) {
      boolean whole = Lacks.ofSpending(day).isEmpty() && Account.on(day).unvalued().isEmpty();
      return whole ? Optional.of(new Held.Sum(Account.on(day).whole().spent())) : Optional.empty();
    }
  },
  FORECAST("where the budget will end") {
    @Override
    Optional<Held> on(Facts day) {
      return Lacks.ofForecast(day).isEmpty()
          ? Optional.of(new Held.Sum(Account.on(day).whole().forecast()))
          : Optional.empty();
    }
  },
  END("the day on which the plan ends, with material and weather as they were known") {
    @Override
    Optional<Held> on(Facts day) {
      return Ends.on(day).told(day).map(Held.On::new);
    }
  },
  MISSING("shortages that nothing covers yet") {
    @Override
    Optional<Held> on(Facts day) {
      return isRead(Kind.SHORTAGES, day)
          ? Optional.of(new Held.Count(ShortageStandings.on(day).open().size()))
          : Optional.empty();
    }
  },
  UNSIGNED("substitutions that may not be built") {
    @Override
    Optional<Held> on(Facts day) {
      return isRead(Kind.SUBSTITUTIONS, day)
          ? Optional.of(
              new Held.Count(
                  SubstitutionStandings.on(day).all().stream()
                      .filter(standing -> !standing.isApproved() && !standing.isWithdrawn())
                      .count()))
          : Optional.empty();
    }
  };

  private final String says;

  Figure(String says) {
    this.says = says;
  }

  /** What it counts. */
  public String says() {
    return says;
  }

  /** How a person asks for it. */
  public String word() {
    return Word.key(this);
  }

  public static Optional<Figure> of(String word) {
    for (Figure figure : values()) {
      if (figure.word().equals(word)) {
        return Optional.of(figure);
      }
    }
    return Optional.empty();
  }

  /** Whether every record of a kind could be read, as far as anybody can tell. */
  private static boolean isRead(Kind kind, Facts day) {
    return day.ledger().unread().stream().noneMatch(each -> each.mayBe(kind));
  }

  /** What it was on a day; empty where what could not be read is, or may hold, a part of it. */
  abstract Optional<Held> on(Facts day);
}
