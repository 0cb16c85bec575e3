package kitwright.history;

import java.util.Set;

/**
 * One thing that is otherwise than it was.
 *
 * @param what what it is called
 * @param id by which the ledger names it; empty where it is the whole build
 * @param by who touched its record, in the order of their commits; empty where it follows from
 *     several
 */
public record Change(
    Matter matter, String what, String id, Held before, Held now, Set<String> by) {}
