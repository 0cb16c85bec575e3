package kitwright.report.claim;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kitwright.claim.ClaimStanding;
import kitwright.claim.Line;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.ledger.Claim;
import kitwright.report.words.Say;
import kitwright.value.Ref;
import kitwright.value.Word;

/** The correspondence of a claim. */
public final class ClaimHistory {
  private ClaimHistory() {}

  /** What was written and said up to the day; no block where nothing was. */
  public static List<Block> of(ClaimStanding claim) {
    Map<LocalDate, List<Row>> rows = new TreeMap<>();
    claim
        .claim()
        .sent()
        .filter(day -> !claim.isDraft())
        .ifPresent(day -> add(rows, day, Row.row(day.toString(), "sent", "this claim")));
    claim.events().forEach(event -> add(rows, event.on(), event(event)));
    claim
        .lines()
        .forEach(
            line ->
                line.asking()
                    .settled()
                    .forEach(end -> add(rows, end.on(), end(end, Optional.of(line)))));
    claim.settled().ifPresent(end -> add(rows, end.on(), end(end, Optional.empty())));
    return rows.isEmpty()
        ? List.of()
        : List.of(
            Block.table(
                Column.columns(Column.left("On"), Column.left("What"), Column.left("In words")),
                rows.values().stream().flatMap(List::stream).toList()));
  }

  private static void add(Map<LocalDate, List<Row>> rows, LocalDate day, Row row) {
    rows.computeIfAbsent(day, any -> new ArrayList<>()).add(row);
  }

  private static Row end(Claim.Settlement end, Optional<Line> line) {
    String of =
        line.map(
                each -> Say.so(end.qty().orElse(each.qty()), ShortagesReport.what(each.shortage())))
            .orElse("the claim is closed");
    return Row.row(
        end.on().toString(),
        Word.spoken(end.how()),
        of + end.amount().map(amount -> ", " + Say.money(amount)).orElse(""));
  }

  private static Row event(Claim.Event event) {
    String words =
        Stream.of(
                event.text(),
                Optional.of(event.of().stream().map(Ref::id).collect(Collectors.joining(", "))),
                event.qty().map(Say::qty),
                event.amount().map(Say::money),
                event.expect().map(day -> "for " + day))
            .flatMap(Optional::stream)
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(", "));
    return Row.row(event.on().toString(), Word.spoken(event.what()), words);
  }
}
