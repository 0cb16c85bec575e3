package kitwright.report;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import kitwright.document.Block;
import kitwright.document.Inline;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Heading;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SourceSpan;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/**
 * A day of the log as the public reads it. A block that the public may read stays as it was
 * written. Of a paragraph, heading or list item that it may not, the sentences that it may stay, as
 * plain words; where even these together say too much, none does. Any other block that it may not
 * read is left out whole: code, tables, quotes, HTML.
 *
 * @param left how many sentences and blocks were left out
 */
record PublicProse(List<Block> blocks, int left) {
  private static final int HEADINGS_BELOW = 3;

  private static final Parser PARSER =
      Parser.builder()
          .extensions(List.of(TablesExtension.create()))
          .maxOpenBlockParsers(50)
          .includeSourceSpans(IncludeSourceSpans.BLOCKS)
          .build();

  static PublicProse of(String markdown, Discretion discretion) {
    Reading reading = new Reading(markdown, discretion);
    Node root = PARSER.parse(markdown);
    for (Node block = root.getFirstChild(); block != null; block = block.getNext()) {
      reading.take(block);
    }
    return new PublicProse(List.copyOf(reading.blocks), reading.left);
  }

  private static final class Reading {
    private final List<String> lines;
    private final Discretion discretion;
    private final List<Block> blocks = new ArrayList<>();
    private int left;

    Reading(String markdown, Discretion discretion) {
      this.lines = markdown.lines().toList();
      this.discretion = discretion;
    }

    void take(Node block) {
      String source = source(block);
      if (block instanceof LinkReferenceDefinition) {
        return; // says nothing by itself
      }
      if (discretion.allows(source) && isAllowedAlone(source)) {
        blocks.add(Block.prose(source, HEADINGS_BELOW));
      } else if (block instanceof Paragraph || block instanceof Heading) {
        String kept = sentences(EveryText.words(block));
        if (!kept.isEmpty()) {
          blocks.add(Block.paragraph(kept));
        }
      } else if (block instanceof ListBlock list) {
        items(list);
      } else {
        left++;
      }
    }

    /** Looked at as it will be read: alone, where definitions elsewhere do not reach. */
    private boolean isAllowedAlone(String source) {
      return EveryText.in(PARSER.parse(source)).stream().allMatch(discretion::allows);
    }

    private void items(ListBlock list) {
      List<Inline> items = new ArrayList<>();
      for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
        String kept = sentences(EveryText.words(item));
        if (!kept.isEmpty()) {
          items.add(Inline.text(kept));
        }
      }
      if (!items.isEmpty()) {
        blocks.add(Block.bullets(items));
      }
    }

    private String source(Node block) {
      List<SourceSpan> spans = block.getSourceSpans();
      return spans.isEmpty()
          ? ""
          : lines
              .subList(spans.get(0).getLineIndex(), spans.get(spans.size() - 1).getLineIndex() + 1)
              .stream()
              .collect(Collectors.joining("\n"));
    }

    private String sentences(String words) {
      BreakIterator ends = BreakIterator.getSentenceInstance(Locale.ROOT);
      ends.setText(words);
      List<String> kept = new ArrayList<>();
      int all = 0;
      int from = ends.first();
      for (int to = ends.next(); to != BreakIterator.DONE; from = to, to = ends.next()) {
        String sentence = words.substring(from, to).strip();
        all += sentence.isEmpty() ? 0 : 1;
        if (!sentence.isEmpty() && discretion.allows(sentence)) {
          kept.add(sentence);
        }
      }
      String together = String.join(" ", kept);
      boolean sound = discretion.allows(together);
      left += sound ? all - kept.size() : all;
      return sound ? together : "";
    }
  }
}
