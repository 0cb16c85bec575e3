package kitwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class ProseTest {
  private static String safe(String markdown) {
    return Document.of(Block.prose(markdown, 2)).markdown();
  }

  @Test
  void aPersonsMarkdownKeepsItsForm() {
    assertThat(safe("# Glue-up\n\nWe *did* it:\n\n- one\n- two\n\n| a | b |\n|---|--:|\n| 1 | 2 |"))
        .isEqualTo(
            """
            ### Glue-up

            We *did* it:

            - one
            - two

            | a   |   b |
            |-----|----:|
            | 1   |   2 |
            """);
  }

  @Test
  void htmlIsShownAsWords() {
    assertThat(safe("a <b onclick=x>c</b>")).isEqualTo("a \\<b onclick=x>c\\</b>\n");
    assertThat(safe("<script>\nalert(1)\n</script>"))
        .isEqualTo("\\<script> alert(1) \\</script>\n");
    assertThat(ReadBack.kinds(safe("<div>\n<a href='http://x.example'>y</a>\n</div>")))
        .containsExactly("Paragraph");
  }

  @Test
  void linksLeadOnlyWhereTheyMay() {
    assertThat(safe("[a](https://a.example) [b](javascript:x) <https://c.example>"))
        .isEqualTo("[a](https://a.example) b [https://c.example](https://c.example)\n");
    assertThat(safe("[a][1]\n\n[1]: data:text/html,x")).isEqualTo("a\n");
  }

  @Test
  void picturesFromOtherHostsBecomeLinks() {
    assertThat(safe("![spy](https://a.example/p.gif)"))
        .isEqualTo("[spy](https://a.example/p.gif)\n");
  }

  @Test
  void aFileThatDoesNotLieBesideThePageIsToldInWords() {
    assertThat(safe("![hull](photos/1.jpg) and [the letter](../evidence/smith-2026.txt)"))
        .isEqualTo("hull and the letter\n");
  }

  @Test
  void aPictureThatLiesBesideThePageIsShownUnderItsNameThere() {
    Block prose =
        Block.prose("![hull](../photos/a%20b.jpg)", 0, Map.of("../photos/a%20b.jpg", "week-1.jpg"));
    assertThat(Document.of(prose).markdown()).isEqualTo("![hull](week-1.jpg)\n");
  }

  @Test
  void hiddenCharactersAreWrittenOut() {
    assertThat(safe("a\u202eb `c\u202ed`")).isEqualTo("a\\u202eb `c\\u202ed`\n");
  }

  @Test
  void aPlusSignAtALineStartStaysAPlusSign() {
    assertThat(ReadBack.kinds(safe("a\n\\+ b"))).containsExactly("Paragraph", "SoftLineBreak");
  }

  @Test
  void deepNestingDoesNoHarm() {
    assertThat(safe(">".repeat(20_000) + " a")).isNotEmpty();
    assertThat(safe("[".repeat(50_000))).isNotEmpty();
  }

  @Test
  void aTableOfAMillionCellsStandsAsItWasWritten() {
    String table = "| a | b |\n|---|---|\n" + "| 1 | 2 |\n".repeat(500_000);
    assertThat(safe(table)).startsWith("```\n| a | b |\n").endsWith("| 1 | 2 |\n```\n");
  }
}
