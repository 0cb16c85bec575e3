package kitwright.report.words;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
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
 * @param photos that lie beside it, JPEG by file name
 */
public record Sheet(
    String file,
    String template,
    Slots slots,
    Map<String, String> drawings,
    Map<String, byte[]> photos) {
  public Sheet {
    drawings = Map.copyOf(drawings);
    photos = Map.copyOf(photos);
  }

  /** A document with drawings. */
  public Sheet(String file, String template, Slots slots, Map<String, String> drawings) {
    this(file, template, slots, drawings, Map.of());
  }

  /** A document without a drawing. */
  public Sheet(String file, String template, Slots slots) {
    this(file, template, slots, Map.of());
  }

  /** The same with photos, JPEG by file name. */
  public Sheet with(Map<String, byte[]> more) {
    return new Sheet(file, template, slots, drawings, more);
  }

  /** For whom it is not told what the ledger lacks: they are told what is theirs. */
  private static final Set<String> TO_OTHERS = Set.of("claim", "claim-reminder", "week-public");

  /** The same, with a word of what all of it lacks; as it is where it goes out to others. */
  public Sheet lacking(String words) {
    return TO_OTHERS.contains(template)
        ? this
        : new Sheet(file, template, slots.lacking(words), drawings, photos);
  }

  /** All that lies beside it, by file name and in its order. */
  public Map<String, byte[]> pictures() {
    Map<String, byte[]> all = new TreeMap<>(photos);
    drawings.forEach((name, svg) -> all.put(name, svg.getBytes(UTF_8)));
    return all;
  }

  /** Lays it out. */
  public Filled fill(Templates templates) {
    return templates.fill(template, slots);
  }
}
