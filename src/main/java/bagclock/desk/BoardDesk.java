package bagclock.desk;

import bagclock.core.Outcome;
import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.exposure.Zone;
import bagclock.core.heat.AssessBoard;
import bagclock.core.heat.BoardAnswer;
import bagclock.core.heat.HeatPlan;
import bagclock.core.heat.Release;
import bagclock.core.heat.Verdict;
import bagclock.core.quantity.Celsius;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardLedger;
import bagclock.ledger.BoardNotes;
import bagclock.ledger.Notes;
import bagclock.ledger.Stamp;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import bagclock.register.BoardRegister;
import bagclock.register.BoardRules;
import bagclock.register.BoardType;
import bagclock.register.Change;
import bagclock.register.HeatProfile;
import bagclock.register.KnownBoard;
import bagclock.register.Versioned;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The counter's part that knows boards. A note about a board and what it means for the items on it are written in one
 * transaction; open pages are told by topic {@code board/<serial>}. May be used by many threads and on several nodes.
 */
public final class BoardDesk {
    /** What happens to the parts on a board beside what is planned and looked at. */
    private static final Set<BoardEntry.Kind> FOR_THE_PARTS = EnumSet.of(
            BoardEntry.Kind.HEATED,
            BoardEntry.Kind.BAKE_STARTED,
            BoardEntry.Kind.BAKE_ENDED,
            BoardEntry.Kind.BAKED_ELSEWHERE,
            BoardEntry.Kind.CAME_BACK);

    private final Desk desk;
    private final Database database;
    private final Standards standards;
    private final BiConsumer<Transaction, String> tell;
    private final BoardGathering gathering;
    private final BoardRegister register;
    private final BoardLedger ledger;
    private final BoardUndoing items = new BoardUndoing();
    private final PastCalibration past = new PastCalibration();

    BoardDesk(
            Desk desk,
            Database database,
            Standards standards,
            BiConsumer<Transaction, String> tell,
            BoardGathering gathering) {
        this.desk = desk;
        this.database = database;
        this.standards = standards;
        this.tell = tell;
        this.gathering = gathering;
        this.register = gathering.register();
        this.ledger = gathering.ledger();
    }

    /** Carries refusals out of a transaction that must leave nothing. */
    private static final class Turned extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient List<Refusal> refusals;

