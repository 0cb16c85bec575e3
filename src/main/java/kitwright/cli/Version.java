package kitwright.cli;

/** The program's version, the same as in the build file. */
final class Version {
  static final String NUMBER = "0.1.0";

  private Version() {}
}
