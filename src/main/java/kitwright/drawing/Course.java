package kitwright.drawing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The work ahead over time, in plain words and days: what {@link CourseDrawing} draws.
 *
 * @param title a few words
 * @param description what it shows, in sentences
 * @param today where today's line stands
 * @param last the last day shown
 * @param launch the day wanted
 * @param bands work that belongs together, from top to bottom
 * @param links which work waits for which
 * @param pins what will stop work, numbered as the caller lists it
 * @param sky the forecast
 * @param windows stretches of fit weather
 */
public record Course(
    String title,
    String description,
    LocalDate today,
    LocalDate last,
    Optional<LocalDate> launch,
    List<Band> bands,
    List<Link> links,
    List<Pin> pins,
    List<Sky> sky,
    List<Window> windows) {
  public Course {
    bands = List.copyOf(bands);
    links = List.copyOf(links);
    pins = List.copyOf(pins);
    sky = List.copyOf(sky);
    windows = List.copyOf(windows);
  }

  /** Work of one kind. */
  public record Band(String name, List<Piece> pieces) {
    public Band {
      pieces = List.copyOf(pieces);
    }
  }

  /** Where a piece of work is done. */
  public enum Kind {
    INDOORS,
    OUTDOORS
  }

  /**
   * A piece of work.
   *
   * @param id which links and pins name
   * @param first first day of work
   * @param finish last day of work
   * @param ready last day of the cure
   * @param floatDays working days it can lose
   * @param slipsTo the day to which the float reaches
   * @param decides whether it decides the end
   */
  public record Piece(
      String id,
      String name,
      LocalDate first,
      LocalDate finish,
      LocalDate ready,
      long floatDays,
      LocalDate slipsTo,
      Kind kind,
      boolean decides) {}

  /** {@code after} waits for {@code before}. */
  public record Link(String before, String after) {}

  /** Something that will stop a piece of work. */
  public record Pin(int number, String piece, String says) {}

  /** A day of the forecast. */
  public record Sky(LocalDate day, boolean wet, String says) {}

  /** Fit weather for a piece of work. */
  public record Window(LocalDate first, LocalDate last, String says) {}
}
