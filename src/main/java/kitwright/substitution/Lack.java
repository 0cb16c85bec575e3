package kitwright.substitution;

/** What a substitution, or a signature under it, lacks before it may be built. */
public enum Lack {
  NO_ASSESSMENT("no assessment"),
  ASSESSMENT_FAILS("its assessment fails"),
  ASSESSMENT_OPEN("its assessment comes to no result"),
  UNSIGNED("nobody has signed"),
  NOT_ENTITLED("signed by somebody not entitled"),
  BY_PROPOSER("signed by its own proposer"),
  BEFORE_ASSESSMENT("signed before its assessment"),
  COVERS_NOTHING("the signature quotes no fingerprint"),
  STALE("the record has changed since it was signed"),
  CONDITION_UNMET("a condition of the signature is not met");

  private final String words;

  Lack(String words) {
    this.words = words;
  }

  /** As a register tells it. */
  public String words() {
    return words;
  }
}
