package kitwright.cutting;

import java.math.BigDecimal;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import kitwright.ledger.Cut;
import kitwright.value.Decimal;
import kitwright.value.Size;

/** Parts that do not say how thick they are, where stock of more than one thickness is at hand. */
final class AnyThickness {
  private AnyThickness() {}

  /** A sentence each. */
  static List<String> in(Cut cut, List<Rack.Free> pieces) {
    return cut.parts().stream()
        .filter(part -> part.thickness().isEmpty() && part.qty() > 0)
        .filter(part -> thick(part, pieces).size() > 1)
        .map(
            part ->
                "“"
                    + part.mark()
                    + "” does not say how thick it is, and is cut of "
                    + thick(part, pieces).stream()
                        .map(Decimal::print)
                        .collect(Collectors.joining(" or "))
                    + " mm alike: add its thickness if it matters.")
        .distinct()
        .toList();
  }

  private static SortedSet<BigDecimal> thick(Cut.Part part, List<Rack.Free> pieces) {
    return pieces.stream()
        .map(Rack.Free::stock)
        .filter(
            stock ->
                part.from().isEmpty()
                    || part.from().stream().anyMatch(ref -> ref.id().equals(stock.id())))
        .filter(
            stock ->
                part.material().isEmpty()
                    || part.material()
                        .map(ref -> ref.id())
                        .equals(stock.material().map(ref -> ref.id())))
        .flatMap(stock -> stock.size().flatMap(Size::thickness).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
