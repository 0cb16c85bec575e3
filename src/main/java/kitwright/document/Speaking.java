package kitwright.document;

/** Whether a block says anything. */
final class Speaking implements Block.Cases<Boolean> {
  private static final Speaking CASES = new Speaking();

  private Speaking() {}

  static boolean is(Block block) {
    return block.match(CASES);
  }

  @Override
  public Boolean heading(Block.Heading heading) {
    return !TerminalBlocks.words(heading.text()).isEmpty();
  }

  @Override
  public Boolean paragraph(Block.Paragraph paragraph) {
    return !TerminalBlocks.words(paragraph.text()).isEmpty();
  }

  @Override
  public Boolean code(Block.Code code) {
    return true;
  }

  @Override
  public Boolean quote(Block.Quote quote) {
    return quote.blocks().stream().anyMatch(Speaking::is);
  }

  @Override
  public Boolean rule() {
    return true;
  }

  @Override
  public Boolean table(Table table) {
    return true;
  }

  @Override
  public Boolean items(Items items) {
    return items.items().stream().anyMatch(item -> item.stream().anyMatch(Speaking::is));
  }

  @Override
  public Boolean prose(Prose prose) {
    return !prose.markdown().isBlank();
  }
}
