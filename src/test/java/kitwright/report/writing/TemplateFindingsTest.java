package kitwright.report.writing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import kitwright.document.Filled;
import kitwright.document.Slots;
import kitwright.document.Templates;
import kitwright.finding.Finding;
import org.junit.jupiter.api.Test;

class TemplateFindingsTest {
  @Test
  void aBrokenTemplateIsAFindingWithFileAndLine() {
    List<Finding> findings =
        new Templates(name -> Optional.of("Dear\n{{nobody}}"), PackagedTemplates::text)
            .fill("claim", Slots.none().sentence("supplier", "x"))
            .match(text -> List.<Finding>of(), TemplateFindings::of);
    assertThat(findings)
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.rule()).isEqualTo("template-broken");
              assertThat(finding.at()).hasToString("templates/claim.md:2:1");
              assertThat(finding.mend()).isEqualTo("Use one of: supplier.");
            });
  }

  @Test
  void aTemplateThatDoesNotExistIsAFindingToo() {
    assertThat(PackagedTemplates.text("no-such-template")).isEmpty();
    Filled filled =
        new Templates(name -> Optional.empty(), PackagedTemplates::text)
            .fill("no-such-template", Slots.none());
    assertThat(filled).isInstanceOf(Filled.Broken.class);
  }
}
