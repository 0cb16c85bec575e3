package kitwright.check;

import java.util.List;
import kitwright.assessment.LooseAssessmentFails;
import kitwright.assessment.SectionImpossible;
import kitwright.assessment.joint.WeakLinkToItself;
import kitwright.assessment.material.MaterialImpossible;
import kitwright.choice.DecisionUnknown;
import kitwright.choice.OptionOfOtherShortage;
import kitwright.choice.OptionTwice;
import kitwright.claim.ClaimAsksTwice;
import kitwright.claim.ClaimDraftUnsent;
import kitwright.claim.ClaimReplyOverdue;
import kitwright.claim.ReplacementUncounted;
import kitwright.cutting.CutDoneUnsaid;
import kitwright.cutting.CutImpossible;
import kitwright.cutting.CutUnfit;
import kitwright.finding.Findings;
import kitwright.kit.CountContradictory;
import kitwright.kit.CountWithoutDay;
import kitwright.kit.CountedTwice;
import kitwright.kit.DeliveryUncounted;
import kitwright.kit.KitUncounted;
import kitwright.kit.OffcutPromisedTwice;
import kitwright.kit.StockOverused;
import kitwright.kit.UnitsApart;
import kitwright.kit.UsedTwice;
import kitwright.ledger.Facts;
import kitwright.ledger.Rule;
import kitwright.loan.ToolOverdue;
import kitwright.loan.ToolReturnedWhileNeeded;
import kitwright.money.BudgetLineUnknown;
import kitwright.money.BuildOverBudget;
import kitwright.money.ForecastOverBudget;
import kitwright.money.LineOverBudget;
import kitwright.money.OrderNearlyPaid;
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
import kitwright.money.TaxBeyondAmount;
import kitwright.network.BegunEarly;
import kitwright.network.DaysOffOverlap;
import kitwright.network.DurationBeyondReason;
import kitwright.network.LinkToWithdrawn;
import kitwright.network.ProgressDiffers;
import kitwright.network.ProgressImpossible;
import kitwright.network.ProgressWithoutDay;
import kitwright.network.TaskBeforePredecessor;
import kitwright.network.TaskCycle;
import kitwright.network.TaskWaitsForItself;
import kitwright.openmatter.HoldPointNear;
import kitwright.shortage.CountedShortUnrecorded;
import kitwright.shortage.FinishedWithoutMaterial;
import kitwright.shortage.PackedNotCounted;
import kitwright.shortage.PromiseOverdue;
import kitwright.shortage.ShortageBeyondCount;
import kitwright.shortage.ShortageCauseContradicted;
import kitwright.shortage.ShortageUnclaimed;
import kitwright.substitution.AssessmentAsksTooLittle;
import kitwright.substitution.AssessmentFails;
import kitwright.substitution.AssessmentInconclusive;
import kitwright.substitution.ConditionUncheckable;
import kitwright.substitution.ConditionUnmet;
import kitwright.substitution.GradeTooLow;
import kitwright.substitution.HoldPointMissing;
import kitwright.substitution.HoldPointPassed;
import kitwright.substitution.LimitUnexplained;
import kitwright.substitution.PersonTwice;
import kitwright.substitution.ProposerMissing;
import kitwright.substitution.RightUnfit;
import kitwright.substitution.RightUnproved;
import kitwright.substitution.SignatureCoversLess;
import kitwright.substitution.SignedResultsDiffer;
import kitwright.substitution.SubstitutionUnassessed;
import kitwright.substitution.SubstitutionUnsigned;
import kitwright.substitution.VoidSignature;
import kitwright.takeoff.TakeOffIncomplete;
import kitwright.weather.ForecastGap;
import kitwright.weather.ForecastTwice;
import kitwright.weather.Outlook;

