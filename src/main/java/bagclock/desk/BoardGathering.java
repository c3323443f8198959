package bagclock.desk;

import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.Tally;
import bagclock.core.exposure.Zone;
import bagclock.core.heat.BoardLocations;
import bagclock.core.heat.BoardQuestion;
import bagclock.core.heat.BoardQuestion.Fate;
import bagclock.core.heat.BoardQuestion.Location;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Part;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardLedger;
import bagclock.ledger.Item;
import bagclock.ledger.Ledger;
import bagclock.platform.Transaction;
import bagclock.register.BoardRegister;
import bagclock.register.BoardRules;
import bagclock.register.BoardType;
import bagclock.register.HeatProfile;
import bagclock.register.HouseRules;
import bagclock.register.KnownBoard;
import bagclock.register.PartType;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Puts together what is known of a board and of everything on it. */
final class BoardGathering {
    /** Stands for the parts of a board whose type is not entered. */
    static final String OTHER_PARTS = "?";

    private final BoardRegister boards = new BoardRegister();
    private final BoardLedger boardLedger = new BoardLedger();
    private final Register register = new Register();
    private final Ledger ledger = new Ledger();
    private final BoardUses uses = new BoardUses(ledger);
    private final Gathering gathering;

    BoardGathering(Gathering gathering) {
        this.gathering = gathering;
    }

    BoardRegister register() {
        return boards;
    }

    BoardLedger ledger() {
        return boardLedger;
    }

    /** When parts of items were used for a board. */
    Stream<Instant> usedAt(Transaction tx, String serial) {
        return uses.of(tx, serial).stream().map(BoardUses.Use::at);
    }

    /** A board with its type, its items and its ledger. */
    Optional<BoardView> view(Transaction tx, String serial, Instant moment) {
        return boards.board(tx, serial, moment)
                .map(board -> new BoardView(
                        board,
                        boards.type(tx, board.fact().type(), moment),
                        ledger.onBoard(tx, serial),
                        uses.of(tx, serial).stream()
                                .map(BoardUses.Use::tag)
                                .distinct()
                                .flatMap(tag -> ledger.item(tx, tag).stream())
                                .toList(),
                        boardLedger.entries(tx, serial)));
    }

    /** The question about a planned heat. */
    Gathered of(Transaction tx, BoardAsk ask) {
        Collecting collecting = new Collecting(tx, ask);
        collecting.collect();
        return collecting.gathered();
    }

    /** The question and what it rests on. */
    record Gathered(
            BoardQuestion question,
            Set<BoardNotice> notices,
            Map<String, String> items,
            Map<String, BoardSource> sources,
            SortedMap<String, Integer> versions,
            String sha256) {}

    /** One question in the making. */
    private final class Collecting {
        private final Transaction tx;
        private final BoardAsk ask;
        private final Optional<BoardType> type;
        private final BoardState state;
        private final Instant enteredAt;
        private final Optional<HeatProfile> profile;
        private final BoardQuestion.Board board;
        private final HouseRules rules;
        private final Set<BoardNotice> notices = EnumSet.noneOf(BoardNotice.class);
        private final SortedMap<String, Integer> versions = new TreeMap<>();
        private final Map<String, String> items = new HashMap<>();
        private final Map<String, BoardSource> sources = new HashMap<>();
        private final List<Location> locations = new ArrayList<>();
        private final StringBuilder text = new StringBuilder();
        private ClimateLog climate;

        Collecting(Transaction tx, BoardAsk ask) {
            this.tx = tx;
            this.ask = ask;
            Optional<Versioned<KnownBoard>> known = boards.board(tx, ask.serial(), ask.at());
            this.enteredAt = known.map(fact -> fact.version().validFrom()).orElse(ask.at());
            this.type = known.flatMap(fact -> boards.type(tx, fact.fact().type(), ask.at()))
                    .map(fact -> noted("board type " + fact.fact().number(), fact));
            Instant moment = ask.at();
            this.state = BoardState.of(BoardEntry.standing(boardLedger.entries(tx, ask.serial())).stream()
                    .filter(entry -> !entry.happenedAt().isAfter(moment))
                    .toList());
            Versioned<HouseRules> house = register.houseRules(tx, ask.at());
            this.rules = noted("site rules", house);
            BoardRules own = noted("board rules", boards.rules(tx, ask.at()));
            this.profile = trusted(own);
            this.climate = new ClimateLog(Map.of(), Map.of(), rules.worstCase());
            this.board = new BoardQuestion.Board(
                    type.flatMap(BoardType::bakeLimit),
                    type.flatMap(BoardType::ownBake),
                    type.flatMap(BoardType::coated),
                    own.useWithin(),
                    state.bakes(),
                    own.mostReplacements());
        }

