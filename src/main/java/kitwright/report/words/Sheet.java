package kitwright.report.words;

import java.util.Map;
import kitwright.document.Filled;
import kitwright.document.Slots;
import kitwright.document.Templates;

/**
 * One document, before it is laid out by its template.
 *
 * @param file its name, without folder: {@code budget.md}
 * @param template the name of its template
 * @param slots what the template may name
 * @param drawings that lie beside it, SVG by file name
 */
public record Sheet(String file, String template, Slots slots, Map<String, String> drawings) {
  public Sheet {
    drawings = Map.copyOf(drawings);
  }

  /** A document without a drawing. */
  public Sheet(String file, String template, Slots slots) {
    this(file, template, slots, Map.of());
  }

  /** Lays it out. */
  public Filled fill(Templates templates) {
    return templates.fill(template, slots);
  }
}
