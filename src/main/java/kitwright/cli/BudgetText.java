package kitwright.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import kitwright.finding.Wrapping;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.loan.Standing;
import kitwright.money.Account;
import kitwright.money.CostItem;
import kitwright.money.CostRange;
import kitwright.money.EarnedBook;
import kitwright.money.Exchange;
import kitwright.money.Figure;
import kitwright.money.Figures;
import kitwright.money.LineState;
import kitwright.money.Saving;
import kitwright.money.Valued;
import kitwright.money.Why;
import kitwright.value.Money;

/** The money, as text. */
final class BudgetText {
  private final Facts now;
  private final Ledger ledger;
  private final Account account;
  private final int width;

  BudgetText(Facts now, int width) {
    this.now = now;
    this.ledger = now.ledger();
    this.account = Account.on(now);
    this.width = width;
  }

  String whole(Optional<EarnedBook> earned, CostRange range) {
    StringBuilder out = new StringBuilder();
    String currency = ledger.build().currency().getCurrencyCode();
    out.append(ledger.build().name())
        .append(", money on ")
        .append(account.asOf())
        .append(", in ")
        .append(currency)
        .append("\n\n");
    out.append(lines()).append('\n');
    account
        .contingencyLeft()
        .ifPresent(
            left ->
                out.append("Kept back for what nobody foresaw: ")
                    .append(
                        left.signum() < 0
                            ? left.negated() + " too little.\n"
                            : left + " of it left.\n"));
    if (account.ifGranted().signum() > 0) {
      out.append("If every claim were granted, ")
          .append(account.ifGranted())
          .append(" would come back. It is in no figure above.\n");
    }
    account
        .unvalued()
        .forEach(
            spend ->
                out.append("No rate for ")
                    .append(spend.id())
                    .append(", ")
                    .append(spend.amount())
                    .append(": it is in no sum.\n"));
    out.append('\n').append(why());
    out.append(saved());
    out.append(range(range));
    earned.ifPresent(book -> out.append(earned(book)));
    return out.toString();
  }

  String line(String id) {
    StringBuilder out = new StringBuilder();
    LineState state = account.line(id).orElseThrow();
    out.append(state.title()).append(", on ").append(account.asOf()).append('\n');
    out.append("budget ")
        .append(state.budget())
        .append(", paid ")
        .append(state.paid())
        .append(", ordered ")
        .append(state.ordered());
    out.append(", refunded ")
        .append(state.refunded())
        .append(", to come ")
        .append(state.toCome())
        .append('\n');
    out.append("forecast ")
        .append(state.forecast())
        .append(", ")
        .append(overOrUnder(state))
        .append("; of what is spent, tax ")
        .append(state.tax())
        .append(" and duty ")
        .append(state.duty())
        .append("\n\n");
    Listing list = Listing.of("day", "what", "to", "state", ">amount", ">counts");
    for (Valued each : account.spendsOn(id)) {
      list.row(
          each.spend().on().toString(),
          each.spend().what(),
          each.spend().to().map(ledger::nameOf).orElse("–"),
          each.spend().state().name().toLowerCase(Locale.ROOT),
          each.spend().amount().toString(),
          amount(each.counted()));
    }
    return out.append(list.text())
        .append('\n')
        .append(
            why(
                state.over().signum() > 0 ? "why it ends over" : "why it ends where it does",
                List.of(id)))
        .toString();
  }

  private static String overOrUnder(LineState state) {
    return state.over().signum() > 0 ? state.over() + " over" : state.over().negated() + " under";
  }

  private String lines() {
    Listing list =
        Listing.of("line", ">budget", ">paid", ">ordered", ">to come", ">forecast", ">over");
    account.all().forEach(each -> row(list, each.line(), each));
    row(list, "all", account.whole());
    return list.text();
  }

  private static void row(Listing list, String name, LineState each) {
    list.row(
        name.isEmpty() ? "on no line" : name,
        amount(each.budget()),
        amount(each.paid().minus(each.refunded())),
        amount(each.ordered()),
        amount(each.toCome()),
        amount(each.forecast()),
        signed(each.over()));
  }

  /** The parts of each line that is forecast over. */
  private String why() {
    return why(
        "why it ends over",
        account.all().stream()
            .filter(state -> state.over().signum() > 0)
            .map(LineState::line)
            .toList());
  }

  private String why(String heading, List<String> lines) {
    Listing list = Listing.of("line", heading, ">adds", ">may come back");
    List<Why.Part> parts = Why.of(ledger, account);
    for (String line : lines) {
      parts.stream()
          .filter(part -> part.line().equals(line))
          .forEach(
              part ->
                  list.row(
                      line.isEmpty() ? "on no line" : line,
                      part.cause().word() + part.of().map(of -> ": " + of).orElse(""),
                      signed(part.amount()),
                      part.recoverable().signum() == 0 ? "–" : amount(part.recoverable())));
    }
    return list.isEmpty() ? "" : list.text() + "\n";
  }

