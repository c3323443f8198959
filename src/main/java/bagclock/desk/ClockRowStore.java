package bagclock.desk;

import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;

/** The clock rows. */
final class ClockRowStore {
    private static final String COLUMNS =
            "tag, rating, counting, level, peak_c, state, zone, used_share, total_h, used_h, worked_out_at, ends_at";

    /** Puts these rows in place of those that the item had. */
    void replace(Transaction tx, String tag, List<ClockRow> rows) {
        tx.handle()
                .createUpdate("delete from item_clock where tag = :tag")
                .bind("tag", tag)
                .execute();
        for (ClockRow row : rows) {
            tx.handle()
                    .createUpdate("insert into item_clock (" + COLUMNS + ") values (:tag, :rating, :counting, :level,"
                            + " :peakC, :state, :zone, :usedShare, :totalH, :usedH, :workedOutAt, :endsAt)")
                    .bind("tag", row.tag())
                    .bind("rating", row.rating())
                    .bind("counting", row.counting())
                    .bind("level", row.level())
                    .bind("peakC", row.peakC())
                    .bind("state", row.state())
                    .bind("zone", row.zone())
                    .bind("usedShare", row.usedShare())
                    .bind("totalH", row.totalH())
                    .bind("usedH", row.usedH())
                    .bind("workedOutAt", row.workedOutAt())
                    .bindByType("endsAt", row.endsAt(), Instant.class)
                    .execute();
        }
    }

    List<ClockRow> of(Transaction tx, String tag) {
        return tx.handle()
                .createQuery("select " + COLUMNS + " from item_clock where tag = :tag order by rating")
                .bind("tag", tag)
                .mapTo(ClockRow.class)
                .list();
    }

    /** Tags of items in a zone whose clock depends on its readings. */
    List<String> tagsIn(Transaction tx, String zone) {
        return tx.handle()
                .createQuery("select distinct tag from item_clock where zone = :zone order by tag")
                .bind("zone", zone)
                .mapTo(String.class)
                .list();
    }

    /** Tags of items of a part type that are not gone. */
    List<String> tagsOfType(Transaction tx, String partNumber) {
        return tx.handle()
                .createQuery("select tag from item where part_type = :number and not ended order by tag")
                .bind("number", partNumber)
                .mapTo(String.class)
                .list();
    }

    /** Tags of every item that is not gone. */
    List<String> openTags(Transaction tx) {
        return tx.handle()
                .createQuery("select tag from item where not ended order by tag")
                .mapTo(String.class)
                .list();
    }
}
