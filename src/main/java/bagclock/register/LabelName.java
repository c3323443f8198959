package bagclock.register;

/**
 * What a label calls a part type, as a person decided it.
 *
 * @param labelNumber the maker's or distributor's number, as read
 * @param partNumber the house's number
 */
public record LabelName(String labelNumber, String partNumber) {
    /** As long as a number may be. */
    public static final int LONGEST = 80;
}
