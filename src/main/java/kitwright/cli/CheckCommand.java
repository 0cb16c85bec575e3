package kitwright.cli;

import java.util.List;
import kitwright.check.Check;
import kitwright.check.RulePages;
import kitwright.finding.Examination;
import kitwright.finding.Finding;
import kitwright.finding.JsonFindings;
import kitwright.finding.SarifFindings;
import kitwright.finding.Severity;
import kitwright.ledger.Facts;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds what is wrong, missing or late. */
@picocli.CommandLine.Command(
    name = "check",
    description = {
      "Finds what is wrong, missing or late in the ledger.",
      "Ends with 0 where nothing weighs enough, 1 where something does, 2 where the ledger cannot"
          + " be read."
    })
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

  @Mixin private LedgerOptions options = new LedgerOptions();

  @Option(
      names = "--format",
      paramLabel = "HOW",
      description = "text, json, or sarif (SARIF 2.1.0, for forges); text where not said.")
  private Format format = Format.TEXT;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      description =
          "End with 1 from this severity on: stop, warn, note or never; warn where not said.")
  private FailOn failOn = FailOn.WARN;

  @Option(
      names = "--staged",
      description = "Judge what Git has staged for the next commit, as a hook before it does.")
  private boolean staged;

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
      case TEXT -> Opened.text(session).render(findings, opened.lines());
      case JSON -> JsonFindings.render(examination, findings);
      case SARIF -> SarifFindings.render(examination, RulePages.all(), findings);
    };
  }
}
