package kitwright.edit;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import kitwright.value.Misread;

/**
 * The first sheet of an Office Open XML workbook (ECMA-376, “xlsx”) as rows of texts: what a person
 * sees, but numbers in full and days as ISO 8601. Formulas are not worked out; the value that was
 * saved with them is read. Nothing outside the file is opened, and what unpacks without end is not
 * unpacked.
 */
final class Workbook {
  /**
   * So much may come out of the parts that are read, in bytes; a list of a million rows has less.
   */
  private static final long MOST = 1L << 30;

  private static final int MOST_COLUMNS = 16_384;

  private final byte[] bytes;
  private final Set<String> names = new HashSet<>();
  private final List<String> shared = new ArrayList<>();
  private Serials serials = new Serials(false, List.of());
  private final List<Csv.Row> rows = new ArrayList<>();

  private Workbook(byte[] bytes) {
    this.bytes = bytes;
  }

  /** Whether the bytes begin as a package of parts, or as what locked or older workbooks are. */
  static boolean isOne(byte[] bytes) {
    return bytes.length > 3
        && ((bytes[0] == 'P' && bytes[1] == 'K')
            || ((bytes[0] & 0xff) == 0xd0 && (bytes[1] & 0xff) == 0xcf));
  }

  static Workbook of(byte[] bytes) throws Misread {
    return of(bytes, MOST);
  }

  /**
   * @param most how many bytes may come out of it
   */
  static Workbook of(byte[] bytes, long most) throws Misread {
    if (bytes[0] != 'P') {
      throw new Misread(
          "the workbook is locked by a password, or of a kind from before 2007",
          "save its sheet as CSV, or the workbook as xlsx without a password");
    }
    Workbook workbook = new Workbook(bytes);
    try {
      workbook.look(most);
      workbook.read();
    } catch (IOException | XMLStreamException | RuntimeException broken) {
      throw new Misread(
          "the workbook is damaged or no xlsx (" + firstLine(broken) + ")",
          "save its sheet as CSV");
    }
    return workbook;
  }

  private static String firstLine(Exception broken) {
    return String.valueOf(broken.getMessage()).lines().findFirst().orElse("it ends too soon");
  }

  /** The rows that hold something. */
  List<Csv.Row> rows() {
    return rows;
  }

