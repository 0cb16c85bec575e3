/**
 * The thin edge: options, terminal, clock, exit codes. Uses everything. Start with {@link
 * kitwright.cli.Main}.
 */
@NullMarked
package kitwright.cli;

import org.jspecify.annotations.NullMarked;
