package kitwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

  /** Hands each top key with its whole value to {@code entry}: for front matter. */
  public static void readOne(
      String file,
      String text,
      int skipped,
      Recall recall,
      BiConsumer<Node.Scalar, Node> entry,
      Findings out) {
    read(new Lines(file, skipped), text, recall, false, entry, out);
  }

  /**
   * Hands each top key's value, or each item of its list, to {@code record}; nothing, where the
   * list is empty.
   *
   * @param file path from the ledger's root
   * @param recall what was read of other files before
   */
  public static void read(
      String file, String text, Recall recall, BiConsumer<Node.Scalar, Node> record, Findings out) {
    read(new Lines(file, 0), text, recall, true, record, out);
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

  private static void read(
      Lines lines,
      String text,
      Recall recall,
      boolean itemByItem,
      BiConsumer<Node.Scalar, Node> record,
      Findings out) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    try {
      OddBreaks breaks = OddBreaks.of(text);
      ParserImpl events = new ParserImpl(new StreamReader(breaks.hidden(text)), options);
      new YamlText(events, lines, breaks, recall, itemByItem, out).documents(record);
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
          record.accept(key.get(), node(3));
        }
        events.getEvent();
      } else {
        Node value = node(2);
        key.ifPresent(found -> record.accept(found, value));
      }
    }
    events.getEvent();
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
    SeenKeys seen = new SeenKeys();
    while (!events.checkEvent(Event.ID.MappingEnd)) {
      Optional<Node.Scalar> key = key(seen, depth);
      Node value = node(depth + 1);
      key.ifPresent(found -> entries.add(new Node.Entry(found, value)));
    }
    events.getEvent();
    entries.replaceAll(entry -> seen.isTwice(entry.key()) ? unread(entry) : entry);
    Place at = entries.isEmpty() ? lines.at(start.getStartMark()) : entries.get(0).key().at();
    return new Node.Mapping(entries, at);
  }

  /** Of two values nobody can tell which is meant; an id only names the record. */
  private static Node.Entry unread(Node.Entry entry) {
    return entry.key().text().equals("id")
        ? entry
        : new Node.Entry(entry.key(), new Node.Unreadable(entry.value().at()));
  }

  /** A finding about the YAML itself. */
  static Finding fault(String rule, Place at, String what, String follows, String mend) {
    return new Finding(rule, Severity.STOP, at, what, follows, mend, List.of());
  }
}
