package bagclock.ledger;

import bagclock.core.Outcome;
import bagclock.core.exposure.Timeline;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The ledger of all items. Nothing in it is ever changed; a second writer of the same entry gets
 * {@link ChangedMeanwhile}.
 */
public final class Ledger {
    private final EntryStore entries = new EntryStore();
    private final ItemStore items = new ItemStore();

    /** The item with this tag. */
    public Optional<Item> item(Transaction tx, String tag) {
        return items.find(tx, tag);
    }

    /** The parts on a board, by location. */
    public List<Item> onBoard(Transaction tx, String board) {
        return items.onBoard(tx, board);
    }

    /** Tags of items of which parts were used for a board, unless that was taken back since. */
    public List<String> usedFor(Transaction tx, String board) {
        return entries.usedFor(tx, board);
    }

    /** Every tag. */
    public List<String> tags(Transaction tx) {
        return items.tags(tx);
    }

    /** A tag that no item has, with its check digit. */
    public String freeTag(Transaction tx) {
        String tag = CheckDigit.tag(items.drawNumber(tx));
        return items.find(tx, tag).isPresent() ? freeTag(tx) : tag;
    }

    /** An item's acts after all corrections. */
    public History history(Transaction tx, String tag) {
        return History.of(tag, entries.entries(tx, tag));
    }

    /** An item's history, or why its acts can't be one. */
    public Outcome<Timeline> timeline(Transaction tx, String tag) {
        return new Replay(other -> history(tx, other)).timeline(tag);
    }

    /** The histories that some drafts would make, without writing them. */
    public Prospect prospect(Transaction tx, List<Draft> drafts) {
        return new Prospect(new Replay(tag -> History.of(tag, with(tx, tag, drafts))));
    }

    /** What would be. */
    public static final class Prospect {
        private final Replay replay;

        private Prospect(Replay replay) {
            this.replay = replay;
        }

        /** The acts of an item. */
        public History history(String tag) {
            return replay.history(tag);
        }

        /** The history of an item, or why it can't be one. */
        public Outcome<Timeline> timeline(String tag) {
            return replay.timeline(tag);
        }

        /** The newest hash of every item that was looked at so far, by tag. */
        public SortedMap<String, String> heads() {
            return replay.heads();
        }
    }

    private List<Entry> with(Transaction tx, String tag, List<Draft> drafts) {
        List<Entry> all = new ArrayList<>(entries.entries(tx, tag));
        Stamp nobody = new Stamp("", Instant.MAX, "");
        for (Draft draft : drafts) {
            if (draft.tag().equals(tag)) {
                all.add(new Entry(
                        tag, all.size() + 1, draft.happenedAt(), nobody, draft.act(), draft.corrects(), "", "", ""));
            }
        }
        return all;
    }

    /** Enters a new item; its first entry must follow in the same transaction. */
    public void enter(Transaction tx, String tag, String partType, Optional<String> parent, Instant receivedAt) {
        items.add(
                tx,
                new Item(
                        tag,
                        partType,
                        parent,
                        Optional.empty(),
                        receivedAt,
                        0,
                        Item.Where.GONE,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        false,
                        receivedAt));
    }

    /** Writes one entry at the end of its item's chain. */
    public Entry append(Transaction tx, Draft draft, Stamp stamp) {
        return appendAfter(tx, entries.entries(tx, draft.tag()), draft, stamp);
    }

    /** After these entries; another one meanwhile makes it {@link ChangedMeanwhile}. */
    Entry appendAfter(Transaction tx, List<Entry> before, Draft draft, Stamp stamp) {
        int seq = before.size() + 1;
        String previous =
                before.isEmpty() ? Chain.START : before.get(before.size() - 1).hash();
        String payload = Chain.payload(draft, seq, stamp);
        Entry entry = new Entry(
                draft.tag(),
                seq,
                draft.happenedAt(),
                stamp,
                draft.act(),
                draft.corrects(),
                payload,
                previous,
                Chain.hash(previous, payload));
        entries.add(tx, entry);
        if (draft.act() instanceof Act.UsedUp used) {
            used.boards().stream().distinct().forEach(serial -> entries.addUse(tx, serial, draft.tag()));
        } else if (draft.act() instanceof Act.Received received
                && received.notes().containsKey(Notes.LOT)) {
            entries.addLot(tx, received.notes().get(Notes.LOT), draft.tag());
        }
        return entry;
    }

