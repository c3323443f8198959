package bagclock.desk;

import bagclock.ledger.Item;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;

/**
 * Which items, in which order.
 *
 * @param text part of a tag or part number, without case; empty for all
 * @param where kinds of place; empty for all but those gone
 * @param placeCode in this place only
 * @param within floor life ends, or ended, within this time; zero: has ended
 * @param page 0 for the first
 * @param pageSize 1 to 500
 */
public record ItemQuery(
        String text,
        Set<Item.Where> where,
        Optional<String> placeCode,
        Optional<Duration> within,
        Sort sort,
        boolean descending,
        int page,
        int pageSize) {
    private static final int LARGEST_PAGE = 500;

    /** What the list is sorted by; items without such a value come last. */
    public enum Sort {
        TAG,
        PART_TYPE,
        PLACE,
        ENDS_AT,
        CHANGED_AT
    }

    /** Every item that is still there, by tag. */
    public static final ItemQuery OPEN =
            new ItemQuery("", Set.of(), Optional.empty(), Optional.empty(), Sort.TAG, false, 0, 50);

    /** Refuses a page below 0 and a size outside 1 to 500. */
    public ItemQuery {
        where = Set.copyOf(where);
        if (page < 0 || pageSize < 1 || pageSize > LARGEST_PAGE) {
            throw new IllegalArgumentException("no such page: " + page + " of " + pageSize);
        }
    }

    /** Those whose floor life ends within a time, the first to end first. */
    public static ItemQuery expiringWithin(Duration time) {
        return new ItemQuery("", Set.of(), Optional.empty(), Optional.of(time), Sort.ENDS_AT, false, 0, 50);
    }

    /** Those that are in places of one kind. */
    public ItemQuery in(Item.Where... kinds) {
        return new ItemQuery(text, Set.of(kinds), placeCode, within, sort, descending, page, pageSize);
    }

    /** Those that are at a place. */
    public ItemQuery at(String code) {
        return new ItemQuery(text, where, Optional.of(code), within, sort, descending, page, pageSize);
    }

    /** Those whose tag or part number holds a text. */
    public ItemQuery with(String part) {
        return new ItemQuery(part, where, placeCode, within, sort, descending, page, pageSize);
    }

    /** Sorted otherwise. */
    public ItemQuery by(Sort other, boolean down) {
        return new ItemQuery(text, where, placeCode, within, other, down, page, pageSize);
    }

    /** Another page. */
    public ItemQuery page(int number, int size) {
        return new ItemQuery(text, where, placeCode, within, sort, descending, number, size);
    }
}
