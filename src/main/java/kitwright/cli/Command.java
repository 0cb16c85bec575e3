package kitwright.cli;

/** What a word on the command line does. */
interface Command {
  /** Everything went well, and nothing was found. */
  int CLEAN = 0;

  /** Something was found that weighs enough. */
  int FOUND = 1;

  /** The ledger or the command could not be read. */
  int UNREADABLE = 2;

  /** Says what it takes. */
  void declare(Declaring to);

  /** Carries it out and says how it went. */
  int run(Session session);
}
