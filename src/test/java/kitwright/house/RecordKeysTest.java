package kitwright.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Records that are keys, or that a run compares, write {@code equals} and {@code hashCode} by hand:
 * what Java makes of them when they are first called costs two milliseconds each at every start.
 * Written by hand, they must still look at every component.
 */
class RecordKeysTest {
  private static final Pattern EQUALS =
      Pattern.compile(
          "public boolean equals\\(Object other\\) \\{\\s*return other instanceof (\\w+)"
              + " that([^;]*);");

  @Test
  void equalsAndHashCodeByHandLookAtEveryComponent() throws IOException {
    List<String> wrong = new ArrayList<>();
    int seen = 0;
    for (Path file : sources()) {
      String text = Files.readString(file);
      Matcher equals = EQUALS.matcher(text);
      while (equals.find()) {
        List<String> components = components(text, equals.group(1));
        String hash = text.substring(equals.end(), Math.min(text.length(), equals.end() + 900));
        seen += components.isEmpty() ? 0 : 1;
        for (String each : components) {
          if (!equals.group(2).contains("that." + each)
              || !hash.matches("(?s).*\\b" + each + "\\b.*")) {
            wrong.add(file.getFileName() + ": " + equals.group(1) + "." + each);
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(seen).isGreaterThan(25);
  }

  private static List<String> components(String text, String record) {
    Matcher head =
        Pattern.compile("\\brecord " + record + "\\(([^{]*?)\\)\\s*(\\{|implements)").matcher(text);
    if (!head.find()) {
      return List.of();
    }
    String inside = head.group(1).replaceAll("<[^<>]*>", "").replaceAll("<[^<>]*>", "");
    return Stream.of(inside.split(","))
        .map(each -> each.strip().replaceFirst(".*\\s", ""))
        .toList();
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> all = Files.walk(Path.of("src/main/java"))) {
      return all.filter(path -> path.toString().endsWith(".java")).sorted().toList();
    }
  }
}
