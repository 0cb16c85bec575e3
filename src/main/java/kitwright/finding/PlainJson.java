package kitwright.finding;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.HexFormat;
import kitwright.value.Visible;

/** JSON text (RFC 8259) in one fixed layout, with hidden characters escaped. */
public final class PlainJson {
  private PlainJson() {}

  /** Writes one value. */
  public interface Body {
    void writeTo(JsonGenerator json) throws IOException;
  }

  /** The text that {@code body} writes, two spaces a level, ended by a line feed. */
  public static String of(Body body) {
    var text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(layout());
      body.writeTo(json);
    } catch (IOException e) {
      throw new UncheckedIOException("a string writer cannot fail", e);
    }
    return escaped(text.append('\n').toString());
  }

  private static DefaultPrettyPrinter layout() {
    var indent = new DefaultIndenter("  ", "\n");
    var printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator(""));
    printer.indentArraysWith(indent);
    printer.indentObjectsWith(indent);
    return printer;
  }

  /** Hidden characters stand inside strings only, so that they can be escaped afterwards. */
  private static String escaped(String json) {
    var out = new StringBuilder(json.length());
    json.codePoints()
        .forEach(
            c -> {
              if (c == '\n' || !Visible.isHidden(c)) {
                out.appendCodePoint(c);
              } else {
                for (char unit : Character.toChars(c)) {
                  out.append("\\u").append(HexFormat.of().toHexDigits(unit));
                }
              }
            });
    return out.toString();
  }
}
