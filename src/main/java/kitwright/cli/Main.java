package kitwright.cli;

/** The program's entry. */
public final class Main {
  private Main() {}

  /** Runs the command line. */
  public static void main(String[] arguments) {
    System.exit(0);
  }
}