        Turned(List<Refusal> refusals) {
            this.refusals = refusals;
        }
    }

    /** A board with all that is known of it. */
    public Optional<BoardView> board(String serial, Instant moment) {
        return database.read(tx -> gathering.view(tx, serial, moment));
    }

    /** Every board, by serial number. */
    public List<Versioned<KnownBoard>> boards(Instant moment) {
        return database.read(tx -> register.boards(tx, moment));
    }

    /** Every board type, by number. */
    public List<Versioned<BoardType>> types(Instant moment) {
        return database.read(tx -> register.types(tx, moment));
    }

    /** The board type with this number. */
    public Optional<Versioned<BoardType>> type(String number, Instant moment) {
        return database.read(tx -> register.type(tx, number, moment));
    }

    /** Every heat profile of a board type, by id. */
    public List<Versioned<HeatProfile>> profiles(String boardType, Instant moment) {
        return database.read(tx -> register.profiles(tx, boardType, moment));
    }

    /** The site's rules for boards. */
    public Versioned<BoardRules> rules(Instant moment) {
        return database.read(tx -> register.rules(tx, moment));
    }

    /** Every entry of one kind on any board, newest first. */
    public List<BoardEntry> newest(BoardEntry.Kind kind, int most) {
        return database.read(tx -> ledger.newest(tx, kind, most));
    }

    /** Heats of boards recorded in a period, and bakes begun, that were not taken back by its end. */
    List<BoardEntry> heatsAndBakesBetween(Transaction tx, Instant startInclusive, Instant endExclusive) {
        return ledger
                .recordedBetween(
                        tx,
                        List.of(BoardEntry.Kind.HEATED, BoardEntry.Kind.BAKE_STARTED, BoardEntry.Kind.TAKEN_BACK),
                        startInclusive,
                        endExclusive)
                .stream()
                .collect(Collectors.groupingBy(BoardEntry::serial))
                .values()
                .stream()
                .flatMap(ofOne -> BoardEntry.standing(ofOne).stream())
                .toList();
    }

    /** Whether the board may be heated as planned. */
    public BoardReply mayHeat(BoardAsk ask) {
        return database.read(tx -> reply(tx, ask));
    }

    private BoardReply reply(Transaction tx, BoardAsk ask) {
        BoardGathering.Gathered gathered = gathering.of(tx, ask);
        BoardAnswer answer = AssessBoard.of(standards.at(tx, ask.at()), gathered.question());
        Set<String> tags = new HashSet<>(gathered.items().values());
        gathered.sources().values().forEach(source -> source.used().ifPresent(used -> tags.add(used.tag())));
        Set<Zone> zones = gathered.question().climate().zones().keySet();
        return new BoardReply(
                new BoardAnswer(past.named(tx, answer.whole(), ask.at(), zones, tags), answer.parts()),
                gathered.question(),
                gathered.notices(),
                gathered.items(),
                gathered.sources(),
                gathered.versions(),
                BoardGathering.readings(gathered.question().climate()),
                gathered.sha256());
    }

    /**
     * Writes a note with all that it means for the items, or refuses it with every reason and changes nothing. A key
     * that was used before gives the entry of then.
     */
    public Outcome<BoardEntry> record(BoardNote note, Instant now) {
        Instant recordedAt = now.truncatedTo(ChronoUnit.MILLIS);
        return written(tx -> record(tx, note, recordedAt));
    }

    /** Who lost to somebody in the same moment looks again, and is told in words who was first. */
    private Outcome<BoardEntry> written(Function<Transaction, Outcome<BoardEntry>> writing) {
        try {
            try {
                return database.inTransaction(writing);
            } catch (ChangedMeanwhile lost) {
                return database.inTransaction(writing);
            }
        } catch (Turned turned) {
            return new Outcome.Refused<>(turned.refusals);
        }
    }

    private Outcome<BoardEntry> record(Transaction tx, BoardNote note, Instant now) {
        Optional<BoardEntry> before = ledger.byKey(tx, note.header().key());
        if (before.isPresent()) {
            return before.get().serial().equals(note.serial())
                    ? Outcome.accepted(before.get())
                    : Outcome.refused(Refusal.of(Reason.KEY_USED_OTHERWISE));
        }
        List<BoardEntry> entries = ledger.entries(tx, note.serial());
        Optional<Refusal> refusal = refusal(tx, note, entries, now);
        if (refusal.isPresent()) {
            return Outcome.refused(refusal.get());
        }
        Map<String, String> told = new HashMap<>(note.told());
        note.ask().ifPresent(ask -> told.putAll(answered(tx, note, ask)));
        if (note.kind() == BoardEntry.Kind.BAKE_STARTED) {
            told.put(BoardNotes.BAKE_CELLS, bakeCells(tx, note));
        }
        note.commands()
                .forEach(command -> desk.handle(tx, command, now).fold(receipt -> receipt, refusals -> {
                    throw new Turned(refusals);
                }));
        Instant happenedAt = note.header().happenedAt();
        BoardEntry entry = ledger.append(
                tx,
                entries,
                new BoardLedger.Draft(note.serial(), happenedAt, note.kind(), told),
                new Stamp(note.header().who(), now, note.header().key()));
        tell.accept(tx, "board/" + note.serial());
        return Outcome.accepted(entry);
    }

    private Optional<Refusal> refusal(Transaction tx, BoardNote note, List<BoardEntry> entries, Instant now) {
        Instant at = note.header().happenedAt();
        if (register.board(tx, note.serial(), now).isEmpty()) {
            return Optional.of(Refusal.of(Reason.BOARD_UNKNOWN, note.serial()));
        } else if (entries.size() != note.basedOn()) {
            return Optional.of(changed(note, entries));
        } else if (at.isAfter(now)) {
            return Optional.of(Refusal.of(Reason.HAPPENED_IN_FUTURE, at, now));
        }
        Optional<Refusal> before = BoardEntry.standing(entries).stream()
                .reduce((first, last) -> last)
                .filter(last -> at.isBefore(last.happenedAt()))
                .map(last -> Refusal.of(Reason.BEFORE_LAST_ENTRY, at, last.happenedAt()));
        return before.or(() -> note.kind() == BoardEntry.Kind.BAKED_ELSEWHERE ? overlap(tx, note, entries) : before);
    }

    /** A bake that was told late must not lie over what else happened to the parts: its hours would get lost. */
    private Optional<Refusal> overlap(Transaction tx, BoardNote note, List<BoardEntry> entries) {
        Instant begun =
                BoardState.elsewhere(note.header().happenedAt(), note.told()).startedAt();
        return Stream.concat(
                        BoardEntry.standing(entries).stream()
                                .filter(entry -> FOR_THE_PARTS.contains(entry.kind()))
                                .map(BoardEntry::happenedAt),
                        gathering.usedAt(tx, note.serial()))
                .filter(begun::isBefore)
                .findFirst()
                .map(other -> Refusal.of(Reason.BAKE_OVERLAPS, begun, other));
    }

    /** Of parts with an item the item's own entry names its cell. */
    private String bakeCells(Transaction tx, BoardNote note) {
        HeatPlan whole = new HeatPlan(
                note.header().happenedAt(),
                Duration.ZERO,
                Optional.empty(),
                Optional.of(HeatPlan.Purpose.WHOLE_BOARD),
                Optional.of(false));
        BoardReply reply = reply(tx, BoardAsk.everywhere(note.serial(), whole));
        Celsius setPoint = new Celsius(Double.parseDouble(note.told().get(BoardNotes.SET_POINT)));
        return reply.answer().parts().stream()
                .filter(part -> !reply.items().containsKey(part.location()))
                .flatMap(part -> Answering.bakeCell(part.answer(), setPoint).stream())
                .map(AnswerText::source)
                .distinct()
                .collect(Collectors.joining("\n"));
    }

    private static Refusal changed(BoardNote note, List<BoardEntry> entries) {
        String who =
                entries.isEmpty() ? "" : entries.get(entries.size() - 1).stamp().who();
        Instant when = entries.isEmpty()
                ? note.header().happenedAt()
                : entries.get(entries.size() - 1).stamp().recordedAt();
        return Refusal.of(Reason.BOARD_CHANGED_MEANWHILE, note.serial(), who, when);
    }

    /**
     * Takes back the newest entry that counts, with all that it meant for the items; or refuses it with every reason, as
     * when something that was told of an item since then rests on it.
     *
     * @param basedOn number of the newest entry that the person saw
     */
    public Outcome<BoardEntry> takeBack(Command.Header header, String serial, int basedOn, Instant now) {
        Instant recordedAt = now.truncatedTo(ChronoUnit.MILLIS);
        return written(tx -> takeBack(tx, header, new Last(serial, basedOn), recordedAt));
    }

    /** The newest entry as a person saw it. */
    private record Last(String serial, int basedOn) {}

    private Outcome<BoardEntry> takeBack(Transaction tx, Command.Header header, Last last, Instant now) {
        List<BoardEntry> entries = ledger.entries(tx, last.serial());
        Optional<BoardEntry> back = BoardEntry.standing(entries).stream().reduce((first, second) -> second);
        Map<String, String> told = Map.of(
                BoardNotes.CORRECTS,
                back.map(entry -> Integer.toString(entry.seq())).orElse(""));
        BoardNote note = new BoardNote(
                new Command.Header(header.who(), now, header.key()),
                last.serial(),
                last.basedOn(),
                BoardEntry.Kind.TAKEN_BACK,
                told,
                Optional.empty(),
                back.map(entry -> items.undoing(tx, entry, header)).orElse(List.of()));
        boolean again = ledger.byKey(tx, header.key()).isPresent();
        return again || back.isPresent()
                ? record(tx, note, now)
                : Outcome.refused(Refusal.of(Reason.NOTHING_TO_TAKE_BACK));
    }

    /** The answer that was acted on, and what it rests on. */
    private Map<String, String> answered(Transaction tx, BoardNote note, BoardAsk ask) {
        BoardReply reply = reply(tx, ask);
        if (note.kind() == BoardEntry.Kind.RELEASED
                && !Release.isPossible(reply.answer().whole())) {
            throw new Turned(List.of(Refusal.of(Reason.RELEASE_NOT_POSSIBLE)));
        }
        Map<String, String> told = new HashMap<>();
        told.put(Notes.ANSWER, AnswerText.of(reply.answer().whole()));
        told.put(Notes.INPUTS, reply.sha256());
        told.put(Notes.VERSIONS, standards.version(tx, ask.at()) + " " + reply.versions());
        told.put(BoardNotes.READINGS, String.join("\n", reply.readings()));
        told.put(
                BoardNotes.NOTICES,
                reply.notices().stream().map(Enum::name).sorted().collect(Collectors.joining("\n")));
        told.put(BoardNotes.PURPOSE, ask.purpose().code());
        told.put(BoardNotes.LOCATION, ask.location());
        told.put(BoardNotes.LENGTH, ask.length().toString());
        ask.profile().ifPresent(id -> told.put(BoardNotes.PROFILE, id));
        told.put(
                BoardNotes.PARTS,
                reply.answer().parts().stream()
                        .filter(part -> part.counts() || part.answer().verdict() != Verdict.CLEAR)
                        .map(part ->
                                part.location() + "\t" + part.answer().verdict().code())
                        .collect(Collectors.joining("\n")));
        return told;
    }

    /** A new board type, or a new version of one. */
    public void keep(BoardType type, Change change) {
        keep(tx -> {
            register.add(tx, type, change);
            return "register";
        });
    }

    /** A new board, or a new version of one. */
    public void keep(KnownBoard board, Change change) {
        keep(tx -> {
            register.add(tx, board, change);
            return "board/" + board.serial();
        });
    }

    /** A new heat profile, or a new version of one. */
    public void keep(HeatProfile profile, Change change) {
        keep(tx -> {
            register.add(tx, profile, change);
            return "register";
        });
    }

    /** The site's rules for boards from a moment on. */
    public void keep(BoardRules rules, Change change) {
        keep(tx -> {
            register.add(tx, rules, change);
            return "register";
        });
    }

    private void keep(Function<Transaction, String> entering) {
        database.withTransaction(tx -> tell.accept(tx, entering.apply(tx)));
    }
}
