package bagclock.stock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.quantity.Celsius;
import bagclock.core.standard.Level;
import bagclock.core.standard.MakerRules;
import bagclock.core.standard.Part;
import bagclock.core.standard.Rating;
import bagclock.register.PartType;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StricterPeakTest {
    /** What J-STD-020C, Table 4-1, gives the thickest bodies with tin-lead solder. */
    private static final Celsius BY_BODY = new Celsius(225);

    private static final PartType.Source LABEL = new PartType.Source("R-1", "");

    private static Rating rating(String text) {
        String[] sides = text.split("@", 2);
        return new Rating(
                Level.parse(sides[0]),
                sides[1].isEmpty() ? Optional.empty() : Optional.of(new Celsius(Double.parseDouble(sides[1]))));
    }

    private static PartType type(String ratings) {
        List<Rating> all =
                Arrays.stream(ratings.split(" ")).map(StricterPeakTest::rating).toList();
        Part none = Part.UNKNOWN;
        Part part = new Part(all, none.body(), MakerRules.NONE, none.maxBake(), none.carrier(), none.prior());
        return new PartType("P", "", "", new PartType.Source("", ""), part);
    }

    private static String text(PartType type) {
        return type.part().ratings().stream()
                .map(rating -> rating.level().map(Level::code).orElse("?") + "@"
                        + (int) rating.peak().orElseThrow().degrees())
                .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvSource({
        "3@260, 250, 3@250",
        "3@245, 250, ''",
        "3@250, 250, ''",
        "3@245 4@260, 250, 3@245 4@250",
        "3@245 4@260, 240, 4@240",
        "4@260 3@245, 240, 4@240",
        "?@245 4@260, 240, ?@240",
        "3@, 250, ''",
        "3@, 220, 3@220",
    })
    void higherPeaksAreLoweredToTheLabelsAndNoneIsRaised(String known, double label, String lowered) {
        Optional<PartType> lower = StricterPeak.lowered(type(known), new Celsius(label), BY_BODY, LABEL);

        assertThat(lower.map(StricterPeakTest::text).orElse("")).isEqualTo(lowered);
    }
}
