package bagclock.readings;

import java.time.Instant;

/** A file of a logger, as it was uploaded. */
public record LoggerFile(
        String id,
        String logger,
        String placeCode,
        String fileName,
        String sha256,
        long sizeBytes,
        Instant uploadedAt,
        String who) {}
