package kitwright.document;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import kitwright.value.Place;

/**
 * Templates by name: the builder's own first, else the one that comes with the program. A template
 * is Markdown with tags (see {@link Template}); it reads its {@link Slots} and nothing else.
 */
public final class Templates {
  private static final int LONGEST = 200_000;

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
    if (!Template.isName(name)) {
      throw new IllegalArgumentException("a template’s name is kebab-case: " + name);
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
    String text = raw.replaceFirst("^\ufeff", "").replace("\r\n", "\n").replace(Filled.SEAM, "");
    if (text.length() > LONGEST) {
      return broken(
          Place.wholeFile(file),
          "The template is longer than " + LONGEST + " characters.",
          "Shorten it.");
    }
    Template template = Template.read(file, text, slots.names());
    return template.faults().isEmpty()
        ? new Filled.Page(template, slots)
        : new Filled.Broken(template.faults());
  }

  private static Filled broken(Place at, String what, String mend) {
    return new Filled.Broken(List.of(new TemplateFault(at, what, mend)));
  }
}
