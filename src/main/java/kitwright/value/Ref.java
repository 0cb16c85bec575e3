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

  // By hand: what the compiler makes of a record is linked when first called, about 2 ms each.
  @Override
  public boolean equals(Object other) {
    return other instanceof Ref ref && id.equals(ref.id) && at.equals(ref.at);
  }

  @Override
  public int hashCode() {
    return id.hashCode() * 31 + at.hashCode();
  }
}
