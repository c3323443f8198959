package bagclock.desk;

import bagclock.core.Outcome;
import bagclock.core.Reason;
import bagclock.core.Refusal;
import bagclock.core.exposure.PartHistory;
import bagclock.core.heat.Answer;
import bagclock.core.heat.HeatPlan;
import bagclock.core.standard.Standard;
import bagclock.ledger.Draft;
import bagclock.ledger.Entry;
import bagclock.ledger.Item;
import bagclock.ledger.Ledger;
import bagclock.ledger.Stamp;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.Transaction;
import bagclock.readings.Kept;
import bagclock.readings.Readings;
import bagclock.readings.Source;
import bagclock.readings.ZoneReading;
import bagclock.register.Calibration;
import bagclock.register.CarrierKind;
import bagclock.register.Change;
import bagclock.register.ComparedCell;
import bagclock.register.HouseCustoms;
import bagclock.register.HouseRules;
import bagclock.register.KnownPlace;
import bagclock.register.PartType;
import bagclock.register.Register;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * The one counter. Every change goes through it: in one transaction the entry is written, the clocks of all items that
 * it touches are brought up to date, and open pages are told (topics {@code item/<tag>}, {@code zone/<code>},
 * {@code register}). May be used by many threads and on several nodes.
 */
public final class Desk {
    /** The same scan again within this time is the same scan. */
    private static final Duration ONE_SCAN = Duration.ofSeconds(3);

    private final Database database;
    private final Standards standards;
    private final BiConsumer<Transaction, String> tell;
    private final Register register = new Register();
    private final Readings readings = new Readings();
    private final Ledger ledger = new Ledger();
    private final Gathering gathering = new Gathering(register, readings, ledger);
    private final OpeningAir openings = new OpeningAir(register, readings);
    private final ItemListStore lists = new ItemListStore();
    private final Answering answering;
    private final AirDesk air;
    private final ClockKeeping clocks;
    private final BoardDesk boards;

    /**
     * Opens the desk.
     *
     * @param standard as shipped; the site's own cell values are laid over it
     * @param tell notes a topic for open pages, within the transaction of the change
     */
    public Desk(Database database, Standard standard, BiConsumer<Transaction, String> tell) {
        this.database = database;
        this.standards = new Standards(standard, register);
        this.tell = tell;
        this.answering = new Answering(standards, gathering);
        this.clocks = new ClockKeeping(standards, register, readings, ledger, gathering);
        this.air = new AirDesk(database, register, clocks, new Excursions(standards, gathering), tell);
        this.boards = new BoardDesk(this, database, standards, tell, new BoardGathering(gathering));
    }

    /** The part of the counter that knows boards. */
    public BoardDesk boards() {
        return boards;
    }

    /**
     * Takes a command, or refuses it with every reason and changes nothing. A key that was used before gives the receipt
     * of then.
     *
     * @param now when it is recorded
     * @throws ChangedMeanwhile when someone else wrote to the same item at the same time
     */
    public Outcome<Receipt> handle(Command command, Instant now) {
        Instant recordedAt = now.truncatedTo(ChronoUnit.MILLIS);
        try {
            return database.inTransaction(tx -> handle(tx, command, recordedAt));
        } catch (ChangedMeanwhile lost) {
            return database.read(tx -> ledger.byKey(tx, command.header().key()))
                    .map(entry -> again(command, entry))
                    .orElseThrow(() -> lost);
        }
    }

    /** Within a transaction that writes more than this; it must be rolled back when the command is refused. */
    Outcome<Receipt> handle(Transaction tx, Command command, Instant now) {
        Optional<Entry> before = ledger.byKey(tx, command.header().key());
        if (before.isPresent()) {
            return again(command, before.get());
        }
        Planning planning = new Planning(tx, ledger, register, answering.in(tx), openings);
        Plan plan = new Corrections(tx, ledger, register, planning).plan(command, now);
        if (!plan.refusals().isEmpty()) {
            return new Outcome.Refused<>(plan.refusals());
        }
        Optional<Entry> repeated = repeated(tx, plan);
        if (repeated.isPresent()) {
            return Outcome.accepted(Receipt.of(repeated.get(), true));
        }
        Set<String> touched = touched(tx, plan);
        List<Refusal> objections = objections(tx, plan, touched);
        return objections.isEmpty()
                ? Outcome.accepted(write(
                        tx,
                        plan,
                        touched,
                        new Stamp(command.header().who(), now, command.header().key())))
                : new Outcome.Refused<>(objections);
    }

    private static Outcome<Receipt> again(Command command, Entry entry) {
        boolean same = entry.stamp().who().equals(command.header().who())
                && (command.tag().isEmpty() || command.tag().equals(entry.tag()));
        return same
                ? Outcome.accepted(Receipt.of(entry, true))
                : Outcome.refused(Refusal.of(Reason.KEY_USED_OTHERWISE));
    }

