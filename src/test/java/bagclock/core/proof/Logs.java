package bagclock.core.proof;

import bagclock.core.proof.Trace.Sample;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Writes logs: {@code 30@60} is a sample of 60 in each of 30 minutes, {@code 5@-} five minutes without samples. */
final class Logs {
    static final Instant START = Instant.parse("2026-03-12T06:00:00Z");
    static final ChartProof.Stay STAY = new ChartProof.Stay(START, START.plus(Duration.ofDays(40)));

    private Logs() {}

    static Trace trace(String name, String log) {
        List<Sample> samples = new ArrayList<>();
        int minute = 0;
        for (String piece : log.split(" ")) {
            String[] parts = piece.split("@");
            for (int i = 0; i < Integer.parseInt(parts[0]); i++) {
                if (!parts[1].equals("-")) {
                    samples.add(new Sample(START.plus(Duration.ofMinutes(minute)), Double.parseDouble(parts[1])));
                }
                minute++;
            }
        }
        return new Trace(name, samples);
    }
}
