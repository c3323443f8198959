package bagclock.register;

import bagclock.platform.SortKey;
import java.time.Instant;

/** One version of a label's name, as stored. */
record LabelNameRow(
        String labelNumber,
        int version,
        Instant validFrom,
        Instant recordedAt,
        String who,
        String sortKey,
        String partNumber) {

    static LabelNameRow of(LabelName name, Version version) {
        return new LabelNameRow(
                name.labelNumber(),
                version.number(),
                version.validFrom(),
                version.recordedAt(),
                version.who(),
                SortKey.of(name.labelNumber()),
                name.partNumber());
    }

    Versioned<LabelName> fact() {
        return new Versioned<>(
                new LabelName(labelNumber, partNumber), new Version(version, validFrom, recordedAt, who));
    }
}
