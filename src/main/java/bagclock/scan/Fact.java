package bagclock.scan;

/** What a label can say. */
public enum Fact {
    /** The maker's part number. */
    PART_NUMBER,
    /** A distributor's or maker's order code. */
    ORDER_CODE,
    /** The number that a customer gave the part. */
    CUSTOMER_CODE,
    /** The maker's name or short name. */
    MAKER,
    /** Revision of the part. */
    REVISION,
    /** Whole pieces. */
    QUANTITY,
    /** Lot or batch, with its leading zeros. */
    LOT,
    /** Date code as printed. */
    DATE_CODE,
    /** What the date code says: a week such as {@code 2014-W52}, or a date of ISO 8601. */
    DATED,
    /** Date of ISO 8601. */
    MADE_ON,
    /** Date of ISO 8601. */
    EXPIRES_ON,
    /** Country of origin, ISO 3166. */
    COUNTRY,
    /** Moisture sensitivity level, or {@link Reading#NOT_SENSITIVE}. */
    LEVEL,
    /** Peak body temperature (C). */
    PEAK,
    /** Floor life as printed. */
    LIFE,
    /** When the bag was sealed: date of ISO 8601. */
    SEALED_ON,
    /** Restricted substances, as printed. */
    SUBSTANCES,
    /** Number of the package. */
    PACKAGE
}
