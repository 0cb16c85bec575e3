package kitwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import kitwright.Sample;
import kitwright.document.Templates;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerFolder;
import kitwright.report.words.Sheet;
import kitwright.report.writing.PackagedTemplates;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Code;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** Documents as a reader gets them: laid out by the packaged templates, and read back. */
public final class Told {
  /** The day for which the demonstration is told. */
  public static final LocalDate SUNDAY = LocalDate.of(2026, 3, 29);

  public static final Templates PACKAGED =
      new Templates(name -> Optional.empty(), PackagedTemplates::text);

  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  private Told() {}

  public static Ledger demonstration() {
    return LedgerFolder.at(Path.of("ledger")).read(new Findings()).orElseThrow();
  }

  /** The only document of a report on a sample, on {@link Sample#TODAY}. */
  public static String markdown(Function<Facts, List<Sheet>> report, String yaml) {
    List<Sheet> sheets = report.apply(Facts.of(Sample.ledger(yaml), Sample.TODAY));
    assertThat(sheets).hasSize(1);
    return markdown(sheets.get(0));
  }

  public static String markdown(Sheet sheet) {
    return sheet
        .fill(PACKAGED)
        .match(
            text -> text.markdown(),
            broken -> {
              throw new AssertionError(broken.faults());
            });
  }

  public static Node tree(String markdown) {
    return PARSER.parse(markdown);
  }

  /** Every table, its head first, cell by cell. */
  public static List<List<List<String>>> tables(String markdown) {
    return below(tree(markdown))
        .filter(TableBlock.class::isInstance)
        .map(
            table ->
                below(table)
                    .filter(TableRow.class::isInstance)
                    .map(row -> children(row).stream().map(Told::words).toList())
                    .toList())
        .toList();
  }

  /** What a person sees, without the layout. */
  public static String words(Node node) {
    StringBuilder out = new StringBuilder();
    below(node)
        .forEach(
            inner -> {
              if (inner instanceof Text text) {
                out.append(text.getLiteral());
              } else if (inner instanceof Code code) {
                out.append(code.getLiteral());
              } else if (inner instanceof SoftLineBreak) {
                out.append(' ');
              }
            });
    return out.toString().replace('\u00a0', ' ').replace('\u2011', '-');
  }

  public static String words(String markdown) {
    return words(tree(markdown));
  }

  public static List<Node> children(Node parent) {
    List<Node> out = new ArrayList<>();
    for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
      out.add(child);
    }
    return out;
  }

  public static Stream<Node> below(Node node) {
    return children(node).stream().flatMap(child -> Stream.concat(Stream.of(child), below(child)));
  }
}
