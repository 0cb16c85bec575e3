package kitwright.ledger;

/** A record of the ledger: every kind has an id, unique within the kind, and a place. */
public interface Entry {
  /** The user's name for it. */
  String id();

  At at();

  Kind kind();

  /** How findings name it: {@code shortage short-2026-03-02-keel}. */
  default String named() {
    return kind().word() + " " + id();
  }
}
