package kitwright.document;

import static kitwright.document.Column.columns;
import static kitwright.document.Column.left;
import static kitwright.document.Row.row;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemplatesTest {
  private static final Slots SLOTS =
      Slots.none()
          .sentence("supplier", "Søndre *Kit* | Co")
          .sentence("nothing", "")
          .block("short", Block.table(columns(left("Item")), List.of(row("strip"))));

  private static Filled fill(String own) {
    return new Templates(name -> Optional.of(own), name -> Optional.empty()).fill("claim", SLOTS);
  }

  private static String text(String own) {
    return markdown(fill(own));
  }

  private static String markdown(Filled filled) {
    return filled.match(
        Filled.Page::markdown, broken -> "broken: " + broken.faults().get(0).what());
  }

  private static List<TemplateFault> faults(String own) {
    return fill(own).match(text -> List.of(), Filled.Broken::faults);
  }

  @Test
  void sentencesAreEscapedAndBlocksStandAsTheyAre() {
    assertThat(text("Dear {{supplier}},\n\n{{short}}\n\nYours\n"))
        .isEqualTo(
            """
            Dear Søndre \\*Kit\\* \\| Co,

            | Item  |
            |:------|
            | strip |

            Yours
            """);
  }

  @Test
  void aPartIsLeftOutWhereItsSlotIsEmpty() {
    assertThat(text("{{#nothing}}\na\n{{/nothing}}\n{{^nothing}}\nb\n{{/nothing}}\n{{! c }}"))
        .isEqualTo("b\n");
    assertThat(text("{{#supplier}}to {{supplier}}{{/supplier}}"))
        .isEqualTo("to Søndre \\*Kit\\* \\| Co\n");
  }

  @Test
  void theBuildersOwnTemplateComesFirst() {
    Map<String, String> own = Map.of("claim", "own");
    Map<String, String> packaged = Map.of("claim", "packaged", "week", "packaged week");
    var templates =
        new Templates(
            name -> Optional.ofNullable(own.get(name)),
            name -> Optional.ofNullable(packaged.get(name)));
    assertThat(markdown(templates.fill("claim", SLOTS))).isEqualTo("own\n");
    assertThat(markdown(templates.fill("week", SLOTS))).isEqualTo("packaged week\n");
    assertThat(templates.fill("other", SLOTS)).isInstanceOf(Filled.Broken.class);
  }

  @Test
  void anUnknownNameIsToldWithItsPlaceAndTheKnownOnes() {
    assertThat(faults("One\nölig {{suplier}}"))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.at()).hasToString("templates/claim.md:2:6");
              assertThat(fault.at().endColumn()).isEqualTo(17);
              assertThat(fault.what()).isEqualTo("This template knows no suplier.");
              assertThat(fault.mend()).isEqualTo("Use one of: nothing, short, supplier.");
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      textBlock =
          """
          {{#short}}a                     ! {{#short}} is not closed.
          a{{/short}}                     ! {{/short}} closes nothing.
          {{#short}}{{/supplier}}         ! {{/supplier}} stands where short is open.
          {{supplier                      ! This tag is not closed.
          {{}}                            ! This tag means nothing here.
          {{> /etc/passwd}}               ! This tag means nothing here.
          {{>claim}}                      ! This tag means nothing here.
          {{<claim}}{{/claim}}            ! This tag means nothing here.
          {{$short}}{{/short}}            ! This tag means nothing here.
          {{=<% %>=}}                     ! This tag means nothing here.
          {{{supplier}}}                  ! This tag means nothing here.
          {{&supplier}}                   ! This tag means nothing here.
          {{.}}                           ! This tag means nothing here.
          {{this}}                        ! This template knows no this.
          {{supplier.toString}}           ! This tag means nothing here.
          {{-first}}                      ! This tag means nothing here.
          {{class}}                       ! This template knows no class.
          """)
  void whatATemplateMayNotSayIsAFault(String template, String what) {
    assertThat(faults(template)).extracting(TemplateFault::what).contains(what);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"getClass", "toString", "hashCode", "entrySet", "size", "isEmpty", "clear"})
  void noMethodOfJavaCanBeReached(String method) {
    assertThat(faults("{{" + method + "}}")).isNotEmpty();
  }

  @Test
  void aBombIsAFault() {
    assertThat(faults("{{#short}}".repeat(3000) + "x" + "{{/short}}".repeat(3000)))
        .extracting(TemplateFault::what)
        .containsExactly("More than 20 parts stand inside each other.");
    assertThat(faults("x".repeat(200_001))).isNotEmpty();
    assertThat(faults("{{".repeat(100_000))).isNotEmpty();
    assertThat(faults("{{a}}".repeat(40_000))).hasSize(40_000);
  }

  @Test
  void aFilledSlotIsNotReadAgain() {
    Slots slots = Slots.none().sentence("a", "{{b}}").sentence("b", "x");
    assertThat(
            markdown(
                new Templates(n -> Optional.of("{{a}}"), n -> Optional.empty()).fill("t", slots)))
        .isEqualTo("{{b}}\n");
  }

  @Test
  void namesAreKebabCaseSoThatNoPathIsANameToo() {
    var templates = new Templates(n -> Optional.empty(), n -> Optional.empty());
    assertThatThrownBy(() -> templates.fill("../secret", SLOTS))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Slots.none().sentence("a.b", ""))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aTemplateIsLaidOutForATerminalToo() {
    Slots slots =
        SLOTS
            .block("inside", Block.heading(3, "Crate"), Block.paragraph("a |b|"))
            .table("none", new Table("", columns(left("Item")), List.of()));
    Filled filled =
        new Templates(
                n ->
                    Optional.of(
                        """
                        # To {{supplier}}
                        {{! no }}
                        > Mind

                        ## Short
                        {{#none}}
                        no
                        {{/none}}
                        {{short}}
                        {{inside}}

                        - see {{short}}

                        <!-- no -->
                        """),
                n -> Optional.empty())
            .fill("t", slots);
    assertThat(filled.<String>match(page -> page.text(60), broken -> "" + broken.faults()))
        .isEqualTo(
            """
            To Søndre *Kit* | Co

            | Mind

            Short
              Item
              strip

              Crate
                a |b|

                - see

                  Item
                  strip
            """);
  }

  @Test
  void tagsOfPartsThatAreAloneOnTheirLineTakeItWithThem() {
    assertThat(text("a\n  {{#supplier}}  \n b\n{{/supplier}}\n\nc {{! x }}\nd\n{{! y }}"))
        .isEqualTo("a\n b\n\nc \nd\n");
    assertThat(text("a{{#supplier}}\nb\n{{/supplier}}c")).isEqualTo("a\nb\nc\n");
  }

  @Test
  void whatADocumentSaysIsOneObjectByNameAndInOrder() {
    assertThat(
            Slots.none()
                .value("today", Cell.of("Sunday", new Value.Day(LocalDate.of(2026, 3, 29))))
                .sentence("summary", "two are “short”")
                .sentence("note", "")
                .value("done", Cell.yes("", false))
                .table("none", new Table("", columns(left("Item")), List.of()))
                .list("names", List.of(Inline.text("a"), Inline.code("b")))
                .block("said", Block.heading(2, "H"), Block.quote(Block.paragraph("c")))
                .value(
                    "each",
                    Cell.of(
                        "",
                        new Value.Several(
                            List.of(
                                new Value.Nothing(),
                                new Value.Rows(
                                    new Table("", columns(left("Item")), List.of(row("strip"))))))))
                .json())
        .isEqualTo(
            """
            {
              "today": "2026-03-29",
              "summary": "two are “short”",
              "done": false,
              "none": [],
              "names": [
                "a",
                "b"
              ],
              "said": [
                "H",
                "c"
              ],
              "each": [
                null,
                [
                  {
                    "item": "strip"
                  }
                ]
              ]
            }
            """);
  }
}
