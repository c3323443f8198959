package bagclock.ovens;

import bagclock.platform.Database;
import java.time.Instant;

/** The site's own band for charts. Lines are only added, so that a proof is weighed as it was when it was kept. */
final class BandStore {
    private final Database database;

    BandStore(Database database) {
        this.database = database;
    }

    /** What counted at a moment. */
    BandRule at(Instant moment) {
        return database.read(tx -> tx.handle()
                .createQuery("select least_above_c, most_above_c from oven_band_rule"
                        + " where recorded_at <= :moment order by number desc limit 1")
                .bind("moment", moment)
                .mapTo(BandRule.class)
                .findFirst()
                .orElse(BandRule.TABLE));
    }

    void keep(BandRule rule, String who, Instant now) {
        database.withTransaction(tx -> tx.handle()
                .createUpdate("""
                        insert into oven_band_rule (number, recorded_at, who, least_above_c, most_above_c)
                        values ((select coalesce(max(number), 0) + 1 from oven_band_rule), :now, :who,
                            :leastAboveC, :mostAboveC)
                        """)
                .bind("now", now)
                .bind("who", who)
                .bind("leastAboveC", rule.leastAboveC())
                .bindByType("mostAboveC", rule.mostAboveC(), Double.class)
                .execute());
    }
}
