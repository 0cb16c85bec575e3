package kitwright.shortage;

import java.util.List;
import kitwright.finding.Finding;
import kitwright.finding.Findings;
import kitwright.ledger.Facts;
import kitwright.ledger.Grade;
import kitwright.ledger.RecordRule;
import kitwright.ledger.Shortage;
import kitwright.substitution.LeavingOut;
import kitwright.value.Word;

/** Fires where somebody who may not decides to do without a structural part, or one of systems. */
public final class LeftOutUnreleased implements RecordRule<Shortage> {
  @Override
  public List<Shortage> records(Facts day) {
    return day.ledger().shortages();
  }

  @Override
  public void examine(Shortage shortage, Facts day, Findings out) {
    shortage
        .chosen()
        .filter(option -> option.way() == Shortage.Way.DO_WITHOUT)
        .flatMap(any -> LeavingOut.beyond(shortage, day.ledger()))
        .ifPresent(grade -> out.add(finding(shortage, grade, day)));
  }

  private Finding finding(Shortage shortage, Grade grade, Facts day) {
    String word = Word.key(grade);
    List<String> entitled = LeavingOut.entitled(grade, day.day(), day.ledger());
    return stop(
        shortage.at().of("decided"),
        shortage.qty().told(shortage.item().id())
            + " shall be done without, as "
            + day.ledger().nameOf(shortage.decided().orElseThrow().by().id())
            + " decided, who may not release work of the grade "
            + word
            + ".",
        "It counts as missing still: whoever builds leaves out nothing that the drawing asks for"
            + " and much depends on.",
        "Ask "
            + (entitled.isEmpty()
                ? "somebody entitled (no party of the ledger is)"
                : String.join(" or ", entitled))
            + " whether it may be left out; if so, write under “decided” who answered (“by”, with"
            + " the id in brackets) and on which day (“on”), and keep the letter under “evidence”"
            + " of the shortage. Else choose another way.",
        List.of(shortage.named(), "kit item " + shortage.item().id()));
  }
}
