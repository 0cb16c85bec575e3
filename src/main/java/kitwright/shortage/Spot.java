package kitwright.shortage;

/**
 * A thing in a task.
 *
 * @param task its id
 * @param key of the thing
 */
record Spot(String task, String key) {
  @Override
  public boolean equals(Object other) {
    return other instanceof Spot that && task.equals(that.task) && key.equals(that.key);
  }

  @Override
  public int hashCode() {
    int hash = task.hashCode();
    hash = 31 * hash + key.hashCode();
    return hash;
  }
}
