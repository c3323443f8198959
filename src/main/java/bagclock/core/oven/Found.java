package bagclock.core.oven;

/** What an engine found, and what it knows about it. */
public record Found(Sketch sketch, Score score, Bounds bounds) {}
