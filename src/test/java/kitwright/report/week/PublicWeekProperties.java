package kitwright.report.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import kitwright.Sample;
import kitwright.daybook.Week;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Ledger;
import kitwright.ledger.LogDay.Audience;
import kitwright.report.Told;
import kitwright.report.words.Sheet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Nothing private goes out unseen: what a secret stands in is shown to its author first. */
class PublicWeekProperties {
  private static final LocalDate SUNDAY = LocalDate.of(2026, 3, 1);
  private static final String NAME = "Quellmoor Zwick";
  private static final String ID = "zq-works";
  private static final String CLAIM = "klm-7";
  private static final String AMOUNT = "7919.37";

  /** What must not be read, in the letters to which a text is brought before it is searched. */
  private static final List<String> SECRETS =
      List.of("quellmoor", "zwick", "zq-works", "klm-7", "7919", "791937");

  @Property(tries = 400)
  void aSecretThatWouldGoOutIsShownToItsAuthor(
      @ForAll("days") List<String> days, @ForAll("words") List<String> words) {
    Ledger ledger = ledger(days, words, "public");
    PublicWeek week = PublicWeek.of(Week.of(SUNDAY), Facts.of(ledger, SUNDAY));
    String text = read(week.sheet());
    if (SECRETS.stream().anyMatch(text::contains)) {
      assertThat(week.suspicions(file -> List.of())).isNotEmpty();
    }
  }

  @Property(tries = 100)
  void whatNobodyMarkedIsNotTold(
      @ForAll("days") List<String> days, @ForAll("words") List<String> words) {
    Ledger ledger = ledger(days, List.of("a", "b", "c"), "crew");
    String text = read(WeekReport.of(ledger, Week.of(SUNDAY), Audience.PUBLIC));
    SECRETS.forEach(secret -> assertThat(text).doesNotContain(secret));
  }

  @Example
  void whatIsMarkedIsToldWordForWord() {
    Ledger ledger =
        ledger(List.of("A *fair* hull. Cold, though (7)."), List.of("a", "b", "c"), "public");
    assertThat(Told.markdown(WeekReport.of(ledger, Week.of(SUNDAY), Audience.PUBLIC)))
        .contains("A *fair* hull. Cold, though (7).");
  }

  /** Were nothing secret in the ledger, the law above would hold of anything. */
  @Example
  void theCrewReadsAllOfIt() {
    Ledger ledger = ledger(List.of(NAME + " came with " + AMOUNT), List.of("a", "b", "c"), "crew");
    String text = read(WeekReport.of(ledger, Week.of(SUNDAY), Audience.CREW));
    assertThat(text).contains("quellmoor zwick", "klm-7", "7919");
  }

  @Example
  void noNameOrAmountSurvivesInAnyWeekOfTheDemonstration() {
    Ledger ledger = Told.demonstration();
    List<String> names =
        List.of("redshank", "osterlund", "bryde", "nora", "ivo", "sunniva", "pell", "halvor");
    for (LocalDate day = ledger.build().started(); !day.isAfter(Told.SUNDAY); ) {
      String text = read(WeekReport.of(ledger, Week.of(day), Audience.PUBLIC));
      assertThat(text)
          .doesNotContainPattern("(?<!\\p{L})(" + String.join("|", names) + ")s?(?!\\p{L})");
      assertThat(text)
          .doesNotContainPattern("claim-\\d|\\p{Sc}|\\d\\s?(eur|nzd|gbp)(?!\\p{L})|paid");
      day = day.plusWeeks(1);
    }
  }

