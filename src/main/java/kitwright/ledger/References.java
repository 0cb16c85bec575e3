package kitwright.ledger;

import java.util.Collection;
import java.util.Optional;
import java.util.function.BiConsumer;
import kitwright.value.Ref;

/** Which other records a record refers to, and of what kind each must be. */
public final class References {
  private final BiConsumer<Kind, Ref> each;

  private References(BiConsumer<Kind, Ref> each) {
    this.each = each;
  }

  /** Hands on every reference of a record with the kind that it must be, in no particular order. */
  public static void of(Entry entry, BiConsumer<Kind, Ref> each) {
    References references = new References(each);
    switch (entry.kind()) {
      case BUILD, PARTIES, RATES, BUDGET, FORECAST -> {}
      case KIT -> references.item((KitItem) entry);
      case DELIVERIES -> references.delivery((Delivery) entry);
      case STOCK -> references.stock((Stock) entry);
      case TASKS -> references.task((Task) entry);
      case SHORTAGES -> references.shortage((Shortage) entry);
      case CLAIMS -> references.claim((Claim) entry);
      case SUBSTITUTIONS -> references.substitution((Substitution) entry);
      case MATERIALS -> references.material((Material) entry);
      case SECTIONS -> references.section((Section) entry);
      case ASSESSMENTS -> references.assessment((Assessment) entry);
      case SPENDING -> references.spend((Spend) entry);
      case BORROWED -> references.loan((Loan) entry);
      case CUTS -> references.cut((Cut) entry);
      case LOG -> references.logDay((LogDay) entry);
    }
  }

  private void item(KitItem item) {
    to(Kind.MATERIALS, item.material());
    to(Kind.PARTIES, item.from());
  }

  private void delivery(Delivery delivery) {
    to(Kind.PARTIES, delivery.from());
    delivery.packed().forEach(line -> to(Kind.KIT, line.item()));
    delivery.counted().forEach(line -> to(Kind.KIT, line.item()));
    delivery.sentBack().forEach(line -> to(Kind.KIT, line.item()));
  }

  private void stock(Stock stock) {
    to(Kind.MATERIALS, stock.material());
    to(Kind.TASKS, stock.keepFor());
    to(Kind.SPENDING, stock.bought());
  }

  private void task(Task task) {
    task.after().forEach(link -> to(Kind.TASKS, link.task()));
    for (Task.Use use : task.uses()) {
      to(Kind.KIT, use.item());
      to(Kind.STOCK, use.stock());
      to(Kind.MATERIALS, use.material());
      to(Kind.SECTIONS, use.section());
    }
    to(Kind.BORROWED, task.tools());
    to(Kind.PARTIES, task.who());
    to(Kind.BUDGET, task.budget());
  }

  private void shortage(Shortage shortage) {
    to(Kind.KIT, shortage.item());
    for (Shortage.Option option : shortage.options()) {
      to(Kind.SUBSTITUTIONS, option.substitution());
      to(Kind.PARTIES, option.from());
    }
    to(Kind.PARTIES, shortage.decided().map(Shortage.Decision::by));
    to(Kind.BUDGET, shortage.line());
  }

  private void claim(Claim claim) {
    to(Kind.PARTIES, claim.against());
    to(Kind.SHORTAGES, claim.shortages());
    claim.asked().forEach(line -> to(Kind.SPENDING, line.costs()));
    to(Kind.SPENDING, claim.costs());
    claim.events().forEach(event -> to(Kind.SHORTAGES, event.of()));
  }

  private void substitution(Substitution substitution) {
    to(Kind.SHORTAGES, substitution.shortage());
    to(Kind.KIT, substitution.insteadOf().item());
    for (Substitution.Take take : substitution.use()) {
      to(Kind.STOCK, take.stock());
      to(Kind.KIT, take.item());
      to(Kind.SPENDING, take.spend());
    }
    to(Kind.PARTIES, substitution.proposed().map(Substitution.Proposal::by));
    to(Kind.ASSESSMENTS, substitution.assessment());
    for (Substitution.SignOff signOff : substitution.signOffs()) {
      to(Kind.PARTIES, signOff.by());
      signOff.conditions().forEach(condition -> to(Kind.SECTIONS, condition.section()));
    }
    to(Kind.TASKS, substitution.hold());
  }

  private void material(Material material) {
    to(Kind.MATERIALS, material.fibre());
    to(Kind.MATERIALS, material.resin());
    to(Kind.MATERIALS, material.hardener());
  }

  private void section(Section section) {
    section.layers().forEach(this::layer);
    section.skins().forEach(this::layer);
    to(Kind.MATERIALS, section.material());
    to(Kind.MATERIALS, section.glue());
    section.members().forEach(member -> to(Kind.MATERIALS, member.material()));
  }

  private void layer(Section.Layer layer) {
    to(Kind.MATERIALS, layer.material());
    layer.strips().forEach(strip -> to(Kind.MATERIALS, strip.material()));
  }

  private void assessment(Assessment assessment) {
    to(Kind.SECTIONS, assessment.designed());
    to(Kind.SECTIONS, assessment.built());
    assessment
        .weakLink()
        .ifPresent(
            link -> {
              to(Kind.SECTIONS, link.sacrificial());
              to(Kind.SECTIONS, link.protectedPart());
            });
    to(Kind.PARTIES, assessment.by());
    to(Kind.PARTIES, assessment.notStructural().map(Assessment.NotStructural::by));
    assessment.menu().forEach(addition -> to(Kind.MATERIALS, addition.material()));
    assessment.against().forEach(touched -> to(Kind.MATERIALS, touched));
  }

  /** The budget line is left to the rule about spending on an unknown line. */
  private void spend(Spend spend) {
    to(Kind.SHORTAGES, spend.because());
    to(Kind.SHORTAGES, spend.replaces().filter(ref -> !spend.because().equals(Optional.of(ref))));
    to(Kind.SUBSTITUTIONS, spend.substitution());
    to(Kind.SPENDING, spend.pays());
    to(Kind.SPENDING, spend.refunds());
    to(Kind.KIT, spend.item());
    to(Kind.MATERIALS, spend.material());
  }

  private void loan(Loan loan) {
    to(Kind.PARTIES, loan.from());
    to(Kind.TASKS, loan.neededFor());
    to(Kind.BUDGET, loan.repair().flatMap(Loan.Repair::line));
  }

  private void cut(Cut cut) {
    to(Kind.TASKS, cut.task());
    to(Kind.STOCK, cut.from());
  }

  private void logDay(LogDay day) {
    to(Kind.PARTIES, day.hours().keySet());
    to(Kind.TASKS, day.tasks().keySet());
    for (LogDay.Used used : day.used()) {
      to(Kind.KIT, used.item());
      to(Kind.STOCK, used.stock());
      to(Kind.MATERIALS, used.material());
      to(Kind.TASKS, used.task());
    }
  }

  private void to(Kind kind, Ref ref) {
    each.accept(kind, ref);
  }

  private void to(Kind kind, Optional<Ref> ref) {
    if (ref.isPresent()) {
      each.accept(kind, ref.get());
    }
  }

  private void to(Kind kind, Collection<Ref> refs) {
    refs.forEach(ref -> each.accept(kind, ref));
  }
}
