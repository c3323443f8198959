package bagclock.scan;

/**
 * One thing that was read.
 *
 * @param from where on the label: a data identifier, or the name of a form
 */
public record Found(Fact fact, String value, String from) {}
