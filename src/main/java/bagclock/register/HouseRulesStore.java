package bagclock.register;

import bagclock.core.exposure.SiteRules;
import bagclock.platform.ChangedMeanwhile;
import bagclock.platform.Transaction;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The versions of the site rules. */
final class HouseRulesStore {
    private static final String SELECT = """
            select version, valid_from, recorded_at, who, use_drier_than_60, max_reading_gap_ms, excursion_ms,
                worst_temp_c, worst_rh_percent from site_rules_fact
            """;

    /** One version. */
    record Row(
            int version,
            Instant validFrom,
            Instant recordedAt,
            String who,
            boolean useDrierThan_60,
            long maxReadingGapMs,
            long excursionMs,
            @Nullable Double worstTempC,
            @Nullable Double worstRhPercent) {
        Versioned<HouseRules> fact() {
            SiteRules rules =
                    new SiteRules(useDrierThan_60, Duration.ofMillis(maxReadingGapMs), Duration.ofMillis(excursionMs));
            return new Versioned<>(
                    new HouseRules(rules, Columns.air(worstTempC, worstRhPercent)),
                    new Version(version, validFrom, recordedAt, who));
        }
    }

    void add(Transaction tx, HouseRules rules, Version version) {
        int newest = tx.handle()
                .createQuery("select coalesce(max(version), 0) from site_rules_fact")
                .mapTo(Integer.class)
                .one();
        if (newest != version.number() - 1) {
            throw new ChangedMeanwhile("site rules are at version " + newest);
        }
        tx.handle()
                .createUpdate("""
                        insert into site_rules_fact (version, valid_from, recorded_at, who, use_drier_than_60,
                            max_reading_gap_ms, excursion_ms, worst_temp_c, worst_rh_percent)
                        values (:version, :validFrom, :recordedAt, :who, :useDrier, :gap, :excursion, :temp, :rh)
                        """)
                .bind("version", version.number())
                .bind("validFrom", version.validFrom())
                .bind("recordedAt", version.recordedAt())
                .bind("who", version.who())
                .bind("useDrier", rules.rules().useDrierThan60())
                .bind("gap", rules.rules().maxReadingGap().toMillis())
                .bind("excursion", rules.rules().excursion().toMillis())
                .bind("temp", Columns.temperature(rules.worstCase()))
                .bind("rh", Columns.humidity(rules.worstCase()))
                .execute();
    }

    Optional<Row> at(Transaction tx, Instant moment) {
        return tx.handle()
                .createQuery(SELECT + "where valid_from <= :moment order by valid_from desc, version desc limit 1")
                .bind("moment", moment)
                .mapTo(Row.class)
                .findFirst();
    }

    List<Row> versions(Transaction tx) {
        return tx.handle()
                .createQuery(SELECT + "order by version desc")
                .mapTo(Row.class)
                .list();
    }
}
