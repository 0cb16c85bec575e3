package kitwright.check;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import kitwright.assessment.Assessments;
import kitwright.assessment.Judging;
import kitwright.assessment.LooseAssessmentFails;
import kitwright.assessment.MaterialImpossible;
import kitwright.assessment.SectionImpossible;
import kitwright.assessment.WeakLinkToItself;
import kitwright.choice.DecisionUnknown;
import kitwright.choice.OptionOfOtherShortage;
import kitwright.choice.OptionTwice;
import kitwright.claim.ClaimDraftUnsent;
import kitwright.claim.ClaimReplyOverdue;
import kitwright.claim.ReplacementUncounted;
import kitwright.cutting.CutImpossible;
import kitwright.cutting.CutUnfit;
import kitwright.finding.Findings;
import kitwright.kit.CountContradictory;
import kitwright.kit.CountWithoutDay;
import kitwright.kit.CountedTwice;
import kitwright.kit.DeliveryUncounted;
import kitwright.kit.KitUncounted;
import kitwright.kit.OffcutPromisedTwice;
import kitwright.kit.Positions;
import kitwright.kit.StockOverused;
import kitwright.kit.UnitsApart;
import kitwright.ledger.Ledger;
import kitwright.ledger.Rule;
import kitwright.loan.ToolOverdue;
import kitwright.loan.ToolReturnedWhileNeeded;
import kitwright.money.Account;
import kitwright.money.BudgetLineUnknown;
import kitwright.money.BuildOverBudget;
import kitwright.money.ForecastOverBudget;
import kitwright.money.LineOverBudget;
import kitwright.money.MoneyNegative;
import kitwright.money.PaidBeyondOrder;
import kitwright.money.PaidInFuture;
import kitwright.money.RateImpossible;
import kitwright.money.RateMissing;
import kitwright.money.RateTwice;
import kitwright.money.RefundBeyondPayment;
import kitwright.money.RefundOfUnpaid;
import kitwright.money.RefundUnlinked;
import kitwright.money.SettlementUnbooked;
import kitwright.money.SpendContradictory;
import kitwright.money.Spent;
import kitwright.money.TaxBeyondAmount;
import kitwright.money.ThreePointDisordered;
import kitwright.network.DaysOffOverlap;
import kitwright.network.DurationBeyondReason;
import kitwright.network.LinkToWithdrawn;
import kitwright.network.Plan;
import kitwright.network.ProgressImpossible;
import kitwright.network.TaskBeforeForerunner;
import kitwright.network.TaskCycle;
import kitwright.network.TaskWaitsForItself;
import kitwright.openmatter.HoldPointNear;
import kitwright.shortage.CountedShortUnrecorded;
import kitwright.shortage.FinishedWithoutMaterial;
import kitwright.shortage.PromiseOverdue;
import kitwright.shortage.ShortageBeyondCount;
import kitwright.shortage.ShortageUnclaimed;
import kitwright.substitution.AssessmentFails;
import kitwright.substitution.AssessmentInconclusive;
import kitwright.substitution.ConditionUncheckable;
import kitwright.substitution.ConditionUnmet;
import kitwright.substitution.HoldPointMissing;
import kitwright.substitution.HoldPointPassed;
import kitwright.substitution.SignatureCoversNothing;
import kitwright.substitution.SignatureStale;
import kitwright.substitution.SignedBeforeAssessment;
import kitwright.substitution.SignedByProposer;
import kitwright.substitution.SignerNotEntitled;
import kitwright.substitution.SubstitutionUnassessed;
import kitwright.substitution.SubstitutionUnsigned;
import kitwright.weather.ForecastGap;
import kitwright.weather.ForecastTwice;
import kitwright.weather.Outlook;

/** Judges a ledger by every rule there is. */
public final class Check {
  private Check() {}

  /** Every rule, room by room, in the order in which their pages are best read. */
  public static List<Rule> rules(Ledger ledger, LocalDate today) {
    Facts facts = Facts.of(ledger, today);
    return Stream.of(
            form(),
            network(facts),
            weather(),
            kit(facts),
            shortage(facts),
            claim(facts),
            cutting(facts),
            assessment(facts),
            choice(),
            substitution(facts),
            loan(),
            openmatter(facts),
            money(facts))
        .flatMap(List::stream)
        .toList();
  }

  /** What several rules need, worked out once. */
  private record Facts(
      Plan plan,
      Positions positions,
      Assessments assessments,
      Judging judging,
      kitwright.substitution.Standings substitutions,
      kitwright.shortage.Standings shortages,
      kitwright.claim.Standings claims,
      Account account) {
    static Facts of(Ledger ledger, LocalDate today) {
      Assessments assessments = Assessments.of(ledger);
      Judging judging = Judging.of(ledger, assessments);
      Positions positions = Positions.of(ledger, today);
      var substitutions = kitwright.substitution.Standings.of(ledger, judging, today);
      var shortages = kitwright.shortage.Standings.of(ledger, positions, substitutions);
      return new Facts(
          Plan.of(ledger, today),
          positions,
          assessments,
          judging,
          substitutions,
          shortages,
          kitwright.claim.Standings.of(ledger, shortages, today),
          Spent.asOf(ledger, today, shortages));
    }
  }

