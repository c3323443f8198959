package bagclock.stock;

/** Names of fields that several places read. */
final class FieldNames {
    static final String BOARDS = "boards";
    static final String CARRIER = "carrier";
    static final String CHILD = "child";
    static final String CODE = "code";
    static final String FOUND = "found";
    static final String FROM = "from";
    static final String HELD = "held";
    static final String KEY = "key";
    static final String MONTHS = "months";
    static final String PLACE = "place";
    static final String QUANTITY = "quantity";
    static final String READ_AT = "readAt";
    static final String RECEIVED = "received";
    static final String SEALED_AT = "sealedAt";
    static final String TAG = "tag";
    static final String TAGS = "tags";
    static final String TYPE = "type";

    private FieldNames() {}
}
