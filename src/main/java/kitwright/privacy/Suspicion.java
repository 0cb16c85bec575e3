package kitwright.privacy;

/**
 * Something that looks private.
 *
 * @param words as they were found, perhaps without accents and in small letters
 * @param why what they seem to give away
 */
public record Suspicion(String words, String why) {}
