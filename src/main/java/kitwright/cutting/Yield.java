package kitwright.cutting;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kitwright.cutting.saw.Board;
import kitwright.cutting.saw.Flaw;
import kitwright.cutting.saw.Use;

/**
 * What became of the stock of a plan, by area; tenths of a millimetre squared.
 *
 * @param parts that were wanted
 * @param left worth keeping
 * @param dust that the blades took
 * @param flawed left out for flaws
 * @param rest trimmed off or too small to keep
 */
public record Yield(long parts, long left, long dust, long flawed, long rest) {
  /** Of all pieces of a plan. */
  public static Yield of(List<PieceCut> pieces) {
    long parts = 0;
    long left = 0;
    long dust = 0;
    long flawed = 0;
    long rest = 0;
    for (PieceCut piece : pieces) {
      dust += piece.board().dust();
      for (Board.Piece each : piece.board().pieces()) {
        long area = Math.max(0, each.rect().area());
        if (each.use() instanceof Use.Part) {
          parts += area;
        } else if (each.use() instanceof Use.Left) {
          left += area;
        } else {
          long bad = 0;
          for (Flaw flaw : Clearance.flaws(piece.stock())) {
            bad += each.rect().areaWithin(flaw.from(), flaw.to());
          }
          flawed += Math.min(bad, area);
          rest += area - Math.min(bad, area);
        }
      }
    }
    return new Yield(parts, left, dust, flawed, rest);
  }

  long all() {
    return parts + left + dust + flawed + rest;
  }

  /** Each kind in per cent. */
  public String told() {
    return "Parts "
        + percent(parts)
        + ", left-overs "
        + percent(left)
        + ", waste "
        + percent(dust + flawed + rest)
        + " (sawdust "
        + percent(dust)
        + ", flaws "
        + percent(flawed)
        + ", trimmings and scraps "
        + percent(rest)
        + ").";
  }

  /** Each kind as a share of all, to a thousandth, by its name. */
  public Map<String, BigDecimal> shares() {
    Map<String, BigDecimal> shares = new LinkedHashMap<>();
    shares.put("parts", share(parts));
    shares.put("left-overs", share(left));
    shares.put("waste", share(dust + flawed + rest));
    shares.put("sawdust", share(dust));
    shares.put("flaws", share(flawed));
    shares.put("trimmings", share(rest));
    return shares;
  }

  private BigDecimal share(long area) {
    return BigDecimal.valueOf(all() == 0 ? 0 : Math.round(1000.0 * area / all()), 3);
  }

  private String percent(long area) {
    return all() == 0 ? "0 %" : Math.round(1000.0 * area / all()) / 10.0 + " %";
  }
}
