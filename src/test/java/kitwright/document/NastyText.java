package kitwright.document;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Texts made of everything that Markdown or a forge takes for a sign. */
final class NastyText extends DomainContextBase {
  private static final String[] SIGNS = {
    "|",
    "\\",
    "`",
    "``",
    "*",
    "**",
    "_",
    "<b>",
    "</b>",
    "<!--",
    "-->",
    "[x](y)",
    "[",
    "]",
    "(",
    ")",
    "![",
    "!",
    "http://a.example/b",
    "HTTPS://a.example",
    "www.a.example",
    "Www.",
    "a@b.example",
    "@larch",
    "mailto:",
    "ftp://x.example",
    "://",
    "\r",
    "\n",
    "\r\n",
    "\u2028",
    "\t",
    "#",
    "# ",
    "1. ",
    "1.3",
    "2)",
    "-5",
    "+5",
    "-x",
    "#5",
    "=5",
    "<5 ",
    "< ",
    " * ",
    "\\u",
    "&D",
    "23) ",
    "- ",
    "+ ",
    "+",
    "=",
    "===",
    "---",
    "~~",
    "~~~",
    ":",
    ":-:",
    "&amp;",
    "&#124;",
    "&",
    ";",
    ">",
    "$",
    "é",
    "木",
    "🛶",
    " ",
    "  ",
    "a",
    "b1",
    "0",
    ".",
    ",",
    "\u202e",
    "\u0000",
    "\u001b[31m",
    "\u200d",
    "\u00a0",
    "[^1]",
    "[x]: /y",
    "{{x}}",
    "\"",
    "'",
    "javascript:alert(1)",
    "<script>",
    "\ufeff",
    "%",
    "/",
    "?"
  };

  @Provide
  Arbitrary<String> nasty() {
    Arbitrary<String> signs =
        Arbitraries.of(SIGNS)
            .list()
            .ofMinSize(0)
            .ofMaxSize(12)
            .map(parts -> String.join("", parts));
    return Arbitraries.frequencyOf(
        net.jqwik.api.Tuple.of(9, signs),
        net.jqwik.api.Tuple.of(1, Arbitraries.strings().ofMaxLength(20)));
  }
}
