package kitwright.document;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kitwright.value.Place;

/**
 * Templates by name: the builder's own first, else the one that comes with the program. A template
 * is Markdown with tags (see {@link Tags}); it reads its {@link Slots} and nothing else.
 */
public final class Templates {
  private static final int LONGEST = 200_000;

  private static final Mustache.Compiler COMPILER =
      Mustache.compiler()
          .escapeHTML(false)
          .strictSections(true)
          .emptyStringIsFalse(true)
          .withCollector(new MapsOnly());

  private final Function<String, Optional<String>> own;
  private final Function<String, Optional<String>> packaged;

  /**
   * Templates from two places.
   *
   * @param own text of the ledger's {@code templates/NAME.md}, if there is one
   * @param packaged text of the template that comes with the program
   */
  public Templates(
      Function<String, Optional<String>> own, Function<String, Optional<String>> packaged) {
    this.own = own;
    this.packaged = packaged;
  }

  /** The template {@code name} with {@code slots} filled in. */
  public Filled fill(String name, Slots slots) {
    if (!Tags.isName(name)) {
      throw new IllegalArgumentException("a template's name is kebab-case: " + name);
    }
    String path = "templates/" + name + ".md";
    return own.apply(name)
        .map(text -> fill(path, text, slots))
        .or(() -> packaged.apply(name).map(text -> fill("built-in " + path, text, slots)))
        .orElseGet(
            () ->
                broken(
                    Place.wholeFile(path),
                    "There is no template of this name.",
                    "Write it, or ask for one that there is."));
  }

  private static Filled fill(String file, String raw, Slots slots) {
    String text = raw.replaceFirst("^\ufeff", "").replace("\r\n", "\n");
    if (text.length() > LONGEST) {
      return broken(
          Place.wholeFile(file),
          "The template is longer than " + LONGEST + " characters.",
          "Shorten it.");
    }
    List<TemplateFault> faults = Tags.faults(file, text, slots.names());
    if (!faults.isEmpty()) {
      return new Filled.Broken(faults);
    }
    try {
      String filled = COMPILER.compile(text).execute(slots.texts());
      return new Filled.Text(filled.stripTrailing() + "\n");
    } catch (MustacheException e) {
      return broken(Place.wholeFile(file), "The template cannot be read.", "Look at its tags.");
    }
  }

  private static Filled broken(Place at, String what, String mend) {
    return new Filled.Broken(List.of(new TemplateFault(at, what, mend)));
  }
}
