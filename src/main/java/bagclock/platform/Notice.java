package bagclock.platform;

/** One row of what changed. */
record Notice(long id, String topic) {}
