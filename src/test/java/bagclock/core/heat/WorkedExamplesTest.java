package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.quantity.Millimetres;
import bagclock.core.standard.BodyKind;
import bagclock.core.standard.Level;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of makers, forums and reprints of the standard; S-numbers as in the list of sources. */
class WorkedExamplesTest {
    /** S5 (smtnet.com thread 309): level 3, thin, 30 C: 7 days at 60 %RH, 1 day at 70 %RH. */
    @ParameterizedTest
    @CsvSource({"60, 168", "70, 24"})
    void level3ThinAt30C(double percent, double hours) {
        Story story = Story.of(PartUnderTest.level("3").thick("1.4")).opened(0).air(30, percent);

        assertThat(story.answer(hours).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.answer(hours + 0.001).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** S14, S15: level 3 or 5: over the life, kept at 10 %RH or more, or card above 10 %: 24 h at 125 C; level 1 none. */
    @ParameterizedTest
    @CsvSource({"3, 168.1, BAKE", "3, 168, CLEAR", "5, 48.1, BAKE", "1, 5000, CLEAR"})
    void aMakersRuleFor3And5(String level, double hour, Verdict expected) {
        PartUnderTest part = PartUnderTest.level(level).makersBake(125, 24);

        assertThat(Story.of(part).opened(0).answer(hour).verdict()).isEqualTo(expected);
    }

    /** S10, S11 (ACPM-1403 pp. 12, 14; WS1102 p. 15): 168 h passed: 12 h at 125 C, not in tape and reel. */
    @ParameterizedTest
    @CsvSource({"125, BAKE", "40, HOLD"})
    void twelveHoursNotInTapeAndReel(double carrier, Verdict expected) {
        PartUnderTest part = PartUnderTest.level("3").makersBake(125, 12).inCarrierOf(carrier);
        Answer answer = Story.of(part).opened(0).answer(169);

        assertThat(answer.verdict()).isEqualTo(expected);
        assertThat(Told.bakeHours(answer, 125)).contains(12.0);
    }

    /** S16, S17 (ASMC-PHB9 p. 8, HSMQ-C280 p. 7): level 2a LEDs: after 672 h 20 h at 60 C, the second kind once only. */
    @ParameterizedTest
    @CsvSource({"672, 0, CLEAR", "673, 0, BAKE", "673, 1, HOLD"})
    void ledsOfLevel2aAt60C(double hour, int bakesBefore, Verdict expected) {
        PartUnderTest part = PartUnderTest.level("2a")
                .kind(BodyKind.LED)
                .makersBake(60, 20)
                .maxBakes(1)
                .before(0, bakesBefore, 0);
        Answer answer = Story.of(part).opened(0).answer(hour);

        assertThat(answer.verdict()).isEqualTo(expected);
        assertThat(Told.bakeHours(answer, 60)).contains(20.0);
    }

    /** S19 (AFBR-1012 p. 2): more than 4 weeks: 24 h at 100 C out of the tube. */
    @ParameterizedTest
    @CsvSource({"none, BAKE", "40, HOLD"})
    void aTransceiverOutOfItsTube(String carrier, Verdict expected) {
        PartUnderTest part = PartUnderTest.level("2a").kind(BodyKind.OTHER).makersBake(100, 24);
        Answer answer = Story.of(carrier.equals("none") ? part : part.inCarrierOf(40))
                .opened(0)
                .answer(673);

        assertThat(answer.verdict()).isEqualTo(expected);
    }

    /** S21 (BGS12 pp. 92, 95): level 4, open longer than 72 h: bake in trays good for 125 C, never on the reel. */
    @ParameterizedTest
    @CsvSource({"72, 125, CLEAR, true", "73, 125, BAKE, true", "73, 40, BAKE, false"})
    void aLevel4ModuleInTrays(double hour, double carrier, Verdict expected, boolean hot) {
        Answer answer = Story.of(PartUnderTest.level("4")
                        .kind(BodyKind.MODULE)
                        .maxBakeC(125)
                        .inCarrierOf(carrier))
                .opened(0)
                .answer(hour);

        assertThat(answer.verdict()).isEqualTo(expected);
        assertThat(Told.allows(answer, 125)).isEqualTo(hot);
    }

    /** S24 (TSS461 p. 20): 48 h passed: 24 h at 125 C, one drying only; level 6 parts of that maker: 6 h (S1 too). */
    @Test
    void level6IsUsedWithin6Hours() {
        PartUnderTest part = PartUnderTest.level("6").makersBake(125, 24).useWithin(6);
        Story story = Story.of(part).opened(0).bake(1, 25, 125, 24);

        assertThat(story.answer(31).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.answer(31.1).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** S8, S46: 68 d and the label's 192 h at 40 C are superseded: today's table asks 79 d, or 67 d. */
    @ParameterizedTest
    @CsvSource({"200, 67", "400, 79"})
    void theOldTimesAt40AreGone(double hour, double days) {
        Answer answer = Story.of(PartUnderTest.level("3").thick("3")).opened(0).answer(hour);

        assertThat(Told.bakeHours(answer, 40)).contains(days * 24);
    }

    /** S6, S7: 48 h in all was edition A; now 96 h, and none at or below 90 C. */
    @ParameterizedTest
    @CsvSource({"48, true", "87, true", "88, false"})
    void theLimitIs96HoursNow(double before, boolean allowed) {
        Answer answer = Story.of(PartUnderTest.level("3").before(before, 0, 0))
                .unknown(0)
                .answer(1);

        assertThat(Told.allows(answer, 125)).isEqualTo(allowed);
        assertThat(Told.allows(answer, 90)).isTrue();
    }

    /** S3 (ox3.com): before dry-packing: level 3 up to 1.4 mm 16 h, level 4 at 1.4 to 2.0 mm 48 h; level 1 none. */
    @Test
    void bakesBeforeDryPacking() {
        assertThat(Story.STANDARD
                        .supplierBake(Millimetres.of("1.4"), Level.L3)
                        .orElseThrow()
                        .value())
                .isEqualTo(Duration.ofHours(16));
        assertThat(Story.STANDARD
                        .supplierBake(Millimetres.of("1.9"), Level.L4)
                        .orElseThrow()
                        .value())
                .isEqualTo(Duration.ofHours(48));
        assertThat(Story.STANDARD.supplierBake(Millimetres.of("1.4"), Level.L1)).isEmpty();
    }

    /** S30 (smtnet.com thread 12107): relays on a reel, 8 h at 125 C: the carrier is the catch. */
    @Test
    void relaysOnAReel() {
        PartUnderTest part =
                PartUnderTest.level("3").kind(BodyKind.OTHER).makersBake(125, 8).inCarrierOf(40);
        Answer answer = Story.of(part).opened(0).answer(169);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(answer.next()).contains(StepCode.CHANGE_CARRIER);
    }

    /** S31: 48 h at 125 C on a tray, for a body above 2.0 mm. */
    @Test
    void offTheTape() {
        Answer answer = Story.of(PartUnderTest.level("3").thick("2.5").inCarrierOf(150))
                .unknown(0)
                .answer(1);

        assertThat(Told.bakeHours(answer, 125)).contains(48.0);
        assertThat(Told.allows(answer, 125)).isTrue();
    }

    /** S1, S2: level 3 up to 1.4 mm: 9/7 h, 33/23 h, 13/9 d. S2: level 5, 1.4 to 2.0 mm: 40/25 h, 6/4 d, 57/35 d. */
    @ParameterizedTest
    @CsvSource({
        "3, 1.4, 200, 7, 23, 216",
        "3, 1.4, 400, 9, 33, 312",
        "5, 2.0, 100, 25, 96, 840",
        "5, 2.0, 121, 40, 144, 1368"
    })
    void bothColumnsOfTheBakeTable(String level, String mm, double hour, double hot, double warm, double mild) {
        Answer answer = Story.of(PartUnderTest.level(level).thick(mm)).opened(0).answer(hour);

        assertThat(Told.bakeHours(answer, 125)).contains(hot);
        assertThat(Told.bakeHours(answer, 90)).contains(warm);
        assertThat(Told.bakeHours(answer, 40)).contains(mild);
    }

    /** S4: array of 1 mm or more, level 4, 25 C / 50 %RH: 5 days, where the site uses its logged drier air. */
    @Test
    void anArrayOfLevel4At25And50() {
        Answer answer = Story.of(PartUnderTest.level("4").body(BodyKind.ARRAY, "1.0"))
                .opened(0)
                .air(25, 50)
                .logged("bench", 0, 100, 25, 50)
                .rules(true, 2, 0)
                .answer(100);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.endsAt(answer)).contains(120.0);
    }
}
