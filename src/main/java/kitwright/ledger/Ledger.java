package kitwright.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kitwright.value.Place;
import kitwright.value.Ref;
import org.jspecify.annotations.Nullable;

/**
 * Everything that a ledger holds, as read: immutable, in the order of the files' names and of the
 * lines in them, log days by date. Records refer to each other by id; {@link #find} follows a
 * reference.
 */
public final class Ledger {
  private final Build build;
  private final Map<Kind, List<Entry>> records;
  private final Map<Kind, Map<String, Entry>> byId;
  private final Map<Kind, Set<String>> unsound;
  private final List<Unread> unread;
  private final SeenFiles evidence;

  /** By the place of the sign-off. */
  private final Map<Place, Seal> seals;

  private Ledger(
      Build build,
      Map<Kind, List<Entry>> records,
      Map<Kind, Set<String>> unsound,
      List<Unread> unread,
      SeenFiles evidence,
      Map<Place, Seal> seals) {
    this.seals = Map.copyOf(seals);
    this.build = build;
    this.records = records;
    this.unsound = unsound;
    this.unread = List.copyOf(unread);
    this.evidence = evidence;
    this.byId = index(records);
  }

  private static Map<Kind, Map<String, Entry>> index(Map<Kind, List<Entry>> records) {
    Map<Kind, Map<String, Entry>> all = new EnumMap<>(Kind.class);
    records.forEach(
        (kind, list) -> {
          Map<String, Entry> ids = new HashMap<>(list.size() * 2);
          list.forEach(entry -> ids.putIfAbsent(entry.id(), entry));
          all.put(kind, ids);
        });
    return all;
  }

  /** Gathers records while files are read. */
  static final class Gathering {
    private final Map<Kind, List<Entry>> records = new EnumMap<>(Kind.class);
    private final Map<Kind, Set<String>> unsound = new EnumMap<>(Kind.class);
    private final List<Unread> unread = new ArrayList<>();
    private @Nullable Build faultyBuild;

    void add(Entry entry) {
      records.computeIfAbsent(entry.kind(), kind -> new ArrayList<>()).add(entry);
    }

    /** Remembers the id of a record that could not be read, so that it does not count as absent. */
    void addUnsound(Kind kind, String id) {
      unsound.computeIfAbsent(kind, any -> new HashSet<>()).add(id);
    }

    /** Remembers what could not be read, so that nothing is let go by its not being there. */
    void addUnread(Unread one) {
      unread.add(one);
    }

    /** Remembers what could be read of a build record with faults. */
    void addFaulty(Build build) {
      faultyBuild = faultyBuild == null ? build : faultyBuild;
    }

    Optional<Build> faultyBuild() {
      return Optional.ofNullable(faultyBuild);
    }

    /** Takes what another gathered, behind what is here. */
    void addAll(Gathering other) {
      other.faultyBuild().ifPresent(this::addFaulty);
      unread.addAll(other.unread);
      other.records.forEach(
          (kind, list) -> records.computeIfAbsent(kind, any -> new ArrayList<>()).addAll(list));
      other.unsound.forEach(
          (kind, ids) -> unsound.computeIfAbsent(kind, any -> new HashSet<>()).addAll(ids));
    }

    Stream<Entry> entries() {
      return records.values().stream().flatMap(List::stream);
    }

    Ledger close(Build build, SeenFiles evidence) {
      records
          .getOrDefault(Kind.LOG, new ArrayList<>())
          .sort(java.util.Comparator.comparing(Entry::id));
      return new Ledger(build, records, unsound, unread, evidence, Map.of());
    }
  }

  /**
   * The same as it would have read at the end of a day: what had not happened by then is not there.
   * A record that begins later is left out, and of the others each key and each group whose day
   * came later; promises and plans stay. Which days count as happened is declared with each key.
   */
  public Ledger asOf(LocalDate day) {
    if (records.values().stream().flatMap(List::stream).noneMatch(each -> isCut(each, day))) {
      return this;
    }
    Gathering view = new Gathering();
    records.forEach(
        (kind, list) ->
            list.forEach(
                entry ->
                    asOf(day, entry)
                        .ifPresentOrElse(view::add, () -> view.addUnsound(kind, entry.id()))));
    unsound.forEach((kind, ids) -> ids.forEach(id -> view.addUnsound(kind, id)));
    view.unread.addAll(unread);
    return view.close(build, evidence).sealed(seals);
  }

  /** The build is there before it began. */
  private static boolean isCut(Entry entry, LocalDate day) {
    return entry.kind() != Kind.BUILD && entry.at().happensAfter(day);
  }

