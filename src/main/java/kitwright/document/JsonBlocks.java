package kitwright.document;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import kitwright.finding.PlainJson;
import kitwright.value.Money;

/**
 * Blocks as JSON: a table is a list of objects by the names of its columns, a list one of its
 * items, anything else its words. Days are ISO 8601, and what has nothing to say is left out. Money
 * is {@code 46.20 EUR} and a quantity {@code 6 sheet}, as records write them; beside {@code "paid"}
 * stand {@code "paid.number"} and {@code "paid.currency"}, beside {@code "qty"} {@code
 * "qty.number"} and {@code "qty.unit"}. Words that tell other values have these beside them in the
 * same way; of a list they are lists, in its order.
 */
final class JsonBlocks implements Block.Cases<Void>, Value.Cases<Void> {
  private final JsonGenerator json;

  private JsonBlocks(JsonGenerator json) {
    this.json = json;
  }

  /** An object of what each slot means, in their order. */
  static String of(Slots slots) {
    return PlainJson.of(json -> new JsonBlocks(json).write(slots));
  }

  private void write(Slots slots) throws IOException {
    json.writeStartObject();
    for (Map.Entry<String, Slots.Slot> slot : slots.all().entrySet()) {
      Slots.Slot said = slot.getValue();
      if (said.sentence().isPresent()) {
        member(slot.getKey(), said.sentence().get().value());
      } else if (said.meant().isPresent()) {
        member(slot.getKey(), said.meant().get());
      } else {
        json.writeArrayFieldStart(slot.getKey());
        said.blocks().forEach(block -> block.match(this));
        json.writeEndArray();
      }
    }
    json.writeEndObject();
  }

  private void member(String name, Value value) throws IOException {
    boolean silent =
        value instanceof Value.Told told
            ? told.words() instanceof Value.Nothing
            : value instanceof Value.Nothing;
    if (!silent) {
      json.writeFieldName(name);
      value.match(this);
    }
    for (Map.Entry<String, Value> part : value.beside().entrySet()) {
      member(name + "." + part.getKey(), part.getValue());
    }
  }

  private interface Body {
    void write() throws IOException;
  }

  private static Void wrote(Body body) {
    try {
      body.write();
      return null;
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private Void words(List<Inline> parts) {
    return text(TerminalBlocks.words(parts));
  }

  @Override
  public Void heading(Block.Heading heading) {
    return words(heading.text());
  }

  @Override
  public Void paragraph(Block.Paragraph paragraph) {
    return words(paragraph.text());
  }

  @Override
  public Void code(Block.Code code) {
    return text(code.text());
  }

  @Override
  public Void quote(Block.Quote quote) {
    quote.blocks().forEach(block -> block.match(this));
    return null;
  }

  @Override
  public Void rule() {
    return null;
  }

  @Override
  public Void prose(Prose prose) {
    return text(prose.markdown());
  }

  @Override
  public Void items(Items items) {
    return wrote(
        () -> {
          json.writeStartArray();
          items.items().forEach(item -> item.forEach(block -> block.match(this)));
          json.writeEndArray();
        });
  }

  @Override
  public Void table(Table table) {
    return rows(table);
  }

  @Override
  public Void rows(Table table) {
    return wrote(
        () -> {
          json.writeStartArray();
          for (Row row : table.rows()) {
            json.writeStartObject();
            for (int i = 0; i < table.columns().size(); i++) {
              member(table.columns().get(i).name(), row.cells().get(i).value());
            }
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  @Override
  public Void nothing() {
    return wrote(json::writeNull);
  }

  @Override
  public Void text(String words) {
    return wrote(() -> json.writeString(words));
  }

  @Override
  public Void id(String id) {
    return text(id);
  }

  @Override
  public Void number(BigDecimal number) {
    return wrote(() -> json.writeNumber(number.toPlainString()));
  }

  @Override
  public Void day(LocalDate day) {
    return text(day.toString());
  }

  @Override
  public Void money(Money money) {
    return text(money.toString());
  }

  @Override
  public Void yes(boolean so) {
    return wrote(() -> json.writeBoolean(so));
  }

  @Override
  public Void several(List<Value> values) {
    return wrote(
        () -> {
          json.writeStartArray();
          values.forEach(value -> value.match(this));
          json.writeEndArray();
        });
  }

  @Override
  public Void parts(Map<String, Value> parts) {
    return wrote(
        () -> {
          json.writeStartObject();
          for (Map.Entry<String, Value> part : parts.entrySet()) {
            member(part.getKey(), part.getValue());
          }
          json.writeEndObject();
        });
  }
}
