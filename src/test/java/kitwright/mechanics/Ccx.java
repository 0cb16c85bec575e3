package kitwright.mechanics;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import kitwright.OutsideProgram;

/** The general finite-element solver CalculiX, and what it prints. */
public final class Ccx {
  private final List<String> printed;

  private Ccx(List<String> printed) {
    this.printed = printed;
  }

  /** Where the solver is missing the test ends: failing in CI, told elsewhere. */
  public static void needed() {
    OutsideProgram.needed("ccx", "calculix-ccx");
  }

  /** Solves a deck in a folder. */
  public static Ccx solve(Path folder, String deck) throws IOException, InterruptedException {
    Files.writeString(folder.resolve("case.inp"), deck, StandardCharsets.US_ASCII);
    var builder = new ProcessBuilder("ccx", "-i", "case").directory(folder.toFile());
    builder.environment().put("OMP_NUM_THREADS", "1");
    builder.redirectErrorStream(true).redirectOutput(folder.resolve("log.txt").toFile());
    var process = builder.start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).as("ccx ends").isTrue();
    String log = Files.readString(folder.resolve("log.txt"));
    assertThat(process.exitValue()).as(log).isZero();
    return new Ccx(Files.readAllLines(folder.resolve("case.dat")));
  }

  /** Three numbers a node: how it moved, or the force that holds it. */
  public Map<Integer, double[]> moved() {
    return threes("displacements");
  }

  /** The force that holds each held node, N. */
  public Map<Integer, double[]> forces() {
    return threes("forces");
  }

  private Map<Integer, double[]> threes(String what) {
    Map<Integer, double[]> all = new HashMap<>();
    boolean within = false;
    for (String line : printed) {
      String[] words = line.strip().split("\\s+");
      if (line.contains(" for set ")) {
        within = line.strip().startsWith(what);
      } else if (within && words.length == 4) {
        all.put(Integer.valueOf(words[0]), numbers(words, 1));
      }
    }
    return all;
  }

  private static double[] numbers(String[] words, int from) {
    double[] all = new double[words.length - from];
    for (int i = from; i < words.length; i++) {
      all[i - from] = Double.parseDouble(words[i]);
    }
    return all;
  }

  /** Stresses xx, yy, zz, xy, xz, yz at each of the points of each element, Pa. */
  public Map<Integer, List<double[]>> stresses() {
    Map<Integer, List<double[]>> all = new HashMap<>();
    boolean within = false;
    for (String line : printed) {
      String[] words = line.strip().split("\\s+");
      if (line.contains(" for set ")) {
        within = line.strip().startsWith("stresses");
      } else if (within && words.length == 8) {
        all.computeIfAbsent(Integer.valueOf(words[0]), any -> new ArrayList<>())
            .add(numbers(words, 2));
      }
    }
    return all;
  }

  /** The least factor on the load, above nought, at which it buckles. */
  public double factor() {
    return printed.stream()
        .map(line -> line.strip().split("\\s+"))
        .filter(words -> words.length == 2 && words[0].matches("\\d+"))
        .map(words -> Double.parseDouble(words[1]))
        .filter(factor -> factor > 0)
        .min(Double::compare)
        .orElseThrow();
  }

  /** One of many. */
  public static double[] of(Map<Integer, double[]> all, int node) {
    return Optional.ofNullable(all.get(node)).orElseThrow();
  }
}