  /** Ids, references, dates, evidence. */
  private static List<Rule> form() {
    return List.of(
        new IdTwice(),
        new ReferenceDangling(),
        new DatesDisordered(),
        new DateImpossible(),
        new EvidenceAbsent(),
        new EvidenceAltered());
  }

  private static List<Rule> network(Facts facts) {
    return List.of(
        new TaskCycle(facts.plan()),
        new TaskWaitsForItself(),
        new LinkToWithdrawn(facts.plan()),
        new TaskBeforeForerunner(facts.plan()),
        new ProgressImpossible(),
        new DurationBeyondReason(),
        new DaysOffOverlap());
  }

  private static List<Rule> weather() {
    return List.of(new ForecastTwice(), new ForecastGap(), new Outlook());
  }

  private static List<Rule> kit(Facts facts) {
    return List.of(
        new UnitsApart(),
        new DeliveryUncounted(),
        new CountWithoutDay(),
        new KitUncounted(facts.positions()),
        new CountContradictory(facts.positions()),
        new CountedTwice(),
        new StockOverused(facts.positions()),
        new OffcutPromisedTwice(facts.positions()));
  }

  private static List<Rule> shortage(Facts facts) {
    return List.of(
        new CountedShortUnrecorded(facts.shortages()),
        new ShortageBeyondCount(facts.shortages()),
        new ShortageUnclaimed(facts.shortages()),
        new PromiseOverdue(facts.shortages()),
        new FinishedWithoutMaterial(facts.shortages(), facts.substitutions()));
  }

  private static List<Rule> claim(Facts facts) {
    return List.of(
        new ClaimDraftUnsent(facts.claims(), facts.shortages()),
        new ClaimReplyOverdue(facts.claims()),
        new ReplacementUncounted(facts.claims()));
  }

  private static List<Rule> cutting(Facts facts) {
    return List.of(new CutImpossible(facts.positions()), new CutUnfit(facts.positions()));
  }

  private static List<Rule> assessment(Facts facts) {
    return List.of(
        new MaterialImpossible(),
        new SectionImpossible(),
        new WeakLinkToItself(),
        new LooseAssessmentFails(facts.assessments()));
  }

  private static List<Rule> choice() {
    return List.of(new OptionTwice(), new OptionOfOtherShortage(), new DecisionUnknown());
  }

  private static List<Rule> substitution(Facts facts) {
    return List.of(
        new SubstitutionUnassessed(facts.substitutions()),
        new AssessmentFails(facts.substitutions()),
        new AssessmentInconclusive(facts.substitutions()),
        new SubstitutionUnsigned(facts.substitutions()),
        new SignerNotEntitled(facts.substitutions()),
        new SignedByProposer(facts.substitutions()),
        new SignedBeforeAssessment(facts.substitutions()),
        new SignatureCoversNothing(facts.substitutions()),
        new SignatureStale(facts.substitutions()),
        new ConditionUnmet(facts.substitutions(), facts.judging()),
        new ConditionUncheckable(facts.substitutions(), facts.judging()),
        new HoldPointPassed(facts.substitutions()),
        new HoldPointMissing(facts.substitutions()));
  }

  private static List<Rule> loan() {
    return List.of(new ToolOverdue(), new ToolReturnedWhileNeeded());
  }

  private static List<Rule> openmatter(Facts facts) {
    return List.of(new HoldPointNear(facts.plan(), facts.substitutions()));
  }

  private static List<Rule> money(Facts facts) {
    return List.of(
        new BudgetLineUnknown(),
        new MoneyNegative(),
        new ThreePointDisordered(),
        new RateImpossible(),
        new RateTwice(),
        new RateMissing(facts.account()),
        new TaxBeyondAmount(),
        new PaidInFuture(),
        new SpendContradictory(),
        new PaidBeyondOrder(),
        new RefundUnlinked(),
        new RefundOfUnpaid(),
        new RefundBeyondPayment(facts.account()),
        new SettlementUnbooked(facts.account()),
        new LineOverBudget(facts.account()),
        new BuildOverBudget(facts.account()),
        new ForecastOverBudget(facts.account()));
  }

  /** Adds what every rule finds on that day. */
  public static void examine(Ledger ledger, LocalDate today, Findings out) {
    rules(ledger, today).forEach(rule -> rule.examine(ledger, today, out));
  }
}
