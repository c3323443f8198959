package bagclock.parts;

import bagclock.core.Refusal;

/** What can't be taken, and in which field or column it stands. */
record Fault(Column column, Refusal refusal) {}
