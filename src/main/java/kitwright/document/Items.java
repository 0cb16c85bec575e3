package kitwright.document;

import java.util.List;
import org.commonmark.node.BulletList;
import org.commonmark.node.ListBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.jspecify.annotations.Nullable;

/**
 * A list.
 *
 * @param kind what stands before each item
 * @param items each of one block or more; a list may stand inside an item
 */
public record Items(Kind kind, List<List<Block>> items) implements Block {
  /** What stands before each item. */
  public enum Kind {
    DOTS,
    NUMBERS
  }

  public Items {
    items = items.stream().map(List::copyOf).toList();
  }

  static List<List<Block>> each(List<? extends Inline> items) {
    return items.stream().map(item -> List.<Block>of(new Paragraph(List.of(item)))).toList();
  }

  @Override
  public List<Node> nodes() {
    ListBlock list = kind == Kind.DOTS ? new BulletList() : new OrderedList();
    list.setTight(items.stream().allMatch(Items::isShort));
    for (List<Block> blocks : items) {
      var item = new ListItem();
      Block.appendAll(item, blocks);
      list.appendChild(item);
    }
    return Flow.unlessEmpty(list);
  }

  private static boolean isShort(List<Block> item) {
    return item.stream().filter(block -> !(block instanceof Items)).count() <= 1;
  }

  /** Gives {@code next} another sign than {@code before}, where both are lists of one kind. */
  static void keepApart(@Nullable Node before, Node next) {
    if (before instanceof BulletList upper && next instanceof BulletList lower) {
      lower.setMarker("*".equals(upper.getMarker()) ? "-" : "*");
    }
    if (before instanceof OrderedList upper && next instanceof OrderedList lower) {
      lower.setMarkerDelimiter(")".equals(upper.getMarkerDelimiter()) ? "." : ")");
    }
  }
}
