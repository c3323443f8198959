package bagclock.register;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerBake;
import bagclock.core.standard.MakerDerating;
import bagclock.core.standard.Rating;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The lists of a part type, each in one column: ratings as {@code 2@240 3@260}, the maker's tables as JSON. */
final class MakerTexts {
    private static final ObjectMapper JSON = JsonMapper.builder().build();
    private static final int FORMAT = 1;

    private MakerTexts() {}

    /** A list with the number of its format. */
    record Listed<T>(int format, List<T> rows) {}

    /** One bake. */
    record BakeLine(
            double temperatureC,
            long timeMs,
            @Nullable Double maxRhPercent,
            @Nullable Double carrierMaxC) {}

    /** One cell of a derating table. */
    record CellLine(double temperatureC, double rhPercent, long lifeMs) {}

    static String ratings(List<Rating> ratings) {
        return ratings.stream()
                .map(rating -> rating.level().map(Level::code).orElse("") + "@"
                        + rating.peak()
                                .map(peak -> Double.toString(peak.degrees()))
                                .orElse(""))
                .collect(Collectors.joining(" "));
    }

    static List<Rating> ratings(String text) {
        return Arrays.stream(text.split(" ", -1)).map(MakerTexts::rating).toList();
    }

    private static Rating rating(String text) {
        int at = text.indexOf('@');
        String peak = text.substring(at + 1);
        return new Rating(
                Level.parse(text.substring(0, at)),
                peak.isEmpty() ? Optional.empty() : Optional.of(new Celsius(Double.parseDouble(peak))));
    }

    static String bakes(List<MakerBake> bakes) {
        return write(new Listed<>(
                FORMAT,
                bakes.stream()
                        .map(bake -> new BakeLine(
                                bake.temperature().degrees(),
                                bake.time().toMillis(),
                                bake.maxHumidity()
                                        .map(RelativeHumidity::percent)
                                        .orElse(null),
                                Columns.degrees(bake.carrierLimit())))
                        .toList()));
    }

    static List<MakerBake> bakes(String text) {
        return read(text, new TypeReference<Listed<BakeLine>>() {}).rows().stream()
                .map(line -> new MakerBake(
                        new Celsius(line.temperatureC()),
                        Duration.ofMillis(line.timeMs()),
                        Optional.ofNullable(line.maxRhPercent()).map(RelativeHumidity::new),
                        Optional.ofNullable(line.carrierMaxC()).map(Celsius::new)))
                .toList();
    }

    static String derating(Optional<MakerDerating> table) {
        return write(new Listed<>(
                FORMAT,
                table.map(MakerDerating::cells).orElse(List.of()).stream()
                        .map(cell -> new CellLine(
                                cell.temperature().degrees(),
                                cell.humidity().percent(),
                                cell.life().toMillis()))
                        .toList()));
    }

    static Optional<MakerDerating> derating(String text) {
        List<MakerDerating.Cell> cells = read(text, new TypeReference<Listed<CellLine>>() {}).rows().stream()
                .map(line -> new MakerDerating.Cell(
                        new Celsius(line.temperatureC()),
                        new RelativeHumidity(line.rhPercent()),
                        Duration.ofMillis(line.lifeMs())))
                .toList();
        return cells.isEmpty() ? Optional.empty() : Optional.of(new MakerDerating(cells));
    }

    private static String write(Object value) {
        try {
            return JSON.writeValueAsString(value);
        } catch (JsonProcessingException failure) {
            throw new IllegalArgumentException("can't be written", failure);
        }
    }

    private static <T> T read(String text, TypeReference<T> type) {
        try {
            return JSON.readValue(text, type);
        } catch (JsonProcessingException failure) {
            throw new IllegalStateException("the stored text can't be read: " + text, failure);
        }
    }
}
