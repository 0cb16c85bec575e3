package kitwright.document;

import java.util.ArrayList;
import java.util.List;

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
    List<List<Block>> blocks = new ArrayList<>();
    for (Inline item : items) {
      blocks.add(List.of(new Paragraph(List.of(item))));
    }
    return blocks;
  }

  @Override
  public <R> R match(Block.Cases<R> cases) {
    return cases.items(this);
  }

  /** Whether each item is one paragraph at most, with lists below it. */
  boolean isTight() {
    return items.stream().allMatch(Items::isShort);
  }

  private static boolean isShort(List<Block> item) {
    return item.stream().filter(block -> !(block instanceof Items)).count() <= 1;
  }
}