  private String saved() {
    StringBuilder out = new StringBuilder();
    Saving.byStock(now).stream()
        .filter(saving -> saving.amount().signum() > 0)
        .forEach(
            saving ->
                out.append("Saved by using what was at hand (")
                    .append(saving.substitution())
                    .append("): ")
                    .append(saving.amount())
                    .append('\n'));
    borrowed()
        .filter(saved -> saved.signum() > 0)
        .ifPresent(
            saved ->
                out.append("Saved by borrowing tools instead of hiring them: ")
                    .append(saved)
                    .append('\n'));
    return out.isEmpty() ? "" : out.append('\n').toString();
  }

  private Optional<Money> borrowed() {
    Exchange exchange = Exchange.of(ledger);
    return Standing.on(now).stream()
        .flatMap(loan -> loan.saved().stream())
        .flatMap(saved -> exchange.home(saved, account.asOf()).money().stream())
        .reduce(Money::plus);
  }

  private String range(CostRange range) {
    StringBuilder out = new StringBuilder();
    out.append("Where it will end, from ")
        .append(range.runs())
        .append(" draws of what is still to come\n");
    for (double share : BudgetCommand.SHARES) {
      CostRange.Quantile each = range.within(share);
      out.append(
          String.format(
              Locale.ROOT,
              "  %2.0f of 100 builds end within %s (give or take %.0f)\n",
              share * 100,
              each.money(ledger.build().currency()),
              (each.to() - each.from()) / 2));
    }
    out.append(chance("the budget", account.whole().budget(), range));
    account
        .contingency()
        .ifPresent(
            kept ->
                out.append(
                    chance(
                        "that and what is kept back", account.whole().budget().plus(kept), range)));
    out.append(
        chance("the forecast, which adds up likely costs", account.whole().forecast(), range));
    out.append(average(range));
    range.contributions().stream()
        .limit(3)
        .forEach(
            each ->
                out.append(
                    String.format(
                        Locale.ROOT,
                        "  %2.0f %% of the spread comes from %s\n",
                        each.share() * 100,
                        each.item().what())));
    return out.append('\n').toString();
  }

  /** Why the average end is not the forecast. */
  private String average(CostRange range) {
    Money ranges = leaning(range, false);
    Money open = leaning(range, true);
    return "  on average they end at "
        + account.whole().forecast().plus(ranges).plus(open)
        + ": the forecast, "
        + signed(ranges)
        + " by ranges that reach further one way,\n    "
        + signed(open)
        + " by ways out of open shortages beyond the cheapest\n";
  }

  private Money leaning(CostRange range, boolean open) {
    return range.contributions().stream()
        .map(CostRange.Contribution::item)
        .filter(item -> item.isOpen() == open)
        .map(CostItem::leaning)
        .reduce(Money.zero(ledger.build().currency()), Money::plus);
  }

  private static String chance(String within, Money amount, CostRange range) {
    CostRange.Chance chance = range.chanceWithin(amount);
    return String.format(
        Locale.ROOT,
        "  %.1f of 100 (±%.1f) end within %s\n",
        chance.share() * 100,
        chance.error() * 200,
        within);
  }

  private String earned(EarnedBook book) {
    if (book.whole().isEmpty()) {
      return "No task earns a budget line, so that nothing can be said of money against work"
          + " done.\n";
    }
    StringBuilder out = new StringBuilder("Money against work done\n");
    List<Figure> figures = Figures.of(book.whole().get(), forecastOf(book));
    for (Figure figure : figures) {
      out.append("  ")
          .append(figure.name())
          .append(" (")
          .append(figure.abbreviation())
          .append("): ")
          .append(figure.shown())
          .append('\n');
      Wrapping.at(width - 6, figure.says())
          .forEach(line -> out.append("      ").append(line).append('\n'));
    }
    if (!book.unearned().isEmpty()) {
      out.append("  No task earns these lines, and they are in no figure here: ")
          .append(String.join(", ", book.unearned()))
          .append('\n');
    }
    return out.toString();
  }

  /** The forecast of the lines that tasks earn, and of no others. */
  private Money forecastOf(EarnedBook book) {
    return account.lines().stream()
        .filter(state -> book.lines().containsKey(state.line()))
        .map(LineState::forecast)
        .reduce(Money.zero(ledger.build().currency()), Money::plus);
  }

  private static String amount(Money money) {
    return money.amount().toPlainString();
  }

  private static String signed(Money money) {
    return money.signum() > 0 ? "+" + amount(money) : amount(money).replace('-', '−');
  }
}
