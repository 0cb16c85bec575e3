package kitwright.cutting.solve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The published instances that lie beside the checkout, not in it. */
final class ReferenceLists {
  private ReferenceLists() {}

  /** The folder, or empty (said loudly) where it does not lie beside the checkout. */
  static Optional<Path> folder() {
    Optional<Path> found =
        Stream.of("../shared", "../../shared", "shared")
            .map(p -> Path.of(p).resolve("reference/cutting"))
            .filter(Files::isDirectory)
            .findFirst();
    if (found.isEmpty()) {
      System.err.println(
          "SKIPPED: the published cutting lists are not there; they lie in reference/cutting beside"
              + " the checkout; nothing of them was tested.");
    }
    return found;
  }

  /** A list of lengths with the fewest bars it needs. */
  record BarList(String name, BarTask task, int published, int optimum) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<BarList> bars(Path folder) {
    Path bars = folder.resolve("bars");
    List<BarList> lists = new ArrayList<>();
    for (String line : lines(bars.resolve("index.csv"))) {
      String[] cell = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1);
      if (cell[0].endsWith(".csv")) {
        int optimum = Integer.parseInt(cell[9]);
        int published = cell[8].isEmpty() ? optimum : Integer.parseInt(cell[8]);
        BarTask task = task(lines(bars.resolve(cell[0])));
        lists.add(new BarList(cell[0].replace(".csv", ""), task, published, optimum));
      }
    }
    return lists;
  }

  private static BarTask task(List<String> lines) {
    long stock = 0;
    long kerf = 0;
    List<BarPart> parts = new ArrayList<>();
    int all = 0;
    for (String line : lines) {
      String[] cell = line.split(",", -1);
      if (line.startsWith("# stock_length")) {
        stock = Long.parseLong(cell[1]);
      } else if (line.startsWith("# kerf")) {
        kerf = Long.parseLong(cell[1]);
      } else if (Character.isDigit(line.charAt(0))) {
        int quantity = Integer.parseInt(cell[1]);
        String mark = "P" + (parts.size() + 1);
        parts.add(new BarPart(mark, Long.parseLong(cell[0]), quantity, 1, Optional.empty()));
        all += quantity;
      }
    }
    return new BarTask(parts, List.of(new Bar("bar", stock, all, 1, List.of())), kerf, 0, 1);
  }

  static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
