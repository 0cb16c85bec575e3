package kitwright.report.ahead;

import static kitwright.document.Column.columns;
import static kitwright.document.Column.data;
import static kitwright.document.Column.head;
import static kitwright.document.Column.left;

import java.util.List;
import java.util.stream.Stream;
import kitwright.document.Cell;
import kitwright.document.Inline;
import kitwright.document.Row;
import kitwright.document.Slots;
import kitwright.document.Table;
import kitwright.ledger.Build;
import kitwright.ledger.Facts;
import kitwright.network.WeatherBound;
import kitwright.report.words.Say;
import kitwright.weather.Obstacle;
import kitwright.weather.Window;

/** What the weather allows, and what indoor work must be kept warm. */
public record AheadWeather(Outlook outlook, Facts now) {
  /** The slots, behind others. */
  public Slots in(Slots slots) {
    List<WeatherBound> bound = WeatherBound.by(outlook.last(), now);
    return slots
        .table("weather", table(bound))
        .sentence("weather-sources", bound.isEmpty() ? "" : sources())
        .list("warmth", Inline.texts(WarmWork.all(outlook)));
  }

  private static Table table(List<WeatherBound> bound) {
    return new Table(
        "Outdoor work that asks something of the weather",
        columns(
            data("task"),
            left("From"),
            head("Work").named("what"),
            left("Forecast"),
            data("window-first"),
            data("window-last"),
            data("days-lacking")),
        bound.stream()
            .map(
                each ->
                    Row.row(
                        Cell.id(each.task().id()),
                        Cell.day(each.from()),
                        Cell.text(each.task().what()),
                        Cell.text(forecast(each)),
                        Cell.day(each.window().first()),
                        Cell.day(each.window().last()),
                        Cell.number(each.window().lacking())))
            .toList());
  }

  private static String forecast(WeatherBound bound) {
    Window window = bound.window();
    if (window.fits()) {
      return "first window that fits: " + window.first() + " to " + window.last() + later(bound);
    }
    if (bound.isBeyondForecast()) {
      return "the forecast does not reach so far";
    }
    Obstacle first = window.obstacles().get(0);
    return "no window; the best, from "
        + window.first()
        + ", lacks "
        + Say.days(window.lacking())
        + ": "
        + first.day()
        + " "
        + first.words()
        + (window.obstacles().size() > 1 ? ", and more" : "");
  }

  /** Who foretold the days, and whence the share of days is that are fit. */
  private String sources() {
    String foretold =
        told(
            "Source of the forecast: ",
            kitwright.weather.Outlook.rows(now).stream().flatMap(each -> each.source().stream()));
    String climate =
        told(
            "Source of the days that are fit in a month: ",
            now.ledger().build().climate().stream().map(Build.Climate::source));
    return (foretold + " " + climate).strip();
  }

  private static String told(String of, Stream<String> sources) {
    List<String> all = sources.distinct().toList();
    return all.isEmpty() ? "" : of + Say.list(all) + ".";
  }

  private static String later(WeatherBound bound) {
    List<String> days = bound.later().stream().map(Object::toString).toList();
    return days.isEmpty() ? "" : "; also from " + Say.list(days);
  }
}
