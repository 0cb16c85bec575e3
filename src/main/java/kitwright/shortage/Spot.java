package kitwright.shortage;

/**
 * A thing in a task.
 *
 * @param task its id
 * @param key of the thing
 */
record Spot(String task, String key) {}
