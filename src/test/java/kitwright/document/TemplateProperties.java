package kitwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Domain(NastyText.class)
@Domain(DomainContext.Global.class)
class TemplateProperties {
  @Property(tries = 700, seed = "11")
  void aSentenceReadsBackWhereverATemplatePutsIt(@ForAll String words) {
    String seen =
        Wording.withoutFirstBlanks(Wording.withoutLastBlanks(Wording.shown("a" + words + "z")));
    Slots slots = Slots.none().sentence("s", "a" + words + "z").sentence("r", words);
    assertThat(words("{{s}}", slots)).isEqualTo(seen);
    assertThat(words("# {{s}}", slots)).isEqualTo(seen);
    assertThat(words("- {{s}}", slots)).isEqualTo(seen);
    assertThat(words("> so: {{s}}.", slots)).isEqualTo("so: " + seen + ".");
    assertThat(ReadBack.cells(filled("|{{s}}|{{r}}|\n|--|--|\n|{{r}}|{{s}}|", slots)).get(1).get(1))
        .isEqualTo(seen);
    assertThat(ReadBack.kinds(filled("{{r}}\n", slots))).isIn(List.of(), List.of("Paragraph"));
  }

  private static String words(String template, Slots slots) {
    return ReadBack.words(ReadBack.tree(filled(template, slots)));
  }

  private static String filled(String template, Slots slots) {
    return new Templates(name -> Optional.of(template), name -> Optional.empty())
        .fill("t", slots)
        .match(Filled.Page::markdown, broken -> broken.faults().toString());
  }
}
