package bagclock.ledger;

import bagclock.platform.Transaction;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The ledger of all boards: chains of entries that are only ever added to. */
public final class BoardLedger {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final BoardEntryStore entries = new BoardEntryStore();

    /** What is to be written. */
    public record Draft(String serial, Instant happenedAt, BoardEntry.Kind kind, Map<String, String> told) {}

    /** Everything that was written of a board, oldest first. */
    public List<BoardEntry> entries(Transaction tx, String serial) {
        return entries.of(tx, serial);
    }

    /** Every entry of one kind, newest first. */
    public List<BoardEntry> newest(Transaction tx, BoardEntry.Kind kind, int most) {
        return entries.newest(tx, kind, most);
    }

    /** Entries of some kinds recorded from a moment until before another, oldest first. */
    public List<BoardEntry> recordedBetween(
            Transaction tx, List<BoardEntry.Kind> kinds, Instant startInclusive, Instant endExclusive) {
        return entries.recordedBetween(tx, kinds, startInclusive, endExclusive);
    }

    /** The entry that was written with a key. */
    public Optional<BoardEntry> byKey(Transaction tx, String key) {
        return entries.byKey(tx, key);
    }

    /**
     * Writes one entry after the newest that the writer saw.
     *
     * @throws bagclock.platform.ChangedMeanwhile when another one stands there
     */
    public BoardEntry append(Transaction tx, List<BoardEntry> before, Draft draft, Stamp stamp) {
        int seq = before.size() + 1;
        String previous =
                before.isEmpty() ? Chain.START : before.get(before.size() - 1).hash();
        ObjectNode json = JSON.createObjectNode();
        json.put("serial", draft.serial())
                .put("seq", seq)
                .put("happenedAt", draft.happenedAt().toString())
                .put("recordedAt", stamp.recordedAt().toString())
                .put("who", stamp.who())
                .put("key", stamp.key())
                .put("kind", draft.kind().name());
        ObjectNode told = json.putObject("told");
        BoardEntry.sorted(draft.told()).forEach(told::put);
        String payload = json.toString();
        BoardEntry entry = new BoardEntry(
                draft.serial(),
                seq,
                draft.happenedAt(),
                stamp,
                draft.kind(),
                draft.told(),
                previous,
                Chain.hash(previous, payload));
        entries.add(tx, entry, payload);
        return entry;
    }

    static Map<String, String> told(String payload) {
        Map<String, String> told = new HashMap<>();
        JsonNode node = Chain.read(payload).path("told");
        node.fieldNames()
                .forEachRemaining(name -> told.put(name, node.path(name).asText()));
        return told;
    }

    /** Whether a board's chain is as it was written. */
    public boolean isWhole(Transaction tx, String serial) {
        return entries.isWhole(tx, serial);
    }
}
