package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.standard.BodyKind;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** J-STD-033D, table 4-2, as far as S3 shows it; the rest from memory. */
class PackingBakeTest {
    private static Optional<BakeOffer> bake(PartUnderTest part) {
        return PackingBake.of(
                Story.STANDARD, Story.of(part).opened(0).into(1, 150).history(400));
    }

    private static Optional<Double> hours(PartUnderTest part) {
        return bake(part).map(offer -> offer.time().toMillis() / 3_600_000.0);
    }

    /** S3 up to 1.4 mm, and up to 2.0 mm to level 4; 48 h above from memory. */
    @ParameterizedTest
    @CsvSource({
        "2, 1.4, 7", "2a, 1.4, 8", "3, 1.4, 16", "4, 1.4, 21", "5, 1.4, 24", "5a, 1.4, 28",
        "2, 2.0, 18", "2a, 2.0, 23", "3, 2.0, 43", "4, 1.5, 48", "5a, 2.1, 48", "3, 4.5, 48"
    })
    void itIsTheCellOfTable42At125(String level, String thickness, double hours) {
        BakeOffer offer = bake(PartUnderTest.level(level).thick(thickness)).orElseThrow();

        assertThat(offer.temperature().degrees()).isEqualTo(125);
        assertThat(offer.time()).isEqualTo(Story.hours(hours));
        assertThat(offer.isAllowed()).isTrue();
        assertThat(offer.citation().table()).isEqualTo("table 4-2");
    }

    /** Inference: 96 h of table 4-1 for a large array, and measure first what nobody has measured. */
    @Test
    void aLargeArrayTakesItsLongRow() {
        PartUnderTest array = PartUnderTest.level("3").kind(BodyKind.ARRAY).blocking(Optional.of(true));
        assertThat(hours(array.edges("18", "18"))).contains(96.0);
        BakeOffer unmeasured = bake(PartUnderTest.level("3")
                        .kind(BodyKind.ARRAY)
                        .edges("", ""))
                .orElseThrow();
        assertThat(unmeasured.bars()).extracting(BakeOffer.Bar::code).containsExactly(BakeOffer.BarCode.MEASURE_EDGES);
    }

    @Test
    void whereTheTableHasNoRowOrTheMakerRulesThereIsNone() {
        assertThat(hours(PartUnderTest.level("1"))).isEmpty();
        assertThat(hours(PartUnderTest.level("6").makersBake(70, 48))).isEmpty();
        assertThat(hours(PartUnderTest.levelUnknown())).isEmpty();
        assertThat(hours(PartUnderTest.level("3").thick("4.6"))).isEmpty();
        assertThat(hours(PartUnderTest.level("3").thicknessUnknown())).isEmpty();
        assertThat(hours(PartUnderTest.level("3").makersBake(90, 48))).isEmpty();
    }

    /** The limits of every bake hold: carrier, part, 96 h above 90 C. */
    @Test
    void theLimitsOfEveryBakeHold() {
        Story reel = Story.of(PartUnderTest.level("3")).opened(0).into(1, 40);
        assertThat(PackingBake.of(Story.STANDARD, reel.history(400))
                        .orElseThrow()
                        .bars())
                .extracting(BakeOffer.Bar::code)
                .containsExactly(BakeOffer.BarCode.CARRIER);
        Story baked = Story.of(PartUnderTest.level("3")).unknown(0).bake(0, 90, 125, 90);
        assertThat(PackingBake.of(Story.STANDARD, baked.history(400))
                        .orElseThrow()
                        .bars())
                .extracting(BakeOffer.Bar::code)
                .containsExactly(BakeOffer.BarCode.HOURS_ABOVE_90);
    }
}
