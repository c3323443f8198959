package bagclock.core;

/** Why a request or a command was refused; the words stand in the message bundle under {@code refusal.<name>}. */
public enum Reason {
    /** Parts: event, its time, the time of the event before it. */
    TIME_GOES_BACK,
    /** Parts: event, its time, the moment asked about. */
    EVENT_AFTER_MOMENT,
    /** Parts: event. A dry pack is closed: only opening, a wetting or a note of unknown exposure may follow. */
    BAG_IS_CLOSED,
    /** Parts: event. The part is in an oven: only the end of the bake may follow. */
    PART_IS_IN_OVEN,
    /** Parts: event. An opening where no bag is closed. */
    NO_CLOSED_BAG,
    /** Parts: event. The end of a bake that did not begin. */
    NO_BAKE_RUNNING,
    /** Parts: event. "sealed" elsewhere than first or straight after a bake that counted. */
    SEALED_ONLY_WHEN_DRY,
    /** Parts: hours claimed at temperature, hours of the stay in the oven. */
    MORE_HOURS_THAN_STAY,
    /** Parts: time of reading the card, time of opening. */
    CARD_READ_BEFORE_OPENING,
    /** Parts: time of reading the card, the moment asked about. */
    CARD_READ_AFTER_MOMENT
}
