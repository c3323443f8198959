package bagclock.ledger;

import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Database;
import bagclock.platform.SortKey;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The items; all but tag, part type, parent and receipt is a copy of what the entries say. */
final class ItemStore {
    private static final String SELECT = """
            select tag, part_type, parent_tag, keeper_tag, received_at, quantity, whereabouts, place_code, board,
                board_location, ended, changed_at from item
            """;

    /** One stored item. */
    record Row(
            String tag,
            String partType,
            @Nullable String parentTag,
            @Nullable String keeperTag,
            Instant receivedAt,
            long quantity,
            String whereabouts,
            @Nullable String placeCode,
            @Nullable String board,
            @Nullable String boardLocation,
            boolean ended,
            Instant changedAt) {
        Item item() {
            return new Item(
                    tag,
                    partType,
                    Optional.ofNullable(parentTag),
                    Optional.ofNullable(keeperTag),
                    receivedAt,
                    quantity,
                    Item.Where.valueOf(whereabouts),
                    Optional.ofNullable(placeCode),
                    Optional.ofNullable(board),
                    Optional.ofNullable(boardLocation),
                    ended,
                    changedAt);
        }
    }

    void add(Transaction tx, Item item) {
        try {
            tx.handle()
                    .createUpdate("""
                            insert into item (tag, sort_key, part_type, parent_tag, received_at, quantity, whereabouts,
                                ended, changed_at)
                            values (:tag, :sortKey, :partType, :parent, :receivedAt, :quantity, :where, :ended,
                                :changedAt)
                            """)
                    .bind("tag", item.tag())
                    .bind("sortKey", SortKey.of(item.tag()))
                    .bind("partType", item.partType())
                    .bind("parent", item.parent().orElse(null))
                    .bind("receivedAt", item.receivedAt())
                    .bind("quantity", item.quantity())
                    .bind("where", item.where().name())
                    .bind("ended", item.ended())
                    .bind("changedAt", item.changedAt())
                    .execute();
        } catch (RuntimeException failure) {
            if (Database.isDuplicateKey(failure)) {
                throw new ChangedMeanwhile("item " + item.tag() + " was received meanwhile");
            }
            throw failure;
        }
    }

    void update(Transaction tx, Item item) {
        tx.handle()
                .createUpdate("""
                        update item set part_type = :partType, keeper_tag = :keeper, received_at = :receivedAt,
                            quantity = :quantity, whereabouts = :where, place_code = :place, board = :board,
                            board_location = :location, ended = :ended, changed_at = :changedAt
                        where tag = :tag
                        """)
                .bind("tag", item.tag())
                .bind("partType", item.partType())
                .bind("keeper", item.keeper().orElse(null))
                .bind("receivedAt", item.receivedAt())
                .bind("quantity", item.quantity())
                .bind("where", item.where().name())
                .bind("place", item.placeCode().orElse(null))
                .bind("board", item.board().orElse(null))
                .bind("location", item.location().orElse(null))
                .bind("ended", item.ended())
                .bind("changedAt", item.changedAt())
                .execute();
    }

    /** Until the transaction ends nobody else brings this item up to date; an update lets new entries be written. */
    void lock(Transaction tx, String tag) {
        tx.handle()
                .createUpdate("update item set changed_at = changed_at where tag = :tag")
                .bind("tag", tag)
                .execute();
    }

    Optional<Item> find(Transaction tx, String tag) {
        return tx.handle()
                .createQuery(SELECT + "where tag = :tag")
                .bind("tag", tag)
                .mapTo(Row.class)
                .findFirst()
                .map(Row::item);
    }

    /** Children and keepers: the items whose history refers to this one's. */
    List<String> restingOn(Transaction tx, String tag) {
        return tx.handle().createQuery("""
                        select tag from item where parent_tag = :tag
                        union select keeper_tag from item where tag = :tag and keeper_tag is not null
                        """).bind("tag", tag).mapTo(String.class).list();
    }

    List<Item> onBoard(Transaction tx, String board) {
        return tx.handle()
                .createQuery(SELECT + "where board = :board and not ended order by board_location nulls last, sort_key")
                .bind("board", board)
                .mapTo(Row.class)
                .map(Row::item)
                .list();
    }

    List<String> tags(Transaction tx) {
        return tx.handle()
                .createQuery("select tag from item order by sort_key, tag")
                .mapTo(String.class)
                .list();
    }

    /** The next number; the row's lock makes others wait. */
    long drawNumber(Transaction tx) {
        tx.handle()
                .createUpdate("update tag_counter set last_number = last_number + 1")
                .execute();
        return tx.handle()
                .createQuery("select last_number from tag_counter")
                .mapTo(Long.class)
                .one();
    }
}
