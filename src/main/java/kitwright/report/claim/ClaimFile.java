package kitwright.report.claim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.claim.ClaimStanding;
import kitwright.claim.Cost;
import kitwright.claim.Line;
import kitwright.document.Block;
import kitwright.document.Cell;
import kitwright.document.Column;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Value;
import kitwright.kit.Count;
import kitwright.ledger.Delivery;
import kitwright.ledger.Evidence;
import kitwright.ledger.EvidenceFile;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.Shortage;
import kitwright.ledger.Spend;
import kitwright.report.words.Say;
import kitwright.shortage.Balance;
import kitwright.spending.Books;

/**
 * The papers that belong to a claim.
 *
 * @param deliveries in which its items came or should have come, in order of arrival
 * @param shortages in the claim's order
 * @param pieces of evidence, each once: of the deliveries, the shortages, what went back, the costs
 *     asked and the letters
 */
public record ClaimFile(
    List<Delivery> deliveries, List<Shortage> shortages, List<Evidence> pieces, Ledger ledger) {

  /** So many digits tell one file from another at a glance. */
  private static final int BRIEF = 12;

  public static ClaimFile of(ClaimStanding claim, Facts now) {
    Ledger ledger = now.ledger();
    List<Delivery> deliveries =
        claim.lines().stream()
            .flatMap(line -> deliveries(line, ledger))
            .collect(
                Collectors.toMap(
                    Delivery::id, each -> each, (one, other) -> one, LinkedHashMap::new))
            .values()
            .stream()
            .sorted(Comparator.comparing(each -> each.received().orElse(LocalDate.MAX)))
            .toList();
    List<Shortage> shortages =
        List.copyOf(
            claim.lines().stream()
                .map(line -> line.shortage().shortage())
                .collect(
                    Collectors.toMap(
                        Shortage::id, each -> each, (one, other) -> one, LinkedHashMap::new))
                .values());
    Map<String, Evidence> pieces = new LinkedHashMap<>();
    Set<String> items = new HashSet<>();
    shortages.forEach(shortage -> items.add(shortage.item().id()));
    Set<String> ofOthers = ofOthers(items, ledger);
    Stream.of(
            deliveries.stream()
                .flatMap(each -> each.evidence().stream())
                .filter(piece -> !ofOthers.contains(piece.file())),
            deliveries.stream()
                .flatMap(each -> each.counted().stream())
                .filter(line -> items.contains(line.item().id()))
                .flatMap(line -> line.evidence().stream()),
            shortages.stream().flatMap(each -> each.evidence().stream()),
            deliveries.stream()
                .flatMap(each -> each.sentBack().stream())
                .filter(line -> items.contains(line.item().id()))
                .flatMap(line -> line.evidence().stream()),
            costs(claim).flatMap(cost -> receipts(cost.spend(), now)),
            claim.events().stream().flatMap(each -> each.evidence().stream()))
        .flatMap(all -> all)
        .forEach(piece -> pieces.putIfAbsent(piece.file(), piece));
    return new ClaimFile(deliveries, shortages, List.copyOf(pieces.values()), ledger);
  }

  /** Of an order those of its payments too, which show that it was paid. */
  private static Stream<Evidence> receipts(Spend cost, Facts now) {
    return Stream.concat(Stream.of(cost), Books.on(now).paymentsOf(cost).stream())
        .flatMap(spend -> spend.receipt().stream());
  }

  /** What was paid and is asked back. */
  static Stream<Cost> costs(ClaimStanding claim) {
    return Stream.concat(
        claim.lines().stream().flatMap(line -> line.asking().costs().stream()),
        claim.costs().stream());
  }

  /** What shortages and counts of other items name as theirs: it proves nothing for these. */
  private static Set<String> ofOthers(Set<String> items, Ledger ledger) {
    Set<String> files = new HashSet<>();
    ledger.shortages().stream()
        .filter(shortage -> !items.contains(shortage.item().id()))
        .forEach(shortage -> shortage.evidence().forEach(piece -> files.add(piece.file())));
    ledger.deliveries().stream()
        .flatMap(delivery -> delivery.counted().stream())
        .filter(line -> !items.contains(line.item().id()))
        .forEach(line -> line.evidence().forEach(piece -> files.add(piece.file())));
    return files;
  }

  /** Where the item was counted before it was found short; else the last arrival before that. */
  private static Stream<Delivery> deliveries(Line line, Ledger ledger) {
    LocalDate found = line.shortage().shortage().found();
    List<Delivery> counted =
        line.balance().stream()
            .map(Balance::position)
            .flatMap(position -> position.counts().stream())
            .map(Count::delivery)
            .filter(each -> each.received().filter(day -> !day.isAfter(found)).isPresent())
            .toList();
    return counted.isEmpty()
        ? ledger.deliveries().stream()
            .filter(each -> each.received().filter(day -> !day.isAfter(found)).isPresent())
            .max(Comparator.comparing(each -> each.received().orElse(LocalDate.MIN)))
            .stream()
        : counted.stream();
  }

  /** Numbers of the delivery notes. */
  public List<String> notes() {
    return deliveries.stream().flatMap(each -> each.note().stream()).distinct().toList();
  }

  /** Days on which the deliveries came. */
  public List<String> received() {
    return days(deliveries.stream().flatMap(each -> each.received().stream()));
  }

  /** Days on which the shortages were found. */
  public List<String> found() {
    return days(shortages.stream().map(Shortage::found));
  }

  private static List<String> days(Stream<LocalDate> days) {
    return days.sorted().distinct().map(Say::day).toList();
  }

  /** The evidence with its hashes; no block where there is none. */
  public List<Block> table() {
    if (pieces.isEmpty()) {
      return List.of();
    }
    List<Row> rows = new ArrayList<>();
    pieces.forEach(
        piece ->
            rows.add(
                Row.row(
                    Cell.of(Inline.code(piece.file())),
                    Cell.text(piece.says().orElse("")),
                    digits(piece)
                        .map(digits -> new Cell(hash(piece), Value.of(digits)))
                        .orElseGet(() -> Cell.of(hash(piece))))));
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.table(
            Column.columns(
                Column.left("File"),
                Column.left("Shows"),
                Column.left("SHA-256 begins with").named("sha-256")),
            rows));
    String whole =
        pieces.stream()
            .flatMap(piece -> digits(piece).map(hash -> hash + "  " + piece.file()).stream())
            .collect(Collectors.joining("\n"));
    if (!whole.isEmpty()) {
      blocks.add(Block.paragraph("In full, as “sha256sum --check” reads them:"));
      blocks.add(Block.code(whole));
    }
    return blocks;
  }

  /** As recorded; where nothing was, as the file has it now. */
  private Optional<String> digits(Evidence piece) {
    return piece.sha256().or(ledger.evidence(piece)::sha256);
  }

  private Inline hash(Evidence piece) {
    EvidenceFile found = ledger.evidence(piece);
    Optional<String> hash =
        digits(piece).map(all -> all.substring(0, Math.min(BRIEF, all.length())));
    if (hash.isEmpty()) {
      return Inline.text("the file is not there");
    }
    boolean altered =
        piece.sha256().isPresent()
            && found.sha256().isPresent()
            && !found.sha256().equals(piece.sha256());
    return altered
        ? Inline.together(Inline.code(hash.get()), Inline.strong(" the file has changed since"))
        : Inline.code(hash.get());
  }
}
