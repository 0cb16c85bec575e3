package kitwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.cutting.CutPlan;
import kitwright.cutting.Remnants;
import kitwright.edit.MoreKeys;
import kitwright.edit.NewFiles;
import kitwright.edit.Replacing;
import kitwright.finding.Findings;
import kitwright.ledger.Cut;
import kitwright.ledger.Kind;
import kitwright.ledger.Ledger;
import kitwright.ledger.LedgerReader;
import kitwright.ledger.SourceFile;
import kitwright.value.Place;

/**
 * Books a cut as done: the day and what it took into its record, its left-overs into a file of
 * their own. The ledger is read again with both before anything is written.
 */
final class CutBooking {
  private final CutPlan plan;
  private final Opened opened;
  private final Session session;

  CutBooking(CutPlan plan, Opened opened, Session session) {
    this.plan = plan;
    this.opened = opened;
    this.session = session;
  }

  int run() {
    Cut cut = plan.cut();
    Place id = cut.at().record();
    SourceFile file =
        opened.files().stream()
            .filter(each -> each.path().equals(id.file()))
            .findFirst()
            .orElseThrow(this::byHand);
    String text =
        MoreKeys.after(file.text(), id, Remnants.keys(plan, opened.today()))
            .orElseThrow(this::byHand);
    String records = Remnants.records(plan, opened.today());
    String left = "stock/left-of-" + cut.id() + ".yaml";
    check(new SourceFile(file.path(), text), new SourceFile(left, records));
    write(file, text, left, records);
    session.say("changed  " + opened.folder().root().resolve(file.path()));
    if (!records.isEmpty()) {
      session.say("new      " + opened.folder().root().resolve(left));
    }
    session.say("Read both over: the bench may have gone otherwise than the plan.");
    return Command.CLEAN;
  }

  /** Nothing is written that would not be read, or would be read otherwise. */
  private void check(SourceFile changed, SourceFile left) {
    List<SourceFile> files = new ArrayList<>();
    opened.files().forEach(each -> files.add(each.path().equals(changed.path()) ? changed : each));
    if (!left.text().isEmpty()) {
      files.add(left);
    }
    Findings findings = new Findings();
    Optional<Ledger> after = LedgerReader.read(files, opened.folder()::evidence, findings);
    Optional<Cut> cut = after.flatMap(ledger -> ledger.find(Kind.CUTS, plan.cut().id()));
    boolean booked =
        cut.filter(each -> each.done().isPresent() && each.used().size() == plan.used().size())
            .isPresent();
    if (!booked || findings.inOrder().size() > opened.findings().inOrder().size()) {
      throw byHand();
    }
  }

  /**
   * First the left-overs, then the record that says where they come from: a run that was killed in
   * between is given again, and finds its own file.
   */
  private void write(SourceFile file, String text, String left, String records) {
    Path root = opened.folder().root();
    try {
      if (!records.isEmpty() && !NewFiles.write(root, Map.of(left, records)).left().isEmpty()) {
        requireOwn(root.resolve(left), left, records);
      }
      Replacing.write(root, file.path(), file.text(), text);
    } catch (Replacing.Changed meanwhile) {
      throw new Refusal(
          "“" + file.path() + "” was changed meanwhile" + already(root, left) + ".",
          "Give the command again.");
    } catch (IOException broken) {
      throw new Refusal(
          "The ledger could not be written ("
              + broken.getMessage()
              + ")"
              + already(root, left)
              + ".",
          "Check the space on the disk, and who may write in its folder; then give the command"
              + " again.");
    }
  }

  /** That a part is there: the left-overs without the record that says where they come from. */
  private static String already(Path root, String left) {
    return Files.exists(root.resolve(left))
        ? "; “" + left + "” is written already, and the command finds it"
        : "";
  }

  private static void requireOwn(Path there, String left, String records) throws IOException {
    if (!Files.readString(there).equals(records)) {
      throw new Refusal(
          "“" + left + "” is there already, and stays as it is; nothing was changed.",
          "Move it away, or write by hand what --record prints.");
    }
  }

  private Refusal byHand() {
    return new Refusal(
        "The record of " + plan.cut().id() + " is not written as this command can change it.",
        "“kitwright cut " + plan.cut().id() + " --record” prints what to write by hand.");
  }
}
