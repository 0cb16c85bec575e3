package kitwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.finding.Finding;
import kitwright.finding.Severity;
import kitwright.ledger.LedgerFolder;
import kitwright.report.photo.Picture;
import kitwright.report.photo.PictureFault;
import kitwright.report.week.WeekPhoto;
import kitwright.value.Place;

/**
 * The photos of a week, read from the ledger's folder and drawn anew.
 *
 * @param files JPEG by the name that the page gives them
 * @param findings what the public must not see yet: photos that cannot be shown, or tell where they
 *     were taken
 */
record Photos(Map<String, byte[]> files, List<Finding> findings) {
  private static final String PLACE = "place";

  static Photos of(List<WeekPhoto> photos, LedgerFolder folder) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    List<Finding> findings = new ArrayList<>();
    for (WeekPhoto photo : photos) {
      Optional<Picture> picture = read(photo, folder).map(Picture::of);
      if (picture.filter(each -> each.tellsPlace() || each.mayTellPlace()).isPresent()
          && !photo.allow().contains(PLACE)) {
        findings.add(
            finding(
                photo,
                "public-words-private",
                picture.get().tellsPlace()
                    ? "The photo says where it was taken."
                    : "What the photo’s file says of it cannot be read; it may say where it was"
                        + " taken.",
                "The place itself is stripped before the photo goes out, but what it shows may"
                    + " tell it too.",
                "Look at it once more, and let it stand by “allow: [place]” beside it."));
      }
      if (picture.isEmpty()) {
        findings.add(unreadable(photo, "There is no photo at “" + photo.files().get(0) + "”."));
        continue;
      }
      try {
        files.put(photo.name(), picture.get().scaled());
      } catch (PictureFault why) {
        findings.add(unreadable(photo, why.sentence()));
      }
    }
    return new Photos(files, findings);
  }

  private static Finding unreadable(WeekPhoto photo, String what) {
    return finding(
        photo,
        "public-photo-unreadable",
        what,
        "The week would show an empty frame.",
        "Put a whole JPEG or PNG there, name where it lies now, or keep it for the crew.");
  }

  private static Finding finding(
      WeekPhoto photo, String rule, String what, String follows, String mend) {
    return new Finding(
        rule,
        Severity.STOP,
        photo
            .picture()
            .map(picture -> picture.at().record())
            .orElse(Place.wholeFile(photo.files().get(0))),
        what,
        follows,
        mend,
        List.of());
  }

  /** The bytes of the first of its files that is there. */
  private static Optional<byte[]> read(WeekPhoto photo, LedgerFolder folder) {
    return photo.files().stream().flatMap(file -> read(file, folder).stream()).findFirst();
  }

  /** The bytes of a file within the folder; empty where it is none. */
  private static Optional<byte[]> read(String name, LedgerFolder folder) {
    try {
      Path root = folder.root().toRealPath();
      Path file = root.resolve(name).normalize();
      return file.startsWith(root)
              && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
              && file.toRealPath().startsWith(root)
          ? Optional.of(Files.readAllBytes(file))
          : Optional.empty();
    } catch (IOException | RuntimeException unreadable) {
      return Optional.empty();
    }
  }
}
