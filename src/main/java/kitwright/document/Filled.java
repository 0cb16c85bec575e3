package kitwright.document;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What came of filling a template. */
public sealed interface Filled {
  /** Marks the place of a slot's blocks; no text of a ledger or a template holds it. */
  String SEAM = "\u0001";

  /** Answers with the function of the case at hand. */
  <R> R match(Function<Page, R> page, Function<Broken, R> broken);

  /** The template and what is to be said in it, told in one way or another. */
  final class Page implements Filled {
    private final Template template;
    private final Slots slots;

    Page(Template template, Slots slots) {
      this.template = template;
      this.slots = slots;
    }

    /** CommonMark with the tables of GitHub Flavored Markdown, ended by a line feed. */
    public String markdown() {
      Map<String, String> said = new HashMap<>();
      String filled =
          template
                  .filled(
                      slots::speaks,
                      name -> said.computeIfAbsent(name, each -> slots.markdown(each)))
                  .stripTrailing()
              + "\n";
      return slots.lacks().map(words -> below(filled, "> " + words)).orElse(filled);
    }

    /** A paragraph below the first line where that is a heading, else before it. */
    private static String below(String text, String paragraph) {
      int end = text.startsWith("# ") ? text.indexOf('\n') + 1 : 0;
      return end == 0
          ? paragraph + "\n\n" + text
          : text.substring(0, end) + "\n" + paragraph + "\n" + text.substring(end);
    }

    /**
     * One file for a browser, which loads nothing from anywhere.
     *
     * @param pictures by their file names: SVG where the name says so, else JPEG
     */
    public String html(Map<String, byte[]> pictures) {
      return HtmlPage.of(markdown(), pictures);
    }

    /** Lines for a terminal of so many cells. */
    public String text(int width) {
      String markdown =
          template.filled(
              slots::speaks,
              name -> slots.isSentence(name) ? slots.markdown(name) : SEAM + name + SEAM);
      return TerminalBlocks.text(
          new ReadMarkdown(slots::blocks).blocks(Prose.parse(markdown)), width);
    }

    @Override
    public <R> R match(Function<Page, R> page, Function<Broken, R> broken) {
      return page.apply(this);
    }
  }

  /**
   * The template could not be filled.
   *
   * @param faults at least one, in the order of the template
   */
  record Broken(List<TemplateFault> faults) implements Filled {
    public Broken {
      faults = List.copyOf(faults);
    }

    @Override
    public <R> R match(Function<Page, R> page, Function<Broken, R> broken) {
      return broken.apply(this);
    }
  }
}
