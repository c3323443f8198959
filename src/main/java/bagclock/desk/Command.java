package bagclock.desk;

import bagclock.core.exposure.HumidityCard;
import bagclock.core.heat.HeatPlan;
import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Something that a person tells the desk. Tags name items, place codes name zones, cabinets and ovens. */
public sealed interface Command {
    /** Who, when, and the key that makes a second sending harmless. */
    Header header();

    /** The item that it is about. */
    String tag();

    /**
     * What every command carries.
     *
     * @param who id of the person
     * @param happenedAt may lie before events already recorded
     * @param key idempotency key, unique to one sending, at most 100 characters
     */
    record Header(String who, Instant happenedAt, String key) {
        /** Cuts the time to the millisecond. */
        public Header {
            happenedAt = happenedAt.truncatedTo(ChronoUnit.MILLIS);
        }
    }

    /**
     * A carrier comes into the house.
     *
     * @param tag empty text: the next free one is taken
     * @param carrier name of the carrier; empty: the part type's usual one
     * @param label what its label said, by the names of {@link bagclock.ledger.Notes}
     */
    record Receive(
            Header header,
            String tag,
            String partNumber,
            long quantity,
            Optional<String> carrier,
            Origin origin,
            Map<String, String> label)
            implements Command {
        /** Keeps its own copy. */
        public Receive {
            label = Map.copyOf(label);
        }

        /** Without a label that was read. */
        public Receive(
                Header header, String tag, String partNumber, long quantity, Optional<String> carrier, Origin origin) {
            this(header, tag, partNumber, quantity, carrier, origin, Map.of());
        }
    }

    /**
     * A bag is opened. The photograph is of card and label; its SHA-256 in hexadecimal.
     *
     * @param whyAnyway the reason, where the air is above the site's limit
     */
    record Open(
            Header header,
            String tag,
            Optional<HumidityCard> card,
            Optional<Instant> cardReadAt,
            Optional<Boolean> sound,
            String placeCode,
            Optional<String> photoSha256,
            Optional<String> whyAnyway)
            implements Command {
        /** Cuts the time to the millisecond. */
        public Open {
            cardReadAt = cardReadAt.map(at -> at.truncatedTo(ChronoUnit.MILLIS));
        }

        /** Without a reason to open it anyway. */
        public Open(
                Header header,
                String tag,
                Optional<HumidityCard> card,
                Optional<Instant> cardReadAt,
                Optional<Boolean> sound,
                String placeCode,
                Optional<String> photoSha256) {
            this(header, tag, card, cardReadAt, sound, placeCode, photoSha256, Optional.empty());
        }
    }

    /** To a zone or a cabinet; a closed bag with all that is in it. */
    record Move(Header header, String tag, String placeCode) implements Command {}

    /** The bag is closed by the site. */
    record Reseal(Header header, String tag, boolean freshDesiccant, boolean freshCard) implements Command {}

    /**
     * Parts are taken out into a child with its own tag.
     *
     * @param childTag empty text: the next free one is taken
     */
    record Split(Header header, String tag, long quantity, String childTag) implements Command {}

    /** Other items are put into this one, wholly. */
    record Join(Header header, String tag, List<String> others) implements Command {
        /** Keeps its own copy. */
        public Join {
            others = List.copyOf(others);
        }
    }

    /** Into an oven; {@code humidityShown} empty takes what the oven was shown to hold. */
    record StartBake(
            Header header, String tag, String ovenCode, Celsius setPoint, Optional<RelativeHumidity> humidityShown)
            implements Command {}

    /**
     * Out of the oven; without a time at temperature door to door less the oven's declared heat-up counts.
     *
     * @param chartSha256 of the oven's chart that the time was read from, in hexadecimal; empty: it was told
     */
    record EndBake(Header header, String tag, Optional<Duration> atTemperature, Optional<String> chartSha256)
            implements Command {
        /** Without a chart. */
        public EndBake(Header header, String tag, Optional<Duration> atTemperature) {
            this(header, tag, atTemperature, Optional.empty());
        }
    }

    /**
     * It was baked in an oven that this shop does not know; it ended when the command says.
     *
     * @param oven whose it was, in free words
     * @param time at temperature as it was told
     */
    record BakedElsewhere(Header header, String tag, String oven, Celsius temperature, Duration time)
            implements Command {}

    /** Soldered onto a board; {@code placeCode} empty: where it last was on the floor. */
    record Mount(Header header, String tag, String boardSerial, String location, Optional<String> placeCode)
            implements Command {}

    /**
     * A part of a board goes on under a tag of its own: with the history of the item that was used up for the board, or
     * where none is known with what it went through on the board.
     *
     * @param tag of the part from now on
     * @param partNumber counts where no item is known
     * @param source where it came from and what it went through on the board
     */
    record Recover(
            Header header, String tag, String partNumber, BoardSource source, String boardSerial, String location)
            implements Command {}

    /** Off the board. */
    record Remove(Header header, String tag, Optional<String> placeCode) implements Command {}

    /** Aqueous wash, flood. */
    record Wet(Header header, String tag) implements Command {}

    /** Into or onto another known carrier. */
    record ChangeCarrier(Header header, String tag, String carrier) implements Command {}

    /** The limit of what it is in or on, such as a board; empty: unknown. */
    record LimitCarrier(Header header, String tag, Optional<Celsius> limit) implements Command {}

    /** A heat was done; the answer for the plan is kept beside it. */
    record Heat(Header header, String tag, HeatPlan plan, Optional<Celsius> measuredPeak) implements Command {}

    /** An engineer releases one heat of the item, which the answer for the plan bars; the answer is kept beside it. */
    record Release(Header header, String tag, HeatPlan plan, String why) implements Command {}

    /** Parts were used. */
    record UseUp(Header header, String tag, long quantity, String workOrder, List<String> boardSerials)
            implements Command {
        /** Keeps its own copy. */
        public UseUp {
            boardSerials = List.copyOf(boardSerials);
        }
    }

    /** What happened before is not known. */
    record EnterUnknownExposure(Header header, String tag) implements Command {}

    /** An entry is replaced by what the other command says, at its time. */
    record Correct(Header header, String tag, int seq, Command replacement) implements Command {}

    /** An entry did not happen; also takes back a correction. */
    record TakeBack(Header header, String tag, int seq) implements Command {}

    /** The newest standing entry of this person did not happen. */
    record TakeBackLast(Header header) implements Command {
        @Override
        public String tag() {
            return "";
        }
    }
}
