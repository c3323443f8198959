package bagclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.standard.BodyKind;
import bagclock.core.standard.CarrierLimit;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Situations that people asked about in public: bakes, carriers, makers' own rules. Figures may be ours. */
class BakePracticeTest {
    private static Answer unknown(PartUnderTest part) {
        return Story.of(part).unknown(0).answer(1);
    }

    /** S14, S15 (community.cypress.com DOC-10737, DOC-11126): 24 h at 125 C, only in metal tubes or bakeable trays. */
    @ParameterizedTest
    @CsvSource({"125, BAKE", "40, HOLD"})
    void aMakersOneBakeForHisLevel3Parts(double carrier, Verdict expected) {
        PartUnderTest part =
                PartUnderTest.level("3").body(BodyKind.ARRAY, "1.2").makersBake(125, 24);
        Answer answer = Story.of(part.inCarrierOf(carrier)).opened(0).answer(169);

        assertThat(answer.verdict()).isEqualTo(expected);
        assertThat(Told.bakeHours(answer, 125)).contains(24.0);
        assertThat(answer.has(FindingCode.MAKERS_BAKE)).isTrue();
    }

    /** manualshive.com, TYLC8: no card: reel 48 h at 65 C, tray 12 h at 125 C, one bake, use within 72 h. */
    @Test
    void aModuleWithoutACard() {
        PartUnderTest part = PartUnderTest.level("3")
                .kind(BodyKind.MODULE)
                .makersBake(65, 48, Optional.empty(), Optional.of(65.0))
                .makersBake(125, 12)
                .maxBakes(1)
                .useWithin(72)
                .inCarrierOf(65);
        Story story = Story.of(part).opened(0, Optional.empty(), true);

        Answer answer = story.answer(1);
        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.allows(answer, 65)).isTrue();
        assertThat(Told.allows(answer, 125)).isFalse();
        assertThat(story.bake(1, 50, 65, 48).place(122, 0).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.place(122.1, 0).verdict()).isEqualTo(Verdict.HOLD);
    }

    /** hotwires.net; rightchoiceelectronics.com: lots in any kind of bag: long column, hold where the carrier bears none. */
    @ParameterizedTest
    @CsvSource({"125, BAKE", "39, HOLD"})
    void aLotInAnyKindOfBag(double carrier, Verdict expected) {
        Answer answer = unknown(PartUnderTest.level("3").inCarrierOf(carrier));

        assertThat(answer.verdict()).isEqualTo(expected);
        assertThat(answer.bakeColumn()).contains(Answer.Column.OVER_72H);
    }

    /** S3 (ox3.com/pages/baking): nobody can supply the level: hold, no floor life. */
    @Test
    void nobodyKnowsTheLevel() {
        Answer answer = Story.of(PartUnderTest.levelUnknown()).opened(0).answer(1);

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.total(answer)).isEmpty();
    }

    /** listserv.ipc.org TECHNET, July 2002, 798797: LEDs and capacitors of known level: hold until the maker's limit is known. */
    @ParameterizedTest
    @CsvSource({"led", "passive", "connector"})
    void ledsAndCapacitorsNeedTheMakersLimit(String kind) {
        Answer answer =
                unknown(PartUnderTest.level("2a").kind(BodyKind.parse(kind).orElseThrow()));

        assertThat(answer.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(answer.next()).contains(StepCode.ENTER_BAKE_LIMIT);
    }

    /** smtnet.com thread 2533: level 3, 2.7 mm, two weeks out: 48 h at 125 C, 79 days at 40 C, never the old 192 h. */
    @Test
    void traysTwoWeeksOutOfTheBag() {
        Answer answer = Story.of(PartUnderTest.level("3").body(BodyKind.LEADED, "2.7"))
                .opened(0)
                .answer(336);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(answer.bakeColumn()).contains(Answer.Column.OVER_72H);
        assertThat(Told.bakeHours(answer, 125)).contains(48.0);
        assertThat(Told.bakeHours(answer, 40)).contains(79 * 24.0);
    }

    /** eevblog.com forum: LEDs without a level, on a reel; 5a and thin, once known: 22 days at 40 C on the reel. */
    @Test
    void ledsWithoutABarrierBag() {
        assertThat(unknown(PartUnderTest.levelUnknown().kind(BodyKind.LED).inCarrierOf(40))
                        .verdict())
                .isEqualTo(Verdict.HOLD);

        Answer known = unknown(
                PartUnderTest.level("5a").kind(BodyKind.LED).maxBakeC(40).inCarrierOf(40));
        assertThat(known.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.bakeHours(known, 40)).contains(22 * 24.0);
        assertThat(Told.allows(known, 40)).isTrue();
    }

    /** S20 (Lantronix xPico 600): level 3, but the maker allows 24 h; 24 h at 120 C, then within 24 h. */
    @Test
    void aModuleWithAMakersDay() {
        PartUnderTest part = PartUnderTest.level("3")
                .kind(BodyKind.MODULE)
                .makersLife(24)
                .makersBake(120, 24)
                .useWithin(24);
        Story story = Story.of(part).opened(0);
        Answer answer = story.answer(30);
        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.bakeHours(answer, 120)).contains(24.0);
        assertThat(Told.total(answer)).contains(24.0);

        assertThat(story.bake(31, 56, 120, 24).answer(80).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.answer(80.1).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** S31 (circuitnet.com/experts/50130): reels bear no 125 C: only 40 C, or rated trays. */
    @ParameterizedTest
    @CsvSource({"40, true, false", "125, true, true"})
    void reelsBearNo125(double carrier, boolean at40, boolean at125) {
        Answer answer = unknown(PartUnderTest.level("3").inCarrierOf(carrier));

        assertThat(Told.allows(answer, 40)).isEqualTo(at40);
        assertThat(Told.allows(answer, 125)).isEqualTo(at125);
        assertThat(Told.offer(answer, 40)
                        .orElseThrow()
                        .maxHumidity()
                        .orElseThrow()
                        .percent())
                .isEqualTo(5);
    }

    /** smtnet.com thread 23739: melted reels: an unknown rating is 40 C; and 60 C counts as the 40 C column. */
    @Test
    void meltedReelsAnd60InPlaceOf40() {
        PartUnderTest part = PartUnderTest.level("3").in(new CarrierLimit.Unknown());
        assertThat(Told.allows(unknown(part), 90)).isFalse();

        Story story = Story.of(PartUnderTest.level("3")).unknown(0);
        assertThat(story.dryBake(1, 313, 60, 311).answer(313).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(story.dryBake(314, 626, 60, 312).answer(626).verdict()).isEqualTo(Verdict.CLEAR);
    }

    /** S7 (SLM756 manual p. 62): 40 C 30 d, 60 C 72 h, 90 C 48 h; 60 C in the tray, and it spends none of the 96 h. */
    @Test
    void aMakersThreeTemperatures() {
        PartUnderTest part = PartUnderTest.level("3")
                .kind(BodyKind.MODULE)
                .makersBake(40, 720, Optional.of(5.0), Optional.empty())
                .makersBake(60, 72, Optional.of(5.0), Optional.empty())
                .makersBake(90, 48, Optional.of(5.0), Optional.empty())
                .before(96, 1, 0)
                .inCarrierOf(60);
        Answer answer = Story.of(part).opened(0).answer(169);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.allows(answer, 60)).isTrue();
        assertThat(Told.bakeHours(answer, 60)).contains(72.0);
        assertThat(Told.allows(answer, 90)).isFalse();
    }

    /** manualshelf.com, NUR10W p. 36: level 5: 12 h at 60 C, then 48 h. */
    @Test
    void aLevel5ModuleDriesAt60() {
        PartUnderTest part = PartUnderTest.level("5").kind(BodyKind.MODULE).makersBake(60, 12);
        Story story = Story.of(part).opened(0);
        assertThat(Told.bakeHours(story.answer(50), 60)).contains(12.0);

        Answer after = story.bake(50, 62, 60, 12).answer(62);
        assertThat(after.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(Told.left(after)).contains(48.0);
    }

    /** itecnotes.com, tempering before assembly: level 3 up to 1.4 mm in tape: 13 days at 40 C. */
    @Test
    void twoWeeksForAnOpenBag() {
        Answer answer = unknown(PartUnderTest.level("3").inCarrierOf(40));

        assertThat(Told.bakeHours(answer, 40)).contains(13 * 24.0);
    }

    /** listserv.ipc.org TGASIA, January 2008: 125 C for 16 h: enough up to 1.4 mm at any level, short above. */
    @ParameterizedTest
    @CsvSource({
        "2, 1.4, CLEAR",
        "2a, 1.4, CLEAR",
        "3, 1.4, CLEAR",
        "4, 1.4, CLEAR",
        "5, 1.4, CLEAR",
        "5a, 1.4, CLEAR",
        "3, 1.7, BAKE",
        "3, 2.1, BAKE"
    })
    void sixteenHoursAt125(String level, String thickness, Verdict expected) {
        Answer answer = Story.of(PartUnderTest.level(level).body(BodyKind.ARRAY, thickness))
                .unknown(0)
                .bake(1, 18, 125, 16)
                .answer(18);

        assertThat(answer.verdict()).isEqualTo(expected);
    }

    /** smtnet.com thread 5769: neither bake acceptable: hold, and the recorded change of carrier opens the hot one. */
    @Test
    void intoRatedTraysTheHotBakeOpens() {
        Story story = Story.of(PartUnderTest.level("3").inCarrierOf(39)).unknown(0);
        assertThat(story.answer(1).verdict()).isEqualTo(Verdict.HOLD);
        assertThat(story.answer(1).next()).contains(StepCode.CHANGE_CARRIER);

        Answer trays = story.into(2, 150).answer(3);
        assertThat(trays.verdict()).isEqualTo(Verdict.BAKE);
        assertThat(Told.allows(trays, 125)).isTrue();
    }

    /** S36 (syspcb.com): 110 C has no row: it counts as the 90 C column at 5 %RH or less. */
    @ParameterizedTest
    @CsvSource({"33, CLEAR", "32.9, BAKE"})
    void at110TheRowOf90Counts(double hours, Verdict expected) {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .unknown(0)
                .dryBake(1, 40, 110, hours)
                .answer(40);

        assertThat(answer.verdict()).isEqualTo(expected);
    }

    /** circuitnet.com/experts/40071: a preset of 48 h for the maker's own bake leaves 48 of the 96. */
    @ParameterizedTest
    @CsvSource({"48, true", "49, false"})
    void theMakersOwnBakeMayBePreset(double before, boolean allowed) {
        Answer answer = unknown(PartUnderTest.level("3").thick("2.5").before(before, 1, 0));

        assertThat(Told.bakeHours(answer, 125)).contains(48.0);
        assertThat(Told.allows(answer, 125)).isEqualTo(allowed);
    }

    /** S24 (TSS461 p. 20), S28: one drying only: the second request is a hold. */
    @Test
    void partsThatAllowOneBakeOnly() {
        PartUnderTest part =
                PartUnderTest.level("3").makersLife(48).makersBake(125, 24).maxBakes(1);
        Story story = Story.of(part).opened(0);
        assertThat(story.answer(49).verdict()).isEqualTo(Verdict.BAKE);

        Answer second = story.bake(49, 74, 125, 24).answer(200);
        assertThat(second.verdict()).isEqualTo(Verdict.HOLD);
        assertThat(Told.because(second)).isEqualTo(FindingCode.NO_BAKE_ALLOWED);
    }

    /** S19 (AFBR-1012 p. 2): 24 h at 100 C out of the tube, repeatable; the hours above 90 C are totalled all the same. */
    @Test
    void aPartThatMayBeBakedOften() {
        PartUnderTest part = PartUnderTest.level("2a").kind(BodyKind.OTHER).makersBake(100, 24);
        Story story = Story.of(part).opened(0);
        for (int i = 0; i < 3; i++) {
            story.bake(700 + i * 30, 724 + i * 30, 100, 24);
        }
        assertThat(Told.allows(story.unknown(900).answer(901), 100)).isTrue();
        assertThat(Told.allows(story.bake(902, 926, 100, 24).unknown(927).answer(928), 100))
                .isFalse();
    }

    /** smtnet.com thread 15510: sealed, in date, card good: no bake. */
    @Test
    void sealedGoodPartsNeedNoBake() {
        Answer answer = Story.of(PartUnderTest.level("3").body(BodyKind.ARRAY, "1.5"))
                .sealed(0)
                .opened(1000)
                .answer(1001);

        assertThat(answer.verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(answer.next()).isEmpty();
    }

    /** qdatasheet.com, 2.0 mm LED of level 6: 48 h at 70 C before every use, then 4 h. */
    @Test
    void anLedOfLevel6() {
        PartUnderTest part = PartUnderTest.level("6")
                .body(BodyKind.LED, "2.0")
                .makersBake(70, 48)
                .useWithin(4);
        Story story = Story.of(part).opened(0);
        assertThat(story.answer(1).verdict()).isEqualTo(Verdict.BAKE);
        assertThat(story.bake(1, 50, 75, 48).answer(54).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(story.answer(54.1).verdict()).isEqualTo(Verdict.BAKE);
    }

    /** delorie.com geda-user, July 2018: a home box at 60 C in room air gives no credit. */
    @Test
    void sixtyDegreesInRoomAirGivesNoCredit() {
        Answer answer = Story.of(PartUnderTest.level("3"))
                .unknown(0)
                .bake(1, 501, 60, 500)
                .answer(501);

        assertThat(answer.verdict()).isEqualTo(Verdict.BAKE);
    }

    /** smta.org 5101: connectors: a bake only by their maker. */
    @Test
    void connectorsAreBakedByTheirMakerOnly() {
        assertThat(unknown(PartUnderTest.level("3").kind(BodyKind.CONNECTOR)).verdict())
                .isEqualTo(Verdict.HOLD);
        assertThat(unknown(PartUnderTest.level("3").kind(BodyKind.CONNECTOR).makersBake(60, 24))
                        .verdict())
                .isEqualTo(Verdict.BAKE);
    }
}
