package kitwright.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import kitwright.value.Nearest;

/**
 * Which key somebody meant who wrote another word: one that means the same, or else one that the
 * word misspells. A word that is right in itself, such as “width” where “worth” is a key, misspells
 * none.
 */
public final class Meant {
  /**
   * What else a thing is called than by its key: words of a builder, behind the keys that hold it.
   * The first of these that a record has is meant. From memory, no source.
   */
  private static final String CALLED =
      """
      on day found received: date day when dated
      qty pieces amount: quantity amount number count howmany
      amount cost price worth: price cost sum total value
      size: width length height thickness dimensions measures
      what title name tool mark: name title description label article
      from to against: supplier seller vendor shop maker
      from: lender owner sender
      to: recipient payee
      who by: person people crew helpers worker
      why cause because: reason
      takes: duration time hours days effort
      after: depends depends-on predecessors before needs-task
      uses: needs requires materials
      evidence receipt photos letter: photo photos picture pictures image images file files document
      evidence receipt photos letter: documents attachment attachments proof
      remark note text says: comment comments notes note remark remarks text
      sha256: hash digest checksum
      contact: email e-mail mail address phone telephone
      due reply-by until: deadline until
      place crate: where location
      crate: box case
      finished done settled: finish end ended completed complete done
      started: start begin began begun
      returned: return back-on
      came received arrives expected: arrived arrival delivered came received
      expected arrives expect: eta promised
      withdrawn: cancelled canceled abandoned dropped given-up
      kind shape method: type sort
      sign-offs: signatures signed approved approvals signoffs released
      instead-of: replaces instead
      line budget: category account budget line
      progress: done percent share
      may-sign: rights signs can-sign
      currency: money
      launch: finish end goal
      parties: people persons suppliers contacts crew helpers firms
      stock: offcuts off-cuts rack remnants leftovers wood
      kit: items parts packing-list
      spending: orders purchases payments expenses refunds bills invoices
      borrowed: tools loans lent
      tasks: work jobs todo steps activities
      forecast: weather
      budget: costs money lines
      rates: exchange currencies
      cuts: parts cutting
      """;

  private static final Map<String, List<String>> KEYS = read();
  private static final int MOST_GROUPS = 2;

  private Meant() {}

  private static Map<String, List<String>> read() {
    Map<String, List<String>> keys = new HashMap<>();
    for (String line : CALLED.split("\n")) {
      String[] sides = line.split(": ", 2);
      for (String word : sides[1].split(" ")) {
        keys.computeIfAbsent(word, any -> new ArrayList<>())
            .addAll(Arrays.asList(sides[0].split(" ")));
      }
    }
    return keys;
  }

  /** The keys that words lead to. */
  static Set<String> all() {
    Set<String> all = new TreeSet<>();
    KEYS.values().forEach(all::addAll);
    return all;
  }

  /**
   * How to mend a key that a form does not have.
   *
   * @param written whether the form’s record says a key already
   */
  static String mend(String word, Layout form, Predicate<String> written) {
    return called(word, form.names())
        .or(() -> inside(word, form).isPresent() ? Optional.empty() : by(word, form.names()))
        .map(
            near ->
                written.test(near)
                    ? "“" + near + "” says that, and stands here already: leave one of them out."
                    : "Did you mean “" + near + "”?")
        .or(() -> inside(word, form))
        .orElseGet(
            () -> "The keys here are: " + String.join(", ", new TreeSet<>(form.names())) + ".");
  }

  /** The groups of a form that have the key, or tell that they may, where they are few. */
  private static Optional<String> inside(String word, Layout form) {
    List<String> groups =
        form.keys().stream()
            .filter(key -> holds(key, word))
            .map(key -> "“" + key.name() + "”")
            .toList();
    return groups.isEmpty() || groups.size() > MOST_GROUPS
        ? Optional.empty()
        : Optional.of(
            "Write it inside " + String.join(" or ", groups) + ", where that key belongs.");
  }

  private static boolean holds(Key key, String word) {
    return key.form() == Key.Form.NAMED
        ? List.of(key.says().split("\\W+(?!-)")).contains(word)
        : key.inner().filter(inner -> inner.slotOf(word) >= 0).isPresent();
  }

  /** The one of some keys that a word means, or misspells. */
  public static Optional<String> by(String word, List<String> keys) {
    return called(word, keys)
        .or(() -> called(word + "s", keys))
        .or(() -> Nearest.ofWords(word, keys));
  }

  private static Optional<String> called(String word, List<String> keys) {
    return KEYS.getOrDefault(word.toLowerCase(Locale.ROOT), List.of()).stream()
        .filter(keys::contains)
        .findFirst();
  }
}
