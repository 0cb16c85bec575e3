/**
 * YAML text to placed values: the library's events become small trees of one record each, whose
 * scalars are texts, so that YAML's guesses about types never happen. Uses {@code value} and {@code
 * finding}; the only room that knows the YAML library. Start with {@link kitwright.yaml.YamlText}.
 */
@NullMarked
package kitwright.yaml;

import org.jspecify.annotations.NullMarked;
