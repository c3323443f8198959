package bagclock.boards;

/** A value that goes with a form. */
public record Hidden(String name, String value) {}
