package kitwright.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kitwright.claim.Asking;
import kitwright.edit.Answers;
import kitwright.edit.Deed;
import kitwright.edit.Deeds;
import kitwright.ledger.Claim;
import kitwright.ledger.Entry;
import kitwright.ledger.Facts;
import kitwright.ledger.Kind;
import kitwright.value.Ref;

/** Writes a deed down: what was not said is asked for at a terminal, and refused elsewhere. */
final class RecordCommand implements Command {
  private static final String ON = "on";

  private final Deed deed;
  private final DeedOptions own;
  private final LedgerOptions options = new LedgerOptions();
  private boolean print;

  RecordCommand(String word) {
    this.deed = Deeds.named(word).orElseThrow();
    this.own = new DeedOptions(deed);
  }

  @Override
  public void declare(Declaring to) {
    options.declare(to);
    to.flag("--print", () -> print = true, "Print what would be written, and write nothing.");
    own.declare(to.spec());
  }

  @Override
  public int run(Session session) {
    Recording recording = new Recording(options, session, print);
    Facts now = Facts.of(recording.ledger(), recording.opened().today());
    Answers answers = recording.answers();
    Optional<Dialogue> dialogue =
        session
            .person()
            .get()
            .map(person -> new Dialogue(session, person, now.ledger(), answers, now.day()));
    Map<String, List<String>> said = own.said();
    Optional<Entry> entry = entry(recording, dialogue, said);
    Asked asked = new Asked(deed, answers, said, now);
    boolean nothing = asked.nothingSaid();
    Map<String, Answers.Answer> all = asked.all(dialogue);
    NoSuchDeal.refuse(all, now.ledger());
    if (nothing && deed.kind() == Kind.LOG) {
      dialogue.ifPresent(talk -> said.put("words", List.of(talk.words("What there is to tell"))));
    }
    DeedRecord told = new DeedRecord(deed, all, said, recording);
    List<String> concerned = deed.begins() ? told.begin(entry) : told.change(entry.orElseThrow());
    return recording.write(concerned);
  }

  /** The record that is changed, or tied to what is begun. */
  private Optional<Entry> entry(
      Recording recording, Optional<Dialogue> dialogue, Map<String, List<String>> said) {
    Optional<Kind> wanted = deed.begins() ? own.ties() : Optional.of(deed.kind());
    if (wanted.isEmpty()) {
      return Optional.empty();
    }
    Kind kind = wanted.get();
    String id =
        own.words().isEmpty()
            ? dialogue
                .orElseThrow(
                    () ->
                        new Refusal(
                            "It is not said which " + kind.word() + ".",
                            "Write it behind the command, such as: " + deed.example()))
                .which(kind)
            : own.words().get(0);
    Entry entry = recording.record(kind, id);
    boolean line = said.containsKey("of");
    if (!deed.begins() && !line && entry.at().has(deed.once())) {
      throw recording.twice(entry, deed.once(), day(entry));
    }
    if (deed.word().equals("send") && entry instanceof Claim claim) {
      List<Ref> unfound = Asking.unfound(claim, recording.ledger());
      if (!unfound.isEmpty()) {
        throw new Refusal(
            "The letter of “"
                + claim.id()
                + "” leaves out what cannot be read or is not there: "
                + ClaimCommand.ids(unfound),
            "“kitwright check” shows the faults; mend them, write the letter, then record it.");
      }
    }
    return Optional.of(entry);
  }

  private LocalDate day(Entry entry) {
    Object value = entry.at().value(deed.once()).orElse(LocalDate.EPOCH);
    if (value instanceof List<?> groups && groups.get(0) instanceof kitwright.ledger.At at) {
      return (LocalDate) at.value(ON).orElse(LocalDate.EPOCH);
    }
    return (LocalDate) value;
  }
}
