package kitwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.value.Place;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Reads a text record by record: each item of a list under a top key is handed on as soon as it is
 * complete, so that a large file is never held as one tree. Faults are collected; after one that
 * breaks the YAML itself, what came before it stands.
 */
public final class YamlText {
  /** Deeper nesting is no ledger; the limit keeps a hostile file from costing memory. */
  private static final int DEEPEST = 24;

  private final ParserImpl events;
  private final Lines lines;
  private final OddBreaks breaks;
  private final boolean itemByItem;
  private final Findings out;
  private final Recall recall;

  /** The line on which the last complete record begins. */
  private int complete = 1;

  /** The line from which on something was lost; none where nothing was. */
  private OptionalInt lostFrom = OptionalInt.empty();

  private YamlText(
      ParserImpl events,
      Lines lines,
      OddBreaks breaks,
      Recall recall,
      boolean itemByItem,
      Findings out) {
    this.events = events;
    this.lines = lines;
    this.breaks = breaks;
    this.recall = recall;
    this.itemByItem = itemByItem;
    this.out = out;
  }

  /** Ends the reading of a file: its fault has been reported, or no more of it is wanted. */
  private static final class Abandoned extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Abandoned() {
      super(null, null, false, false);
    }
  }

  /**
   * Hands each top key with its whole value to {@code entry}: for front matter.
   *
   * @return the line from which on something was lost; none where all was read
   */
  public static OptionalInt readOne(
      String file,
      String text,
      int skipped,
      Recall recall,
      BiConsumer<Node.Scalar, Node> entry,
      Findings out) {
    return read(new Lines(file, skipped), text, recall, false, entry, out);
  }

  /**
   * Hands each top key's value, or each item of its list, to {@code record}; nothing, where the
   * list is empty.
   *
   * @param file path from the ledger's root
   * @param recall what was read of other files before
   * @return the line from which on something was lost, the last record before it among it, since
   *     its end may be; none where all was read
   */
  public static OptionalInt read(
      String file, String text, Recall recall, BiConsumer<Node.Scalar, Node> record, Findings out) {
    return read(new Lines(file, 0), text, recall, true, record, out);
  }

  /** The first record below a top key; reading stops there, and nothing is said of faults. */
  public static Optional<Node.Entry> first(String file, String text, String topKey) {
    List<Node.Entry> found = new ArrayList<>();
    BiConsumer<Node.Scalar, Node> taker =
        (key, node) -> {
          if (key.text().equals(topKey)) {
            found.add(new Node.Entry(key, node));
            throw new Abandoned();
          }
        };
    read(file, text, new Recall(), taker, new Findings());
    return found.stream().findFirst();
  }

  private static OptionalInt read(
      Lines lines,
      String text,
      Recall recall,
      boolean itemByItem,
      BiConsumer<Node.Scalar, Node> record,
      Findings out) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    OddBreaks breaks = OddBreaks.of(text);
    ParserImpl events = new ParserImpl(new StreamReader(breaks.hidden(text)), options);
    YamlText reading = new YamlText(events, lines, breaks, recall, itemByItem, out);
    try {
      reading.documents(record);
      return reading.lostFrom;
    } catch (Abandoned told) {
      // What was read before stands, and a fault is among the findings.
    } catch (MarkedYAMLException broken) {
      out.add(Faults.broken(broken, text, lines));
    } catch (ReaderException odd) {
      out.add(Faults.unprintable(odd, text, lines.file(), lines.skipped()));
    } catch (YAMLException | IllegalArgumentException | IndexOutOfBoundsException odd) {
      // The parser lets a few of these through on hostile input.
      out.add(Faults.unplaced(odd, lines.file()));
    }
    reading.lose(reading.complete);
    return reading.lostFrom;
  }

  private void lose(int line) {
    lostFrom = OptionalInt.of(Math.min(line, lostFrom.orElse(line)));
  }

  private void documents(BiConsumer<Node.Scalar, Node> record) {
    events.getEvent();
    while (!events.checkEvent(Event.ID.StreamEnd)) {
      Event event = events.getEvent();
      switch (event.getEventId()) {
        case DocumentStart, DocumentEnd -> {}
        case MappingStart -> top(record);
        default -> {
          if (!isEmptyScalar(event)) {
            out.add(Faults.notRecords(lines.at(event.getStartMark())));
            lose(complete);
          }
          skip(event);
        }
      }
    }
  }

  private static boolean isEmptyScalar(Event event) {
    return event instanceof ScalarEvent scalar && scalar.getValue().isEmpty();
  }

  private void skip(Event event) {
    if (event instanceof CollectionStartEvent) {
      throw new Abandoned();
    }
  }

  private void top(BiConsumer<Node.Scalar, Node> record) {
    SeenKeys seen = new SeenKeys();
    while (!events.checkEvent(Event.ID.MappingEnd)) {
      Optional<Node.Scalar> key = key(seen, 1);
      if (itemByItem && key.isPresent() && events.checkEvent(Event.ID.SequenceStart)) {
        NodeEvent list = (NodeEvent) events.getEvent();
        complain(list);
        if (events.checkEvent(Event.ID.SequenceEnd)) { // nothing stands there; the key is told
          record.accept(key.get(), lines.scalar("", false, list.getStartMark(), list.getEndMark()));
        }
        while (!events.checkEvent(Event.ID.SequenceEnd)) {
          taken(record, key.get(), node(3));
        }
        events.getEvent();
      } else {
        int line = lines.at(events.peekEvent().getStartMark()).line();
        Node value = node(2);
        key.ifPresentOrElse(found -> taken(record, found, value), () -> lose(line));
      }
    }
    events.getEvent();
  }

  private void taken(BiConsumer<Node.Scalar, Node> record, Node.Scalar key, Node value) {
    complete = value.at().line();
    record.accept(key, value);
  }

  /** The next key; empty where it is no key or stands there for the second time. */
  private Optional<Node.Scalar> key(SeenKeys seen, int depth) {
    if (!events.checkEvent(Event.ID.Scalar)) {
      out.add(Faults.notAKey(node(depth + 1).at()));
      return Optional.empty();
    }
    ScalarEvent event = (ScalarEvent) events.getEvent();
    complain(event);
    Node.Scalar key = scalar(event);
    Optional<Node.Scalar> first = seen.before(key);
    if (first.isPresent()) {
      out.add(Faults.keyTwice(key, first.get().at(), depth));
      return Optional.empty();
    }
    return Optional.of(key);
  }

  private Node node(int depth) {
    Event event = events.getEvent();
    if (depth > DEEPEST) {
      out.add(Faults.tooDeep(lines.at(event.getStartMark())));
      throw new Abandoned();
    }
    if (event instanceof AliasEvent alias) {
      out.add(Faults.notPlain(lines.between(alias.getStartMark(), alias.getEndMark()), "an alias"));
      return new Node.Unreadable(lines.at(alias.getStartMark()));
    }
    complain((NodeEvent) event);
    if (event instanceof ScalarEvent scalar) {
      return scalar(scalar);
    }
    return event.is(Event.ID.SequenceStart) ? listing(event, depth) : mapping(event, depth);
  }

  private Node.Scalar scalar(ScalarEvent event) {
    String text = recall.text(breaks.shown(event.getValue()));
    boolean quoted = event.getScalarStyle() != ScalarStyle.PLAIN;
    if (!quoted) {
      HashCut.of(event.getEndMark())
          .ifPresent(cut -> out.add(cut.finding(text, lines.at(event.getEndMark()))));
    }
    return lines.scalar(text, quoted, event.getStartMark(), event.getEndMark());
  }

  private void complain(NodeEvent event) {
    if (event.getAnchor() != null) {
      out.add(Faults.notPlain(lines.at(event.getStartMark()), "an anchor"));
    }
    String tag =
        event instanceof ScalarEvent scalar
            ? scalar.getTag()
            : event instanceof CollectionStartEvent start ? start.getTag() : null;
    if (tag != null && !tag.equals("!")) {
      out.add(Faults.notPlain(lines.at(event.getStartMark()), "a tag"));
    }
  }

  private Node listing(Event start, int depth) {
    List<Node> items = new ArrayList<>();
    while (!events.checkEvent(Event.ID.SequenceEnd)) {
      items.add(node(depth + 1));
    }
    events.getEvent();
    return new Node.Listing(
        items, items.isEmpty() ? lines.at(start.getStartMark()) : items.get(0).at());
  }

  private Node mapping(Event start, int depth) {
    List<Node.Entry> entries = new ArrayList<>();
    List<Node> again = new ArrayList<>();
    SeenKeys seen = new SeenKeys();
    while (!events.checkEvent(Event.ID.MappingEnd)) {
      Optional<Node.Scalar> key = key(seen, depth);
      Node value = node(depth + 1);
      key.ifPresentOrElse(
          found -> entries.add(new Node.Entry(found, value)), () -> again.add(value));
    }
    events.getEvent();
    entries.replaceAll(entry -> seen.isTwice(entry.key()) ? unread(entry, again) : entry);
    Place at = entries.isEmpty() ? lines.at(start.getStartMark()) : entries.get(0).key().at();
    return new Node.Mapping(entries, at);
  }

  /** Of two values nobody can tell which is meant; an id only names the record. */
  private static Node.Entry unread(Node.Entry entry, List<Node> again) {
    if (entry.key().text().equals("id")) {
      return entry;
    }
    List<Node> lost = new ArrayList<>(again);
    lost.add(entry.value());
    return new Node.Entry(entry.key(), new Node.Unreadable(entry.value().at(), lost));
  }

  /** A finding about the YAML itself. */
  static Finding fault(String rule, Place at, String what, String follows, String mend) {
    return new Finding(rule, Severity.STOP, at, what, follows, mend, List.of());
  }
}
