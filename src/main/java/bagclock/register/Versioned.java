package bagclock.register;

/** A fact with its version. */
public record Versioned<T>(T fact, Version version) {}
