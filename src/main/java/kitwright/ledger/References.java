package kitwright.ledger;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.value.Ref;

/** Which other records a record refers to, and of what kind each must be. */
public final class References {
  private References() {}

  /**
   * A reference to another record.
   *
   * @param kind what it must be
   */
  public record Reference(Kind kind, Ref ref) {}

  /** All references of a record, in no particular order. */
  public static Stream<Reference> of(Entry entry) {
    return switch (entry.kind()) {
      case BUILD, PARTIES, RATES, BUDGET, FORECAST -> Stream.of();
      case KIT -> ofItem((KitItem) entry);
      case DELIVERIES -> ofDelivery((Delivery) entry);
      case STOCK -> ofStock((Stock) entry);
      case TASKS -> ofTask((Task) entry);
      case SHORTAGES -> ofShortage((Shortage) entry);
      case CLAIMS -> ofClaim((Claim) entry);
      case SUBSTITUTIONS -> ofSubstitution((Substitution) entry);
      case MATERIALS -> ofMaterial((Material) entry);
      case SECTIONS -> ofSection((Section) entry);
      case ASSESSMENTS -> ofAssessment((Assessment) entry);
      case SPENDING -> ofSpend((Spend) entry);
      case BORROWED -> ofLoan((Loan) entry);
      case CUTS -> ofCut((Cut) entry);
      case LOG -> ofLogDay((LogDay) entry);
    };
  }

  private static Stream<Reference> ofItem(KitItem item) {
    return join(to(Kind.MATERIALS, item.material()), to(Kind.PARTIES, item.from()));
  }

  private static Stream<Reference> ofDelivery(Delivery delivery) {
    return join(
        to(Kind.PARTIES, delivery.from()),
        delivery.packed().stream().flatMap(line -> to(Kind.KIT, line.item())),
        delivery.counted().stream().flatMap(line -> to(Kind.KIT, line.item())));
  }

  private static Stream<Reference> ofStock(Stock stock) {
    return join(
        to(Kind.MATERIALS, stock.material()),
        to(Kind.TASKS, stock.keepFor()),
        to(Kind.SPENDING, stock.bought()));
  }

  private static Stream<Reference> ofTask(Task task) {
    return join(
        task.after().stream().flatMap(link -> to(Kind.TASKS, link.task())),
        task.uses().stream().flatMap(References::ofUse),
        to(Kind.BORROWED, task.tools()),
        to(Kind.PARTIES, task.who()),
        to(Kind.BUDGET, task.budget()));
  }

  private static Stream<Reference> ofUse(Task.Use use) {
    return join(
        to(Kind.KIT, use.item()),
        to(Kind.STOCK, use.stock()),
        to(Kind.MATERIALS, use.material()),
        to(Kind.SECTIONS, use.section()));
  }

  private static Stream<Reference> ofShortage(Shortage shortage) {
    return join(
        to(Kind.KIT, shortage.item()),
        shortage.options().stream()
            .flatMap(
                option ->
                    join(
                        to(Kind.SUBSTITUTIONS, option.substitution()),
                        to(Kind.PARTIES, option.from()))),
        to(Kind.PARTIES, shortage.decided().map(Shortage.Decision::by)),
        to(Kind.BUDGET, shortage.line()));
  }

  private static Stream<Reference> ofClaim(Claim claim) {
    return join(
        to(Kind.PARTIES, claim.against()),
        to(Kind.SHORTAGES, claim.shortages()),
        to(Kind.SPENDING, claim.costs()));
  }

  private static Stream<Reference> ofSubstitution(Substitution substitution) {
    return join(
        to(Kind.SHORTAGES, substitution.shortage()),
        to(Kind.KIT, substitution.insteadOf().item()),
        substitution.use().stream()
            .flatMap(
                take ->
                    join(
                        to(Kind.STOCK, take.stock()),
                        to(Kind.KIT, take.item()),
                        to(Kind.SPENDING, take.spend()))),
        to(Kind.PARTIES, substitution.proposed().map(Substitution.Proposal::by)),
        to(Kind.ASSESSMENTS, substitution.assessment()),
        substitution.signOffs().stream()
            .flatMap(
                signOff ->
                    join(
                        to(Kind.PARTIES, signOff.by()),
                        signOff.conditions().stream()
                            .flatMap(condition -> to(Kind.SECTIONS, condition.section())))),
        to(Kind.TASKS, substitution.hold()));
  }

  private static Stream<Reference> ofMaterial(Material material) {
    return join(
        to(Kind.MATERIALS, material.fibre()),
        to(Kind.MATERIALS, material.resin()),
        to(Kind.MATERIALS, material.hardener()));
  }

  private static Stream<Reference> ofSection(Section section) {
    return join(
        Stream.concat(section.layers().stream(), section.skins().stream())
            .flatMap(
                layer ->
                    join(
                        to(Kind.MATERIALS, layer.material()),
                        layer.strips().stream()
                            .flatMap(strip -> to(Kind.MATERIALS, strip.material())))),
        to(Kind.MATERIALS, section.material()),
        to(Kind.MATERIALS, section.glue()),
        section.members().stream().flatMap(member -> to(Kind.MATERIALS, member.material())));
  }

  private static Stream<Reference> ofAssessment(Assessment assessment) {
    return join(
        to(Kind.SECTIONS, assessment.designed()),
        to(Kind.SECTIONS, assessment.built()),
        assessment.weakLink().stream()
            .flatMap(
                link ->
                    join(
                        to(Kind.SECTIONS, link.sacrificial()),
                        to(Kind.SECTIONS, link.protectedPart()))),
        to(Kind.PARTIES, assessment.by()),
        assessment.menu().stream().flatMap(addition -> to(Kind.MATERIALS, addition.material())));
  }

  /** The budget line is left to the rule about spending on an unknown line. */
  private static Stream<Reference> ofSpend(Spend spend) {
    return join(
        to(Kind.SHORTAGES, spend.because()),
        to(Kind.SUBSTITUTIONS, spend.substitution()),
        to(Kind.SPENDING, spend.pays()),
        to(Kind.SPENDING, spend.refunds()),
        to(Kind.KIT, spend.item()),
        to(Kind.MATERIALS, spend.material()));
  }

  private static Stream<Reference> ofLoan(Loan loan) {
    return join(to(Kind.PARTIES, loan.from()), to(Kind.TASKS, loan.neededFor()));
  }

  private static Stream<Reference> ofCut(Cut cut) {
    return join(to(Kind.TASKS, cut.task()), to(Kind.STOCK, cut.from()));
  }

  private static Stream<Reference> ofLogDay(LogDay day) {
    return join(
        to(Kind.PARTIES, day.hours().keySet()),
        to(Kind.TASKS, day.tasks().keySet()),
        day.used().stream()
            .flatMap(
                used ->
                    join(
                        to(Kind.KIT, used.item()),
                        to(Kind.STOCK, used.stock()),
                        to(Kind.MATERIALS, used.material()),
                        to(Kind.TASKS, used.task()))));
  }

  @SafeVarargs
  @SuppressWarnings("varargs") // the array is only read
  private static Stream<Reference> join(Stream<Reference>... parts) {
    return Arrays.stream(parts).flatMap(part -> part);
  }

  private static Stream<Reference> to(Kind kind, Ref ref) {
    return to(kind, List.of(ref));
  }

  private static Stream<Reference> to(Kind kind, Optional<Ref> ref) {
    return ref.stream().map(found -> new Reference(kind, found));
  }

  private static Stream<Reference> to(Kind kind, Collection<Ref> refs) {
    return refs.stream().map(ref -> new Reference(kind, ref));
  }
}
