package kitwright.report.photo;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import kitwright.report.photo.Notes.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Photos of 12 by 8 pixels with notes that other programs wrote into them: ExifTool 12 and
 * ImageMagick 6, from the Debian packages libimage-exiftool-perl and imagemagick.
 */
class NotesTest {
  private static final Path FOLDER = Path.of("src/test/resources/kitwright/report/photo");

  private static byte[] photo(String name) throws IOException {
    return Files.readAllBytes(FOLDER.resolve(name));
  }

  static List<String> all() {
    return Stream.of(FOLDER.toFile().list()).sorted().toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "exif-place.jpg",
        "exif-place.png",
        "iptc-city.jpg",
        "iptc-city.png",
        "raw-exif.png",
        "raw-iptc.png",
        "xmp-city.jpg",
        "xmp-city.png",
        "xmp-gps.jpg",
        "xmp-gps.png",
        "xmp-shown.jpg",
        "xmp-shown.png"
      })
  void aPlaceIsSeenWhereverItIsWritten(String name) throws IOException {
    assertThat(Notes.of(photo(name))).isEqualTo(new Notes(1, Place.TOLD));
    assertThat(Picture.of(photo(name)).tellsPlace()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"plain.jpg", "plain.png", "icc.jpg", "iptc-words.jpg"})
  void otherNotesTellNoPlace(String name) throws IOException {
    assertThat(Notes.of(photo(name))).isEqualTo(new Notes(1, Place.UNTOLD));
    assertThat(Picture.of(photo(name)).mayTellPlace()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"camera.jpg", "camera.png"})
  void howTheCameraWasHeldIsReadOfBoth(String name) throws Exception {
    assertThat(Notes.of(photo(name))).isEqualTo(new Notes(6, Place.UNTOLD));
    BufferedImage upright = drawn(Picture.of(photo(name)).scaled());
    assertThat(List.of(upright.getWidth(), upright.getHeight())).containsExactly(8, 12);
  }

  private static BufferedImage drawn(byte[] jpeg) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(jpeg));
  }

  @ParameterizedTest
  @MethodSource("all")
  void nothingOfItGoesAlong(String name) throws Exception {
    byte[] out = Picture.of(photo(name)).scaled();
    assertThat(segments(out))
        .as("kinds of segment: JFIF, tables, frame, scan")
        .isSubsetOf(0xE0, 0xDB, 0xC0, 0xC4, 0xDA);
    assertThat(new String(out, ISO_8859_1))
        .doesNotContain("Exif", "GPS", "Hals", "Nora", "http:", "8BIM", "ICC_PROFILE", "boat");
    assertThat(Notes.of(out)).isEqualTo(new Notes(1, Place.UNTOLD));
  }

  /** The markers up to the pixels, by ITU-T T.81, B.1.1. */
  private static List<Integer> segments(byte[] jpeg) {
    List<Integer> markers = new ArrayList<>();
    for (int at = 2; markers.isEmpty() || markers.get(markers.size() - 1) != 0xDA; ) {
      assertThat(jpeg[at] & 0xFF).isEqualTo(0xFF);
      markers.add(jpeg[at + 1] & 0xFF);
      at += 2 + (((jpeg[at + 2] & 0xFF) << 8) | (jpeg[at + 3] & 0xFF));
    }
    return markers;
  }

  @ParameterizedTest
  @MethodSource("all")
  void aFileCutAnywhereIsRefusedInASentence(String name) throws IOException {
    byte[] whole = photo(name);
    for (int length = 0; length < whole.length; length += length < 700 ? 1 : 37) {
      byte[] cut = Arrays.copyOf(whole, length);
      assertThat(Notes.of(cut).orientation()).isBetween(1, 6);
      assertThatThrownBy(() -> Picture.of(cut).scaled())
          .as(name + " cut at " + length)
          .isInstanceOf(PictureFault.class)
          .hasMessageStartingWith("The photo ")
          .hasMessageEndingWith(".");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"plain.png", "camera.png", "plain.jpg"})
  void whatLacksItsEndIsToldAsThat(String name) throws IOException {
    byte[] whole = photo(name);
    byte[] cut = Arrays.copyOf(whole, whole.length - 2);
    assertThatThrownBy(() -> Picture.of(cut).scaled()).hasMessageContaining("is cut short");
  }

  @Test
  void notesThatCannotBeReadMayTellAPlace() throws IOException {
    for (String name : List.of("exif-place.jpg", "exif-place.png")) {
      byte[] broken = photo(name);
      int tiff = new String(broken, ISO_8859_1).indexOf("MM\0*");
      broken[tiff + 6] = 0x7F; // the directory lies behind the end
      assertThat(Notes.of(broken).place()).as(name).isEqualTo(Place.UNREADABLE);
      assertThat(Picture.of(broken).mayTellPlace()).isTrue();
    }
    byte[] packed = photo("iptc-city.png");
    int text = new String(packed, ISO_8859_1).indexOf("iptc\0\0") + 8;
    packed[text] ^= 0x55;
    assertThat(Notes.of(packed).place()).isEqualTo(Place.UNREADABLE);
    byte[] desk = photo("iptc-city.jpg");
    int length = new String(desk, ISO_8859_1).indexOf("Hals") - 1;
    desk[length] = 99;
    assertThat(Notes.of(desk).place()).isEqualTo(Place.UNREADABLE);
    byte[] cut = photo("exif-place.jpg");
    assertThat(Notes.of(Arrays.copyOf(cut, 60)).place()).isEqualTo(Place.UNREADABLE);
  }

  @Test
  void anotherKindOfPictureIsNotShownSinceNobodyReadsItsNotes() throws IOException {
    java.io.ByteArrayOutputStream gif = new java.io.ByteArrayOutputStream();
    ImageIO.write(drawn(photo("plain.png")), "gif", gif);
    assertThatThrownBy(() -> Picture.of(gif.toByteArray()).scaled())
        .hasMessageContaining("no JPEG and no PNG");
  }

  @Test
  void ofAnotherFileNothingIsKnown() {
    assertThat(Notes.of(new byte[0])).isEqualTo(new Notes(1, Place.UNTOLD));
    assertThat(Notes.of("GIF89a".getBytes(ISO_8859_1))).isEqualTo(new Notes(1, Place.UNTOLD));
  }
}
