package kitwright.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kitwright.edit.KeyReference;
import kitwright.edit.KeySchema;
import kitwright.ledger.Kind;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what the keys of records mean. */
@picocli.CommandLine.Command(
    name = "keys",
    description = {
      "Prints the keys of a kind of record with what they mean, or of every kind.",
      "For example: kitwright keys shortages"
    })
final class KeysCommand implements Command {
  @Parameters(
      paramLabel = "KIND",
      arity = "0..1",
      description = "shortage, claim, delivery, spend, loan …; every kind where none is named.")
  private Optional<String> kind = Optional.empty();

  @Option(
      names = "--schema",
      description = "Print a JSON Schema (2020-12) of a ledger’s files, for editors.")
  private boolean schema;

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
        word,
        words,
        "The kinds are: " + String.join(", ", words) + ".");
  }
}