    /** The newest entry of the item, if it says the same and happened a moment ago. */
    private Optional<Entry> repeated(Transaction tx, Plan plan) {
        Draft draft = plan.drafts().get(0);
        if (plan.drafts().size() > 1 || draft.corrects().isPresent()) {
            return Optional.empty();
        }
        List<Entry> entries = ledger.history(tx, draft.tag()).entries();
        if (entries.isEmpty()) {
            return Optional.empty();
        }
        Entry last = entries.get(entries.size() - 1);
        Duration apart = Duration.between(last.happenedAt(), draft.happenedAt()).abs();
        return last.act().saysTheSameAs(draft.act()) && apart.compareTo(ONE_SCAN) <= 0
                ? Optional.of(last)
                : Optional.empty();
    }

    private Set<String> touched(Transaction tx, Plan plan) {
        Set<String> touched = new LinkedHashSet<>();
        plan.drafts().forEach(draft -> touched.addAll(ledger.touchedBy(tx, draft.tag())));
        return touched;
    }

    private List<Refusal> objections(Transaction tx, Plan plan, Set<String> touched) {
        Ledger.Prospect prospect = ledger.prospect(tx, plan.drafts());
        List<Refusal> objections = new ArrayList<>();
        for (String tag : touched) {
            List<Refusal> found = prospect.timeline(tag)
                    .fold(timeline -> Objections.to(prospect.history(tag), timeline), refusals -> refusals);
            found.stream().filter(refusal -> !objections.contains(refusal)).forEach(objections::add);
        }
        return objections;
    }

    private Receipt write(Transaction tx, Plan plan, Set<String> touched, Stamp stamp) {
        plan.fresh()
                .ifPresent(fresh -> ledger.enter(
                        tx,
                        fresh.tag(),
                        fresh.partType(),
                        fresh.parent(),
                        plan.drafts().get(0).happenedAt()));
        Entry first = ledger.append(tx, plan.drafts().get(0), stamp);
        for (int i = 1; i < plan.drafts().size(); i++) {
            Stamp beside = new Stamp(stamp.who(), stamp.recordedAt(), stamp.key() + "/" + (i + 1));
            ledger.append(tx, plan.drafts().get(i), beside);
        }
        touched.addAll(touched(tx, plan));
        ClockKeeping.Round round = round(tx, stamp.recordedAt());
        round.refresh(touched);
        round.sweep();
        return Receipt.of(first, false);
    }

    private ClockKeeping.Round round(Transaction tx, Instant now) {
        return clocks.new Round(tx, now, tell);
    }

    /**
     * Whether an item may be heated.
     *
     * @param plan must start at the moment; without one the question is about a pass of no length to its rated peak
     * @throws bagclock.platform.NotThere when no item has the tag
     */
    public Answer mayHeat(String tag, Optional<HeatPlan> plan, Instant moment) {
        return database.read(tx -> {
            there(tx, tag);
            return answering.of(tx, tag, plan, moment);
        });
    }

    /**
     * An item's releases of single heats.
     *
     * @throws bagclock.platform.NotThere when no item has the tag
     */
    public Releases releases(String tag) {
        return database.read(tx -> {
            there(tx, tag);
            return new Releases(ledger.history(tx, tag));
        });
    }

    /** The newest releases of heats of single items, newest first; also those that were taken back. */
    public List<Entry> newestReleases(int most) {
        return database.read(tx -> ledger.newestReleases(tx, most));
    }

    /**
     * All that an answer about an item is worked out from; for boards and lines of life.
     *
     * @throws bagclock.platform.NotThere when no item has the tag
     */
    public Evidence evidence(String tag, Instant moment) {
        return database.read(tx -> {
            there(tx, tag);
            return gathering.of(tx, tag, moment);
        });
    }

    private void there(Transaction tx, String tag) {
        if (ledger.item(tx, tag).isEmpty()) {
            throw new bagclock.platform.NotThere("no item " + tag);
        }
    }

    /** An item with all that is known of it at a moment. */
    public Optional<ItemView> item(String tag, Instant moment) {
        return database.read(tx -> ledger.item(tx, tag).map(item -> view(tx, item, moment)));
    }

    private ItemView view(Transaction tx, Item item, Instant moment) {
        Evidence evidence = gathering.of(tx, item.tag(), moment);
        return new ItemView(
                item,
                gathering.partType(tx, item.partType(), moment),
                evidence.history(),
                answering.of(tx, item.tag(), evidence, Optional.empty()),
                standards.at(tx, moment).limits(),
                HistoryLine.of(ledger.history(tx, item.tag())),
                lists.children(tx, item.tag()));
    }

