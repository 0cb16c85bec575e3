package kitwright.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kitwright.value.Visible;

/**
 * Findings on one screen of a terminal: what is wrong and where, gravest first; what follows from
 * another, what is like several shown before, and what finds no room is counted.
 *
 * @param width columns to fill; fewer than 40 are taken as 40
 * @param height lines to fill
 * @param ink whether to colour
 */
public record BriefFindings(int width, int height, Ink ink) {
  /** Lines of a usual page, where no terminal says how many it has. */
  public static final int SCREEN = 40;

  private static final int LEAST_WIDTH = 40;
  private static final int ALIKE = 4;
  private static final String HANG = " ".repeat("Stop  ".length());

  public BriefFindings {
    width = Math.max(LEAST_WIDTH, width);
  }

  /** The whole text, each line ended by a line feed; no more lines than fit. */
  public String render(List<Matter> matters) {
    List<Finding> all = Matter.findings(matters);
    List<String> closing = closing(all);
    List<String> lines = new ArrayList<>();
    List<Finding> untold = new ArrayList<>();
    Map<String, Integer> alike = new HashMap<>();
    int room = height - closing.size() - 1;
    for (Matter matter : matters) {
      List<String> told = lines(matter);
      if (alike.merge(matter.cause().rule(), 1, Integer::sum) > ALIKE) {
        matter.findings().forEach(untold::add);
      } else if (told.size() > room - lines.size()) {
        room = 0;
        matter.findings().forEach(untold::add);
      } else {
        lines.addAll(told);
      }
    }
    if (!untold.isEmpty()) {
      lines.add("and " + untold.size() + " more: " + Tally.of(untold).words() + ".");
    }
    lines.addAll(closing);
    return String.join("\n", lines) + "\n";
  }

  private List<String> closing(List<Finding> all) {
    List<String> closing = new ArrayList<>();
    closing.add("");
    closing.add(Tally.of(all).told(Tally.files(all)));
    closing.addAll(
        Wrapping.at(
            width,
            "“kitwright check --all” tells all of it, with what follows and how to mend it;"
                + " “kitwright check NAME” what concerns a record, a file or a rule."));
    return closing;
  }

  private List<String> lines(Matter matter) {
    Finding cause = matter.cause();
    List<String> lines =
        Wrapping.at(
            width - HANG.length(), Visible.line(cause.what() + " In " + cause.at()) + more(matter));
    List<String> out = new ArrayList<>();
    for (String line : lines) {
      out.add(HANG + line);
    }
    String word = cause.severity().title();
    out.set(
        0,
        ink.severity(cause.severity(), word)
            + " ".repeat(HANG.length() - word.length())
            + lines.get(0));
    return out;
  }

  private static String more(Matter matter) {
    int following = matter.following().size();
    return following == 0
        ? ""
        : "; " + following + " more " + (following == 1 ? "follows" : "follow") + " from it";
  }
}
