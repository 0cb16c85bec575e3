package kitwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class SvgTest {
  private static Document parsed(Svg drawing) throws Exception {
    var factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(drawing.text())));
  }

  @Test
  void isXmlWithTitleAndDescriptionWhateverTheWords() throws Exception {
    Svg drawing =
        Svg.sheet(100, 50, "<script>&\u0000", "says \"no\" \uD800")
            .words(1, 2, "a < b & \u0007", Lettering.of(9).bold().turned(-90))
            .together("a & b", inside -> inside.circle(1, 1, 2, Look.filled(Shade.DOTTED)));
    Document read = parsed(drawing);
    assertThat(read.getDocumentElement().getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
    assertThat(read.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo("<script>&\uFFFD");
    assertThat(read.getElementsByTagName("script").getLength()).isZero();
    assertThat(read.getElementsByTagName("desc").item(0).getTextContent())
        .isEqualTo("says \"no\" \uFFFD");
  }

  @Test
  void definesEachPatternThatIsUsedAndNoOther() throws Exception {
    Svg drawing =
        Svg.sheet(10, 10, "t", "d")
            .rectangle(0, 0, 1, 1, Look.filled(Shade.SLANTED))
            .rectangle(0, 0, 1, 1, Look.line(1).over(Shade.SLANTED).dashed(2.0, 1.0))
            .polygon(List.of(new Svg.Point(0, 0), new Svg.Point(1, 0)), Look.filled(Shade.PALE));
    assertThat(parsed(drawing).getElementsByTagName("pattern").getLength()).isOne();
  }

  @Test
  void writesNumbersToAHundredthWithoutAnExponent() {
    String text = Svg.sheet(1, 1, "t", "d").line(1e-9, 1234.5678, -0.0, 7, Look.line(0.5)).text();
    assertThat(text).contains("x1=\"0\" y1=\"1234.57\" x2=\"0\" y2=\"7\"");
  }

  @Test
  void refusesWhatHasNoPlaceOnASheet() {
    Svg sheet = Svg.sheet(1, 1, "t", "d");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> sheet.line(Double.NaN, 0, 0, 0, Look.line(1)));
  }

  @Test
  void cutsWordsThatAreWiderThanTheirRoom() {
    Lettering set = Lettering.of(10);
    assertThat(set.fitted("Fit outer stem", 300)).isEqualTo("Fit outer stem");
    assertThat(set.fitted("Fit outer stem and keel shoe", 60)).isEqualTo("Fit outer…");
  }
}
