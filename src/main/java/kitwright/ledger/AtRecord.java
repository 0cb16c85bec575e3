package kitwright.ledger;

/** Says of a fault at which record it came up, so that whoever tells of it can name the record. */
public final class AtRecord extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient Entry entry;

  public AtRecord(Entry entry, Throwable cause) {
    super(cause.getMessage(), cause);
    this.entry = entry;
  }

  /** The record. */
  public Entry entry() {
    return entry;
  }
}
