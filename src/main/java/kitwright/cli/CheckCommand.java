package kitwright.cli;

import java.util.List;
import java.util.Optional;
import kitwright.check.Causes;
import kitwright.check.Check;
import kitwright.check.RulePages;
import kitwright.finding.BriefFindings;
import kitwright.finding.Examination;
import kitwright.finding.Finding;
import kitwright.finding.JsonFindings;
import kitwright.finding.Matter;
import kitwright.finding.SarifFindings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import kitwright.value.Visible;

/** Finds what is wrong, missing or late. */
final class CheckCommand implements Command {
  /** How findings are told. */
  enum Format {
    TEXT,
    JSON,
    SARIF
  }

  /** From which severity on the command ends with 1. */
  enum FailOn {
    STOP,
    WARN,
    NOTE,
    NEVER;

    boolean by(Severity severity) {
      return this != NEVER && severity.atLeast(Severity.valueOf(name()));
    }
  }

  private final LedgerOptions options = new LedgerOptions();
  private Format format = Format.TEXT;
  private FailOn failOn = FailOn.WARN;
  private boolean all;
  private boolean staged;
  private Optional<String> name = Optional.empty();

  @Override
  public void declare(Declaring to) {
    to.says(
        "Finds what is wrong, missing or late in the ledger.",
        "Ends with 0 where nothing weighs enough, 1 where something does, 2 where the ledger cannot"
            + " be read.",
        "For example: kitwright check --fail-on stop");
    options.declare(to);
    to.option(
        "--format",
        "HOW",
        Format.class,
        given -> format = given,
        "text, json, or sarif (SARIF 2.1.0, for forges); text where not said.");
    to.option(
        "--fail-on",
        "SEVERITY",
        FailOn.class,
        given -> failOn = given,
        "End with 1 from this severity on: stop, warn, note or never; warn where not said.");
    to.flag(
        "--all",
        () -> all = true,
        "Tell each finding in full, with what follows and how to mend it.");
    to.flag(
        "--staged",
        () -> staged = true,
        "Judge what Git has staged for the next commit, as a hook before it does.");
    to.mayPlace(
        "NAME",
        given -> name = Optional.of(given),
        "Tell, in full, only what concerns this record, file or rule. As text only; how it ends"
            + " is judged by the whole ledger.");
  }

  @Override
  public int run(Session session) {
    Opened opened = staged ? Opened.staged(options, session) : Opened.of(options, session);
    opened
        .readOrByFaultyBuild()
        .ifPresent(ledger -> Check.examine(Facts.of(ledger, opened.today()), opened.findings()));
    List<Finding> findings = opened.findings().inOrder();
    if (opened.read().isEmpty() && format == Format.TEXT) {
      throw opened.withoutBuild(session);
    }
    session.out().print(render(session, opened, findings)); // clean, and may be coloured
    if (opened.read().isEmpty()) {
      return UNREADABLE;
    }
    return findings.stream().anyMatch(f -> failOn.by(f.severity())) ? FOUND : CLEAN;
  }

  private String render(Session session, Opened opened, List<Finding> findings) {
    Examination examination =
        new Examination(
            Version.NUMBER, opened.today(), opened.folder().root().getFileName().toString());
    return switch (format) {
      case TEXT -> text(session, opened, Causes.of(findings, opened.lines()));
      case JSON -> JsonFindings.render(examination, findings);
      case SARIF -> SarifFindings.render(examination, RulePages.all(), findings);
    };
  }

  /** In full where that was asked for or fits a screen. */
  private String text(Session session, Opened opened, List<Matter> matters) {
    if (name.isPresent() && !matters.isEmpty()) {
      return concerning(name.get(), session, opened, matters);
    }
    int height = session.screen().height();
    BriefFindings brief =
        new BriefFindings(session.screen().width(), height, session.screen().ink());
    if (!all && matters.size() > height) {
      return brief.render(matters); // without laying out what would be thrown away
    }
    String full = Opened.text(session).render(matters, opened.lines());
    return all || full.lines().count() <= height ? full : brief.render(matters);
  }

  private static String concerning(
      String name, Session session, Opened opened, List<Matter> matters) {
    List<Matter> shown = Matter.concerning(name, matters);
    int others = Matter.findings(matters).size() - Matter.findings(shown).size();
    String elsewhere = others == 0 ? "" : others + " more elsewhere.\n";
    return (shown.isEmpty()
            ? "Nothing found has to do with “" + Visible.line(name) + "”; "
            : Opened.text(session).render(shown, opened.lines()))
        + elsewhere;
  }
}
