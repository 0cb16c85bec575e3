package kitwright.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import kitwright.value.Misread;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sheets as rows. {@code list/packing.xlsx} was written by Gnumeric 1.12 (ssconvert) from a CSV;
 * {@code WorkbookIT} has it write others anew. The serials of days are those of ECMA-376 part 1,
 * 18.17.4.1: 1 is the first day of 1900, of 1904 it is the second.
 */
class WorkbookTest {
  private static final String HEAD =
      "<?xml version=\"1.0\"?><worksheet"
          + " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>";

  @Test
  void aSheetThatASpreadsheetProgramWrote() throws Exception {
    byte[] bytes;
    try (InputStream in = WorkbookTest.class.getResourceAsStream("/list/packing.xlsx")) {
      bytes = in.readAllBytes();
    }
    assertThat(Workbook.isOne(bytes)).isTrue();
    assertThat(Workbook.of(bytes).rows())
        .containsExactly(
            new Csv.Row(1, List.of("Nr", "Description", "Quantity", "Price", "Arrives", "Crate")),
            new Csv.Row(
                2,
                List.of("K1", "Lärchenbohle, 22 mm", "4.5 m", "11.40 EUR/m", "2026-03-09", "C1")),
            new Csv.Row(3, List.of("K2", "bolt \"M12\"", "12", "0.8", "2026-04-16", "")),
            new Csv.Row(4, List.of("K3", "formula", "6", "0.3", "", "C2")),
            new Csv.Row(6, List.of("K4", "last", "1", "1250.25", "2026-12-31", "C2")));
  }

  @Test
  void textsInRunsInPlaceAndTruthsAndEmptyCells() throws Exception {
    String shared =
        "<sst><si><t>a</t></si><si><r><t>two"
            + " </t></r><r><t>runs</t></r><rPh><t>not</t></rPh></si></sst>";
    String sheet =
        HEAD
            + "<row r=\"2\"><c r=\"B2\" t=\"s\"><v>1</v></c><c r=\"D2\" t=\"inlineStr\"><is><t>in"
            + " place</t></is></c><c r=\"E2\" t=\"b\"><v>1</v></c><c r=\"F2\""
            + " t=\"str\"><f>A1</f><v>kept</v></c></row></sheetData></worksheet>";
    assertThat(Workbook.of(book(sheet, shared, "", "")).rows())
        .containsExactly(new Csv.Row(2, List.of("", "two runs", "", "in place", "yes", "kept")));
  }

  @ParameterizedTest
  @CsvSource({
    "61, 0, 1900-03-01",
    "46090, 0, 2026-03-09",
    "46090.75, 0, 2026-03-09",
    "44628, 1, 2026-03-09"
  })
  void daysAreSerialsWithAFormatOfDays(String serial, int since1904, String day) throws Exception {
    String sheet =
        HEAD
            + "<row><c s=\"1\"><v>"
            + serial
            + "</v></c><c s=\"2\"><v>12.50</v></c></row></sheetData></worksheet>";
    String styles =
        "<styleSheet><numFmts><numFmt numFmtId=\"164\" formatCode=\"[$-407]dd.mm.yyyy\"/><numFmt"
            + " numFmtId=\"165\" formatCode=\"0.00 &quot;days&quot;\"/></numFmts><cellXfs><xf"
            + " numFmtId=\"0\"/><xf numFmtId=\"164\"/><xf"
            + " numFmtId=\"165\"/></cellXfs></styleSheet>";
    assertThat(
            Workbook.of(book(sheet, "", styles, "<workbookPr date1904=\"" + since1904 + "\"/>"))
                .rows())
        .containsExactly(new Csv.Row(1, List.of(day, "12.5")));
  }

  @Test
  void whatNamesOtherFilesIsRefused() throws Exception {
    String outside =
        "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY e SYSTEM"
            + " \"file:///etc/hostname\">]><worksheet><sheetData><row><c"
            + " t=\"str\"><v>&e;</v></c></row></sheetData></worksheet>";
    refused(book(outside, "", "", ""), "names files outside of itself");
    String laughs =
        "<!DOCTYPE x [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;\">]><sst><si><t>&b;</t></si></sst>";
    refused(
        book(HEAD + "</sheetData></worksheet>", laughs, "", ""), "names files outside of itself");
  }

  @Test
  void whatUnpacksWithoutEndIsRefused() throws Exception {
    refused(bomb("xl/worksheets/sheet1.xml"), "unpacks to more than 8 MiB");
    refused(bomb("xl/media/photo.jpg"), "unpacks to more than 8 MiB");
  }

  @Test
  void whatIsDamagedOrOfAnotherKindIsOneClearLine() throws Exception {
    refused("PK\u0003\u0004".getBytes(StandardCharsets.ISO_8859_1), "damaged or no xlsx");
    refused(new byte[] {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0}, "locked by a password");
    byte[] whole = book(HEAD + "<row><c><v>1</v></c></row></sheetData></worksheet>", "", "", "");
    refused(java.util.Arrays.copyOf(whole, whole.length / 2), "damaged or no xlsx");
    refused(
        book(HEAD + "<row><c t=\"s\"><v>9</v></c></row></sheetData></worksheet>", "", "", ""),
        "damaged");
    refused(
        book(HEAD + "<row><c r=\"ZZZZ1\"><v>9</v></c></row></sheetData></worksheet>", "", "", ""),
        "beyond every sheet");
    refused(book(HEAD + "<row>", "", "", ""), "damaged");
  }

  private static void refused(byte[] bytes, String why) {
    assertThatThrownBy(() -> Workbook.of(bytes, 8 << 20))
        .isInstanceOfSatisfying(Misread.class, misread -> assertThat(misread.what()).contains(why));
  }

  private static byte[] bomb(String name) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry(name));
      byte[] nothing = new byte[1 << 20];
      for (int i = 0; i < 12; i++) {
        zip.write(nothing);
      }
    }
    return out.toByteArray();
  }

  private static byte[] book(String sheet, String shared, String styles, String properties)
      throws IOException {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put(
        "xl/workbook.xml",
        "<workbook xmlns:r=\"r\">"
            + properties
            + "<sheets><sheet name=\"L\" r:id=\"q1\"/></sheets></workbook>");
    parts.put(
        "xl/_rels/workbook.xml.rels",
        "<Relationships><Relationship Id=\"q1\""
            + " Target=\"worksheets/sheet1.xml\"/></Relationships>");
    parts.put("xl/worksheets/sheet1.xml", sheet);
    parts.put("xl/sharedStrings.xml", shared);
    parts.put("xl/styles.xml", styles);
    parts.values().removeIf(String::isEmpty);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
      }
    }
    return out.toByteArray();
  }
}
