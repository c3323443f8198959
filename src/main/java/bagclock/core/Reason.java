package bagclock.core;

/** Why a request or a command was refused; the words stand in the message bundle under {@code refusal.<name>}. */
public enum Reason {
    /** Parts: event, its time, the time of the event before it. */
    TIME_GOES_BACK,
    /** Parts: event, its time, the moment asked about. */
    EVENT_AFTER_MOMENT,
    /** Parts: event. A dry pack is closed: only opening, a wetting or a note of unknown exposure may follow. */
    BAG_IS_CLOSED,
    /** Parts: the time told. A closed bag was to be put at a place, but then it was open. */
    BAG_WAS_OPEN,
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
    CARD_READ_AFTER_MOMENT,
    /** Parts: the time told, the time now. */
    HAPPENED_IN_FUTURE,
    /** Parts: the time told, the time of the receipt or split. */
    BEFORE_RECEIPT,
    /** Parts: tag. */
    ITEM_UNKNOWN,
    /** Parts: tag. */
    TAG_TAKEN,
    /** Parts: tag. Letters, digits, point, hyphen and underscore only, at most 40. */
    TAG_MALFORMED,
    /** Parts: tag. Nothing of it is left, or it was put into another item. */
    ITEM_ENDED,
    /** Parts: part number. */
    PART_TYPE_UNKNOWN,
    /** Parts: code. */
    PLACE_UNKNOWN,
    /** Parts: code. A bench or room is asked for. */
    NOT_A_ZONE,
    /** Parts: code. An oven is asked for. */
    NOT_AN_OVEN,
    /** Parts: code. Into an oven by starting a bake, not by moving. */
    OVEN_NEEDS_A_BAKE,
    /** Parts: set-point, lowest and highest temperature of the oven. */
    SET_POINT_OUT_OF_RANGE,
    /** Parts: code, positions. */
    OVEN_FULL,
    /** Parts: name. */
    CARRIER_UNKNOWN,
    /** Parts: quantity. */
    QUANTITY_NOT_POSITIVE,
    /** Parts: quantity asked for, quantity there. */
    QUANTITY_TOO_LARGE,
    /** Parts: name of the field. */
    TEXT_MISSING,
    /** Parts: tag, its part number, the part number asked for. */
    OTHER_PART_TYPE,
    /** Parts: tag. Other items to join are asked for, each once, none the item itself. */
    JOIN_NEEDS_OTHERS,
    /** Parts: tag. Only a single part is mounted; split it off first. */
    MOUNT_ONE_PART,
    /** Parts: tag. */
    ALREADY_MOUNTED,
    /** Parts: tag. */
    NOT_MOUNTED,
    /** Parts: tag, seq. */
    ENTRY_UNKNOWN,
    /** Parts: tag, seq. Taken back or replaced already. */
    ENTRY_CORRECTED,
    /** Parts: what it is. A correction, a split or a join can be taken back, not replaced. */
    ONLY_TAKEN_BACK,
    /** Parts: tag of the item that would be without its beginning. */
    OTHERS_REST_ON_IT,
    /** Nothing of this person is left to take back. */
    NOTHING_TO_TAKE_BACK,
    /** The key was used for another command. */
    KEY_USED_OTHERWISE,
    /** Parts: zone. */
    ZONE_UNKNOWN,
    /** Parts: text. */
    TIME_UNREADABLE,
    /** Parts: text. */
    NUMBER_UNREADABLE,
    /** Parts: text, least, most. */
    NUMBER_OUT_OF_RANGE,
    /** Parts: time. Another reading of this time has other values. */
    READING_DIFFERS,
    /** Parts: the time of the reading. A clock that lost its date begins in 1970 or 1980. */
    READING_TOO_OLD,
    /** Parts: column. */
    COLUMN_MISSING,
    /** The file can't be read from here on. */
    FILE_UNREADABLE,
    /** Parts: column. */
    COLUMN_TWICE,
    /** Parts: fields on the line, columns of the first line. */
    LINE_OF_OTHER_LENGTH,
    /** Parts: the name, the line it stood on first. */
    NAMED_TWICE,
    /** Parts: longest length. */
    TEXT_TOO_LONG,
    /** A line break or another character that can't be printed. */
    TEXT_UNPRINTABLE,
    /** Parts: text, the words that are known. */
    WORD_UNKNOWN,
    /** Parts: text. A whole number is asked for. */
    NUMBER_NOT_WHOLE,
    /** Parts: text. A comma before three digits: thousands, or a decimal comma? */
    COMMA_UNCLEAR,
    /** Parts: text, digits after the point. */
    TOO_MANY_DECIMALS,
    /** Parts: text, how an entry looks. */
    ENTRY_UNREADABLE,
    /** Parts: the most that are kept. */
    TOO_MANY_ENTRIES,
    /** Parts: peak. Two ratings of one peak. */
    RATING_TWICE,
    /** Of several ratings one has no peak. */
    RATING_WITHOUT_PEAK,
    /** Parts: temperature of the bake, the part's own limit. */
    BAKE_ABOVE_OWN_LIMIT,
    /** Parts: temperature of the bake, the highest rated peak. */
    BAKE_ABOVE_PEAK,
    /** Parts: temperature, humidity. Two lives in one cell of a maker's table. */
    CELL_TWICE,
    /** Parts: table, row, column. */
    CELL_UNKNOWN,
    /** Parts: text. */
    CELL_VALUE_UNREADABLE,
    /** Parts: text, the edition that counts here. */
    EDITION_DIFFERS,
    /** Parts: text. */
    DATE_UNREADABLE,
    /** Parts: tag. No oven reaches the temperature of an allowed bake, dry enough. */
    LOT_FITS_NO_OVEN,
    /** Parts: tag. It has more positions than any oven that it may go to. */
    LOT_TOO_LARGE,
    /** Parts: tag. The ovens that can take it are never free, attended and in service for long enough. */
    LOT_HAS_NO_TIME,
    /** Parts: tag. */
    LOT_WITHOUT_POSITIONS,
    /** Parts: code. */
    OVEN_WITHOUT_POSITIONS,
    /** Parts: code. Two times out of service overlap. */
    SPANS_OVERLAP,
    /** Parts: tag, time it is needed by. */
    DUE_IS_PAST,
    /** Parts: serial number. */
    BOARD_UNKNOWN,
    /** Parts: serial number, who wrote last, when. The page that was acted on shows an older state. */
    BOARD_CHANGED_MEANWHILE,
    /** Parts: the time told, the time of the board's last entry. */
    BEFORE_LAST_ENTRY,
    /** Parts: when the bake would have begun, when something else of the board was told that it can't have been in an oven. */
    BAKE_OVERLAPS,
    /** Parts: location, board type. */
    LOCATION_UNKNOWN,
    /** Parts: location. A second list line names it, with another part. */
    LOCATION_TWICE,
    /** Parts: text. A range or a list of reference designators is asked for. */
    DESIGNATORS_UNREADABLE,
    /** Parts: quantity, number of reference designators. */
    QUANTITY_DIFFERS,
    /** The answer is not one that a release is for: it mends itself, or another way out is at hand. */
    RELEASE_NOT_POSSIBLE
}
