package kitwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import kitwright.choice.Choice;
import kitwright.choice.Dominated;
import kitwright.choice.Taken;
import kitwright.choice.Timing;
import kitwright.choice.Turning;
import kitwright.choice.WayOut;
import kitwright.finding.Wrapping;
import kitwright.ledger.Shortage;
import kitwright.value.Decimal;
import kitwright.value.Money;
import kitwright.value.ThreePoint;
import kitwright.value.Visible;

/** The ways out of a shortage, as text: a block each, then what is to be said of them together. */
final class OptionsText {
  private final Choice choice;
  private final int width;

  OptionsText(Choice choice, int width) {
    this.choice = choice;
    this.width = width;
  }

  String text() {
    StringBuilder out = new StringBuilder();
    Shortage shortage = choice.standing().shortage();
    out.append(shortage.id())
        .append(": ")
        .append(choice.standing().open())
        .append(" of ")
        .append(shortage.item().id())
        .append(" still open\n");
    out.append("If it were here today, the build would end on ")
        .append(choice.launchIfHere())
        .append(".\n\n");
    if (choice.ways().isEmpty()) {
      return out.append("No way out is written down. Add “options:” to the shortage.\n").toString();
    }
    out.append(table()).append('\n');
    choice
        .ways()
        .forEach(
            way -> details(way).forEach(line -> paragraph(out, "  ", way.name() + ": " + line)));
    choice.dominated().forEach(each -> paragraph(out, "  ", beaten(each)));
    choice.turning().forEach(each -> turning(each).ifPresent(words -> paragraph(out, "  ", words)));
    out.append('\n').append(decided(shortage)).append('\n');
    return Visible.lines(out.toString());
  }

  private String table() {
    List<String> headings = new ArrayList<>(List.of(""));
    choice.ways().forEach(way -> headings.add(">" + way.name()));
    Listing list = Listing.of(headings.toArray(String[]::new));
    row(list, "cash now", way -> way.outlay().now().map(Money::toString).orElse("not said"));
    row(list, "cost in all", way -> way.outlay().cost().map(OptionsText::range).orElse("not said"));
    row(
        list,
        "build ends at",
        way -> way.outlay().forecast().map(Money::toString).orElse("not known"));
    row(
        list,
        "may be claimed",
        way -> way.outlay().claimable().signum() == 0 ? "–" : way.outlay().claimable().toString());
    row(
        list,
        "own hours",
        way -> way.outlay().hours().signum() == 0 ? "–" : Decimal.print(way.outlay().hours()));
    row(list, "worth of them", way -> way.outlay().hoursWorth().map(Money::toString).orElse("–"));
    row(list, "here on", way -> way.timing().arrives().map(Object::toString).orElse("not known"));
    row(
        list,
        "launch",
        way -> way.timing().launch().map(day -> day.on().toString()).orElse("not known"));
    row(
        list,
        "launch later by",
        way -> way.timing().launch().map(day -> days(day.later())).orElse("not known"));
    row(list, "strength", OptionsText::strength);
    row(
        list,
        "weight, built over drawn",
        way ->
            way.strength()
                .filter(s -> s.mass().isPresent())
                .map(s -> number(s.mass().getAsDouble(), 2))
                .orElse("–"));
    return list.text();
  }

  private void row(Listing list, String name, java.util.function.Function<WayOut, String> cell) {
    List<String> cells = new ArrayList<>(List.of(name));
    choice.ways().forEach(way -> cells.add(cell.apply(way)));
    list.row(cells.toArray(String[]::new));
  }

  private static String range(ThreePoint<Money> cost) {
    return cost.isFixed()
        ? cost.likely().toString()
        : cost.low().amount().toPlainString() + "–" + cost.high();
  }

  private static String strength(WayOut way) {
    return way.strength()
        .map(
            s ->
                s.verdict()
                        .map(v -> v.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                        .orElse("not assessed")
                    + (s.margin().isPresent() ? " " + percent(s.margin().getAsDouble()) : ""))
        .orElse("as drawn");
  }

  private static List<String> details(WayOut way) {
    List<String> lines = new ArrayList<>();
    way.timing().held().ifPresent(held -> lines.add(held(held)));
    way.strength()
        .flatMap(s -> s.governing())
        .ifPresent(governing -> lines.add("nearest to its limit is the " + governing));
    way.signing()
        .filter(signing -> !signing.signers().isEmpty())
        .ifPresent(
            signing ->
                lines.add(
                    "must be signed by "
                        + String.join(" or ", signing.signers())
                        + signing.by().map(day -> " before " + day).orElse("")
                        + (signing.lacks().isEmpty()
                            ? ""
                            : "; " + String.join(", ", signing.lacks()))));
    for (Taken taken : way.taken()) {
      lines.add(
          "takes "
              + taken.qty()
              + " of "
              + taken.thing()
              + ", "
              + taken.left()
              + " left"
              + (taken.losers().isEmpty() ? "" : "; lost to " + String.join(", ", taken.losers())));
    }
    way.option().note().ifPresent(lines::add);
    return lines;
  }

  private static String held(Timing.Held held) {
    return "holds “"
        + held.what()
        + "” by "
        + days(held.days())
        + ", uses "
        + number(held.floatUsed(), 1)
        + " working days of its float and leaves "
        + number(held.floatLeft(), 1);
  }

  private static String beaten(Dominated each) {
    return each.way() + " is beaten by " + each.by() + ": " + each.reason() + ".";
  }

  private static Optional<String> turning(Turning each) {
    List<String> ways = new ArrayList<>();
    each.lessCost().ifPresent(money -> ways.add("it were " + money + " cheaper"));
    each.belowHour().ifPresent(money -> ways.add("your hour were worth less than " + money));
    each.aboveHour().ifPresent(money -> ways.add("your hour were worth more than " + money));
    each.daysSooner()
        .ifPresent(days -> ways.add("it were " + days(days) + " sooner, to be no later"));
    each.dayWorth()
        .ifPresent(money -> ways.add("a day sooner in the water were worth more than " + money));
    return ways.isEmpty()
        ? Optional.empty()
        : Optional.of(
            each.way()
                + " would be ahead of "
                + each.against()
                + " if "
                + ways.stream().collect(Collectors.joining(", or if "))
                + ".");
  }

  private static String decided(Shortage shortage) {
    return shortage
        .decided()
        .map(
            decision ->
                "Decided on "
                    + decision.on()
                    + " by "
                    + decision.by().id()
                    + ": "
                    + decision.option()
                    + decision.why().map(why -> ", since " + why).orElse("")
                    + ".")
        .orElse(
            "Not decided. The builder decides: write “decided: {option: …, on: …, by: …, why: …}” in the shortage.");
  }

  private void paragraph(StringBuilder out, String indent, String words) {
    List<String> lines = Wrapping.at(width - indent.length() - 2, words);
    for (int i = 0; i < lines.size(); i++) {
      out.append(indent).append(i == 0 ? "" : "  ").append(lines.get(i)).append('\n');
    }
  }

  private static String days(long days) {
    return days == 1 ? "1 day" : days + " days";
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%+.1f %%", share * 100).replace('-', '−');
  }

  private static String number(double value, int digits) {
    return String.format(Locale.ROOT, "%." + digits + "f", value);
  }
}