        private <T> T noted(String name, Versioned<T> fact) {
            versions.put(name, fact.version().number());
            return fact.fact();
        }

        private Optional<HeatProfile> trusted(BoardRules own) {
            Optional<HeatProfile> chosen = ask.profile()
                    .flatMap(id -> boards.profile(tx, id, ask.at()))
                    .map(fact -> noted("heat profile " + fact.fact().id(), fact))
                    .filter(this::fits);
            if (chosen.isEmpty()) {
                notices.add(BoardNotice.PROFILE_MISSING);
            }
            boolean old = chosen.filter(
                            found -> found.isOld(ask.at().atZone(ZoneOffset.UTC).toLocalDate(), own))
                    .isPresent();
            if (old) {
                notices.add(BoardNotice.PROFILE_OLD);
            }
            return old ? Optional.empty() : chosen;
        }

        /** A profile holds for its own board type, location and kind of heat only. */
        private boolean fits(HeatProfile found) {
            HeatProfile.Kind kind = switch (ask.purpose()) {
                case PLACEMENT -> HeatProfile.Kind.PLACEMENT;
                case REMOVAL_SCRAP, REMOVAL_REUSE -> HeatProfile.Kind.REMOVAL;
                case WHOLE_BOARD -> HeatProfile.Kind.WHOLE_BOARD;
            };
            boolean here =
                    kind == HeatProfile.Kind.WHOLE_BOARD || found.location().equals(ask.location());
            return type.filter(t -> t.number().equals(found.boardType())).isPresent() && found.kind() == kind && here;
        }

        void collect() {
            for (Item item : ledger.onBoard(tx, ask.serial())) {
                String location =
                        item.location().filter(name -> !name.isEmpty()).orElse(item.tag());
                if (!isReplaced(location)) {
                    tracked(location, item.tag());
                }
            }
            type.ifPresentOrElse(this::untracked, this::unlisted);
            if (ask.purpose() == Purpose.PLACEMENT && !ask.location().isEmpty()) {
                placed();
            }
        }

        /** The place where a part is about to be put is taken for empty. */
        private boolean isReplaced(String location) {
            return ask.purpose() == Purpose.PLACEMENT && location.equals(ask.location());
        }

        private void tracked(String location, String tag) {
            PartHistory history = evidence(tag);
            items.put(location, tag);
            add(location, history.part(), withoutBoardBakes(history.timeline().events()), fate(location));
        }

        private PartHistory evidence(String tag) {
            Evidence evidence = gathering.of(tx, tag, ask.at());
            versions.putAll(evidence.versions());
            climate = climate.with(evidence.history().climate());
            text.append(evidence.sha256());
            return evidence.history();
        }

        /** The item's ledger says them too. */
        private List<Event> withoutBoardBakes(List<Event> events) {
            return events.stream()
                    .filter(event -> !(event instanceof Event.BakeStarted || event instanceof Event.BakeEnded)
                            || state.bakes().stream()
                                    .noneMatch(bake -> bake.at().equals(event.at())))
                    .toList();
        }

        private Fate fate(String location) {
            boolean target = location.equals(ask.location());
            if (target && ask.purpose() == Purpose.REMOVAL_SCRAP) {
                return Fate.REMOVED_SCRAP;
            }
            return target && ask.purpose() == Purpose.REMOVAL_REUSE ? Fate.REMOVED_REUSE : Fate.STAYS;
        }

        private void untracked(BoardType known) {
            Map<String, Part> parts = new HashMap<>();
            List<BoardUses.Use> used = uses.of(tx, ask.serial());
            for (BoardType.Spot spot : known.spots()) {
                String location = spot.location();
                if (items.containsKey(location) || state.isEmptied(location) || isReplaced(location)) {
                    continue;
                }
                Part part = parts.computeIfAbsent(spot.partNumber(), this::part);
                Optional<BoardUses.Use> use = use(used, spot.partNumber());
                if (use.isEmpty()) {
                    notices.add(BoardNotice.PARTS_WITHOUT_HISTORY);
                }
                List<Event> before = use.map(this::before).orElse(List.of());
                List<Event> events = state.eventsAt(location, before, enteredAt);
                sources.put(location, source(use, before, events));
                add(location, part, events, fate(location));
            }
        }

