package kitwright.shortage;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import kitwright.Sample;
import kitwright.ledger.Facts;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * Every piece by itself: a random ledger of one item is told to the program, and beside it each
 * single cleat is carried by hand from its crate, shop or letter to the place that lacks one. Both
 * must end with the same cleats in the same places.
 */
class PiecesProperties {
  private static final LocalDate START = LocalDate.of(2026, 1, 5);
  private static final int TODAY = 56; // 2 March 2026

  /** A shortage of so many places, each empty until a cleat is put there. */
  private record Lacking(String id, int found, int places, List<String> here, List<String> coming) {
    boolean isFull() {
      return here.size() + coming.size() == places;
    }
  }

  private final StringBuilder deliveries = new StringBuilder();
  private final StringBuilder spending = new StringBuilder();
  private final StringBuilder shortages = new StringBuilder();
  private final StringBuilder claims = new StringBuilder();
  private final List<Lacking> lacking = new ArrayList<>();

  /** What happens on a day, the present first, then what comes. */
  private final TreeMap<String, Runnable> byHand = new TreeMap<>();

  private int promised;
  private int good;
  private int dealt;
  private int atHand;
  private int toCome;

  private static String day(int number) {
    return START.plusDays(number).toString();
  }

  @Property(tries = 400)
  void everyCleatEndsWhereAHandPutsIt(@ForAll long seed) {
    new PiecesProperties().carry(new Random(seed));
  }

  private void carry(Random random) {
    build(random);
    byHand.values().forEach(Runnable::run);
    Facts facts = Facts.of(Sample.ledger(yaml()), START.plusDays(TODAY));
    ShortageStandings standings = ShortageStandings.on(facts);
    for (Lacking each : lacking) {
      ShortageStanding standing =
          standings.all().stream()
              .filter(one -> one.shortage().id().equals(each.id()))
              .findFirst()
              .orElseThrow();
      assertThat(standing.covers().stream().flatMap(c -> cleats(c.by().id(), c.qty().amount())))
          .as("here for " + each.id() + " of\n" + yaml())
          .containsExactlyInAnyOrderElementsOf(each.here());
      assertThat(standing.coming().stream().flatMap(c -> cleats(c.by().id(), c.qty().amount())))
          .as("coming for " + each.id() + " of\n" + yaml())
          .containsExactlyInAnyOrderElementsOf(each.coming());
      assertThat(standing.unsupplied().amount())
          .isEqualByComparingTo(
              BigDecimal.valueOf(each.places() - each.here().size() - each.coming().size()));
    }
    // A task that needs more than there can be lacks exactly what no hand has carried in.
    BigDecimal missing =
        LookAhead.on(facts).ofTask("all").stream()
            .map(wanted -> wanted.missing().amount())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(missing).as(yaml()).isEqualByComparingTo(BigDecimal.valueOf(1000 - atHand - toCome));
  }

  private static java.util.stream.Stream<String> cleats(String record, BigDecimal amount) {
    return java.util.stream.Stream.generate(() -> record).limit(amount.longValueExact());
  }

  private String yaml() {
    return "kit: [{id: cleat, what: cleat, qty: %d}]%n".formatted(promised)
        + "tasks: [{id: all, what: All, takes: 1 d, uses: [{item: cleat, qty: 1000}]}]\n"
        + list("deliveries", deliveries)
        + list("shortages", shortages)
        + list("spending", spending)
        + list("claims", claims);
  }

  private static String list(String kind, StringBuilder lines) {
    return lines.isEmpty() ? "" : kind + ":\n" + lines;
  }

  private void build(Random random) {
    promised = 20 + random.nextInt(20);
    crate("d0", 5 + random.nextInt(4), random.nextInt(promised), "kit-maker");
    for (int i = 0; i < 1 + random.nextInt(3); i++) {
      lack("s" + i, 10 + 7 * i + random.nextInt(5), 1 + random.nextInt(8));
    }
    for (int i = 1; i <= random.nextInt(3); i++) {
      crate("d" + i, 20 + 10 * i + random.nextInt(7), random.nextInt(9), "kit-maker");
    }
    for (int i = 0; i < random.nextInt(3); i++) {
      note("n" + i, TODAY + 5 + 9 * i + random.nextInt(5), 1 + random.nextInt(9));
    }
    for (int i = 0; i < random.nextInt(3); i++) {
      buy("b" + i, 36 + 6 * i + random.nextInt(5), 1 + random.nextInt(7), random);
    }
    for (int i = 0; i < random.nextInt(3); i++) {
      order("o" + i, TODAY + 1 + 11 * i + random.nextInt(9), 1 + random.nextInt(7), random);
    }
    if (random.nextBoolean()) {
      promise(lacking.get(random.nextInt(lacking.size())), 40);
    }
  }

