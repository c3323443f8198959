package bagclock.demo;

import bagclock.desk.Command;
import java.time.Instant;

/** A command and when it was sent. */
record Telling(Instant recordedAt, Command command) {}
