package kitwright.report.stores;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.document.Value;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.report.words.Sheet;
import kitwright.value.Word;

/** Materials with their values and where these come from. */
public final class MaterialsTold {
  private MaterialsTold() {}

  /** The document. */
  public static Sheet sheet(Ledger ledger, List<Material> materials) {
    Slots slots =
        Slots.none()
            .sentence("build", ledger.build().name())
            .table(
                "materials",
                new Table(
                    "Materials",
                    Column.columns(
                        Column.head("Material").named("id"),
                        Column.left("Kind"),
                        Column.data("what"),
                        Column.data("built-in"),
                        Column.left("Values"),
                        Column.data("unconfirmed"),
                        Column.left("Source")),
                    materials.stream()
                        .map(each -> row(each, ledger.materials().contains(each)))
                        .toList()));
    return new Sheet("materials.md", "materials", slots);
  }

  private static Row row(Material material, boolean own) {
    List<String> shown = new ArrayList<>();
    List<String> open = new ArrayList<>();
    Map<String, Value> values = new LinkedHashMap<>();
    material
        .properties()
        .forEach(
            (property, value) -> {
              String key = property.key();
              boolean isOpen = isOpen(material, key);
              shown.add(key + " " + value + (isOpen ? " ?" : ""));
              values.put(key, Value.of(value));
              if (isOpen) {
                open.add(key);
              }
            });
    String what = material.what().map(words -> words + " ").orElse("");
    return Row.row(
        new Cell(Inline.text(material.id()), new Value.Id(material.id())),
        Cell.of(
            Word.spoken(material.sort()) + (what.isEmpty() ? "" : ", " + what.strip()) + built(own),
            new Value.Text(Word.spoken(material.sort()))),
        Cell.text(material.what()),
        Cell.yes("", !own),
        Cell.of(shown.isEmpty() ? Cell.NONE : String.join(", ", shown), new Value.Parts(values)),
        Cell.several("", open),
        Cell.of(material.source().orElse("none"), source(material)));
  }

  private static String built(boolean own) {
    return own ? "" : " (built in)";
  }

  private static Value source(Material material) {
    return material.source().<Value>map(Value.Text::new).orElseGet(Value.Nothing::new);
  }

  private static boolean isOpen(Material material, String key) {
    return material.source().isEmpty()
        || material.unconfirmed().contains("all")
        || material.unconfirmed().contains(key);
  }
}
