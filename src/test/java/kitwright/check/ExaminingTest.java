package kitwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import kitwright.Sample;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.ledger.KitItem;
import kitwright.ledger.Ledger;
import kitwright.ledger.RecordRule;
import kitwright.ledger.Rule;
import org.junit.jupiter.api.Test;

/** A rule that breaks inside is told, keeps what it found, and silences no other. */
class ExaminingTest {
  private static final Ledger LEDGER =
      Sample.ledger(
          """
          kit:
            - {id: plank, what: plank, qty: 2}
            - {id: stave, what: stave, qty: 3}
            - {id: bolt, what: bolt, qty: 4}
          """);

  private record Found(String name) implements Rule {
    @Override
    public void examine(Facts day, Findings out) {
      out.add(found(name, day));
    }
  }

  private record Breaking(String name, RuntimeException fault) implements Rule {
    @Override
    public void examine(Facts day, Findings out) {
      out.add(found(name, day));
      throw fault;
    }
  }

  private record Deep(String name) implements Rule {
    @Override
    @SuppressWarnings("InfiniteRecursion") // that is what the rule is for
    public void examine(Facts day, Findings out) {
      examine(day, out);
    }
  }

  private record EachItem(String name) implements RecordRule<KitItem> {
    @Override
    public List<KitItem> records(Facts day) {
      return day.ledger().kit();
    }

    @Override
    public void examine(KitItem item, Facts day, Findings out) {
      if (item.id().equals("stave")) {
        throw new ArithmeticException("no end to it.");
      }
      out.add(new Finding(name, Severity.NOTE, item.at().record(), item.id(), "", "", List.of()));
    }
  }

  private record Asking(String name, Facts.Fact<String> fact) implements Rule {
    @Override
    public void examine(Facts day, Findings out) {
      fact.on(day);
    }
  }

  private static final class NeverWorks implements Facts.Fact<String> {
    @Override
    public String work(Facts day) {
      throw new IllegalStateException();
    }
  }

  private static final class LeansOnIt implements Facts.Fact<String> {
    private final Facts.Fact<String> other;

    LeansOnIt(Facts.Fact<String> other) {
      this.other = other;
    }

    @Override
    public String work(Facts day) {
      return other.on(day) + "!";
    }
  }

  private static Finding found(String what, Facts day) {
    return new Finding(
        what, Severity.NOTE, day.ledger().build().at().record(), what, "", "", List.of());
  }

  private static List<Finding> run(Rule... rules) {
    Findings out = new Findings();
    Examining examining = new Examining(Facts.of(LEDGER, Sample.TODAY), out);
    List.of(rules).forEach(examining::run);
    return out.inOrder();
  }

  private static Finding broken(List<Finding> all) {
    return all.stream().filter(each -> each.rule().equals("rule-broken")).findFirst().orElseThrow();
  }

  @Test
  void theOthersAreToldAndWhatItHadFoundIsKept() {
    List<Finding> all =
        run(new Found("a"), new Breaking("b", new IndexOutOfBoundsException("7")), new Found("c"));
    assertThat(all)
        .extracting(Finding::rule)
        .containsExactlyInAnyOrder("a", "b", "rule-broken", "c");
    assertThat(broken(all).what()).isEqualTo("The rule b breaks inside: 7.");
    assertThat(broken(all).severity()).isEqualTo(Severity.STOP);
    assertThat(broken(all).at()).isEqualTo(LEDGER.build().at().record());
    assertThat(broken(all).mend()).startsWith("Look at what was changed last for a number");
  }

  @Test
  void aRuleThatRunsTooDeepIsOneOfThem() {
    assertThat(broken(run(new Deep("d"))).what())
        .isEqualTo("The rule d breaks inside: it is nested too deep.");
  }

  @Test
  void whatLooksAtOneRecordAfterAnotherNamesTheRecordAndLooksAtTheRest() {
    List<Finding> all = run(new EachItem("e"));
    assertThat(all).extracting(Finding::what).contains("plank", "bolt");
    assertThat(broken(all).what())
        .isEqualTo("The rule e breaks inside at the kit item stave: no end to it.");
    assertThat(broken(all).at()).isEqualTo(LEDGER.kit().get(1).at().record());
    assertThat(broken(all).records()).containsExactly("kit item stave");
  }

  @Test
  void aFactThatBreaksIsToldOnceByItsName() {
    NeverWorks never = new NeverWorks();
    LeansOnIt leaning = new LeansOnIt(never);
    List<Finding> all =
        run(new Asking("f", leaning), new Asking("g", never), new Asking("h", leaning));
    assertThat(all)
        .singleElement()
        .satisfies(
            each ->
                assertThat(each.what())
                    .isEqualTo(
                        "What follows from the records cannot be worked out (check.ExaminingTest)"
                            + ": IllegalStateException."));
  }

  @Test
  void noNameOfARuleIsTakenTwice() {
    assertThat(RuleNames.all()).doesNotHaveDuplicates();
    assertThat(RuleNames.all()).contains("rule-broken");
  }
}
