package bagclock.register;

import bagclock.platform.SortKey;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** One version of a carrier, as stored. */
record CarrierRow(
        String name,
        int version,
        Instant validFrom,
        Instant recordedAt,
        String who,
        String sortKey,
        String carrierKind,
        @Nullable Double carrierC) {

    static CarrierRow of(CarrierKind carrier, Version version) {
        return new CarrierRow(
                carrier.name(),
                version.number(),
                version.validFrom(),
                version.recordedAt(),
                version.who(),
                SortKey.of(carrier.name()),
                Columns.kind(carrier.limit()),
                Columns.degrees(carrier.limit().borne()));
    }

    Versioned<CarrierKind> fact() {
        return new Versioned<>(
                new CarrierKind(name, Columns.carrier(carrierKind, carrierC)),
                new Version(version, validFrom, recordedAt, who));
    }
}
