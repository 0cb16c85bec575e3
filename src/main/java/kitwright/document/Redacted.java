package kitwright.document;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
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
 * Markdown that a person wrote, for readers who may not read all of it. A block that they may read
 * stays as it was written. Of a paragraph, heading or list item that they may not, the sentences
 * that they may stay, as plain words; where even these together say too much, none does. Any other
 * block that they may not read is left out whole: code, tables, quotes, HTML.
 *
 * @param blocks what is left
 * @param left how many sentences and blocks were left out
 */
public record Redacted(List<Block> blocks, int left) {

  private static final Parser PARSER =
      Parser.builder()
          .extensions(List.of(TablesExtension.create()))
          .maxOpenBlockParsers(50)
          .includeSourceSpans(IncludeSourceSpans.BLOCKS)
          .build();

  public Redacted {
    blocks = List.copyOf(blocks);
  }

  /**
   * The Markdown without what is not allowed.
   *
   * @param headingsBelow how many levels its headings sink, so that they stand below ours
   * @param allowed whether they may read a text; asked of every text, seen or not
   */
  public static Redacted of(String markdown, int headingsBelow, Predicate<String> allowed) {
    Reading reading = new Reading(markdown, headingsBelow, allowed);
    Node root;
    try {
      root = PARSER.parse(markdown);
    } catch (IllegalArgumentException beyond) { // such as a table of a million cells
      return new Redacted(List.of(), 1);
    }
    for (Node block = root.getFirstChild(); block != null; block = block.getNext()) {
      reading.take(block);
    }
    return new Redacted(reading.blocks, reading.left);
  }

  private static final class Reading {
    private final List<String> lines;
    private final int headingsBelow;
    private final Predicate<String> allowed;
    private final List<Block> blocks = new ArrayList<>();
    private int left;

    Reading(String markdown, int headingsBelow, Predicate<String> allowed) {
      this.lines = markdown.lines().toList();
      this.headingsBelow = headingsBelow;
      this.allowed = allowed;
    }

    void take(Node block) {
      String source = source(block);
      if (block instanceof LinkReferenceDefinition) {
        return; // says nothing by itself
      }
      if (allowed.test(source) && isAllowedAlone(source)) {
        blocks.add(Block.prose(source, headingsBelow));
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
      return EveryText.in(PARSER.parse(source)).stream().allMatch(allowed);
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
        if (!sentence.isEmpty() && allowed.test(sentence)) {
          kept.add(sentence);
        }
      }
      String together = String.join(" ", kept);
      boolean sound = allowed.test(together);
      left += sound ? all - kept.size() : all;
      return sound ? together : "";
    }
  }
}
