package kitwright.cli;

import java.util.ArrayList;
import java.util.List;
import kitwright.choice.Choice;
import kitwright.finding.Wrapping;
import kitwright.ledger.Shortage;
import kitwright.report.WaysTold;
import kitwright.value.Visible;

/** The ways out of a shortage side by side, then what is to be said of each and of all. */
final class OptionsText {
  private final Choice choice;
  private final WaysTold told;
  private final int width;

  OptionsText(Choice choice, int width) {
    this.choice = choice;
    this.told = WaysTold.of(choice);
    this.width = width;
  }

  String text() {
    StringBuilder out = new StringBuilder();
    Shortage shortage = choice.standing().shortage();
    out.append(shortage.id())
        .append(": ")
        .append(choice.standing().open())
        .append(" of ")
        .append(shortage.item().id())
        .append(" still open\n");
    out.append("If it were here today, the build would end on ")
        .append(choice.launchIfHere())
        .append(".\n\n");
    if (choice.ways().isEmpty()) {
      return out.append("No way out is written down. Add “options:” to the shortage.\n").toString();
    }
    out.append(table()).append('\n');
    told.notes().forEach(note -> paragraph(out, note));
    if (!told.turning().isEmpty()) {
      out.append('\n');
      told.turning().forEach(sentence -> paragraph(out, sentence));
    }
    out.append('\n');
    Wrapping.at(width, told.decision()).forEach(line -> out.append(line).append('\n'));
    return Visible.lines(out.toString());
  }

  private String table() {
    List<String> headings = new ArrayList<>(List.of(""));
    choice.ways().forEach(way -> headings.add(">" + way.name()));
    Listing list = Listing.of(headings.toArray(String[]::new));
    for (WaysTold.Line line : told.lines()) {
      List<String> cells = new ArrayList<>(List.of(line.name()));
      cells.addAll(line.cells());
      list.row(cells.toArray(String[]::new));
    }
    return list.text();
  }

  private void paragraph(StringBuilder out, String words) {
    List<String> lines = Wrapping.at(width - 4, words);
    for (int i = 0; i < lines.size(); i++) {
      out.append(i == 0 ? "  " : "    ").append(lines.get(i)).append('\n');
    }
  }
}