        /** Parts of one item only were used here: theirs is the item's history up to then. */
        private Optional<BoardUses.Use> use(List<BoardUses.Use> used, String partNumber) {
            List<BoardUses.Use> fitting = used.stream()
                    .filter(use -> use.partType().equals(partNumber))
                    .filter(use -> !use.at().isAfter(ask.at()))
                    .toList();
            return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
        }

        /** Where no use is known the first event says so; it becomes the beginning. */
        private BoardSource source(Optional<BoardUses.Use> use, List<Event> before, List<Event> events) {
            Instant from =
                    use.map(BoardUses.Use::at).orElseGet(() -> events.get(0).at());
            List<Event> begun = use.isPresent() ? before : events.subList(0, 1);
            List<Event> since = Stream.concat(events.stream(), state.bakes().stream())
                    .filter(event -> !event.at().isBefore(from) && !begun.contains(event))
                    .sorted(Comparator.comparing(Event::at))
                    .toList();
            return new BoardSource(use.map(found -> new BoardSource.Used(found.tag(), found.seq())), from, since);
        }

        private List<Event> before(BoardUses.Use use) {
            List<Event> events = new ArrayList<>(
                    evidence(use.tag()).timeline().upTo(use.at()).events());
            events.add(new Event.Mounted(use.at(), Optional.empty()));
            return events;
        }

        private Part part(String number) {
            return register.partType(tx, number, ask.at())
                    .map(fact -> noted("part type " + number, fact))
                    .map(PartType::part)
                    .orElse(Part.UNKNOWN);
        }

        private void unlisted() {
            notices.add(BoardNotice.TYPE_UNKNOWN);
            add(OTHER_PARTS, Part.UNKNOWN, List.of(), Fate.STAYS);
        }

        private void placed() {
            if (ask.placed().isPresent()) {
                String tag = ask.placed().get();
                PartHistory history = evidence(tag);
                items.put(ask.location(), tag);
                add(ask.location(), history.part(), history.timeline().events(), Fate.PLACED);
            } else {
                Part part = type.flatMap(known -> known.partAt(ask.location()))
                        .map(this::part)
                        .orElse(Part.UNKNOWN);
                add(ask.location(), part, List.of(), Fate.PLACED);
            }
        }

        private void add(String name, Part part, List<Event> events, Fate fate) {
            Location location = new Location(name, part, events, peak(name), fate, false, state.replacements(name));
            boolean possible = BoardLocations.timeline(board, location).fold(good -> true, refusals -> false);
            if (!possible) {
                sources.remove(name);
            }
            locations.add(
                    possible
                            ? location
                            : new Location(name, part, List.of(), peak(name), fate, false, state.replacements(name)));
        }

        private Optional<Celsius> peak(String location) {
            Optional<Celsius> measured = profile.flatMap(found -> found.peakAt(location));
            if (ask.purpose() == Purpose.WHOLE_BOARD) {
                return hottest(measured);
            }
            boolean target = !ask.location().isEmpty() && location.equals(ask.location());
            if (!target || ask.peak().isEmpty()) {
                return measured;
            }
            Celsius planned = ask.peak().get();
            return measured.filter(peak -> peak.isAbove(planned)).or(ask::peak);
        }

        /** What is planned makes no body cooler than it counts without: a peak of at most 200 C must be measured. */
        private Optional<Celsius> hottest(Optional<Celsius> measured) {
            Optional<Celsius> planned = ask.peak().filter(peak -> Tally.isPass(Optional.of(peak)));
            boolean hotter = planned.isPresent()
                    && measured.filter(peak -> !planned.get().isAbove(peak)).isEmpty();
            return hotter ? planned : measured;
        }

        Gathered gathered() {
            BoardQuestion question =
                    new BoardQuestion(board, locations, climate, rules.rules(), Optional.of(ask.plan()), ask.at());
            String all = board + "|" + locations + "|" + ask + "|" + rules + "|" + versions + "|" + text;
            return new Gathered(question, notices, items, sources, versions, Gathering.sha256(all));
        }
    }

    static String readings(Evidence evidence) {
        return String.join("\n", readings(evidence.history().climate()));
    }

    /** How many readings of each zone counted, and when the last was taken. */
    static List<String> readings(ClimateLog climate) {
        Map<String, String> lines = new TreeMap<>();
        climate.zones()
                .forEach((Zone zone, bagclock.core.exposure.ZoneLog log) -> log.lastAt()
                        .ifPresent(last -> lines.put(zone.name(), zone.name() + "\t" + log.size() + "\t" + last)));
        return List.copyOf(lines.values());
    }
}
