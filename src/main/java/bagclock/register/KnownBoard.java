package bagclock.register;

/**
 * One board.
 *
 * @param fromField it was out of the house: what its parts went through is not known
 */
public record KnownBoard(String serial, String type, boolean fromField) {}
