package kitwright.shortage;

import java.util.Optional;
import kitwright.value.Quantity;
import kitwright.value.Ref;

/**
 * What a task asks for, before it is known what serves it.
 *
 * @param task its id
 * @param ref of the item, stock or material
 * @param thickness of a layer
 * @param sum how a take-off came to it
 */
public record Want(
    String task,
    Sort sort,
    Ref ref,
    Quantity qty,
    Optional<Quantity> thickness,
    Optional<String> sum) {
  /** What kind of record it names. */
  public enum Sort {
    ITEM,
    STOCK,
    MATERIAL
  }
}
