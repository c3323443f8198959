package bagclock.ledger;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * One line of a board's ledger.
 *
 * @param seq 1 for the first of its board, without holes
 * @param happenedAt when it was so
 * @param stamp who said so and when
 * @param told what was said, by name
 */
public record BoardEntry(
        String serial,
        int seq,
        Instant happenedAt,
        Stamp stamp,
        Kind kind,
        Map<String, String> told,
        String previousHash,
        String hash) {
    /** What an entry says. */
    public enum Kind {
        /** The board was out of the house: from here back nothing is known of what its parts went through. */
        CAME_BACK,
        JOB_OPENED,
        /** A step of a job that is no heat and no bake. */
        STEP_DONE,
        BAKE_STARTED,
        BAKE_ENDED,
        /** In an oven that this shop does not know: see {@link Act.BakedElsewhere}. */
        BAKED_ELSEWHERE,
        HEATED,
        RELEASED,
        JOB_CLOSED,
        /** An earlier entry did not happen, see {@link BoardNotes#CORRECTS}. */
        TAKEN_BACK
    }

    /** Keeps its own copy. */
    public BoardEntry {
        told = Map.copyOf(told);
    }

    /** What was said under a name. */
    public Optional<String> say(String name) {
        return Optional.ofNullable(told.get(name)).filter(text -> !text.isEmpty());
    }

    /** Whether it says this under a name. */
    public boolean says(String name, String text) {
        return text.equals(told.get(name));
    }

    /** Those that count: neither taken back nor the taking back of another. */
    public static List<BoardEntry> standing(List<BoardEntry> entries) {
        Set<String> gone = entries.stream()
                .filter(entry -> entry.kind() == Kind.TAKEN_BACK)
                .flatMap(entry -> entry.say(BoardNotes.CORRECTS).stream())
                .collect(Collectors.toSet());
        return entries.stream()
                .filter(entry -> entry.kind() != Kind.TAKEN_BACK)
                .filter(entry -> !gone.contains(Integer.toString(entry.seq())))
                .toList();
    }

    /** The key of the number-th entry that an item's ledger got with an entry of a board. */
    public static String itemKey(String serial, int seq, int number) {
        return "board/" + serial + "/" + seq + "/" + number;
    }

    /**
     * What an item's entry belongs to: the board's entry whose key it carries, as {@link #group()} names it; else its own
     * key.
     */
    public static String groupOf(String itemKey) {
        return itemKey.startsWith("board/") ? itemKey.substring(0, itemKey.lastIndexOf('/')) : itemKey;
    }

    /** Names this entry and what it wrote on items as one. */
    public String group() {
        return groupOf(itemKey(serial, seq, 1));
    }

    static Map<String, String> sorted(Map<String, String> told) {
        return new TreeMap<>(told);
    }
}
