package bagclock.people;

import java.time.Duration;

/** How a person proves who it is, and how long a session begun so lives without use. */
enum SecretKind {
    PASSWORD(Duration.ofHours(12)),
    /** With a badge, at a terminal that several people share. */
    PIN(Duration.ofMinutes(30));

    private final Duration idleFor;

    SecretKind(Duration idleFor) {
        this.idleFor = idleFor;
    }

    Duration idleFor() {
        return idleFor;
    }
}
