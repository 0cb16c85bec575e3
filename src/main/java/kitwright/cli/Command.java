package kitwright.cli;

import picocli.CommandLine.Model.CommandSpec;

/** What a word on the command line does. */
interface Command {
  /** Everything went well, and nothing was found. */
  int CLEAN = 0;

  /** Something was found that weighs enough. */
  int FOUND = 1;

  /** The ledger or the command could not be read. */
  int UNREADABLE = 2;

  /** Adds options that follow from something else than the class. */
  default void declare(CommandSpec spec) {}

  /** Carries it out and says how it went. */
  int run(Session session);
}