/** Judges a ledger by every rule there is. */
public final class Check {
  /** Ids, references, dates, evidence; then room by room. */
  private static final List<Rule> RULES =
      List.of(
          new IdTwice(),
          new ReferenceDangling(),
          new DatesDisordered(),
          new DateImpossible(),
          new MeasureImplausible(),
          new EvidenceAbsent(),
          new EvidenceAltered(),
          new TaskCycle(),
          new TaskWaitsForItself(),
          new LinkToWithdrawn(),
          new TaskBeforePredecessor(),
          new BegunEarly(),
          new ProgressImpossible(),
          new ProgressWithoutDay(),
          new ProgressDiffers(),
          new DurationBeyondReason(),
          new DaysOffOverlap(),
          new ForecastTwice(),
          new ForecastGap(),
          new Outlook(),
          new UnitsApart(),
          new TakeOffIncomplete(),
          new UsedTwice(),
          new DeliveryUncounted(),
          new CountWithoutDay(),
          new KitUncounted(),
          new CountContradictory(),
          new CountedTwice(),
          new StockOverused(),
          new OffcutPromisedTwice(),
          new CountedShortUnrecorded(),
          new ShortageBeyondCount(),
          new ShortageCauseContradicted(),
          new ShortageUnclaimed(),
          new PackedNotCounted(),
          new PromiseOverdue(),
          new FinishedWithoutMaterial(),
          new ClaimDraftUnsent(),
          new ClaimReplyOverdue(),
          new ReplacementUncounted(),
          new ClaimAsksTwice(),
          new CutImpossible(),
          new CutUnfit(),
          new CutDoneUnsaid(),
          new MaterialImpossible(),
          new SectionImpossible(),
          new WeakLinkToItself(),
          new LooseAssessmentFails(),
          new OptionTwice(),
          new OptionOfOtherShortage(),
          new DecisionUnknown(),
          new SubstitutionUnassessed(),
          new AssessmentFails(),
          new AssessmentInconclusive(),
          new SubstitutionUnsigned(),
          new GradeTooLow(),
          new ProposerMissing(),
          new AssessmentAsksTooLittle(),
          new LimitUnexplained(),
          new RightUnfit(),
          new RightUnproved(),
          new PersonTwice(),
          new VoidSignature(VoidSignature.Why.NOT_ENTITLED),
          new VoidSignature(VoidSignature.Why.BY_PROPOSER),
          new VoidSignature(VoidSignature.Why.BY_BUILDER),
          new VoidSignature(VoidSignature.Why.BEFORE_ASSESSMENT),
          new VoidSignature(VoidSignature.Why.COVERS_NOTHING),
          new VoidSignature(VoidSignature.Why.STALE),
          new VoidSignature(VoidSignature.Why.NO_LETTER),
          new VoidSignature(VoidSignature.Why.LETTER_ALTERED),
          new VoidSignature(VoidSignature.Why.KEY_MISSING),
          new VoidSignature(VoidSignature.Why.KEY_FORGED),
          new VoidSignature(VoidSignature.Why.KEY_UNCHECKED),
          new VoidSignature(VoidSignature.Why.VERDICT_TURNED),
          new SignatureCoversLess(),
          new SignedResultsDiffer(),
          new ConditionUnmet(),
          new ConditionUncheckable(),
          new HoldPointPassed(),
          new HoldPointMissing(),
          new ToolOverdue(),
          new ToolReturnedWhileNeeded(),
          new HoldPointNear(),
          new BudgetLineUnknown(),
          new MoneyNegative(),
          new ThreePointDisordered(),
          new RateImpossible(),
          new RateTwice(),
          new RateMissing(),
          new TaxBeyondAmount(),
          new PaidInFuture(),
          new SpendContradictory(),
          new PaidBeyondOrder(),
          new OrderNearlyPaid(),
          new RefundUnlinked(),
          new RefundOfUnpaid(),
          new RefundBeyondPayment(),
          new SettlementUnbooked(),
          new LineOverBudget(),
          new BuildOverBudget(),
          new ForecastOverBudget());

  private Check() {}

  /** Every rule there is. */
  public static List<Rule> rules() {
    return RULES;
  }

  /** Adds what every rule finds on that day. */
  public static void examine(Facts day, Findings out) {
    Examining examining = new Examining(day, out);
    RULES.forEach(examining::run);
  }
}
