/**
 * Where parts meet: bolts and the wood under them, links weaker than what they hold, metals that
 * eat each other. Uses {@code method} and what it uses. Start with {@link
 * kitwright.assessment.joint.BoltMethod}.
 */
@NullMarked
package kitwright.assessment.joint;

import org.jspecify.annotations.NullMarked;
