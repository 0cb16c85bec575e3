package kitwright.report.photo;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.nio.ByteBuffer;
import java.util.Set;

/**
 * What an editor’s desk wrote of a photo: records of the news agencies, bare or in a frame of image
 * resources, of which 0x0404 holds them (common practice, no source).
 *
 * @see "IPTC-IIM 4.2, 1.6 (data sets) and chapter 6 (record 2): content location 26 and 27, city
 *     90, sub-location 92, province 95, country 100 and 101"
 */
final class Iptc {
  private static final String FRAME = "Photoshop 3.0\0";
  private static final String RESOURCE = "8BIM";
  private static final int DESK = 0x0404;
  private static final int MARK = 0x1C;
  private static final int RECORD = 2;
  private static final int LENGTH_IN_LENGTH = 0x8000;
  private static final Set<Integer> PLACES = Set.of(26, 27, 90, 92, 95, 100, 101);

  private Iptc() {}

  /**
   * Whether its data sets name a place.
   *
   * @throws RuntimeException where they are longer than the bytes
   */
  static boolean hasPlace(byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    String start = new String(bytes, 0, Math.min(bytes.length, FRAME.length()), ISO_8859_1);
    if (start.equals(FRAME)) {
      in.position(FRAME.length());
    } else if (!start.startsWith(RESOURCE)) {
      return inSets(in);
    }
    boolean place = false;
    while (in.remaining() >= 12) {
      in.getInt();
      int kind = in.getShort();
      int name = in.get() & 0xFF;
      in.position(in.position() + name + (name + 1) % 2);
      int length = in.getInt();
      place |= kind == DESK && inSets(in.slice(in.position(), length));
      in.position(Math.min(in.limit(), in.position() + length + length % 2));
    }
    return place;
  }

  private static boolean inSets(ByteBuffer in) {
    boolean place = false;
    while (in.remaining() >= 5 && in.get() == MARK) {
      int record = in.get();
      int set = in.get() & 0xFF;
      int length = in.getShort() & 0xFFFF;
      if ((length & LENGTH_IN_LENGTH) != 0) {
        throw new IllegalArgumentException("a data set of over 32 kB");
      }
      in.position(in.position() + length);
      place |= record == RECORD && PLACES.contains(set) && length > 0;
    }
    return place;
  }
}
