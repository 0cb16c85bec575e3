package kitwright.value;

/**
 * The id of another record, and where it was written.
 *
 * @param id as written
 * @param at where
 */
public record Ref(String id, Place at) {
  @Override
  public String toString() {
    return id;
  }
}
