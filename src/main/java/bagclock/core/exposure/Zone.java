package bagclock.core.exposure;

/** A place with air of its own: a bench, a store room, a logged cabinet. */
public record Zone(String name) {}
