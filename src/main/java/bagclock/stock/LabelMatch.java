package bagclock.stock;

import bagclock.register.PartType;
import bagclock.scan.Fact;
import bagclock.scan.Reading;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A label that was read, and the part type that it means.
 *
 * @param type empty if the house does not know the label's number
 * @param before tag of the item that came in with this package's number; empty for none
 */
record LabelMatch(Reading reading, Optional<PartType> type, String before) {
    /** The number by which the house can know the part: the maker's, else an order code, else the customer's. */
    static Optional<String> number(Reading reading) {
        return Stream.of(Fact.PART_NUMBER, Fact.ORDER_CODE, Fact.CUSTOMER_CODE)
                .map(reading::only)
                .flatMap(Optional::stream)
                .findFirst();
    }
}
