package kitwright.substitution;

/** What a substitution, or a signature under it, lacks before it may be built. */
public enum Lack {
  NO_ASSESSMENT("no assessment"),
  ASSESSMENT_FAILS("its assessment fails"),
  ASSESSMENT_OPEN("its assessment comes to no result"),
  ASKS_TOO_LITTLE("its assessment does not ask for all that a structural part must bear"),
  ASSESSED_OTHERWISE("its assessment is of another part than is taken or replaced"),
  LIMIT_UNEXPLAINED("its assessment asks for less than was drawn and does not say why"),
  PROPOSER_UNKNOWN("nobody says who proposed it"),
  UNSIGNED("nobody has signed"),
  NOT_ENTITLED("signed by somebody not entitled"),
  BY_PROPOSER("signed by its own proposer"),
  BY_BUILDER("signed by somebody who builds it"),
  BEFORE_PROPOSAL("signed before it was proposed"),
  BEFORE_ASSESSMENT("signed before its assessment"),
  COVERS_NOTHING("the signature quotes no fingerprint"),
  STALE("the record has changed since it was signed"),
  SUPERSEDED("its signer has signed another statement since"),
  NO_LETTER("the signature has no letter with its hash"),
  LETTER_ALTERED("a letter of the signature is not the one that was recorded"),
  KEY_MISSING("signed without the key that this person signs with"),
  KEY_FORGED("the signer’s key did not make the signature over this statement"),
  KEY_UNCHECKED("the signature of the signer’s key is not checked here"),
  VERDICT_TURNED("its assessment comes to another verdict than the signer saw"),
  CONDITION_UNMET("a condition of the signature is not met"),
  CONDITION_UNCHECKED("a condition of the signature cannot be checked");

  private final String words;

  Lack(String words) {
    this.words = words;
  }

  /** As a register tells it. */
  public String words() {
    return words;
  }
}
