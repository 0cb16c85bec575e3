package kitwright.document;

import kitwright.value.Place;

/**
 * Why a template cannot be filled.
 *
 * @param at the tag to blame, or the whole file
 * @param what what is wrong, one sentence
 * @param mend how to put it right, one sentence
 */
public record TemplateFault(Place at, String what, String mend) {}
