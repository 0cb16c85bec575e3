package kitwright.report.week;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.daybook.Week;
import kitwright.daybook.WeekLog;
import kitwright.document.Block;
import kitwright.document.Destination;
import kitwright.document.Inline;
import kitwright.document.Prose;
import kitwright.ledger.Evidence;
import kitwright.ledger.LogDay;
import kitwright.ledger.LogDay.Audience;

/**
 * The photos of a week under the names that they have beside its page, and where the text of a day
 * shows them. The public sees those that are marked for it; the crew also what only the text shows.
 */
final class WeekPhotos {
  private final Audience reader;
  private final String stem;
  private final List<WeekPhoto> all = new ArrayList<>();

  private WeekPhotos(Week week, Audience reader) {
    this.reader = reader;
    this.stem = "week-" + week + (reader == Audience.PUBLIC ? "-" : "-crew-");
  }

  static WeekPhotos of(Week week, WeekLog log, Audience reader) {
    WeekPhotos photos = new WeekPhotos(week, reader);
    log.photos().stream()
        .filter(picture -> reader == Audience.CREW || picture.isPublic())
        .forEach(picture -> photos.add(List.of(file(picture.file())), Optional.of(picture)));
    if (reader == Audience.CREW) {
      log.days().forEach(photos::addFromText);
    }
    return photos;
  }

  private void add(List<String> files, Optional<Evidence> picture) {
    all.add(new WeekPhoto(files, stem + (all.size() + 1) + ".jpg", picture));
  }

  private void addFromText(LogDay day) {
    for (String address : addresses(day)) {
      List<String> files = files(day, address);
      if (!files.isEmpty() && known(files).isEmpty()) {
        add(files, Optional.empty());
      }
    }
  }

  List<WeekPhoto> all() {
    return List.copyOf(all);
  }

  /**
   * The pictures in the text of a day: by their address, the file beside the page.
   *
   * @param shown the names of photos that can be shown
   */
  Map<String, String> in(LogDay day, Set<String> shown) {
    Map<String, String> pictures = new LinkedHashMap<>();
    for (String address : addresses(day)) {
      known(files(day, address))
          .map(WeekPhoto::name)
          .filter(shown::contains)
          .ifPresent(name -> pictures.put(address, name));
    }
    return pictures;
  }

  private List<String> addresses(LogDay day) {
    return new Prose(day.bodyFor(reader), 0, Map.of()).pictureAddresses();
  }

  private Optional<WeekPhoto> known(List<String> files) {
    return all.stream().filter(each -> !Collections.disjoint(each.files(), files)).findFirst();
  }

  /** An address leads from the folder of its file, as a forge reads it, or from the ledger’s. */
  private static List<String> files(LogDay day, String address) {
    if (address.contains(":") || address.isBlank()) {
      return List.of();
    }
    try {
      String path = URLDecoder.decode(address.replace("+", "%2B"), StandardCharsets.UTF_8);
      String folder = day.at().record().file().replaceFirst("[^/]*$", "");
      return List.of(file(folder + path), file(path));
    } catch (IllegalArgumentException noPath) {
      return List.of();
    }
  }

  /** Without detours, as text: a name that this machine cannot write is a name all the same. */
  private static String file(String path) {
    Deque<String> parts = new ArrayDeque<>();
    for (String part : path.split("[/\\\\]+", -1)) {
      if (part.equals("..") && !parts.isEmpty() && !parts.getLast().equals("..")) {
        parts.removeLast();
      } else if (!part.isEmpty() && !part.equals(".")) {
        parts.add(part);
      }
    }
    return String.join("/", parts);
  }

  /** A photo with what it shows below it. */
  static Block told(WeekPhoto photo, int number) {
    List<Inline> parts = new ArrayList<>();
    parts.add(Inline.picture(Destination.file(photo.name()), "Photo " + number));
    photo
        .says()
        .ifPresent(words -> Collections.addAll(parts, Inline.newLine(), Inline.emphasis(words)));
    return Block.paragraph(parts.toArray(Inline[]::new));
  }
}
