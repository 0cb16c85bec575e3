/**
 * Plain numerical methods that several rooms need, each once: the normal distribution, random
 * numbers, elimination. Uses nothing else of the program. Start with {@link
 * kitwright.numbers.Normal}.
 */
@NullMarked
package kitwright.numbers;

import org.jspecify.annotations.NullMarked;