  /** Looks at what there is, and whether it comes to an end, before anything is read. */
  private void look(long most) throws IOException, Misread {
    long left = most;
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        names.add(entry.getName());
        left -= passed(zip, left);
        if (left < 0) {
          throw new Misread(
              "the workbook unpacks to more than " + (most >> 20) + " MiB",
              "save its first sheet as CSV");
        }
      }
    }
  }

  /** A part as a stream: a sheet may be larger than what memory holds. */
  private InputStream open(String part) throws IOException {
    ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes));
    for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
      if (entry.getName().equals(part)) {
        return zip;
      }
    }
    throw new IOException("it has no " + part);
  }

  /** Unpacks the rest of a part for nothing, as far as it may go. */
  private static long passed(ZipInputStream zip, long most) throws IOException {
    long all = 0;
    long some = -1;
    while (some != 0 && all <= most) {
      some = zip.skip(1 << 16);
      all += some;
    }
    return all;
  }

  private void read() throws XMLStreamException, Misread, IOException {
    serials = new Serials(isSince1904(), formats());
    if (names.contains("xl/sharedStrings.xml")) {
      readShared();
    }
    readSheet();
  }

  /** Moves from one element to the next; a document type is refused, since it can name files. */
  private final class Elements {
    private final XMLStreamReader xml;

    Elements(String part) throws XMLStreamException, IOException {
      XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
      factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
      factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
      this.xml = factory.createXMLStreamReader(open(part));
    }

    /** What comes next: {@code <c}, {@code /c}, a text, or nothing at the end. */
    Optional<String> next() throws XMLStreamException, Misread {
      while (xml.hasNext()) {
        switch (xml.next()) {
          case XMLStreamConstants.START_ELEMENT -> {
            return Optional.of("<" + xml.getLocalName());
          }
          case XMLStreamConstants.END_ELEMENT -> {
            return Optional.of("/" + xml.getLocalName());
          }
          case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
            return Optional.of("");
          }
          case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
              throw new Misread(
                  "the workbook names files outside of itself (a document type)",
                  "do not trust it; ask its sender for a CSV");
          default -> {}
        }
      }
      return Optional.empty();
    }

    String text() {
      return xml.getText();
    }

    /** An attribute by its name without a prefix; empty where it is not there. */
    String get(String name) {
      for (int i = 0; i < xml.getAttributeCount(); i++) {
        if (xml.getAttributeLocalName(i).equals(name)) {
          return xml.getAttributeValue(i);
        }
      }
      return "";
    }
  }

  private boolean isSince1904() throws XMLStreamException, Misread, IOException {
    Elements all = new Elements("xl/workbook.xml");
    for (var at = all.next(); at.isPresent(); at = all.next()) {
      if (at.get().equals("<workbookPr")) {
        return all.get("date1904").matches("1|true");
      }
    }
    return false;
  }

  /** The number format of each style of a cell, by its code. */
  private List<String> formats() throws XMLStreamException, Misread, IOException {
    List<String> formats = new ArrayList<>();
    if (!names.contains("xl/styles.xml")) {
      return formats;
    }
    Map<String, String> own = new HashMap<>();
    Elements all = new Elements("xl/styles.xml");
    boolean cells = false;
    for (var at = all.next(); at.isPresent(); at = all.next()) {
      switch (at.get()) {
        case "<numFmt" -> own.put(all.get("numFmtId"), all.get("formatCode"));
        case "<cellXfs" -> cells = true;
        case "/cellXfs" -> cells = false;
        case "<xf" -> {
          String id = all.get("numFmtId");
          if (cells) {
            formats.add(own.getOrDefault(id, Serials.builtIn(id)));
          }
        }
        default -> {}
      }
    }
    return formats;
  }

  private void readShared() throws XMLStreamException, Misread, IOException {
    Elements all = new Elements("xl/sharedStrings.xml");
    StringBuilder text = new StringBuilder();
    boolean in = false;
    boolean spoken = false; // how it is pronounced stands beside some texts
    for (var at = all.next(); at.isPresent(); at = all.next()) {
      switch (at.get()) {
        case "<si" -> text.setLength(0);
        case "/si" -> shared.add(text.toString());
        case "<rPh" -> spoken = true;
        case "/rPh" -> spoken = false;
        case "<t" -> in = true;
        case "/t" -> in = false;
        case "" -> text.append(in && !spoken ? all.text() : "");
        default -> {}
      }
    }
  }

  /** The part of the first sheet, by the workbook’s own list. */
  private String firstSheet() throws XMLStreamException, Misread, IOException {
    Elements all = new Elements("xl/workbook.xml");
    String id = "";
    for (var at = all.next(); at.isPresent() && id.isEmpty(); at = all.next()) {
      id = at.get().equals("<sheet") ? all.get("id") : "";
    }
    Elements related = new Elements("xl/_rels/workbook.xml.rels");
    for (var at = related.next(); at.isPresent(); at = related.next()) {
      if (at.get().equals("<Relationship") && related.get("Id").equals(id)) {
        String target = related.get("Target");
        return target.startsWith("/") ? target.substring(1) : "xl/" + target;
      }
    }
    throw new IOException("it has no sheet");
  }

  private void readSheet() throws XMLStreamException, Misread, IOException {
    Elements all = new Elements(firstSheet());
    List<String> cells = new ArrayList<>();
    StringBuilder value = new StringBuilder();
    String place = "";
    String sort = "";
    String style = "";
    int line = 0;
    boolean in = false;
    for (var at = all.next(); at.isPresent(); at = all.next()) {
      switch (at.get()) {
        case "<row" -> {
          line = all.get("r").isEmpty() ? line + 1 : Integer.parseInt(all.get("r"));
          cells = new ArrayList<>();
        }
        case "<c" -> {
          place = all.get("r");
          sort = all.get("t");
          style = all.get("s");
          value.setLength(0);
        }
        case "<v", "<t" -> in = true;
        case "/v", "/t" -> in = false;
        case "" -> value.append(in ? all.text() : "");
        case "/c" -> put(cells, place, told(value.toString(), sort, style));
        case "/row" -> {
          if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
            rows.add(new Csv.Row(line, List.copyOf(cells)));
          }
        }
        default -> {}
      }
    }
    rows.replaceAll(row -> new Csv.Row(row.line(), padded(row.cells())));
  }

  /** Empty cells at the end of a row are not written down; they are none that lack. */
  private List<String> padded(List<String> cells) {
    int wide = rows.get(0).cells().size();
    List<String> all = new ArrayList<>(cells);
    while (all.size() < wide) {
      all.add("");
    }
    return all;
  }

  /** Cells that are empty are passed over in the file, so each says where it stands. */
  private static void put(List<String> cells, String place, String text) throws Misread {
    int column = place.isEmpty() ? cells.size() : column(place);
    if (column >= MOST_COLUMNS) {
      throw new Misread("a cell stands at " + place + ", beyond every sheet", "save it as CSV");
    }
    while (cells.size() <= column) {
      cells.add("");
    }
    cells.set(column, text);
  }

  private static int column(String place) {
    int column = 0;
    for (int i = 0; i < place.length() && Character.isLetter(place.charAt(i)); i++) {
      column = column * 26 + place.charAt(i) - 'A' + 1;
    }
    return column - 1;
  }

  private String told(String value, String sort, String style) {
    return switch (sort) {
      case "s" -> shared.get(Integer.parseInt(value));
      case "b" -> value.equals("1") ? "yes" : "no";
      case "str", "inlineStr", "e", "d" -> value;
      default -> value.isEmpty() ? "" : serials.told(value, style);
    };
  }
}
