package kitwright.cli;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.edit.Deed;
import kitwright.kit.Positions;
import kitwright.ledger.Facts;
import kitwright.ledger.Key;
import kitwright.ledger.Kind;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.Party;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.money.Account;
import kitwright.shortage.ShortageStandings;
import kitwright.spending.Valued;
import kitwright.value.Money;
import kitwright.value.Word;

/**
 * What the records themselves answer when something is written down, and what is usual.
 *
 * @param sure what is written without asking, as it is read
 * @param offered what a dialogue offers, to be taken or replaced
 */
record Usual(Map<String, String> sure, Map<String, String> offered) {

  /**
   * What is usual for a deed.
   *
   * @param said what was answered already, as it was given
   */
  static Usual of(Deed deed, Map<String, String> said, Facts now) {
    Usual usual = new Usual(new LinkedHashMap<>(), new LinkedHashMap<>());
    for (Key key : deed.keys()) {
      usual.day(key, deed, now.day());
    }
    only(deed.kind(), now.ledger()).forEach(usual.sure::putIfAbsent);
    switch (deed.word()) {
      case "pay" -> usual.order(said.getOrDefault("pays", ""), now, true);
      case "refund" -> usual.order(said.getOrDefault("refunds", ""), now, false);
      case "buy", "order" -> usual.bought(said.getOrDefault("replaces", ""), now);
      case "propose" -> usual.instead(said.getOrDefault("for", ""), now);
      case "short" -> usual.missing(said.getOrDefault("item", ""), now);
      case "demand" -> usual.offered.put("remedy", "replacement");
      default -> {}
    }
    List<String> lines = now.ledger().ids(Kind.BUDGET);
    if (lines.size() == 1 && deed.kind() == Kind.SPENDING) {
      usual.sure.putIfAbsent("line", lines.get(0));
    }
    return usual;
  }

  /** Whom a record of a kind is about where only one party can be meant. */
  static Map<String, String> only(Kind kind, Ledger ledger) {
    return switch (kind) {
      case CLAIMS -> only("against", Party.Role.SUPPLIER, ledger);
      case DELIVERIES -> only("from", Party.Role.SUPPLIER, ledger);
      case BORROWED -> only("from", Party.Role.LENDER, ledger);
      default -> Map.of();
    };
  }

  private static Map<String, String> only(String key, Party.Role role, Ledger ledger) {
    List<Party> all = ledger.parties().stream().filter(party -> party.role() == role).toList();
    return all.size() == 1 ? Map.of(key, all.get(0).id()) : Map.of();
  }

  private void day(Key key, Deed deed, LocalDate today) {
    boolean ofToday = key.isHappened() && (deed.needs(key) || key.name().equals(deed.once()));
    if (ofToday || key.begins().filter("TODAY"::equals).isPresent()) {
      sure.put(key.name(), today.toString());
    } else if (key.begins().filter("IN-TWO-WEEKS"::equals).isPresent()) {
      sure.put(key.name(), today.plusWeeks(2).toString());
    }
  }

  /** Of an order or a payment that this one answers. */
  private void order(String id, Facts now, boolean pays) {
    Optional<Spend> found = now.ledger().find(Kind.SPENDING, id);
    if (found.isEmpty()) {
      return;
    }
    Spend there = found.get();
    sure.put("line", there.line().id());
    sure.put("what", (pays ? "" : "refund: ") + there.what());
    there.to().ifPresent(to -> sure.put("to", to));
    if (pays) {
      owed(there, now).ifPresent(owed -> offered.put("amount", owed.toString()));
    }
  }

  /** What is still owed on an order, where it is in the build's currency. */
  private static Optional<Money> owed(Spend order, Facts now) {
    return Account.on(now).spends().stream()
        .filter(each -> each.spend().equals(order))
        .map(Valued::counted)
        .filter(open -> open.currency().equals(order.amount().currency()))
        .findFirst();
  }

  private void bought(String shortage, Facts now) {
    Optional<Shortage> found = now.ledger().find(Kind.SHORTAGES, shortage);
    found.ifPresent(
        there -> {
          sure.put("item", there.item().id());
          now.ledger().kitItem(there.item()).ifPresent(item -> offered.put("what", item.what()));
          ShortageStandings.on(now).all().stream()
              .filter(standing -> standing.shortage().id().equals(shortage))
              .forEach(standing -> offered.put("qty", standing.open().toString()));
        });
  }

  private void instead(String shortage, Facts now) {
    Optional<Shortage> found = now.ledger().find(Kind.SHORTAGES, shortage);
    found.ifPresent(
        there -> {
          sure.put("instead-of", "item=" + there.item().id() + ",qty=" + there.qty());
          now.ledger()
              .kitItem(there.item())
              .flatMap(KitItem::grade)
              .ifPresent(grade -> offered.put("grade", Word.key(grade)));
        });
    offered.putIfAbsent("grade", "structural");
  }

  private void missing(String item, Facts now) {
    now.ledger()
        .<KitItem>find(Kind.KIT, item)
        .flatMap(
            found -> Positions.on(now).of(new kitwright.value.Ref(found.id(), found.at().record())))
        .filter(position -> position.isCounted() && !position.missing().isNone())
        .ifPresent(position -> offered.put("qty", position.missing().toString()));
  }
}
