package kitwright.report;

import kitwright.document.Filled;
import kitwright.document.Slots;
import kitwright.document.Templates;

/**
 * One document, before it is laid out by its template.
 *
 * @param file its name, without folder: {@code budget.md}
 * @param template the name of its template
 * @param slots what the template may name
 */
public record Sheet(String file, String template, Slots slots) {
  /** Lays it out. */
  public Filled fill(Templates templates) {
    return templates.fill(template, slots);
  }
}
