package kitwright.history;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import kitwright.value.Money;
import kitwright.value.Quantity;

/** What held of a thing before or now. */
public sealed interface Held {
  /** Answers with the case at hand. */
  <R> R match(Cases<R> cases);

  /** An answer for each case. */
  interface Cases<R> {
    R nothing();

    R share(BigDecimal share, Optional<LocalDate> finished);

    R quantity(Quantity quantity);

    R money(Money money);

    R count(long many);

    R day(LocalDate day);

    R words(List<String> words);

    R changed(List<String> keys);
  }

  /** It was not there. */
  record Nothing() implements Held {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.nothing();
    }
  }

  /**
   * So much of it was done.
   *
   * @param share 0 to 1
   */
  record Done(BigDecimal share, Optional<LocalDate> finished) implements Held {
    public Done {
      share = share.stripTrailingZeros();
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.share(share, finished);
    }
  }

  record Many(Quantity quantity) implements Held {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.quantity(quantity);
    }
  }

  /** So much money. */
  record Sum(Money money) implements Held {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.money(money);
    }
  }

  /** So many things. */
  record Count(long many) implements Held {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.count(many);
    }
  }

  record On(LocalDate day) implements Held {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.day(day);
    }
  }

  record Told(List<String> words) implements Held {
    public Told {
      words = List.copyOf(words);
    }

    static Told of(String... words) {
      return new Told(List.of(words));
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.words(words);
    }
  }

  /** Something else in these keys of its record. */
  record Changed(List<String> keys) implements Held {
    public Changed {
      keys = List.copyOf(keys);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.changed(keys);
    }
  }
}
