package kitwright.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A file that shows something.
 *
 * @param file path from the ledger's root
 * @param sha256 what its SHA-256 was when it was recorded, 64 hexadecimal digits
 * @param says what it shows
 * @param audience who may see it besides the crew
 * @param allow words in what is public that look private and may stand
 */
public record Evidence(
    String file,
    Optional<String> sha256,
    Optional<String> says,
    Optional<String> audience,
    List<String> allow,
    At at) {
  private static final String EXAMPLE_DIGEST =
      "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

  /** Each piece of evidence that a record names, in the order written. */
  public static List<Evidence> in(Entry entry) {
    List<Evidence> all = new ArrayList<>();
    entry
        .at()
        .each(
            (within, key, value) -> {
              if (key.isFile()) {
                all.add(of(within.get(0)));
              }
            });
    return all;
  }

  private static Evidence of(At at) {
    return new Evidence(
        text(at, "file").orElse(""),
        text(at, "sha256"),
        text(at, "says"),
        text(at, "audience"),
        List.of(),
        at);
  }

  private static Optional<String> text(At at, String key) {
    return at.value(key).map(Object::toString);
  }

  static Evidence read(Keys k) {
    return new Evidence(
        k.key("file", "where it lies, from the ledger’s folder", "evidence/crate-1.jpg")
            .need(Sorts.FILE, ""),
        k.key("sha256", "what “kitwright hash FILE” printed when it was recorded", EXAMPLE_DIGEST)
            .maybe(Sorts.SHA256),
        k.key("says", "what it shows", "the crate when it was opened").maybeText(),
        k.key("audience", "public lets whoever follows the build see it", "public").maybeText(),
        k.key("allow", "words in what is public that look private and may stand", "[Pell]").texts(),
        k.at());
  }

  /** Whether its author let the public see it. */
  public boolean isPublic() {
    return audience.filter("public"::equals).isPresent();
  }
}
