package kitwright.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * Lengths of the open scheduling instances. The files are not ours to pass on: get the set j30
 * (folder {@code j30.sm}, 480 files) and run with {@code -Dpsplib.j30=FOLDER}; without it these
 * tests are reported as skipped.
 */
class PspLibPublishedTest {
  @Test
  void theForwardPassMeetsThePrintedLengthOfAllInstances() throws IOException {
    long sum = 0;
    int files = 0;
    try (Stream<Path> all = Files.list(folder())) {
      for (Path file : all.filter(f -> f.toString().endsWith(".sm")).sorted().toList()) {
        List<String> lines = Files.readAllLines(file, StandardCharsets.US_ASCII);
        long length = Works.length(schedule(lines)).toDays();
        assertThat(length).as(file.toString()).isEqualTo(mpmTime(lines));
        sum += length;
        files++;
      }
    }
    assertThat(files).isEqualTo(480);
    assertThat(sum).isEqualTo(25_092);
  }

  @Test
  void floatsMeetTheRecomputedSums() throws IOException {
    for (Map<String, String> row : Table.read("psplib-j30.csv")) {
      Path file = folder().resolve(row.get("file") + ".sm");
      Schedule schedule = schedule(Files.readAllLines(file, StandardCharsets.US_ASCII));
      assertThat(Works.length(schedule).toDays()).isEqualTo(number(row, "mpm"));
      assertThat(schedule.all().stream().filter(Planned::critical).count())
          .isEqualTo(number(row, "critical"));
      assertThat(schedule.all().stream().mapToLong(each -> each.total().wholeDays()).sum())
          .isEqualTo(number(row, "floats"));
    }
  }

  private static long number(Map<String, String> row, String column) {
    return Long.parseLong(row.getOrDefault(column, ""));
  }

  private static Path folder() {
    String named = System.getProperty("psplib.j30", "");
    Path folder = Path.of(named);
    Assumptions.assumeTrue(
        !named.isEmpty() && Files.isDirectory(folder),
        "SKIPPED: no folder of the open instances j30; give it with -Dpsplib.j30=FOLDER");
    return folder;
  }

  private static long mpmTime(List<String> lines) {
    return numbers(lines.get(indexOf(lines, "pronr.") + 1)).get(5);
  }

  private static Schedule schedule(List<String> lines) {
    List<Activity> tasks = new ArrayList<>();
    List<Link> links = new ArrayList<>();
    int arcs = indexOf(lines, "jobnr.    #modes") + 1;
    for (String line : lines.subList(arcs, indexOf(lines, "REQUESTS/DURATIONS") - 1)) {
      List<Long> row = numbers(line);
      row.stream().skip(3).forEach(after -> links.add(Works.link("j" + row.get(0), "j" + after)));
    }
    int jobs = indexOf(lines, "REQUESTS/DURATIONS") + 3;
    for (String line : lines.subList(jobs, indexOf(lines, "RESOURCEAVAILABILITIES") - 1)) {
      List<Long> row = numbers(line);
      tasks.add(Works.of("j" + row.get(0), Estimate.fixed(Calendars.days(row.get(2)))));
    }
    return Schedule.of(Network.of(tasks, links), Calendars.THE_CLOCK, Calendars.MONDAY);
  }

  private static int indexOf(List<String> lines, String start) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith(start)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no line begins with " + start);
  }

  private static List<Long> numbers(String line) {
    return Stream.of(line.trim().split("\\s+")).map(Long::valueOf).toList();
  }
}
