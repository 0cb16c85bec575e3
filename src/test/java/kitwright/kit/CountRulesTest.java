package kitwright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import kitwright.Sample;
import org.junit.jupiter.api.Test;

/** Counts that are late, have no day, say one thing twice, or cannot be. */
class CountRulesTest {
  private static final String KIT = "kit: [{id: bolt, what: bolt, qty: 10}]\n";

  private static String came(String more) {
    return KIT + "deliveries: [{id: d, received: 2026-02-20, from: kit-maker" + more + "}]\n";
  }

  private static List<String> late(String yaml, String today) {
    return Sample.words(new DeliveryUncounted(), yaml, LocalDate.parse(today));
  }

  @Test
  void aDeliveryThatNobodyCountedForThreeDaysIsTold() {
    assertThat(late(came(""), "2026-02-22")).as("two days").isEmpty();
    assertThat(late(came(""), "2026-02-23"))
        .containsExactly(
            """
            WARN delivery-uncounted 2
            The delivery d came 3 days ago and nobody has counted it.
            What is missing or damaged is not known, and every day makes it harder to claim.
            Open the crates with the count sheet in hand and write what you find under “counted”.
            delivery d\
            """);
    assertThat(late(came(", counted: [{item: bolt, qty: 0}]"), "2026-03-23")).isEmpty();
    assertThat(late(came("").replace("received", "expected"), "2026-03-23")).isEmpty();
  }

  @Test
  void howSoonTheSupplierWantsToBeToldStandsBesideIt() {
    String notice = "parties: [{id: kit-maker, name: K, role: supplier, notice: 1 w}]\n";
    assertThat(late(notice + came(""), "2026-02-23"))
        .singleElement()
        .asString()
        .contains("harder to claim; the supplier wants to be told within 1 w of receipt.\n");
  }

  @Test
  void aCountWithoutADayIsInNoSum() {
    String counted =
        came(", counted: [{item: bolt, qty: 4}]").replace("received: 2026-02-20, ", "");
    assertThat(Sample.words(new CountWithoutDay(), counted))
        .containsExactly(
            """
            STOP count-without-day 2
            The delivery d is counted, but does not say when it came.
            None of its counts is in any sum: its items stand as never counted.
            Write “received:” with the day it came; if it is still on its way, write the lines of \
            its note under “packed”.
            delivery d\
            """);
    assertThat(Sample.words(new CountWithoutDay(), came(", counted: [{item: bolt, qty: 4}]")))
        .isEmpty();
    assertThat(Sample.words(new CountWithoutDay(), came("").replace("received", "expected")))
        .isEmpty();
  }

  @Test
  void anItemThatIsCountedOnTwoLinesIsAdded() {
    String twice =
        """
        kit: [{id: bolt, what: bolt, qty: 10}, {id: nut, what: nut, qty: 10}]
        deliveries:
          - id: d
            received: 2026-02-20
            from: kit-maker
            counted:
              - {item: bolt, qty: 4}
              - {item: nut, qty: 4}
              - {item: bolt, qty: 5}
          - {id: e, received: 2026-02-21, from: kit-maker, counted: [{item: nut, qty: 4}]}
        """;
    assertThat(Sample.words(new CountedTwice(), twice))
        .containsExactly(
            """
            WARN counted-twice 9
            The delivery d counts bolt again; line 7 has it already.
            Both lines are added: 4 and 5. If one was typed twice, a missing part looks as if it \
            were there.
            Join the two lines into one “qty”, or correct the item of one of them.
            delivery d, kit item bolt\
            """);
  }

  @Test
  void moreIsNoGoodThanWasFound() {
    String bad = ", counted: [{item: bolt, qty: 4, damaged: 3, wrong: 2%s}]";
    assertThat(Sample.words(new CountContradictory(), came(bad.formatted(""))))
        .containsExactly(
            """
            STOP count-contradictory 2
            Found: 4 × bolt; of these 3 are said to be damaged and 2 wrong.
            The good ones come out below nothing, so the count is taken as none good.
            “qty” is everything found, good or not; put the damaged and the wrong ones into it.
            delivery d, kit item bolt\
            """);
    assertThat(Sample.words(new CountContradictory(), came(bad.formatted(", undersize: 1"))))
        .singleElement()
        .asString()
        .contains("damaged and 2 wrong, and 1 undersize.\n");
  }

  @Test
  void moreWentBackThanWasCounted() {
    assertThat(
            Sample.words(
                new CountContradictory(),
                came(
                    ", counted: [{item: bolt, qty: 4}], sent-back: [{on: 2026-02-21, item: bolt,"
                        + " qty: 3}, {on: 2026-02-22, item: bolt, qty: 2}]")))
        .containsExactly(
            """
            STOP count-contradictory 2
            With this, 5 × bolt are said to have gone back, but only 4 were ever counted.
            What is here is told as nothing, and what is missing as more than it is.
            Correct what went back, or count the delivery that it came in.
            delivery d, kit item bolt\
            """);
  }

  @Test
  void whatACutAndTheLogOfItsDayTellCountsOnce() {
    assertThat(
            Sample.words(
                new UsedTwice(),
                """
                stock: [{id: larch, what: larch, pieces: 6, size: 3000 x 120 x 25 mm}, {id: oak, what: oak, qty: 6 each}]
                cuts: [{id: c, from: [larch], kerf: 3 mm, parts: [{mark: B, length: 900 mm}], done: 2026-02-20, used: [{stock: larch, pieces: 2}]}]
                ---
                day: 2026-02-20
                used:
                  - {stock: oak, qty: 2}
                  - {stock: larch, qty: 3}
                  - {stock: larch, qty: 1}
                ---
                """))
        .containsExactly(
            """
            NOTE used-twice 7
            The cut c says that it took 2 × larch on 20 February 2026, and the log of that day \
            says so too.
            It is taken to be the same wood and counts once.
            Leave the line out of the log; if more was used, write into it the task that it went \
            into, where that is another than the cut’s, or record the sum as “pieces” of the cut.
            cut c, stock larch, log day 2026-02-20\
            """);
  }
}
