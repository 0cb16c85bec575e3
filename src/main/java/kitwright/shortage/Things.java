package kitwright.shortage;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitwright.ledger.Kind;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay;
import kitwright.ledger.Material;
import kitwright.ledger.Spend;
import kitwright.ledger.Stock;
import kitwright.value.Decimal;
import kitwright.value.Quantity;
import kitwright.value.Ref;
import kitwright.value.Size;

/**
 * Which thing each item, stock and material counts as. An item or stock whose material some task
 * asks for by name counts as that material, so that nothing is given away twice.
 */
public final class Things {
  /**
   * So much of a thing.
   *
   * @param amount in the thing's unit
   */
  public record Amount(Thing thing, BigDecimal amount) {}

  private final Ledger ledger;
  private final Map<String, List<Pool>> pools = new LinkedHashMap<>();

  /**
   * The things of a ledger.
   *
   * @param wants all that tasks ask for: the materials among them are counted as such
   */
  public Things(Ledger ledger, Collection<Want> wants) {
    this.ledger = ledger;
    Set<Pool> all = new LinkedHashSet<>();
    wants.stream()
        .filter(want -> want.sort() == Want.Sort.MATERIAL)
        .forEach(want -> all.add(Pool.of(want.ref().id(), want.thickness(), want.qty())));
    all.forEach(pool -> pools.computeIfAbsent(pool.material(), id -> new ArrayList<>()).add(pool));
  }

  /** What is asked for; empty where nothing of that name is there, or the units are apart. */
  public Optional<Amount> of(Want want) {
    return switch (want.sort()) {
      case ITEM -> ledger.kitItem(want.ref()).flatMap(item -> of(item, want.qty()));
      case STOCK -> ledger.stock(want.ref()).flatMap(stock -> of(stock, want.qty()));
      case MATERIAL -> {
        Pool pool = Pool.of(want.ref().id(), want.thickness(), want.qty());
        yield pool.amount(want.qty(), Optional.empty())
            .map(amount -> new Amount(thing(pool), amount));
      }
    };
  }

  /** What an item counts as, by keys: itself, or the material that it is made of. */
  List<String> of(KitItem item) {
    return of(item, item.qty()).map(amount -> amount.thing().key()).stream().toList();
  }

  /** What a piece of stock counts as, by keys. */
  List<String> of(Stock stock) {
    return of(stock, stock.amount()).map(amount -> amount.thing().key()).stream().toList();
  }

  /** The materials that tasks ask for by name. */
  Set<String> materials() {
    return pools.keySet();
  }

  /** The keys of all things that a material counts as. */
  List<String> keysOf(String material) {
    return pools.getOrDefault(material, List.of()).stream().map(Pool::key).toList();
  }

  /** So much of an item. */
  public Optional<Amount> of(KitItem item, Quantity qty) {
    Optional<Amount> pooled = pooled(item.material(), qty, item.size());
    if (pooled.isPresent() || !qty.convertsTo(item.qty())) {
      return pooled;
    }
    Thing thing = new Thing("kit " + item.id(), item.what(), item.qty().unit());
    return Optional.of(new Amount(thing, qty.in(thing.unit()).amount()));
  }

  /** So much of a piece of stock. */
  public Optional<Amount> of(Stock stock, Quantity qty) {
    Optional<Amount> pooled = pooled(stock.material(), qty, stock.size());
    if (pooled.isPresent() || !qty.convertsTo(stock.amount())) {
      return pooled;
    }
    Thing thing = new Thing("stock " + stock.id(), stock.what(), stock.amount().unit());
    return Optional.of(new Amount(thing, qty.in(thing.unit()).amount()));
  }

  /** What a spend bought; empty where it does not say what, or how much. */
  public Optional<Amount> of(Spend spend) {
    return spend.qty().flatMap(qty -> of(spend, qty));
  }

  /** So much of what a spend bought. */
  public Optional<Amount> of(Spend spend, Quantity qty) {
    return spend
        .item()
        .flatMap(ledger::kitItem)
        .flatMap(item -> of(item, qty))
        .or(() -> spend.material().flatMap(ref -> ofMaterial(ref, qty)));
  }

  /** What the log says was used. */
  Optional<Amount> of(LogDay.Used used) {
    if (used.item().isPresent()) {
      return ledger.kitItem(used.item().get()).flatMap(item -> of(item, used.qty()));
    }
    if (used.stock().isPresent()) {
      return ledger.stock(used.stock().get()).flatMap(stock -> of(stock, used.qty()));
    }
    return used.material().flatMap(material -> ofMaterial(material, used.qty()));
  }

  /** So much of a material that some task asks for by its own name. */
  Optional<Amount> ofMaterial(Ref material, Quantity qty) {
    return pooled(Optional.of(material), qty, Optional.empty());
  }

  private Optional<Amount> pooled(Optional<Ref> material, Quantity qty, Optional<Size> size) {
    return material.stream()
        .flatMap(ref -> pools.getOrDefault(ref.id(), List.of()).stream())
        .flatMap(
            pool -> pool.amount(qty, size).map(amount -> new Amount(thing(pool), amount)).stream())
        .findFirst();
  }

  private Thing thing(Pool pool) {
    String what =
        ledger
            .<Material>find(Kind.MATERIALS, pool.material())
            .flatMap(Material::what)
            .orElse(pool.material());
    String thick = pool.thickness().map(t -> " " + Decimal.print(t) + " mm").orElse("");
    return new Thing(pool.key(), what + thick, pool.unit());
  }
}
