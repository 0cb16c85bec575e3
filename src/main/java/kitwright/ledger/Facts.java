package kitwright.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A ledger on a day, and what follows from it: each fact is worked out once, when first asked for.
 * Rules, reports and commands ask here and nowhere else, so that they cannot contradict each other.
 *
 * <p>Every room declares its own facts, so this class knows none of them:
 *
 * <pre>{@code
 * public final class Plan {
 *   private static final Facts.Fact<Plan> FACT = Plan::new;
 *
 *   public static Plan on(Facts day) {
 *     return FACT.on(day);
 *   }
 * }
 * }</pre>
 *
 * <p>Not for several threads: reading ends before facts begin.
 */
public final class Facts {
  private final Ledger written;
  private @Nullable Ledger seen;
  private final LocalDate day;
  private final Map<LocalDate, Facts> days;
  private final IdentityHashMap<Fact<?>, Object> known = new IdentityHashMap<>();

  /** The facts being worked out just now, the one asked first at the head. */
  private final List<Fact<?>> atWork = new ArrayList<>();

  private Facts(Ledger written, LocalDate day, Map<LocalDate, Facts> days) {
    this.written = written;
    this.day = day;
    this.days = days;
    days.put(day, this);
  }

  /** What follows from a ledger on a day. */
  public static Facts of(Ledger ledger, LocalDate day) {
    return new Facts(ledger, day, new HashMap<>());
  }

  /**
   * The records, as they read at the end of the day: of what happened later nothing is there. See
   * {@link Ledger#asOf}.
   */
  public Ledger ledger() {
    Ledger known = seen;
    if (known == null) {
      known = written.asOf(day);
      seen = known;
    }
    return known;
  }

  /**
   * All that is written, whatever its day: for rules about what is written, and for following a
   * name.
   */
  public Ledger written() {
    return written;
  }

  /** The day on which everything is told. */
  public LocalDate day() {
    return day;
  }

  /** The same ledger as of another day, remembered too. */
  public Facts on(LocalDate other) {
    Facts there = days.get(other);
    return there == null ? new Facts(written, other, days) : there;
  }

  /** Something that follows from a ledger on a day. One constant a fact, in its matter's room. */
  @FunctionalInterface
  public interface Fact<T> {
    /** Works it out; asks other facts for what it rests on. */
    T work(Facts day);

    /** What follows on that day. */
    default T on(Facts day) {
      return day.know(this);
    }
  }

  /** A fact that could not be worked out: whoever asks again meets the same fault. */
  public static final class Broken extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String fact;

    Broken(Fact<?> fact, Throwable cause) {
      super(name(fact) + ": " + cause, cause);
      this.fact = name(fact);
    }

    /** Which fact, by the name of the class that answers it. */
    public String fact() {
      return fact;
    }
  }

  private static String name(Fact<?> fact) {
    String name = fact.getClass().getName();
    int inner = name.indexOf('$');
    String outer = inner < 0 ? name : name.substring(0, inner);
    return outer.substring(outer.indexOf('.') + 1);
  }

  @SuppressWarnings("unchecked") // a fact's value was made by its own work
  private <T> T know(Fact<T> fact) {
    Object there = known.get(fact);
    if (there instanceof Broken broken) {
      throw broken;
    }
    if (there != null) {
      return (T) there;
    }
    if (atWork.contains(fact)) {
      throw new IllegalStateException(
          atWork.stream().map(Facts::name).collect(Collectors.joining(", ", "in a circle: ", ""))
              + " and again "
              + name(fact));
    }
    return work(fact);
  }

  private <T> T work(Fact<T> fact) {
    atWork.add(fact);
    try {
      T made = fact.work(this);
      known.put(fact, made);
      return made;
    } catch (Broken inner) { // what it rests on is broken: the cause is told, once
      known.put(fact, inner);
      throw inner;
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
      Broken broken = new Broken(fact, fault);
      known.put(fact, broken);
      throw broken;
    } finally {
      atWork.remove(atWork.size() - 1);
    }
  }
}
