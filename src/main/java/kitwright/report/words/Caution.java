package kitwright.report.words;

import kitwright.ledger.Hazard;

/**
 * What each kind of work that can hurt is never told without: one line each. Common practice, no
 * source; each defers to the data sheet, licensed practice and local rules.
 */
public enum Caution {
  SAW(
      "Before the first cut: measure each piece again, check that the blade suits the wood and the"
          + " fence is square. Eye and ear protection on, dust extraction running; cedar, iroko and"
          + " plywood glue harm the lungs. Guard and riving knife on; push-stick for anything under"
          + " 150 mm. The plan is paper; you are at the saw, and its maker’s instructions rule."),
  DUST(
      "Sanding and planing: mask and extraction on; dust of cedar, iroko, cured resin and old paint"
          + " harms the lungs and burns. The data sheet and local rules say which mask."),
  RESIN(
      "Resin, hardener, solvents: gloves, goggles, fresh air; they burn skin and lungs, can set off"
          + " a lifelong allergy, heat up in the pot. Data sheet and local rules decide."),
  HEATER(
      "Fuel heater in a closed barn or tent: carbon monoxide, fire, damp. Air it, hang up an alarm,"
          + " no solvents near, never alone. Its maker and local rules say where."),
  LEAD(
      "Lead: its fumes and dust poison; melt it outdoors and dry, gloves and mask on, wash before"
          + " you eat, and have it poured by a foundry if in doubt. The data sheet and local rules"
          + " decide."),
  LIFTING(
      "Lifting and turning: gear rated for the weight, one person in charge, nobody under or beside"
          + " what may roll; where a crane comes, its licensed driver decides."),
  CRATE(
      "Heavy crates: look for the weight first, lift with two or with gear, boots and gloves on;"
          + " cut bands stand back, and local rules for loads hold."),
  ELECTRICAL(
      "Electrical and gas work: dead, tested and fused before a hand goes in; what local rules keep"
          + " for a licensed person, a licensed person does."),
  HEIGHT(
      "Work aloft and over the side: a harness and a second person; tools on lanyards. Local rules"
          + " for work at height hold.");

  private final String words;

  Caution(String words) {
    this.words = words;
  }

  /** The one that a hazard brings. */
  static Caution of(Hazard hazard) {
    return valueOf(hazard.name());
  }

  public String words() {
    return words;
  }
}
