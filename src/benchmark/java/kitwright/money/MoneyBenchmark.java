package kitwright.money;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The account of 100,000 spends in three currencies, and 100,000 runs over 200 uncertain costs. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 4, time = 3)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
public class MoneyBenchmark {
  private static final LocalDate TODAY = LocalDate.of(2026, 12, 31);
  private static final int SPENDS = 100_000;
  private static final int ITEMS = 200;

  private Ledger ledger = read("");
  private final List<CostItem> items = new ArrayList<>();
  private final Map<String, Double> together = new HashMap<>();

  /** Spends of every state: a third orders, each paid in part; every tenth payment refunded. */
  @Setup
  public void draw() {
    Random random = new Random(5);
    StringBuilder yaml = new StringBuilder("spending:\n");
    for (int i = 0; i < SPENDS; i++) {
      String currency = i % 4 == 0 ? "NZD" : i % 7 == 0 ? "GBP" : "EUR";
      String how =
          i % 3 == 0
              ? "ordered"
              : i % 10 == 1 && i > 10
                  ? "refunded, refunds: s" + (i - 9)
                  : i % 3 == 1 ? "paid, pays: s" + (i - 1) : "paid";
      yaml.append(
          String.format(
              Locale.ROOT,
              "  - {id: s%d, on: 2026-%02d-%02d, line: line%d, what: thing, amount: %d.%02d %s,"
                  + " state: %s}%n",
              i,
              1 + random.nextInt(12),
              1 + random.nextInt(28),
              random.nextInt(40),
              1 + random.nextInt(900),
              random.nextInt(100),
              currency,
              how));
    }
    ledger = read(yaml.toString());
    for (int i = 0; i < ITEMS; i++) {
      double low = 10 + random.nextInt(500);
      double likely = low + random.nextInt(200);
      items.add(
          Costs.item("cost " + i, "line" + i % 40, low, likely, likely + random.nextInt(400)));
      together.put("line" + i % 40, i % 2 == 0 ? 0.0 : 0.4);
    }
  }

  private static Ledger read(String spending) {
    StringBuilder yaml =
        new StringBuilder("build: {name: Big, currency: EUR, started: 2026-01-01}\nbudget:\n");
    for (int i = 0; i < 40; i++) {
      yaml.append("  - {line: line").append(i).append(", title: Line, amount: 900000}\n");
    }
    yaml.append("rates:\n");
    for (int month = 1; month <= 12; month++) {
      yaml.append(
          String.format(
              Locale.ROOT,
              "  - {on: 2026-%02d-01, from: NZD, to: EUR, rate: 0.54%02d}%n"
                  + "  - {on: 2026-%02d-01, from: EUR, to: GBP, rate: 0.86%02d}%n",
              month,
              month,
              month,
              month));
    }
    return LedgerReader.read(
            List.of(new SourceFile("big.yaml", yaml + spending)), paths -> Map.of(), new Findings())
        .orElseThrow();
  }

  @Benchmark
  public Account forecastOfAHundredThousandSpends() {
    return Account.on(Facts.of(ledger, TODAY));
  }

  @Benchmark
  public List<Why.Part> causesOfAHundredThousandSpends() {
    return Why.of(ledger, Account.on(Facts.of(ledger, TODAY)));
  }

  @Benchmark
  public CostRange aHundredThousandRunsOverTwoHundredCosts() {
    return CostSimulation.run(items, 0, together, CostSimulation.RUNS, CostSimulation.SEED);
  }
}