    /**
     * A page of a list of items; {@code within} of the query counts from the moment. Worked out from the clock rows, not
     * by replay.
     *
     * @param moment now; the readings kept so far count
     */
    public ItemPage items(ItemQuery query, Instant moment) {
        return database.read(tx -> {
            ItemPage page = lists.page(tx, query, moment, clocks.sums(tx, moment));
            List<ItemRow> rows = page.rows().stream()
                    .map(row -> row.isCertainAt(moment) ? row : replayed(tx, row, moment))
                    .toList();
            return new ItemPage(rows, page.total());
        });
    }

    /** A row that shows the past, or has outlived itself, is worked out for the page that shows it. */
    private ItemRow replayed(Transaction tx, ItemRow row, Instant moment) {
        PartHistory history = gathering.of(tx, row.item().tag(), moment).history();
        return row.with(new Clocks(standards.tables(tx, moment), history, zone -> Optional.empty()).counting());
    }

    /** The parts on a board, by location. */
    public List<Item> onBoard(String boardSerial) {
        return database.read(tx -> ledger.onBoard(tx, boardSerial));
    }

    /** The tables that count at a moment: the shipped ones with the cells that the site has compared. */
    public Standard standard(Instant moment) {
        return database.read(tx -> standards.at(tx, moment));
    }

    /** How far the heats and bakes of a period rest on cells that nobody has compared by its end. */
    public Decided decided(Instant startInclusive, Instant endExclusive) {
        return database.read(tx -> Decided.of(
                ledger.heatsAndBakesBetween(tx, startInclusive, endExclusive),
                boards.heatsAndBakesBetween(tx, startInclusive, endExclusive),
                standards.at(tx, endExclusive)));
    }

    /** The newest entries of a person, newest first. */
    public List<Entry> newestOf(String who, int most) {
        return database.read(tx -> ledger.newestOf(tx, who, most));
    }

    /** Keeps the good ones of some readings, and brings the clocks that rest on them up to date. */
    public Kept add(List<ZoneReading> fresh, String who, Instant now) {
        return air.add(fresh, new Source(who, now));
    }

    /** The counter of whole files of readings, and of what cabinets held. */
    public AirDesk air() {
        return air;
    }

    /** When a logger or an oven must be calibrated again, from now on. */
    public void keep(Calibration calibration, Change change) {
        keep(change, tx -> {
            register.add(tx, calibration, change);
            return List.of();
        });
    }

    /** A new part type, or a new version of one. */
    public void keep(PartType type, Change change) {
        keep(change, tx -> {
            register.add(tx, type, change);
            return clocks.rows().ofType(tx, type.number());
        });
    }

    /** New part types and new versions, each with its change: all of them or, when one can't be kept, none. */
    public void keepAll(Map<PartType, Change> types, Instant now) {
        database.withTransaction(tx -> {
            Set<String> touched = new LinkedHashSet<>();
            types.forEach((type, change) -> {
                register.add(tx, type, change);
                touched.addAll(clocks.rows().ofType(tx, type.number()));
            });
            round(tx, now).refresh(touched);
            tell.accept(tx, "register");
        });
    }

    /** Cells compared with a copy of the standard; their values count in every answer from the change on. */
    public void keep(List<ComparedCell> compared, Change change) {
        keep(change, tx -> {
            boolean differs = standards.differs(tx, compared, change.recordedAt());
            register.add(tx, compared, change);
            return differs ? clocks.rows().open(tx) : List.of();
        });
    }

    /** A new place, or a new version of one. */
    public void keep(KnownPlace place, Change change) {
        keep(change, tx -> {
            register.add(tx, place, change);
            clocks.rulesChanged(tx, place.zone(), change.recordedAt());
            return clocks.rows().everIn(tx, place.code());
        });
    }

    /** A new carrier, or a new version of one; items keep the limit they were given. */
    public void keep(CarrierKind carrier, Change change) {
        keep(change, tx -> {
            register.add(tx, carrier, change);
            return List.of();
        });
    }

    /** The site's rules from a moment on. */
    public void keep(HouseRules rules, Change change) {
        keep(change, tx -> {
            register.add(tx, rules, change);
            register.places(tx, change.recordedAt())
                    .forEach(place -> clocks.rulesChanged(tx, place.fact().zone(), change.recordedAt()));
            return clocks.rows().open(tx);
        });
    }

    /** The site's customs from a moment on. */
    public void keep(HouseCustoms customs, Change change) {
        keep(change, tx -> {
            register.add(tx, customs, change);
            return List.of();
        });
    }

    private void keep(Change change, Function<Transaction, List<String>> entering) {
        database.withTransaction(tx -> {
            List<String> touched = entering.apply(tx);
            round(tx, change.recordedAt()).refresh(touched);
            tell.accept(tx, "register");
        });
    }
}
