package kitwright.report.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

/**
 * A photo for others: turned upright, no larger than a page shows, drawn anew so that nothing goes
 * along that is not seen: no place, no camera, no name.
 */
public final class Picture {
  private static final int LONGEST = 1280;
  private static final long MOST_PIXELS = 100_000_000L;
  private static final float QUALITY = 0.85f;

  private final byte[] file;
  private final Notes notes;

  private Picture(byte[] file) {
    this.file = file;
    this.notes = Notes.of(file);
  }

  /** A photo as it lies in its file. */
  public static Picture of(byte[] file) {
    return new Picture(file.clone());
  }

  /** Whether the file says where the photo was taken. */
  public boolean tellsPlace() {
    return notes.place() == Notes.Place.TOLD;
  }

  /** Whether it cannot be told if the file says where the photo was taken. */
  public boolean mayTellPlace() {
    return notes.place() == Notes.Place.UNREADABLE;
  }

  /**
   * The photo as JPEG for others.
   *
   * @throws PictureFault in one sentence, why it cannot be shown
   */
  public byte[] scaled() throws PictureFault {
    if (!Png.is(file) && !Jpeg.is(file)) {
      throw new PictureFault("The photo cannot be read as a picture: it is no JPEG and no PNG.");
    }
    Jpeg pixels = Jpeg.of(file);
    if (pixels.colours() == Jpeg.PRINTERS) {
      throw new PictureFault(
          "The photo is in a printer’s four colours (CMYK), which screens do not show alike.");
    }
    if (pixels.isCutShort() || (Png.is(file) && !Png.of(file).isWhole())) {
      throw new PictureFault("The photo is cut short: the end of its file is missing.");
    }
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw new PictureFault("The photo cannot be read as a picture.");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in, true, true);
        return jpeg(upright(shrunk(read(reader)), notes.orientation()));
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException unreadable) {
      throw new PictureFault(
          "The photo is broken: it begins like a picture but cannot be read to its end.");
    }
  }

  /** Asks for the size before any pixel is unpacked, and unpacks no more than are needed. */
  private static BufferedImage read(ImageReader reader) throws IOException, PictureFault {
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    if ((long) width * height > MOST_PIXELS) {
      throw new PictureFault(
          "The photo claims to be " + width + " by " + height + " pixels; 100 million are read.");
    }
    int every = Math.max(1, Math.max(width, height) / (2 * LONGEST));
    ImageReadParam how = reader.getDefaultReadParam();
    how.setSourceSubsampling(Math.min(every, width), Math.min(every, height), 0, 0);
    return reader.read(0, how);
  }

  private static BufferedImage shrunk(BufferedImage image) {
    double scale = Math.min(1, (double) LONGEST / Math.max(image.getWidth(), image.getHeight()));
    int width = (int) Math.max(1, Math.round(image.getWidth() * scale));
    int height = (int) Math.max(1, Math.round(image.getHeight() * scale));
    BufferedImage out = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = out.createGraphics();
    Image drawn = image.getScaledInstance(width, height, Image.SCALE_AREA_AVERAGING);
    graphics.drawImage(drawn, 0, 0, Color.WHITE, null);
    graphics.dispose();
    return out;
  }

  /** Turned as the camera says it was held: Exif's orientations 1 to 8. */
  private static BufferedImage upright(BufferedImage image, int orientation) {
    if (orientation < 2 || orientation > 8) {
      return image;
    }
    int width = image.getWidth();
    int height = image.getHeight();
    boolean turned = orientation > 4;
    BufferedImage out =
        new BufferedImage(
            turned ? height : width, turned ? width : height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int right = width - 1 - x;
        int down = height - 1 - y;
        int toX =
            switch (orientation) {
              case 2, 3 -> right;
              case 4 -> x;
              case 5, 8 -> y;
              default -> down;
            };
        int toY =
            switch (orientation) {
              case 2 -> y;
              case 3, 4 -> down;
              case 5, 6 -> x;
              default -> right;
            };
        out.setRGB(toX, toY, image.getRGB(x, y));
      }
    }
    return out;
  }

  private static byte[] jpeg(BufferedImage image) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(QUALITY);
      writer.write(null, new IIOImage(image, null, null), how);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
