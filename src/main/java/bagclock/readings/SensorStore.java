package bagclock.readings;

import bagclock.platform.SortKey;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Sensors that were let in. */
final class SensorStore {
    private static final String SELECT =
            "select id, name, place_codes, made_at, made_by, revoked_at from sensor_token ";

    void add(Transaction tx, SensorToken sensor, String tokenHash) {
        tx.handle()
                .createUpdate("""
                        insert into sensor_token (id, name, sort_key, token_hash, place_codes, made_at, made_by)
                        values (:id, :name, :sortKey, :hash, :places, :madeAt, :madeBy)
                        """)
                .bind("id", sensor.id())
                .bind("name", sensor.name())
                .bind("sortKey", SortKey.of(sensor.name()))
                .bind("hash", tokenHash)
                .bind("places", sensor.placeCodes())
                .bind("madeAt", sensor.madeAt())
                .bind("madeBy", sensor.madeBy())
                .execute();
    }

    List<SensorToken> all(Transaction tx) {
        return tx.handle()
                .createQuery(SELECT + "order by sort_key, id")
                .mapTo(SensorToken.class)
                .list();
    }

    Optional<SensorToken> byHash(Transaction tx, String tokenHash) {
        return tx.handle()
                .createQuery(SELECT + "where token_hash = :hash and revoked_at is null")
                .bind("hash", tokenHash)
                .mapTo(SensorToken.class)
                .findFirst();
    }

    void revoke(Transaction tx, String id, Instant moment) {
        tx.handle()
                .createUpdate("update sensor_token set revoked_at = :moment where id = :id and revoked_at is null")
                .bind("id", id)
                .bind("moment", moment)
                .execute();
    }
}
