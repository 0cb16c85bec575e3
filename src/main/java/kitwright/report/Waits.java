package kitwright.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kitwright.daybook.Week;
import kitwright.document.Block;
import kitwright.document.Column;
import kitwright.document.Row;
import kitwright.ledger.Grade;
import kitwright.ledger.Party;
import kitwright.ledger.Spend;
import kitwright.ledger.Task;
import kitwright.substitution.HoldPoint;
import kitwright.substitution.Lack;

/** What waits for whom, as it stands on the evening of a week’s last day. */
record Waits(Situation now, Week week) {

  /** A table; none where nothing waits. */
  List<Block> table() {
    List<Row> rows = new ArrayList<>();
    now.substitutions().all().forEach(each -> substitution(each).ifPresent(rows::add));
    now.shortages().open().forEach(each -> shortage(each).ifPresent(rows::add));
    now.claims().all().forEach(each -> claim(each).ifPresent(rows::add));
    now.ledger().spending().forEach(each -> order(each).ifPresent(rows::add));
    return rows.isEmpty()
        ? List.of()
        : List.of(
            Block.table(
                Column.columns(
                    Column.left("What waits"),
                    Column.left("For whom"),
                    Column.left("For what"),
                    Column.left("By")),
                rows));
  }

  private Optional<Row> substitution(kitwright.substitution.Standing each) {
    if (each.isApproved() || each.isWithdrawn()) {
      return Optional.empty();
    }
    String held =
        each.hold()
            .task()
            .flatMap(ref -> now.ledger().task(ref))
            .map(Task::what)
            .orElse(each.substitution().id());
    boolean assessment =
        each.lacks(Lack.NO_ASSESSMENT)
            || each.lacks(Lack.ASSESSMENT_FAILS)
            || each.lacks(Lack.ASSESSMENT_OPEN);
    String passed =
        each.hold().state() == HoldPoint.State.PASSED ? "at once, it was begun" : Cells.NONE;
    return Optional.of(
        Row.row(
            held,
            assessment ? new Names(now.ledger()).builder() : signers(each.substitution().grade()),
            (assessment ? "an assessment that passes, for " : "a signature under ")
                + each.substitution().id(),
            passed));
  }

  private String signers(Grade grade) {
    List<String> all =
        now.ledger().parties().stream()
            .filter(party -> party.maySign().contains(grade))
            .map(Party::name)
            .toList();
    return all.isEmpty() ? "somebody entitled" : String.join(" or ", all);
  }

  private Optional<Row> shortage(kitwright.shortage.Standing each) {
    if (each.shortage().decided().isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        Row.row(
            ShortagesReport.what(each),
            new Names(now.ledger()).builder(),
            each.claims().isEmpty() ? "a claim, and a way out" : "a way out",
            Cells.NONE));
  }

  private Optional<Row> claim(kitwright.claim.Standing each) {
    if (each.isDraft()) {
      return Optional.of(
          Row.row(
              each.claim().id(),
              new Names(now.ledger()).builder(),
              "the draft to be sent",
              Cells.NONE));
    }
    if (!each.awaitsAnswer()) {
      return each.promisedFor()
          .filter(day -> each.settled().isEmpty())
          .map(
              day ->
                  Row.row(
                      each.claim().id(), ClaimsReport.against(each), "what was promised", by(day)));
    }
    return Optional.of(
        Row.row(
            each.claim().id(),
            ClaimsReport.against(each),
            "an answer",
            each.claim().replyBy().map(this::by).orElse(Cells.NONE)));
  }

  private Optional<Row> order(Spend spend) {
    boolean open =
        spend.state() == Spend.State.ORDERED
            && !spend.on().isAfter(week.last())
            && spend.expected().filter(day -> !day.isBefore(week.first())).isPresent();
    return open
        ? Optional.of(
            Row.row(
                spend.what(),
                spend.to().orElse("the seller"),
                "what was ordered",
                spend.expected().map(this::by).orElse(Cells.NONE)))
        : Optional.empty();
  }

  private String by(LocalDate day) {
    return day.isBefore(week.last()) ? day + ", late" : day.toString();
  }
}