  private void lack(String id, int found, int places) {
    lacking.add(new Lacking(id, found, places, new ArrayList<>(), new ArrayList<>()));
    shortages.append(
        "  - {id: %s, item: cleat, qty: %d, found: %s, cause: not-packed}%n"
            .formatted(id, places, day(found)));
  }

  private void crate(String id, int on, int count, String from) {
    deliveries.append(
        "  - {id: %s, received: %s, from: %s, counted: [{item: cleat, qty: %d}]}%n"
            .formatted(id, day(on), from, count));
    byHand.put("a%03d %s".formatted(on, id), () -> arrive(id, on, count));
  }

  /** Of a crate only so many answer shortages as are recorded beyond what is missing after it. */
  private void arrive(String id, int on, int count) {
    good += count;
    atHand += count;
    int recorded =
        lacking.stream().filter(each -> each.found() <= on).mapToInt(Lacking::places).sum();
    int answering = Math.min(count, recorded - Math.max(0, promised - good) - dealt);
    for (int piece = 0; piece < answering; piece++) {
      // The place is looked for among those that no crate has filled, and then given on to the
      // next.
      dealt += put(id, on) ? 1 : 0;
    }
  }

  private void note(String id, int on, int count) {
    deliveries.append(
        "  - {id: %s, expected: %s, from: kit-maker, packed: [{item: cleat, qty: %d}]}%n"
            .formatted(id, day(on), count));
    byHand.put(
        "b%03d %s".formatted(on, "0" + id),
        () -> {
          good += count;
          toCome += count;
          int recorded = lacking.stream().mapToInt(Lacking::places).sum();
          int answering = Math.min(count, recorded - Math.max(0, promised - good) - dealt);
          for (int piece = 0; piece < answering; piece++) {
            dealt++;
            oldestOpen().ifPresent(each -> each.coming().add(id));
          }
        });
  }

  private void buy(String id, int on, int count, Random random) {
    Lacking because = lacking.get(random.nextInt(lacking.size()));
    boolean says = random.nextBoolean();
    spending.append(
        "  - {id: %s, on: %s, line: deck, what: cleats, amount: 9 EUR, state: paid, item: cleat, qty: %d%s}%n"
            .formatted(id, day(on), count, says ? ", because: " + because.id() : ""));
    byHand.put(
        "a%03d %s".formatted(on, "z" + id),
        () -> {
          atHand += count;
          for (int piece = 0; piece < count; piece++) {
            place(says ? Optional.of(because) : Optional.empty())
                .ifPresent(each -> each.here().add(id));
          }
        });
  }

  private void order(String id, int expected, int count, Random random) {
    Lacking because = lacking.get(random.nextInt(lacking.size()));
    boolean says = random.nextBoolean();
    spending.append(
        "  - {id: %s, on: %s, line: deck, what: cleats, amount: 9 EUR, state: ordered, expected: %s, item: cleat, qty: %d%s}%n"
            .formatted(
                id, day(50), day(expected), count, says ? ", replaces: " + because.id() : ""));
    byHand.put(
        "b%03d %s".formatted(expected, "1" + id),
        () -> {
          toCome += count;
          for (int piece = 0; piece < count; piece++) {
            place(says ? Optional.of(because) : Optional.empty())
                .ifPresent(each -> each.coming().add(id));
          }
        });
  }

  private void promise(Lacking of, int on) {
    claims.append(
        "  - {id: c, against: kit-maker, shortages: [%s], sent: %s, remedy: replacement, events: [{on: %s, what: promised, expect: %s}]}%n"
            .formatted(of.id(), day(on), day(on + 1), day(TODAY + 90)));
    byHand.put(
        "c",
        () -> {
          while (!of.isFull()) {
            of.coming().add("c");
            toCome++;
          }
        });
  }

  /** Whether some shortage that was found before still lacked a piece from crates. */
  private boolean put(String id, int on) {
    for (Lacking each : lacking) {
      if (each.found() < on && fromCrates.getOrDefault(each.id(), 0) < each.places()) {
        fromCrates.merge(each.id(), 1, Integer::sum);
        place(Optional.of(each)).ifPresent(place -> place.here().add(id));
        return true;
      }
    }
    return false;
  }

  private final TreeMap<String, Integer> fromCrates = new TreeMap<>();

  private Optional<Lacking> place(Optional<Lacking> first) {
    return first.filter(each -> !each.isFull()).or(this::oldestOpen);
  }

  private Optional<Lacking> oldestOpen() {
    return lacking.stream()
        .sorted(Comparator.comparing(Lacking::found))
        .filter(each -> !each.isFull())
        .findFirst();
  }
}