  /** Records that no day cuts are shared: they read the same. */
  private Optional<Entry> asOf(LocalDate day, Entry entry) {
    return isCut(entry, day) ? Records.asOf(day, entry, build.currency()) : Optional.of(entry);
  }

  public Build build() {
    return build;
  }

  public List<Party> parties() {
    return all(Kind.PARTIES);
  }

  public List<Rate> rates() {
    return all(Kind.RATES);
  }

  public List<BudgetLine> budget() {
    return all(Kind.BUDGET);
  }

  public List<KitItem> kit() {
    return all(Kind.KIT);
  }

  public List<Delivery> deliveries() {
    return all(Kind.DELIVERIES);
  }

  public List<Stock> stock() {
    return all(Kind.STOCK);
  }

  public List<Task> tasks() {
    return all(Kind.TASKS);
  }

  public List<Shortage> shortages() {
    return all(Kind.SHORTAGES);
  }

  public List<Claim> claims() {
    return all(Kind.CLAIMS);
  }

  public List<Substitution> substitutions() {
    return all(Kind.SUBSTITUTIONS);
  }

  /** The ledger's own materials; {@link #material} finds the built-in ones too. */
  public List<Material> materials() {
    return all(Kind.MATERIALS);
  }

  public List<Section> sections() {
    return all(Kind.SECTIONS);
  }

  public List<Assessment> assessments() {
    return all(Kind.ASSESSMENTS);
  }

  public List<Spend> spending() {
    return all(Kind.SPENDING);
  }

  public List<Loan> borrowed() {
    return all(Kind.BORROWED);
  }

  public List<Cut> cuts() {
    return all(Kind.CUTS);
  }

  /** The cuts still to be made: not done, and nobody gave up the work they are for. */
  public List<Cut> cutsToMake() {
    return cuts().stream()
        .filter(cut -> cut.done().isEmpty())
        .filter(
            cut ->
                cut.task().flatMap(this::task).flatMap(Task::withdrawn).isEmpty()
                    && cut.instead()
                        .flatMap(this::substitution)
                        .flatMap(Substitution::withdrawn)
                        .isEmpty())
        .toList();
  }

  public List<ForecastDay> forecast() {
    return all(Kind.FORECAST);
  }

  /** The log, by date. */
  public List<LogDay> log() {
    return all(Kind.LOG);
  }

  /** The records of a kind, whatever it is. */
  public List<Entry> entries(Kind kind) {
    return Collections.unmodifiableList(records.getOrDefault(kind, List.of()));
  }

  /** All records, kind by kind. */
  public List<Entry> all() {
    return Stream.of(Kind.values()).flatMap(kind -> entries(kind).stream()).toList();
  }

  public Optional<Delivery> delivery(Ref ref) {
    return find(Kind.DELIVERIES, ref.id());
  }

  public Optional<Party> party(Ref ref) {
    return find(Kind.PARTIES, ref.id());
  }

  /** The name of the party with that id; where there is none, the text itself. */
  public String nameOf(String partyOrText) {
    return this.<Party>find(Kind.PARTIES, partyOrText).map(Party::name).orElse(partyOrText);
  }

  public Optional<BudgetLine> budgetLine(Ref ref) {
    return find(Kind.BUDGET, ref.id());
  }

  public Optional<KitItem> kitItem(Ref ref) {
    return find(Kind.KIT, ref.id());
  }

  public Optional<Stock> stock(Ref ref) {
    return find(Kind.STOCK, ref.id());
  }

  public Optional<Task> task(Ref ref) {
    return find(Kind.TASKS, ref.id());
  }

  public Optional<Shortage> shortage(Ref ref) {
    return find(Kind.SHORTAGES, ref.id());
  }

  public Optional<Substitution> substitution(Ref ref) {
    return find(Kind.SUBSTITUTIONS, ref.id());
  }

  public Optional<Section> section(Ref ref) {
    return find(Kind.SECTIONS, ref.id());
  }

  public Optional<Assessment> assessment(Ref ref) {
    return find(Kind.ASSESSMENTS, ref.id());
  }

  public Optional<Spend> spend(Ref ref) {
    return find(Kind.SPENDING, ref.id());
  }

  public Optional<Loan> loan(Ref ref) {
    return find(Kind.BORROWED, ref.id());
  }

  /** A material of the ledger, or else of the built-in table. */
  public Optional<Material> material(Ref ref) {
    Optional<Material> own = find(Kind.MATERIALS, ref.id());
    return own.or(() -> builtInMaterial(ref.id()));
  }

