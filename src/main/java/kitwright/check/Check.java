package kitwright.check;

import java.time.LocalDate;
import java.util.List;
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

  /**
   * Every rule, in the order in which their pages are best read. Facts that several rules need are
   * worked out here once and handed to their constructors.
   */
  public static List<Rule> rules(Ledger ledger, LocalDate today) {
    Assessments assessments = Assessments.of(ledger);
    Judging judging = Judging.of(ledger, assessments);
    Positions positions = Positions.of(ledger, today);
    kitwright.substitution.Standings substitutions =
        kitwright.substitution.Standings.of(ledger, judging, today);
    kitwright.shortage.Standings shortages =
        kitwright.shortage.Standings.of(ledger, positions, substitutions);
    kitwright.claim.Standings claims = kitwright.claim.Standings.of(ledger, shortages, today);
    Account account = Spent.asOf(ledger, today, shortages);
    Plan plan = Plan.of(ledger, today);
    return List.of(
        // Form: ids, references, dates, evidence.
        new IdTwice(),
        new ReferenceDangling(),
        new DatesDisordered(),
        new DateImpossible(),
        new EvidenceAbsent(),
        new EvidenceAltered(),
        // Time: tasks, calendar, forecast.
        new TaskCycle(plan),
        new TaskWaitsForItself(),
        new LinkToWithdrawn(plan),
        new TaskBeforeForerunner(plan),
        new ProgressImpossible(),
        new DurationBeyondReason(),
        new DaysOffOverlap(),
        new ForecastTwice(),
        new ForecastGap(),
        new Outlook(),
        // What came, what is at hand, what is missing.
        new UnitsApart(),
        new DeliveryUncounted(),
        new KitUncounted(positions),
        new CountContradictory(positions),
        new CountedTwice(),
        new CountedShortUnrecorded(shortages),
        new ShortageBeyondCount(shortages),
        new ShortageUnclaimed(shortages),
        new PromiseOverdue(shortages),
        new ClaimDraftUnsent(claims, shortages),
        new ClaimReplyOverdue(claims),
        new ReplacementUncounted(claims),
        new StockOverused(positions),
        new OffcutPromisedTwice(positions),
        new CutImpossible(positions),
        new CutUnfit(positions),
        // Strength.
        new MaterialImpossible(),
        new SectionImpossible(),
        new WeakLinkToItself(),
        new LooseAssessmentFails(assessments),
        // Ways out of a shortage.
        new OptionTwice(),
        new OptionOfOtherShortage(),
        new DecisionUnknown(),
        // Substitutions.
        new SubstitutionUnassessed(substitutions),
        new AssessmentFails(substitutions),
        new AssessmentInconclusive(substitutions),
        new SubstitutionUnsigned(substitutions),
        new SignerNotEntitled(substitutions),
        new SignedByProposer(substitutions),
        new SignedBeforeAssessment(substitutions),
        new SignatureCoversNothing(substitutions),
        new SignatureStale(substitutions),
        new ConditionUnmet(substitutions, judging),
        new ConditionUncheckable(substitutions, judging),
        new HoldPointPassed(substitutions),
        new HoldPointMissing(substitutions),
        // Borrowed tools.
        new ToolOverdue(),
        new ToolReturnedWhileNeeded(),
        // Need: what must be there before the work.
        new HoldPointNear(plan, substitutions),
        new FinishedWithoutMaterial(shortages, substitutions),
        // Money.
        new BudgetLineUnknown(),
        new MoneyNegative(),
        new ThreePointDisordered(),
        new RateImpossible(),
        new RateTwice(),
        new RateMissing(account),
        new TaxBeyondAmount(),
        new PaidInFuture(),
        new SpendContradictory(),
        new PaidBeyondOrder(),
        new RefundUnlinked(),
        new RefundOfUnpaid(),
        new RefundBeyondPayment(account),
        new SettlementUnbooked(account),
        new LineOverBudget(account),
        new BuildOverBudget(account),
        new ForecastOverBudget(account));
  }

  /** Adds what every rule finds on that day. */
  public static void examine(Ledger ledger, LocalDate today, Findings out) {
    // No rule hangs on another, so all cores judge; findings come together in the rules' order.
    rules(ledger, today).stream()
        .map(rule -> found(rule, ledger, today))
        .forEachOrdered(out::addAll);
  }

  private static Findings found(Rule rule, Ledger ledger, LocalDate today) {
    Findings own = new Findings();
    rule.examine(ledger, today, own);
    return own;
  }
}