  /** As a person or a search would read it: seen and unseen text, one case, plain digits. */
  private static String read(Sheet sheet) {
    String markdown = Told.markdown(sheet);
    String all = markdown + "\n" + Told.words(markdown) + "\n" + sheet.file();
    return Normalizer.normalize(all, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[\\p{Cf}\\\\*_`]", "")
        .replaceAll("(?<=\\d)[., '\u2019](?=\\d)", "");
  }

  @Provide
  Arbitrary<List<String>> days() {
    Arbitrary<String> sentence =
        Combinators.combine(harmless(), dressed(), harmless()).as(PublicWeekProperties::joined);
    return sentence.list().ofMinSize(1).ofMaxSize(4);
  }

  @Provide
  Arbitrary<List<String>> words() {
    return Combinators.combine(harmless(), secret(), harmless())
        .as((a, b, c) -> (a + " " + b + " " + c).replaceAll("[\"\\\\\n]", " "))
        .list()
        .ofSize(3);
  }

  private static String joined(String before, String secret, String after) {
    return before + secret + after;
  }

  private static Arbitrary<String> harmless() {
    return Arbitraries.of(
        "Cold in the barn. ",
        "Glued up. ",
        "",
        "Then ",
        "\n\n",
        "\n- ",
        "\n\n    ",
        " and so on. ",
        "\n> ",
        "\n# ",
        "\n| a |\n|---|\n| ",
        " |\n",
        "A. ",
        "! ",
        "**",
        "<b>",
        "(",
        "\n```\n",
        "—");
  }

  /** A secret in one of the ways in which somebody may write it. */
  private static Arbitrary<String> secret() {
    return Arbitraries.of(
        NAME,
        "QUELLMOOR",
        "zwick",
        "Zwicks",
        ID,
        "Zq Works",
        CLAIM,
        AMOUNT,
        AMOUNT + " EUR",
        "7 919,37",
        "7,919.37",
        "EUR 7919",
        "€ 7919",
        "about 7919 euros",
        "Quellmoor\u00AD Zwick",
        "Quell\u200Bmoor",
        "Ｑｕｅｌｌｍｏｏｒ",
        "contact@zwick.example");
  }

  private static Arbitrary<String> dressed() {
    return Combinators.combine(
            secret(),
            Arbitraries.of(
                "%s",
                "**%s**",
                "*%s*",
                "`%s`",
                "[%s](x)",
                "[x](%s)",
                "[x](<%s>)",
                "![%s](x.png)",
                "[x](y \"%s\")",
                "<i>%s</i>",
                "<a title=\"%s\">x</a>",
                "<!-- %s -->",
                "%s's",
                "(%s)",
                "[%s]",
                "\n[%s]: http://a.example/\n",
                "\n[r]: http://a.example/%s\n\n[r]",
                "\"%s\""))
        .as((secret, dress) -> dress.replace("%s", secret));
  }

  private static Ledger ledger(List<String> days, List<String> words, String audience) {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(
        "sample.yaml",
        """
        build: {name: "W0", what: "W1", currency: EUR, started: 2026-01-05}
        parties:
          - {id: zq-works, name: Quellmoor Zwick, role: supplier, may-sign: [structural]}
          - {id: me, name: Quellmoor Minor, role: builder}
        budget: [{line: spars, title: "W2", amount: 7919.37}]
        kit: [{id: stave, what: "W0", qty: 4, crate: "W1"}]
        stock: [{id: plank, what: "W2", qty: 3}]
        deliveries:
          - {id: d1, received: 2026-02-25, from: zq-works, note: "W1", counted: [{item: stave, qty: 2, damaged: 1}]}
          - {id: d2, expected: 2026-03-05, from: zq-works, note: "W2"}
        shortages:
          - {id: s1, item: stave, qty: 2, found: 2026-02-26, cause: not-packed, remark: "W0",
             options: [{id: "W1", kind: wait, cost: 7919.37}], decided: {option: "W1", on: 2026-02-27, by: me, why: "W2"}}
        claims: [{id: klm-7, against: zq-works, shortages: [s1], sent: 2026-02-27, remedy: replacement, reply-by: 2026-03-03,
           events: [{on: 2026-02-28, what: answered, text: "W0"}]}]
        substitutions:
          - {id: u1, instead-of: {item: stave, qty: 1}, use: [{stock: plank, qty: 1}], grade: structural, why: "W1",
             proposed: {by: me, on: 2026-02-24}, sign-offs: [{by: zq-works, on: 2026-02-26, conditions: ["W2"]}]}
        spending:
          - {id: p1, on: 2026-02-24, line: spars, what: "W0", amount: 7919.37, to: Quellmoor, state: paid}
          - {id: p2, on: 2026-02-24, line: spars, what: "W1", amount: 7919.37, state: ordered, expected: 2026-03-04}
        borrowed:
          - {id: saw, tool: "W2", from: zq-works, on: 2026-02-24, due: 2026-03-03, condition: "W0", worth: 7919.37}
        tasks:
          - {id: t1, what: "W1", public: "W0", phase: "W2", takes: 3 d, started: 2026-02-24}
          - {id: t2, what: "W0", takes: 3 d}
        """
            .replace("W0", words.get(0))
            .replace("W1", words.get(1))
            .replace("W2", words.get(2)));
    LocalDate day = LocalDate.of(2026, 2, 23);
    for (String body : days) {
      files.put(
          "log/" + day + ".md",
          "---\nday: "
              + day
              + "\naudience: "
              + audience
              + "\nhours: {me: 5, zq-works: 2}\ntasks: {t1: 40 %}\n"
              + "used: [{stock: plank, qty: 1}]\n"
              + "photos: [{file: \"evidence/"
              + words.get(1)
              + ".png\", says: \""
              + words.get(2)
              + "\", audience: "
              + audience
              + "},"
              + " {file: a.png, says: Zwick, audience: crew}]\n---\n"
              + body);
      day = day.plusDays(1);
    }
    files.put(
        "log/crew.md",
        "---\nday: 2026-03-01\naudience: crew\n---\nQuellmoor, for the crew only.\n");
    Findings faults = new Findings();
    Ledger ledger = Sample.read(files, faults).orElseThrow();
    assertThat(faults.inOrder()).isEmpty();
    return ledger;
  }
}
