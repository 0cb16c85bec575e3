package kitwright.cutting.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitwright.OutsideProgram;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cut plans against a general solver of integer programs, glpsol of the GLPK, which is given the
 * rules of cutting in another form than the product's: no ways of cutting, only who goes where.
 *
 * <p>All lengths are multiples of half a millimetre. The solver takes a number for whole that is
 * off by 1e-5, on the longest piece here not a tenth of a millimetre, so it cannot squeeze in what
 * does not fit.
 */
class GlpkIT {
  /** Down to a search that is over before it has begun. */
  private static final List<Long> SHORT = List.of(1L, 300L, 3_000L, 30_000L);

  @TempDir Path folder;

  /** One part to be cut from a strip. */
  private record Item(long down, long over) {}

  @BeforeEach
  void theSolverIsThere() {
    OutsideProgram.needed("glpsol", "glpk-utils");
  }

  // Of the first thirty draws five are left out, which take glpsol more than a second.
  @ParameterizedTest
  @ValueSource(
      ints = {
        1, 2, 3, 5, 6, 7, 8, 10, 11, 12, 13, 14, 15, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 29, 30
      })
  void lengths(int seed) throws Exception {
    BarTask task = lengthsWanted(seed);
    long least = whoFromWhichBar(task).least(folder);
    BarPlan plan = BarCutter.plan(task, Effort.usual());
    assertThat(BarVerify.faults(task, plan)).isEmpty();
    assertThat(plan.missing()).isEmpty();
    isBest(plan.outcome(), least);
    for (long steps : SHORT) {
      BarPlan early = BarCutter.plan(task, Effort.steps(steps));
      assertThat(early.missing()).isEmpty();
      claimsNothingFalse(early.outcome(), least);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void panels(int seed) throws Exception {
    PanelTask task = panelsWanted(seed);
    long least = whoInWhichStrip(task).least(folder);
    PanelPlan plan = PanelCutter.plan(task, Effort.usual());
    assertThat(PanelVerify.faults(task, plan)).isEmpty();
    assertThat(plan.missing()).isEmpty();
    isBest(plan.outcome(), least);
    for (long steps : SHORT) {
      PanelPlan early = PanelCutter.plan(task, Effort.steps(steps));
      assertThat(early.missing()).isEmpty();
      claimsNothingFalse(early.outcome(), least);
    }
  }

  private static void isBest(Outcome outcome, long least) {
    assertThat(outcome.value()).as("value").isEqualTo(least);
    assertThat(outcome.isProvedBest()).as("proved").isTrue();
  }

  /** A plan may be dearer than the best where it does not say that it is the best. */
  private static void claimsNothingFalse(Outcome outcome, long least) {
    assertThat(outcome.bound()).as("bound").isLessThanOrEqualTo(least);
    assertThat(outcome.value()).as("value").isGreaterThanOrEqualTo(least);
    if (outcome.isProvedBest()) {
      assertThat(outcome.value()).as("value said to be the best").isEqualTo(least);
    }
  }

  /**
   * Four to nine sizes and two or three kinds of stock. The parts are some of the bars cut up, so
   * that they fill them to the tenth or, every other time, are half a millimetre too long for it: a
   * kerf or a trim too many or too few then changes the best value.
   */
  private static BarTask lengthsWanted(int seed) {
    Random random = new Random(seed);
    long kerf = List.of(0L, 25L, 30L).get(random.nextInt(3));
    long trim = 50L * random.nextInt(4);
    long excess = seed % 2 == 0 ? 0 : 5;
    List<BarPart> parts = new ArrayList<>();
    List<Bar> stock = new ArrayList<>();
    int kinds = 2 + random.nextInt(2);
    for (int k = 0; k < kinds; k++) {
      long length = 10 * (2400L + 900L * k + random.nextInt(800));
      // Within 5 % of an even price, so that the longest is not always the cheapest.
      long value = length * (95L + random.nextInt(11)) / 1000;
      stock.add(new Bar("bar " + k, length, 4, value, List.of()));
      int qty = 1 + random.nextInt(2);
      for (long part : split(length - 2 * trim + excess, 2 + random.nextInt(2), kerf, random)) {
        parts.add(new BarPart("part " + parts.size(), part, qty, 1, Optional.empty()));
      }
    }
    return new BarTask(parts, stock, kerf, trim, 3_000);
  }

  /** So many pieces, none much shorter than the others, that fill a length to the tenth. */
  private static List<Long> split(long length, int pieces, long kerf, Random random) {
    List<Long> split = new ArrayList<>();
    long left = length;
    for (int rest = pieces; rest > 1; rest--) {
      long piece = left * (70L + random.nextInt(60)) / (100L * rest) / 5 * 5;
      split.add(piece);
      left -= piece + kerf;
    }
    split.add(left);
    return split;
  }

  /**
   * Each bar is used or not; so many of each part come from it. A saw cut lies between two parts,
   * so one kerf fewer than parts; like bars are used in order, or the solver tries all orders.
   */
  private static GlpkProgram whoFromWhichBar(BarTask task) {
    GlpkProgram program = new GlpkProgram();
    List<List<String>> from = new ArrayList<>();
    task.parts().forEach(part -> from.add(new ArrayList<>()));
    for (int s = 0; s < task.stock().size(); s++) {
      Bar bar = task.stock().get(s);
      long room = bar.length() - 2 * task.trim() + task.kerf();
      for (int n = 0; n < bar.count(); n++) {
        String used = program.unknown("used_" + s + "_" + n, 1, bar.value());
        List<String> here = new ArrayList<>();
        for (int p = 0; p < task.parts().size(); p++) {
          here.add(program.unknown("cut_" + p + "_" + s + "_" + n, task.parts().get(p).qty(), 0));
          from.get(p).add(here.get(p));
        }
        for (int p = 0; p < here.size(); p++) {
          program.term(task.parts().get(p).length() + task.kerf(), here.get(p));
        }
        program.term(-room, used).atMost(0);
        if (n > 0) {
          program.term(1, used).term(-1, "used_" + s + "_" + (n - 1)).atMost(0);
        }
      }
    }
    for (int p = 0; p < from.size(); p++) {
      from.get(p).forEach(cut -> program.term(1, cut));
      program.exactly(task.parts().get(p).qty());
    }
    return program;
  }

  /**
   * Up to twelve parts from like sheets; strips along or across, with and without trimming. The
   * parts are two sheets cut up, to the tenth or half a millimetre too large, as with lengths.
   */
  private static PanelTask panelsWanted(int seed) {
    Random random = new Random(seed);
    long kerf = seed % 3 == 0 ? 0 : 30;
    FirstCut first = seed % 4 < 2 ? FirstCut.ACROSS : FirstCut.ALONG;
    Stages stages = seed % 5 == 0 ? Stages.TWO : Stages.TWO_AND_TRIM;
    PanelSaw saw = new PanelSaw(kerf, kerf, 50, first, stages);
    Panel sheet = new Panel("sheet", 15_250, 8_500, 5, 61, List.of());
    Run run = first.runs().get(0);
    Area sound = sound(sheet, saw);
    long tooLong = seed % 2 == 0 ? 0 : 5L * random.nextInt(2);
    long tooWide = seed % 2 == 0 ? 0 : 5 - tooLong;
    List<PanelPart> parts = new ArrayList<>();
    for (int n = 0; n < 2; n++) {
      for (long over : split(sound.over(run) + tooWide, 2, kerf, random)) {
        long narrower = 0;
        for (long down : split(sound.down(run) + tooLong, 2 + random.nextInt(2), kerf, random)) {
          Area part = sound.part(run, 0, 0, down, over - narrower);
          String mark = "part " + parts.size();
          parts.add(new PanelPart(mark, part.length(), part.width(), 1, 1, Grain.ALONG));
          narrower = stages == Stages.TWO ? 0 : 5L * random.nextInt(100);
        }
      }
    }
    return new PanelTask(parts, List.of(sheet), saw, 5_000, 3_000);
  }

  private static Area sound(Panel sheet, PanelSaw saw) {
    return new Area(0, 0, sheet.length() - 2 * saw.trim(), sheet.width() - 2 * saw.trim());
  }

  /**
   * The level model: parts sorted, widest first; each part begins a strip as wide as itself or lies
   * in one that an earlier part began; each strip lies in a sheet. After A. Lodi and M. Monaci,
   * Integer linear programming models for 2-staged two-dimensional knapsack problems, Mathematical
   * Programming B 94 (2003) 257-278, for one sheet; of it title, place and abstract were looked up,
   * the model is from memory. Several sheets, the saw cuts and strips without trimming are added.
   */
  private static GlpkProgram whoInWhichStrip(PanelTask task) {
    PanelSaw saw = task.saw();
    Run run = saw.firstCut().runs().get(0);
    List<Item> items = items(task, run);
    Panel sheet = task.stock().get(0);
    Area sound = sound(sheet, saw);
    long within = saw.within(run);
    long between = saw.between(run);
    GlpkProgram program = new GlpkProgram();
    List<List<String>> lies = new ArrayList<>();
    items.forEach(item -> lies.add(new ArrayList<>()));
    List<String> strips = new ArrayList<>();
    for (int j = 0; j < items.size(); j++) {
      String strip = program.unknown("strip_" + j, 1, 0);
      strips.add(strip);
      lies.get(j).add(strip);
      program.term(items.get(j).down() - sound.down(run), strip);
      for (int i = j + 1; i < items.size(); i++) {
        if (saw.stages() == Stages.TWO_AND_TRIM || items.get(i).over() == items.get(j).over()) {
          String in = program.unknown("in_" + i + "_" + j, 1, 0);
          lies.get(i).add(in);
          program.term(items.get(i).down() + within, in);
        }
      }
      program.atMost(0);
    }
    for (List<String> ways : lies) {
      ways.forEach(way -> program.term(1, way));
      program.exactly(1);
    }
    sheets(program, items, strips, sheet, sound.over(run) + between, between);
    return program;
  }

  /** Each strip in one sheet; sheets are used in order. */
  private static void sheets(
      GlpkProgram program,
      List<Item> items,
      List<String> strips,
      Panel sheet,
      long room,
      long between) {
    for (int k = 0; k < sheet.count(); k++) {
      String used = program.unknown("sheet_" + k, 1, sheet.value());
      for (int j = 0; j < items.size(); j++) {
        program.term(items.get(j).over() + between, program.unknown("on_" + j + "_" + k, 1, 0));
      }
      program.term(-room, used).atMost(0);
      if (k > 0) {
        program.term(1, used).term(-1, "sheet_" + (k - 1)).atMost(0);
      }
    }
    for (int j = 0; j < items.size(); j++) {
      for (int k = 0; k < sheet.count(); k++) {
        program.term(1, "on_" + j + "_" + k);
      }
      program.term(-1, strips.get(j)).exactly(0);
    }
  }

  private static List<Item> items(PanelTask task, Run run) {
    List<Item> items = new ArrayList<>();
    for (PanelPart part : task.parts()) {
      boolean along = run == Run.ALONG;
      long down = along ? part.length() : part.width();
      long over = along ? part.width() : part.length();
      for (int n = 0; n < part.qty(); n++) {
        items.add(new Item(down, over));
      }
    }
    items.sort(Comparator.comparingLong(item -> -item.over()));
    return items;
  }
}
