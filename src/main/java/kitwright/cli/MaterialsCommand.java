package kitwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import kitwright.ledger.Ledger;
import kitwright.ledger.Material;
import kitwright.report.stores.MaterialsTold;

/** Lists materials: those of the ledger, then the built-in ones. */
final class MaterialsCommand implements Command {
  private final LedgerOptions options = new LedgerOptions();
  private final Telling telling = new Telling();
  private String filter = "";

  @Override
  public void declare(Declaring to) {
    to.says(
        "Lists the materials of the ledger and the built-in ones, with their values and sources.",
        "A value marked ? has not been confirmed in its source: nothing structural passes on it.",
        "For example: kitwright materials");
    options.declare(to);
    telling.declare(to);
    to.mayPlace(
        "FILTER", given -> filter = given, "Only those whose id, kind or description holds this.");
  }

  @Override
  public int run(Session session) {
    Opened opened = Opened.of(options, session);
    Ledger ledger = opened.ledger(session);
    List<Material> all = new ArrayList<>(ledger.materials());
    ledger.builtInMaterials().stream()
        .filter(one -> ledger.materials().stream().noneMatch(own -> own.id().equals(one.id())))
        .forEach(all::add);
    List<Material> chosen = all.stream().filter(this::isWanted).toList();
    if (chosen.isEmpty()) {
      throw new Refusal(
          "No material holds “" + filter + "”.", "“kitwright materials” alone lists them all.");
    }
    return telling.tell(MaterialsTold.sheet(ledger, chosen), opened, session);
  }

  private boolean isWanted(Material material) {
    String wanted = filter.toLowerCase(Locale.ROOT);
    return Stream.of(material.id(), material.sort().name(), material.what().orElse(""))
        .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(wanted));
  }
}
