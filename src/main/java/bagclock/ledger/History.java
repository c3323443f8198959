package bagclock.ledger;

import bagclock.core.exposure.Event;
import bagclock.core.exposure.Place;
import bagclock.core.exposure.Timeline;
import bagclock.core.exposure.Whereabouts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One item's acts after all corrections, in order of time.
 *
 * @param tag of the item
 * @param entries every entry, as written
 * @param told what stands
 */
public record History(String tag, List<Entry> entries, List<Told> told) {
    /** Keeps its own copies. */
    public History {
        entries = List.copyOf(entries);
        told = List.copyOf(told);
    }

    /**
     * Applies the corrections: a correction that was itself taken back does nothing; of several of one entry the newest
     * stands.
     */
    public static History of(String tag, List<Entry> entries) {
        Set<Integer> undone = new HashSet<>();
        Map<Integer, Entry> corrections = new HashMap<>();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            if (entry.corrects().isEmpty() || undone.contains(entry.seq())) {
                continue;
            }
            int corrected = entry.corrects().getAsInt();
            if (isCorrection(entries, corrected)) {
                undone.add(corrected);
            } else {
                corrections.putIfAbsent(corrected, entry);
            }
        }
        List<Told> told = new ArrayList<>();
        for (Entry entry : entries) {
            Entry words = corrections.getOrDefault(entry.seq(), entry);
            if (entry.corrects().isEmpty() && !(words.act() instanceof Act.TakenBack)) {
                told.add(told(entry, words));
            }
        }
        told.sort(Told.IN_TIME);
        return new History(tag, entries, told);
    }

    private static Told told(Entry entry, Entry words) {
        return new Told(
                entry.seq(),
                Told.startOf(words.happenedAt(), words.act()),
                words.act(),
                new Told.By(words.seq(), words.stamp().who(), words.stamp().recordedAt()));
    }

    private static boolean isCorrection(List<Entry> entries, int seq) {
        return entries.stream().anyMatch(e -> e.seq() == seq && e.corrects().isPresent());
    }

    /** The entry with this seq. */
    public Optional<Entry> entry(int seq) {
        return entries.stream().filter(entry -> entry.seq() == seq).findFirst();
    }

    /** Whether the entry still stands: neither taken back nor replaced, and if a correction, not undone. */
    public boolean stands(int seq) {
        Optional<Entry> entry = entry(seq);
        if (entry.isPresent() && entry.get().corrects().isPresent()) {
            return entries.stream()
                    .filter(other ->
                            other.corrects().isPresent() && other.corrects().getAsInt() == seq)
                    .noneMatch(other -> stands(other.seq()));
        }
        return told.stream().anyMatch(t -> t.by().seq() == seq);
    }

    /** The seq that the next entry gets. */
    public int nextSeq() {
        return entries.size() + 1;
    }

    /** The birth of the item, empty once it was taken back. */
    public Optional<Told> birth() {
        return told.stream()
                .filter(t -> t.act() instanceof Act.Received || t.act() instanceof Act.SplitFrom)
                .findFirst();
    }

    /** Parts left. */
    public long quantity() {
        return told.stream().mapToLong(t -> change(t.act())).sum();
    }

    /** How many parts an act adds or, below 0, takes. */
    public static long change(Act act) {
        if (act instanceof Act.Received received) {
            return received.quantity();
        } else if (act instanceof Act.SplitFrom from) {
            return from.quantity();
        } else if (act instanceof Act.Joined joined) {
            return joined.quantity();
        } else if (act instanceof Act.SplitOff split) {
            return -split.quantity();
        }
        return act instanceof Act.UsedUp used ? -used.quantity() : 0;
    }

    /** The act that ended the item by putting it into another. */
    public Optional<Act.JoinedInto> joinedInto() {
        return told.stream()
                .filter(t -> t.act() instanceof Act.JoinedInto)
                .map(t -> (Act.JoinedInto) t.act())
                .findFirst();
    }

    /** The last told note of this name. */
    public Optional<String> lastNote(String name) {
        Optional<String> last = Optional.empty();
        for (Told t : told) {
            String note = notes(t.act()).get(name);
            last = note == null ? last : Optional.of(note);
        }
        return last;
    }

    static Map<String, String> notes(Act act) {
        if (act instanceof Act.Received received) {
            return received.notes();
        }
        return act instanceof Act.Happened happened ? happened.notes() : Map.of();
    }

    /** The item as these acts leave it. */
    Item leaves(Item before, Timeline timeline, Instant changedAt) {
        Whereabouts where = timeline.whereabouts();
        boolean ended = birth().isEmpty() || joinedInto().isPresent() || quantity() == 0;
        return new Item(
                tag,
                partType().orElse(before.partType()),
                before.parent(),
                joinedInto().map(Act.JoinedInto::keeper),
                receivedAt().orElse(before.receivedAt()),
                birth().isEmpty() || joinedInto().isPresent() ? 0 : quantity(),
                ended ? Item.Where.GONE : kind(where),
                ended ? Optional.empty() : placeCode(before, where),
                where.mounted() ? lastNote(Notes.BOARD) : Optional.empty(),
                where.mounted() ? lastNote(Notes.LOCATION) : Optional.empty(),
                ended,
                changedAt);
    }

    private Optional<String> partType() {
        return birth().map(Told::act)
                .filter(Act.Received.class::isInstance)
                .map(act -> ((Act.Received) act).partType());
    }

    /** When the item came to be, by the entry that stands for its birth. */
    public Optional<Instant> receivedAt() {
        return birth().flatMap(t -> entry(t.by().seq())).map(Entry::happenedAt);
    }

    private Optional<String> placeCode(Item before, Whereabouts where) {
        boolean floor = where.place() instanceof Place.Floor;
        Optional<String> standing = where.lastFloor().map(zone -> zone.name());
        if (floor) {
            return standing;
        }
        return where.place() instanceof Place.Bag bag
                ? putAt().or(() -> bag.zone().map(zone -> zone.name()))
                : lastPlace(before);
    }

    /** Where the bag was put since it was closed. */
    private Optional<String> putAt() {
        Optional<String> place = Optional.empty();
        for (Told t : told) {
            if (t.act() instanceof Act.PutAt put) {
                place = Optional.of(put.placeCode());
            } else if (t.events().stream().anyMatch(Event.Resealed.class::isInstance)) {
                place = Optional.empty();
            }
        }
        return place;
    }

    private Optional<String> lastPlace(Item before) {
        return lastNote(Notes.PLACE).or(before::placeCode);
    }

    private static Item.Where kind(Whereabouts where) {
        if (where.place() instanceof Place.Bag) {
            return Item.Where.BAG;
        } else if (where.place() instanceof Place.Cabinet) {
            return Item.Where.CABINET;
        } else if (where.place() instanceof Place.Oven) {
            return Item.Where.OVEN;
        }
        return where.mounted() ? Item.Where.BOARD : Item.Where.FLOOR;
    }

    /** The item's own events, without what it has from others. */
    public List<Event> ownEvents() {
        return told.stream().flatMap(t -> t.events().stream()).toList();
    }
}
