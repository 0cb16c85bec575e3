/**
 * What covering an area or a length with a section takes: cloth, resin, core, timber, fasteners,
 * with the sum by hand, and the waste that the log teaches. Uses no other feature. Start with
 * {@link kitwright.takeoff.TakeOff}.
 */
@NullMarked
package kitwright.takeoff;

import org.jspecify.annotations.NullMarked;