    /** Tags of items that a label once gave this lot number; which stand is told by their entries. */
    public List<String> ofLot(Transaction tx, String lot) {
        return entries.ofLot(tx, lot);
    }

    /** Brings the copy of what the entries say up to date. */
    public Item refresh(Transaction tx, String tag, Instant changedAt) {
        items.lock(tx, tag);
        Timeline timeline = timeline(tx, tag).fold(good -> good, refusals -> Timeline.EMPTY);
        Item before = items.find(tx, tag).orElseThrow();
        Item after = history(tx, tag).leaves(before, timeline, changedAt);
        items.update(tx, after);
        return after;
    }

    /** The item itself and all whose history refers to it, directly or not. */
    public Set<String> touchedBy(Transaction tx, String tag) {
        Set<String> touched = new LinkedHashSet<>();
        collect(tx, tag, touched);
        return touched;
    }

    private void collect(Transaction tx, String tag, Set<String> touched) {
        if (touched.add(tag)) {
            items.restingOn(tx, tag).forEach(other -> collect(tx, other, touched));
        }
    }

    /** The entry that a command with this key has written. */
    public Optional<Entry> byKey(Transaction tx, String key) {
        return entries.byKey(tx, key);
    }

    /** The newest entries of a person, newest first. */
    public List<Entry> newestOf(Transaction tx, String who, int most) {
        return entries.newestOf(tx, who, most);
    }

    /** The newest releases of heats of single items, newest first. */
    public List<Entry> newestReleases(Transaction tx, int most) {
        return entries.newest(tx, "released", most);
    }

    /** Entries recorded in a period, oldest first. */
    public List<Entry> recordedBetween(Transaction tx, Instant startInclusive, Instant endExclusive) {
        return entries.recordedBetween(tx, startInclusive, endExclusive);
    }

    /** Heats recorded in a period, oldest first, then the bakes begun; without what was taken back or replaced since. */
    public List<Entry> heatsAndBakesBetween(Transaction tx, Instant startInclusive, Instant endExclusive) {
        // Few items are corrected, and only their histories are asked.
        Map<String, Set<Integer>> standing = new HashMap<>();
        entries.correctedSince(tx, startInclusive).forEach(tag -> standing.put(tag, standing(tx, tag)));
        return Stream.of("heated", "bake-started")
                .flatMap(act -> entries.recordedBetween(tx, act, startInclusive, endExclusive).stream())
                .filter(entry -> Optional.ofNullable(standing.get(entry.tag()))
                        .map(seqs -> seqs.contains(entry.seq()))
                        .orElse(true))
                .toList();
    }

    private Set<Integer> standing(Transaction tx, String tag) {
        return history(tx, tag).told().stream().map(told -> told.by().seq()).collect(Collectors.toSet());
    }

    /** What is wrong with an item's chain; empty if every entry is as it was written. */
    public List<ChainFault> verify(Transaction tx, String tag) {
        List<ChainFault> faults = new ArrayList<>();
        String previous = Chain.START;
        int expected = 1;
        for (EntryStore.Row row : entries.rows(tx, tag)) {
            if (row.seq() != expected) {
                faults.add(new ChainFault(tag, row.seq(), ChainFault.Kind.ENTRY_MISSING));
            } else if (!row.previousHash().equals(previous)) {
                faults.add(new ChainFault(tag, row.seq(), ChainFault.Kind.NOT_LINKED));
            }
            if (!Chain.hash(row.previousHash(), row.payload()).equals(row.hash())) {
                faults.add(new ChainFault(tag, row.seq(), ChainFault.Kind.PAYLOAD_CHANGED));
            } else if (!row.agrees()) {
                faults.add(new ChainFault(tag, row.seq(), ChainFault.Kind.COLUMN_CHANGED));
            }
            previous = row.hash();
            expected = row.seq() + 1;
        }
        return faults;
    }
}
