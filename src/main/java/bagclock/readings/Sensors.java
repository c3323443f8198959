package bagclock.readings;

import bagclock.platform.Secret;
import bagclock.platform.Transaction;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Sensors that send readings by themselves. A token is shown once; only its hash is kept. */
public final class Sensors {
    private final SensorStore store = new SensorStore();

    /** Lets a sensor in for some places; gives its token. */
    public String add(Transaction tx, String name, List<String> places, Source source) {
        String token = Secret.token();
        SensorToken sensor = new SensorToken(
                UUID.randomUUID().toString(), name, String.join(" ", places), source.recordedAt(), source.who(), null);
        store.add(tx, sensor, Secret.fingerprint(token));
        return token;
    }

    /** Every sensor that was ever let in, by name. */
    public List<SensorToken> all(Transaction tx) {
        return store.all(tx);
    }

    /** The sensor that has this token and was not shut out. */
    public Optional<SensorToken> byToken(Transaction tx, String token) {
        return store.byHash(tx, Secret.fingerprint(token));
    }

    /** Shuts a sensor out; what it sent stays. */
    public void revoke(Transaction tx, String id, Instant moment) {
        store.revoke(tx, id, moment);
    }
}
