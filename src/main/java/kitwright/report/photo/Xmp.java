package kitwright.report.photo;

import java.util.regex.Pattern;

/**
 * What programs wrote of a photo as XML, by the names of its properties whatever their prefix.
 *
 * @see "ISO 16684-1 (XMP), and the properties for places of Exif in XMP (CIPA DC-010) and of the
 *     IPTC Photo Metadata Standard 2023.1"
 */
final class Xmp {
  private static final Pattern PLACE =
      Pattern.compile(
          "GPS(?:Dest)?L(?:at|ong)itude|[\\w-]+:(?:City|State|Country|CountryCode|CountryName|Location"
              + "|LocationCreated|LocationShown|LocationName|Sublocation|ProvinceState|WorldRegion)[\\s=>/]");

  private Xmp() {}

  static boolean hasPlace(String xml) {
    return PLACE.matcher(xml).find();
  }
}
