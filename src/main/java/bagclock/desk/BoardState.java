package bagclock.desk;

import bagclock.core.exposure.Event;
import bagclock.core.heat.HeatPlan.Purpose;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.ledger.Act;
import bagclock.ledger.BoardEntry;
import bagclock.ledger.BoardNotes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a board's ledger adds up to. */
public final class BoardState {
    private final List<BoardEntry> entries;
    private final List<Event> bakes = new ArrayList<>();
    private final Set<String> emptied = new HashSet<>();

    private BoardState(List<BoardEntry> entries) {
        this.entries = List.copyOf(entries);
        entries.forEach(this::take);
    }

    /** Adds up the entries that count, oldest first. */
    public static BoardState of(List<BoardEntry> entries) {
        return new BoardState(entries);
    }

    private void take(BoardEntry entry) {
        if (entry.kind() == BoardEntry.Kind.BAKE_STARTED) {
            bakes.add(new Event.BakeStarted(
                    entry.happenedAt(),
                    degrees(entry, BoardNotes.SET_POINT).orElseThrow(),
                    entry.say(BoardNotes.HUMIDITY).map(Double::valueOf).map(RelativeHumidity::new)));
        } else if (entry.kind() == BoardEntry.Kind.BAKE_ENDED) {
            Optional<Duration> time = entry.say(BoardNotes.AT_TEMPERATURE).map(Duration::parse);
            bakes.add(new Event.BakeEnded(entry.happenedAt(), time));
        } else if (entry.kind() == BoardEntry.Kind.BAKED_ELSEWHERE) {
            bakes.addAll(elsewhere(entry).bake());
        } else if (entry.kind() == BoardEntry.Kind.HEATED) {
            heated(entry);
        }
    }

    private static Act.BakedElsewhere elsewhere(BoardEntry entry) {
        return elsewhere(entry.happenedAt(), entry.told());
    }

    /** The bake in an oven that this shop does not know, as an entry tells it that says when it ended. */
    static Act.BakedElsewhere elsewhere(Instant endedAt, Map<String, String> told) {
        return new Act.BakedElsewhere(
                endedAt,
                new Celsius(Double.parseDouble(told.get(BoardNotes.SET_POINT))),
                Duration.parse(told.get(BoardNotes.AT_TEMPERATURE)),
                Optional.ofNullable(told.get(BoardNotes.OVEN)).orElse(""));
    }

    /** When what an entry tells of began. */
    private static Instant begunAt(BoardEntry entry) {
        return entry.kind() == BoardEntry.Kind.BAKED_ELSEWHERE
                ? elsewhere(entry).startedAt()
                : entry.happenedAt();
    }

    private void heated(BoardEntry entry) {
        String location = entry.say(BoardNotes.LOCATION).orElse("");
        if (isFor(entry, Purpose.PLACEMENT)) {
            emptied.remove(location);
        } else if (isFor(entry, Purpose.REMOVAL_SCRAP) || isFor(entry, Purpose.REMOVAL_REUSE)) {
            emptied.add(location);
        }
    }

    /** Starts and ends of the board's bakes. */
    public List<Event> bakes() {
        return List.copyOf(bakes);
    }

    /** The bake that is running. */
    public Optional<Event.BakeStarted> running() {
        return bakes.isEmpty() || !(bakes.get(bakes.size() - 1) instanceof Event.BakeStarted run)
                ? Optional.empty()
                : Optional.of(run);
    }

    /** Whether the part there was taken off and nothing was put in its place. */
    public boolean isEmptied(String location) {
        return emptied.contains(location);
    }

    /** How often a part was placed at a location in a job. */
    public int replacements(String location) {
        return (int) entries.stream()
                .filter(entry -> entry.kind() == BoardEntry.Kind.HEATED && isFor(entry, Purpose.PLACEMENT))
                .filter(entry -> entry.says(BoardNotes.LOCATION, location))
                .count();
    }

    /** The release for a heat of a job that has not been used, if an engineer gave one. */
    public Optional<BoardEntry> openRelease(String job, String purpose) {
        Optional<BoardEntry> open = Optional.empty();
        for (BoardEntry entry : entries) {
            if (entry.says(BoardNotes.JOB, job) && entry.says(BoardNotes.PURPOSE, purpose)) {
                open = entry.kind() == BoardEntry.Kind.RELEASED ? Optional.of(entry) : Optional.empty();
            }
        }
        return open;
    }

    /**
     * What a part without an item of its own went through on the board: nothing is known before the board's first
     * entry, then its heats and its times out of the house.
     *
     * @param before events of the time before it was mounted; empty if nobody knows
     */
    List<Event> eventsAt(String location, List<Event> before, Instant known) {
        List<Event> events = new ArrayList<>(before);
        if (before.isEmpty()) {
            Instant first = entries.stream()
                    .map(BoardState::begunAt)
                    .min(Comparator.naturalOrder())
                    .orElse(known);
            events.add(new Event.UnknownExposure((first.isBefore(known) ? first : known).minusMillis(1)));
        }
        for (BoardEntry entry : entries) {
            if (entry.kind() == BoardEntry.Kind.CAME_BACK || entry.kind() == BoardEntry.Kind.BAKED_ELSEWHERE) {
                events.add(new Event.UnknownExposure(entry.happenedAt()));
            } else if (entry.kind() == BoardEntry.Kind.HEATED) {
                peak(entry, location)
                        .ifPresent(peak -> events.add(new Event.Heated(entry.happenedAt(), peak.measured())));
            }
        }
        events.sort(Comparator.comparing(Event::at));
        return events;
    }

    /** The peak of a body in a heat. */
    private record Peak(Optional<Celsius> measured) {}

    private static Optional<Peak> peak(BoardEntry entry, String location) {
        return entry.say(BoardNotes.PEAKS).stream()
                .flatMap(String::lines)
                .map(line -> line.split("\t", 2))
                .filter(pair -> pair[0].equals(location))
                .map(pair -> new Peak(
                        pair[1].isEmpty() ? Optional.empty() : Optional.of(new Celsius(Double.parseDouble(pair[1])))))
                .findFirst();
    }

    private static boolean isFor(BoardEntry entry, Purpose purpose) {
        return entry.says(BoardNotes.PURPOSE, purpose.code());
    }

    private static Optional<Celsius> degrees(BoardEntry entry, String name) {
        return entry.say(name).map(Double::valueOf).map(Celsius::new);
    }
}
