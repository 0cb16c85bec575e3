package kitwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.edit.KeyReference;
import kitwright.edit.KeySchema;
import kitwright.ledger.Kind;
import kitwright.ledger.Meant;
import kitwright.value.Nearest;

/** Prints what the keys of records mean. */
final class KeysCommand implements Command {
  private Optional<String> kind = Optional.empty();
  private boolean schema;

  @Override
  public void declare(Declaring to) {
    to.says(
        "Prints the keys of a kind of record with what they mean, or of every kind.",
        "For example: kitwright keys shortages");
    to.mayPlace(
        "KIND",
        given -> kind = Optional.of(given),
        "shortage, claim, delivery, spend, loan …; every kind where none is named.");
    to.flag(
        "--schema",
        () -> schema = true,
        "Print a JSON Schema (2020-12) of a ledger’s files, for editors.");
  }

  @Override
  public int run(Session session) {
    session.print(
        schema
            ? KeySchema.text()
            : kind.map(KeysCommand::named).map(KeyReference::of).orElseGet(KeyReference::page));
    return CLEAN;
  }

  /** A kind by its word or its top key: {@code shortage} or {@code shortages}. */
  static Kind named(String word) {
    return Stream.of(Kind.values())
        .filter(
            kind ->
                kind.key().equals(word)
                    || kind.word().replace(' ', '-').equals(word)
                    || kind.word().equals(word))
        .findFirst()
        .orElseThrow(() -> unknown(word));
  }

  private static Refusal unknown(String word) {
    List<String> words =
        Stream.of(Kind.values()).map(kind -> kind.word().replace(' ', '-')).toList();
    return Refusal.unknown(
        "There is no kind of record “" + word + "”.",
        Nearest.ofWords(word, words).or(() -> Meant.by(word, Kind.keys())),
        "The kinds are: " + String.join(", ", words) + ".");
  }
}