  /** The built-in materials, as the table lists them. */
  public List<Material> builtInMaterials() {
    return BuiltInMaterials.all();
  }

  /** A built-in material, whatever the ledger has under its id. */
  public Optional<Material> builtInMaterial(String id) {
    return BuiltInMaterials.of(id);
  }

  /** Whether a kind holds a record of that id, even one that could not be read. */
  public boolean knows(Kind kind, String id) {
    return byId.getOrDefault(kind, Map.of()).containsKey(id)
        || unsound.getOrDefault(kind, Set.of()).contains(id)
        || (kind == Kind.MATERIALS && BuiltInMaterials.ids().contains(id));
  }

  /** Whether a record of that id is written and could not be read. */
  public boolean isUnread(Kind kind, String id) {
    return unsound.getOrDefault(kind, Set.of()).contains(id);
  }

  /** What could not be read and is the record of a kind with an id, or else may hold it. */
  private Optional<Unread> unread(Kind kind, String id) {
    return unread.stream()
        .filter(each -> each.is(kind, id))
        .findFirst()
        .or(
            () ->
                unread.stream()
                    .filter(each -> each.kind().isEmpty() && each.names(id))
                    .findFirst());
  }

  /**
   * Why no record of a kind is found under an id: {@code there is no task “lay”}, or where it
   * stands and cannot be read.
   */
  public String noSuch(Kind kind, String id) {
    return unread(kind, id)
        .map(each -> "the " + kind.word() + " “" + id + "” " + each.whyNot())
        .orElse("there is no " + kind.word() + " “" + id + "”");
  }

  /** The same of an id that was named just before: {@code no task has that id}. */
  public String noneHasIt(Kind kind, String id) {
    return unread(kind, id)
        .map(each -> "that " + kind.word() + " " + each.whyNot())
        .orElse("no " + kind.word() + " has that id");
  }

  /** What could not be read, in the order of the files. */
  public List<Unread> unread() {
    return unread;
  }

  /** What cannot be read, names an id and may take of it: clauses after “since”. */
  public List<String> unreadTakers(String id) {
    return unread().stream()
        .filter(each -> each.mayTake() && each.names(id))
        .map(
            each ->
                each.named()
                    + (each.isUnseen()
                        ? ", which may name it, cannot be"
                        : ", which names it, cannot be")
                    + " read")
        .toList();
  }

  /** What names a task, could not be read, and may be a substitution that holds it. */
  public Optional<Unread> unreadHold(Task task) {
    return unread.stream()
        .filter(each -> each.mayBe(Kind.SUBSTITUTIONS) && each.names(task.id()))
        .findFirst();
  }

  /** Whether records of a kind share an id. */
  public boolean hasSameIds(Kind kind) {
    return byId.getOrDefault(kind, Map.of()).size() < entries(kind).size();
  }

  /** All ids of a kind, for offering the nearest. */
  public List<String> ids(Kind kind) {
    Stream<String> more = kind == Kind.MATERIALS ? BuiltInMaterials.ids().stream() : Stream.of();
    return Stream.concat(entries(kind).stream().map(Entry::id), more).toList();
  }

  /** The same with what came of the signatures that keys made, by the place of the sign-off. */
  public Ledger sealed(Map<Place, Seal> checked) {
    return new Ledger(build, records, unsound, unread, evidence, checked);
  }

  /** What came of the signature that a key made for a sign-off. */
  public Seal seal(Substitution.SignOff signOff) {
    return seals.getOrDefault(signOff.at().record(), Seal.NOT_CHECKED);
  }

  /** What is found at the path of a piece of evidence: looked at when it is first asked for. */
  public EvidenceFile evidence(Evidence piece) {
    return evidence.at(piece.file());
  }

  /** Looks at all evidence at once, where a fault of the looking must be told at once. */
  public void lookAtEvidence() {
    Set<String> files = new LinkedHashSet<>();
    for (List<Entry> list : records.values()) {
      list.forEach(entry -> Evidence.in(entry).forEach(piece -> files.add(piece.file())));
    }
    evidence.lookAt(List.copyOf(files));
  }

  /** The record of a kind with an id. */
  @SuppressWarnings("unchecked") // a kind's list holds records of that kind's type only
  public <T extends Entry> Optional<T> find(Kind kind, String id) {
    return Optional.ofNullable((T) byId.getOrDefault(kind, Map.of()).get(id));
  }

  @SuppressWarnings("unchecked") // as above
  private <T extends Entry> List<T> all(Kind kind) {
    return (List<T>) (List<?>) entries(kind);
  }
}
