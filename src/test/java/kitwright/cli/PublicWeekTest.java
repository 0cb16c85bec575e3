package kitwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The public week as a builder asks for it. */
class PublicWeekTest {
  @TempDir private Path folder;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(
        folder.resolve("all.yaml"),
        """
        build: {name: Tern, currency: EUR, started: 2026-01-05}
        parties: [{id: me, name: Nora Kvist, role: builder}, {id: bo, name: Bo Li, role: helper}]
        kit: [{id: bolt, what: "bolt M12 x 120", qty: 4}]
        tasks: [{id: t, what: Help Bo, public: Planking, phase: hull, takes: 2 d}]
        """);
    day("audience: public\n", "Cold.\nBo planed all day.\n");
  }

  private void day(String keys, String body) throws IOException {
    Files.createDirectories(folder.resolve("log"));
    Files.writeString(
        folder.resolve("log/2026-02-23.md"),
        "---\nday: 2026-02-23\nhours: {me: 1}\ntasks: {t: 40 %}\n" + keys + "---\n" + body);
  }

  @Test
  void whatWasUsedIsToldToEverybodyAsToTheCrew() throws IOException {
    day("used: [{item: bolt, qty: 2}, {item: bolt, qty: 1 kg}, {item: bolt, qty: 1}]\n", "Cold.\n");
    String used = "Used: 3\u00a0× bolt M12 x 120 and 1\u00a0kg of bolt M12 x 120.";
    assertThat(week().out()).contains(used, "1 hour of work on 1 day.");
    Run crew = Run.in(folder, "week", "--ending", "2026-03-01");
    assertThat(crew.out()).contains(used, "1 hour of work on 1 day.");
  }

  private Run week(String... more) {
    return Run.in(
        folder,
        Stream.concat(
                Stream.of("week", "--audience", "public", "--ending", "2026-03-01"),
                Stream.of(more))
            .toArray(String[]::new));
  }

  @Test
  void whatLooksPrivateIsShownAndNothingIsWritten() {
    Run run = week("--out", "site");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("log/2026-02-23.md:8:1", "“Bo” looks private: the name of bo", "[Bo]");
    assertThat(folder.resolve("site")).doesNotExist();
  }

  @Test
  void whatItsAuthorAllowsThereGoesOut() throws IOException {
    day("audience: public\nallow: [bo]\n", "Cold.\nBo planed all day.\n");
    Run run = week();
    assertThat(run.code()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("1 hour of work on 1 day.", "Cold.\nBo planed all day.", "Planking")
        .doesNotContain("Help");
  }

  @Test
  void aPartyMayLetItsNameBeRead() throws IOException {
    Path all = folder.resolve("all.yaml");
    Files.writeString(
        all, Files.readString(all).replace("role: helper", "role: helper, public: yes"));
    assertThat(week().code()).isZero();
  }

  @Test
  void aDayThatSaysNothingIsForTheCrewAndItIsSaidHowToMarkIt() throws IOException {
    day("", "Bo planed all day.\n");
    Run run = week();
    assertThat(run.code()).isZero();
    assertThat(run.out()).doesNotContain("Bo").contains("Planking");
    assertThat(run.err()).contains("one day of this week", "“audience: public”");
  }

  @Test
  void whatItTakesForTheCrewStaysWithTheCrew() throws IOException {
    day("", "Bo planed.\n\naudience: public\n\nCold.\n\naudience: crew\n\nBo slept.\n");
    Run run = week();
    assertThat(run.out()).contains("Cold.").doesNotContain("Bo", "audience");
    Run crew = Run.in(folder, "week", "--ending", "2026-03-01");
    assertThat(crew.out()).contains("Bo planed.", "Cold.", "Bo slept.").doesNotContain("audience:");
  }

  @Test
  void aLineForTheCrewHoweverItIsWrittenLetsNothingOut() throws IOException {
    for (String line :
        List.of(
            "Audience: crew",
            "audience:crew",
            "AUDIENCE: CREW",
            "audience: Crew.",
            "audience: the crew only",
            "**audience: crew**",
            "> audience: crew",
            "audience = crew",
            "audience: publik")) {
      day("audience: public\n", "Cold.\n\n" + line + "\n\nThe stove went out twice.\n");
      assertThat(week().out()).as(line).contains("Cold.").doesNotContain("stove", line);
    }
  }

  /** A JPEG whose Exif says “turn me” (orientation 6) and has a place; by Exif 2.32, 4.6. */
  private static byte[] photo() throws IOException {
    ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
    BufferedImage image = new BufferedImage(2400, 1200, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 1200; y++) {
      for (int x = 0; x < 1200; x++) {
        image.setRGB(x, y, 0xFFFFFF);
      }
    }
    ImageIO.write(image, "jpeg", jpeg);
    byte[] plain = jpeg.toByteArray();
    byte[] exif =
        HexFormat.of()
            .parseHex(
                "FFE1003245786966"
                    + "00004D4D002A00000008"
                    + "0002"
                    + "01120003000000010006"
                    + "0000"
                    + "8825000400000001"
                    + "00000026"
                    + "00000000"
                    + "0000"
                    + "00000000");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(plain, 0, 2);
    out.writeBytes(exif);
    out.writeBytes("\u00ff\u00fe\u0000\u000bNoraKvist".getBytes(StandardCharsets.ISO_8859_1));
    out.write(plain, 2, plain.length - 2);
    return out.toByteArray();
  }

  @Test
  void aPhotoGoesOutScaledUprightAndWithNothingUnseenInIt() throws IOException {
    Files.createDirectories(folder.resolve("evidence"));
    Files.write(folder.resolve("evidence/nora-kvist.jpg"), photo());
    String photos = "photos: [{file: evidence/nora-kvist.jpg, says: fair, audience: public%s}]\n";
    day(photos.formatted(""), "");
    Run refused = week("--out", "site");
    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.err()).contains("The photo says where it was taken.", ":5:");
    day(photos.formatted(", allow: [place]"), "");
    Run run = week("--out", "site");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    Path jpeg = folder.resolve("site/week-2026-W09-1.jpg");
    String bytes = Files.readString(jpeg, StandardCharsets.ISO_8859_1);
    assertThat(bytes).doesNotContain("Exif", "Nora");
    BufferedImage shown = ImageIO.read(jpeg.toFile());
    assertThat(List.of(shown.getWidth(), shown.getHeight())).containsExactly(640, 1280);
    assertThat(shown.getRGB(320, 100) & 0xFF)
        .as("the left half came to the top")
        .isGreaterThan(200);
    assertThat(shown.getRGB(320, 1180) & 0xFF).isLessThan(50);
    assertThat(Files.readString(folder.resolve("site/week-2026-W09-public.md")))
        .contains("![Photo 1](week-2026-W09-1.jpg)  \n*fair*")
        .doesNotContain("nora");
  }

  @Test
  void aFileThatIsNoPictureIsToldInsteadOfAnEmptyFrame() throws IOException {
    Files.createDirectories(folder.resolve("evidence"));
    Files.writeString(folder.resolve("evidence/a.jpg"), "no picture");
    day("photos: [{file: evidence/a.jpg, audience: public}]\n", "");
    Run run = week("--out", "site");
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("cannot be read as a picture");
    assertThat(folder.resolve("site")).doesNotExist();
  }

  private String refusedPhoto(byte[] bytes) throws IOException {
    Files.createDirectories(folder.resolve("evidence"));
    Files.write(folder.resolve("evidence/a.jpg"), bytes);
    day("photos: [{file: evidence/a.jpg, audience: public}]\n", "");
    Run run = week("--out", "site");
    assertThat(run.code()).isEqualTo(1);
    assertThat(folder.resolve("site")).doesNotExist();
    assertThat(run.err()).contains("log/2026-02-23.md:5:").doesNotContain("Exception");
    return run.err();
  }

  @Test
  void aPhotoWhoseFileWasCutShortIsNotShownHalfGrey() throws IOException {
    byte[] whole = photo();
    assertThat(refusedPhoto(Arrays.copyOf(whole, whole.length / 2))).contains("is cut short");
  }

  @Test
  void aPictureThatClaimsToBeHugeIsNotUnpacked() throws IOException {
    byte[] header =
        HexFormat.of().parseHex("89504E470D0A1A0A0000000D49484452" + "0000EA600000EA600802000000");
    byte[] end = HexFormat.of().parseHex("0000000049454E44AE426082");
    ByteBuffer out = ByteBuffer.allocate(header.length + 4 + 12).put(header);
    CRC32 sum = new CRC32();
    sum.update(header, 12, 17);
    out.putInt((int) sum.getValue());
    assertThat(refusedPhoto(out.put(end).array())).contains("60000 by 60000 pixels");
  }

  @Test
  void aJpegInPrintersColoursIsToldAsThat() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(
          null,
          new IIOImage(Raster.createInterleavedRaster(0, 16, 16, 4, null), null, null),
          writer.getDefaultWriteParam());
    } finally {
      writer.dispose();
    }
    assertThat(refusedPhoto(bytes.toByteArray())).contains("CMYK");
  }

  @Test
  void aPhotoThatIsNotThereIsNamed() throws IOException {
    day("photos: [{file: evidence/gone.jpg, audience: public}]\n", "");
    Run run = week();
    assertThat(run.code()).isEqualTo(1);
    assertThat(run.err()).contains("There is no photo at “evidence/gone.jpg”");
  }

  @Test
  void aPngUnderAnotherEndingGoesOutWithoutItsWords() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(40, 20, BufferedImage.TYPE_INT_ARGB), "png", bytes);
    byte[] plain = bytes.toByteArray();
    byte[] words = "tEXtAuthor\u0000Nora Kvist".getBytes(StandardCharsets.ISO_8859_1);
    CRC32 sum = new CRC32();
    sum.update(words);
    ByteBuffer png = ByteBuffer.allocate(plain.length + words.length + 8).put(plain, 0, 33);
    png.putInt(words.length - 4).put(words).putInt((int) sum.getValue());
    png.put(plain, 33, plain.length - 33);
    Files.createDirectories(folder.resolve("evidence"));
    Files.write(folder.resolve("evidence/a.jpg"), png.array());
    day("photos: [{file: evidence/a.jpg, audience: public}]\n", "");
    assertThat(week("--out", "site").code()).isZero();
    assertThat(
            Files.readString(
                folder.resolve("site/week-2026-W09-1.jpg"), StandardCharsets.ISO_8859_1))
        .doesNotContain("Nora", "tEXt");
  }

  @Test
  void asAPageItIsOneFileWithItsPhotosInIt() throws IOException {
    Files.createDirectories(folder.resolve("evidence"));
    Files.write(folder.resolve("evidence/nora-kvist.jpg"), photo());
    day(
        "audience: public\n"
            + "photos: [{file: evidence/nora-kvist.jpg, says: fair & true, audience: public, allow:"
            + " [place]}]\n",
        "Cold, <script>alert(1)</script> and <b>bold</b>.\n");
    Run run = week("--format", "html", "--out", "site");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("week-2026-W09-public.html");
    assertThat(folder.resolve("site").toFile().list()).containsExactly("week-2026-W09-public.html");
    String text = Files.readString(folder.resolve("site/week-2026-W09-public.html"));
    assertThat(text).doesNotContain("<script", "<b>", "nora").contains("Kitwright from the ledger");
    Document page = Jsoup.parse(text);
    assertThat(page.title()).isEqualTo("Tern: Mon 23 February to Sun 1 March 2026");
    assertThat(page.text()).contains("Cold, <script>alert(1)</script> and <b>bold</b>.");
    assertThat(page.select("img ~ em").text()).isEqualTo("fair & true");
    String data = page.getElementsByTag("img").attr("src");
    assertThat(data).startsWith("data:image/jpeg;base64,");
    byte[] jpeg = Base64.getDecoder().decode(data.substring(data.indexOf(',') + 1));
    assertThat(new String(jpeg, StandardCharsets.ISO_8859_1)).doesNotContain("Exif", "Nora");
    assertThat(ImageIO.read(new ByteArrayInputStream(jpeg)).getHeight()).isEqualTo(1280);
    assertThat(week("--format", "html").out() + "<!--").startsWith(text.split("<!-- ")[0]);
  }

  @Test
  void aPageOfWhatLooksPrivateIsNotWrittenEither() {
    for (String[] how : List.of(new String[] {}, new String[] {"--out", "site"})) {
      Run run =
          week(Stream.concat(Stream.of("--format", "html"), Stream.of(how)).toArray(String[]::new));
      assertThat(run.code()).isEqualTo(1);
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).contains("“Bo” looks private");
      assertThat(folder.resolve("site")).doesNotExist();
    }
  }

  @Test
  void printedAsMarkdownItSaysWhereItsPhotosAre() throws IOException {
    Files.createDirectories(folder.resolve("evidence"));
    Files.write(folder.resolve("evidence/a.jpg"), photo());
    day("photos: [{file: evidence/a.jpg, audience: public, allow: [place]}]\n", "");
    assertThat(week().err()).contains("--out DIR", "--format html they are in it");
    assertThat(week("--format", "html").err()).isEmpty();
  }

  @Test
  void aPictureInTheTextIsShownWhereItIsMarkedAndElseToldInWords() throws IOException {
    Files.createDirectories(folder.resolve("evidence"));
    Files.write(folder.resolve("evidence/fair.jpg"), photo());
    Files.write(folder.resolve("evidence/stem.jpg"), photo());
    day(
        """
        audience: public
        photos: [{file: evidence/fair.jpg, audience: public, allow: [place]}]
        """,
        "Here ![she is fair](../evidence/fair.jpg) and ![the stem](../evidence/stem.jpg) too;"
            + " [the list](../evidence/list.txt).\n");
    assertThat(week("--out", "site").err()).isEmpty();
    assertThat(Files.readString(folder.resolve("site/week-2026-W09-public.md")))
        .contains("Here ![she is fair](week-2026-W09-1.jpg) and the stem too; the list.")
        .doesNotContain("evidence", "stem.jpg");

    Run crew =
        Run.in(folder, "week", "--ending", "2026-03-01", "--format", "html", "--out", "crew");
    assertThat(crew.err()).isEmpty();
    Document page = Jsoup.parse(Files.readString(folder.resolve("crew/week-2026-W09.html")));
    assertThat(page.select("img[alt=she is fair], img[alt=the stem]").eachAttr("src"))
        .hasSize(2)
        .allMatch(src -> src.startsWith("data:image/jpeg;base64,"));
    assertThat(Run.in(folder, "week", "--ending", "2026-03-01").out())
        .contains("evidence/fair.jpg", "she is fair and the stem too")
        .doesNotContain("![");
  }
}
