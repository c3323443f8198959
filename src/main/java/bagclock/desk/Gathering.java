package bagclock.desk;

import bagclock.core.exposure.Air;
import bagclock.core.exposure.ClimateLog;
import bagclock.core.exposure.Event;
import bagclock.core.exposure.PartHistory;
import bagclock.core.exposure.SiteRules;
import bagclock.core.exposure.Timeline;
import bagclock.core.exposure.Zone;
import bagclock.core.exposure.ZoneLog;
import bagclock.core.exposure.ZoneLog.Reading;
import bagclock.core.standard.Part;
import bagclock.ledger.Act;
import bagclock.ledger.History;
import bagclock.ledger.Ledger;
import bagclock.ledger.Told;
import bagclock.platform.Transaction;
import bagclock.readings.Readings;
import bagclock.register.HouseRules;
import bagclock.register.KnownPlace;
import bagclock.register.PartType;
import bagclock.register.Register;
import bagclock.register.Versioned;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Puts together what is known of an item: part, history, climate, rules. */
final class Gathering {
    /** The core compares a declared worst case with the log of this long, see rule 3. */
    private static final Duration LOOK_BACK = Duration.ofDays(90);

    /** A reading before a span may hold into it, and an excursion may have begun before it. */
    private static final Duration LEAD = Duration.ofDays(1);

    private final Register register;
    private final Readings readings;
    private final Ledger ledger;

    Gathering(Register register, Readings readings, Ledger ledger) {
        this.register = register;
        this.readings = readings;
        this.ledger = ledger;
    }

    /** What is known of an item at a moment; a history that can't be one counts as unknown. */
    Evidence of(Transaction tx, String tag, Instant moment) {
        Ledger.Prospect now = ledger.prospect(tx, List.of());
        Timeline whole = now.timeline(tag).fold(timeline -> timeline, refusals -> Timeline.EMPTY);
        Timeline timeline = whole.upTo(moment);
        SortedMap<String, Integer> versions = new TreeMap<>();
        Part part = part(tx, birth(now, tag), moment, versions);
        Versioned<HouseRules> rules = register.houseRules(tx, moment);
        versions.put("site rules", rules.version().number());
        Logs logs = new Logs(new HashMap<>(), new HashMap<>(), new StringBuilder());
        Instant from =
                earliest(timeline, moment).minus(longer(LEAD, rules.fact().rules()));
        for (String code : zones(timeline)) {
            register.place(tx, code, moment).ifPresent(place -> {
                versions.put("place " + code, place.version().number());
                logs.add(tx, place.fact(), from, moment);
            });
        }
        ClimateLog climate =
                new ClimateLog(logs.zones, logs.worstCases, rules.fact().worstCase());
        PartHistory history =
                new PartHistory(part, timeline, climate, rules.fact().rules(), moment);
        String text = part + "|" + now.heads() + "|" + moment + "|" + rules.fact() + "|"
                + new TreeMap<>(byName(logs.worstCases)) + "|" + logs.text;
        return new Evidence(history, versions, sha256(text));
    }

    private final class Logs {
        private final Map<Zone, ZoneLog> zones;
        private final Map<Zone, Air> worstCases;
        private final StringBuilder text;

        Logs(Map<Zone, ZoneLog> zones, Map<Zone, Air> worstCases, StringBuilder text) {
            this.zones = zones;
            this.worstCases = worstCases;
            this.text = text;
        }

        void add(Transaction tx, KnownPlace place, Instant from, Instant to) {
            if (place instanceof KnownPlace.FloorZone floor) {
                floor.worstCase().ifPresent(air -> worstCases.put(place.zone(), air));
            }
            if (place.logged()) {
                List<Reading> read = readings.between(tx, place.zone(), from, to);
                zones.put(place.zone(), ZoneLog.of(read));
                text.append(place.code());
                read.forEach(reading -> text.append(';')
                        .append(reading.at().toEpochMilli())
                        .append(',')
                        .append(reading.air().temperature().degrees())
                        .append(',')
                        .append(reading.air().humidity().percent()));
            }
        }
    }

    private static Map<String, Air> byName(Map<Zone, Air> airs) {
        Map<String, Air> named = new HashMap<>();
        airs.forEach((zone, air) -> named.put(zone.name(), air));
        return named;
    }

    private Part part(Transaction tx, Act.Received received, Instant moment, SortedMap<String, Integer> versions) {
        Versioned<PartType> type = partType(tx, received.partType(), moment);
        versions.put("part type " + received.partType(), type.version().number());
        return type.fact().part().in(received.carrier());
    }

    /** A moment before the part type was entered takes its first version. */
    Versioned<PartType> partType(Transaction tx, String number, Instant moment) {
        return register.partType(tx, number, moment).orElseGet(() -> {
            List<Versioned<PartType>> all = register.partTypeVersions(tx, number);
            return all.get(all.size() - 1);
        });
    }

    /** How the item, or its first ancestor, came into the house; as written first if that was taken back. */
    static Act.Received birth(Ledger.Prospect ledger, String tag) {
        History history = ledger.history(tag);
        Act act = history.birth()
                .map(Told::act)
                .orElseGet(() -> history.entries().get(0).act());
        return act instanceof Act.SplitFrom from ? birth(ledger, from.parent()) : (Act.Received) act;
    }

    private static Instant earliest(Timeline timeline, Instant moment) {
        Instant first = moment.minus(LOOK_BACK);
        return Stream.concat(Stream.of(first), all(timeline).map(Event::at))
                .min(Instant::compareTo)
                .orElse(first);
    }

    private static Stream<Event> all(Timeline timeline) {
        return timeline.events().stream()
                .flatMap(event -> event instanceof Event.Joined joined
                        ? Stream.concat(
                                Stream.of(event), joined.others().stream().flatMap(Gathering::all))
                        : Stream.of(event));
    }

    private static Duration longer(Duration lead, SiteRules rules) {
        return rules.maxReadingGap().compareTo(lead) > 0 ? rules.maxReadingGap() : lead;
    }

    private static Set<String> zones(Timeline timeline) {
        Set<String> zones = new TreeSet<>();
        all(timeline).flatMap(event -> zone(event).stream()).forEach(zone -> zones.add(zone.name()));
        return zones;
    }

    private static Optional<Zone> zone(Event event) {
        if (event instanceof Event.Opened opened) {
            return opened.zone();
        } else if (event instanceof Event.ToFloor floor) {
            return floor.zone();
        } else if (event instanceof Event.ToDryStorage storage) {
            return storage.zone();
        } else if (event instanceof Event.Mounted mounted) {
            return mounted.zone();
        }
        return event instanceof Event.Removed removed ? removed.zone() : Optional.empty();
    }

    static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
