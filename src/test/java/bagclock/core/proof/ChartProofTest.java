package bagclock.core.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;

import bagclock.core.quantity.Celsius;
import bagclock.core.quantity.RelativeHumidity;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Standard;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Proofs of logs with known answers, worked out by hand. */
class ChartProofTest {
    private static final Standard STANDARD = Standard.load(Edition.J_STD_033D);
    private static final Duration EIGHT_H = Duration.ofHours(8);
    private static final Asked AT_125 = new Asked(new Band(125, 135), Optional.empty(), false);

    private static Asked at90(boolean known) {
        return new Asked(new Band(90, 98), Optional.of(new RelativeHumidity(5)), known);
    }

    private static ChartProof proof(Asked asked, Optional<String> humidity, String... logs) {
        List<Trace> traces = new java.util.ArrayList<>();
        for (String log : logs) {
            traces.add(Logs.trace("probe " + (traces.size() + 1), log));
        }
        return ChartProof.of(new Chart(traces, humidity.map(log -> Logs.trace("RH", log))), asked, Logs.STAY);
    }

    /** The band is of table 4-1 (+10/-0 at 125 C, memory); steps, gaps and falls are the project's own, rules 8. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "to the minute,              30@60 481@126,               480, PROVEN",
        "a minute less,              30@60 480@126,               479, SHORT",
        "both ends of the band,      241@125 240@135,             480, PROVEN",
        "above the band,             481@126 1@135.1,             480, TOO_HOT",
        "a degree too cold,          600@124,                       0, SHORT",
        "a dip does not count,       241@126 5@124.9 241@126,     480, PROVEN",
        "ten minutes unseen,         241@126 9@- 231@126,         480, PROVEN",
        "eleven minutes unseen,      241@126 10@- 241@126,        480, PROVEN",
        "eleven minutes for nothing, 241@126 10@- 240@126,        479, SHORT",
        "cold again begins anew,     400@126 5@30 400@126,        399, SHORT",
        "warm is not cold,           241@126 90@31 241@126,       480, PROVEN",
        "cold at the end,            481@126 60@25,               480, PROVEN",
        "an hour unwatched,          300@126 59@- 300@126,        598, PROVEN",
        "more than an hour,          300@126 60@- 300@126,        299, SHORT",
        "nothing in the log,         60@-,                          0, SHORT",
        "one sample,                 1@126,                         0, SHORT"
    })
    void oneProbe(String what, String log, long minutes, Proven expected) {
        ChartProof proof = proof(AT_125, Optional.empty(), log);

        assertThat(proof.time()).isEqualTo(Duration.ofMinutes(minutes));
        assertThat(proof.verdict(EIGHT_H)).isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "the later one decides,         600@126,                   60@60 540@126,             539, probe 2",
        "what either lacks is missing,  200@126 20@110 300@126,    400@126 20@110 100@126,    477, probe 1",
        "one that died,                 600@126,                   100@126 500@-,              99, probe 2"
    })
    void theColdestOfTwoProbesCounts(String what, String one, String other, long minutes, String coldest) {
        ChartProof proof = proof(AT_125, Optional.empty(), one, other);

        assertThat(proof.time()).isEqualTo(Duration.ofMinutes(minutes));
        assertThat(proof.coldest().orElseThrow().trace().name()).isEqualTo(coldest);
    }

    @Test
    void oneProbeThatIsTooHotIsEnough() {
        ChartProof proof = proof(AT_125, Optional.empty(), "600@126", "300@126 7@141 293@126");

        assertThat(proof.verdict(EIGHT_H)).isEqualTo(Proven.TOO_HOT);
        assertThat(proof.excursions())
                .singleElement()
                .isEqualTo(new Excursion(
                        "probe 2",
                        Excursion.Kind.ABOVE,
                        new Spell(Logs.START.plus(Duration.ofMinutes(300)), Logs.START.plus(Duration.ofMinutes(307))),
                        141));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "dry all the time,          10@20 600@4.9,         539, PROVEN",
        "dry when warm,             60@40 550@5,           539, PROVEN",
        "damp for half the time,    300@4 310@9,           229, HUMIDITY_NOT_SHOWN",
        "damp for a while,          200@4 10@6 400@4,      528, PROVEN"
    })
    void onlyDryTimeCountsWhereItIsAsked(String what, String humidity, long minutes, Proven expected) {
        ChartProof proof = proof(at90(true), Optional.of(humidity), "70@40 540@92");

        assertThat(proof.time()).isEqualTo(Duration.ofMinutes(minutes));
        assertThat(proof.verdict(EIGHT_H)).isEqualTo(expected);
    }

    @Test
    void withoutHumidityInTheChartTheOvenItselfMustBeShownToStayDry() {
        assertThat(proof(at90(true), Optional.empty(), "600@92").verdict(EIGHT_H))
                .isEqualTo(Proven.PROVEN);
        assertThat(proof(at90(false), Optional.empty(), "600@92").verdict(EIGHT_H))
                .isEqualTo(Proven.HUMIDITY_NOT_SHOWN);
        assertThat(proof(at90(false), Optional.empty(), "100@92").verdict(EIGHT_H))
                .isEqualTo(Proven.SHORT);
        assertThat(proof(AT_125, Optional.of("600@50"), "600@126").verdict(EIGHT_H))
                .isEqualTo(Proven.PROVEN);
    }

    @Test
    void whatIsOutsideIsListedOnceTheBandWasReached() {
        ChartProof proof = proof(AT_125, Optional.empty(), "30@60 100@126 16@110 100@126 15@120 100@126 30@80");

        assertThat(proof.excursions()).extracting(Excursion::kind).containsOnly(Excursion.Kind.BELOW);
        assertThat(proof.excursions()).extracting(Excursion::extreme).containsExactly(110.0, 120.0);
        assertThat(proof.excursions()).extracting(Excursion::isLong).containsExactly(true, false);
        assertThat(proof.missing(EIGHT_H)).contains(Duration.ofMinutes(480 - 3 * 99));
    }

    /** A cold oven holds damp air: humid spells are listed only where the load was warm, among the others by time. */
    @Test
    void humidSpellsAreListedWhereTheLoadWasWarm() {
        ChartProof proof = proof(at90(true), Optional.of("60@40 140@4 10@7 390@4"), "70@40 300@92 20@80 200@92 10@40");

        assertThat(proof.excursions())
                .extracting(Excursion::channel, Excursion::kind, Excursion::extreme)
                .containsExactly(tuple("RH", Excursion.Kind.HUMID, 7.0), tuple("probe 1", Excursion.Kind.BELOW, 80.0));
        assertThat(proof.missing(Duration.ofHours(1))).isEmpty();
    }

    /** Whichever probe was cold, and in which order they are: the longest stretch between counts. */
    @Test
    void theLongestStretchBetweenColdSpellsOfAnyProbeCounts() {
        ChartProof proof = proof(AT_125, Optional.empty(), "300@126 1@25 300@126", "100@126 1@25 500@126", "601@126");

        assertThat(proof.time()).isEqualTo(Duration.ofMinutes(299));
    }

    @Test
    void onlyTheStayCounts() {
        Trace log = Logs.trace("probe", "600@126");
        ChartProof.Stay stay =
                new ChartProof.Stay(Logs.START.plus(Duration.ofMinutes(60)), Logs.START.plus(Duration.ofMinutes(90)));

        ChartProof proof = ChartProof.of(new Chart(List.of(log), Optional.empty()), AT_125, stay);
        assertThat(proof.time()).isEqualTo(Duration.ofMinutes(30));
    }

    /** Table 4-1: +10 at 125 C, +8 at 90 C, +5 at 40 C, nothing below (memory). */
    @ParameterizedTest
    @CsvSource({"125, 125, 135", "90, 90, 98", "40, 40, 45", "110, 110, 118", "130, 130, 135", "150, 150, 155"})
    void theBandIsThatOfTheTable(double setPoint, double least, double most) {
        assertThat(Band.of(new Celsius(setPoint), STANDARD)).isEqualTo(new Band(least, most));
    }

    @ParameterizedTest
    @CsvSource({"40, 1, 3, 41, 43", "90, 0, , 90, 98", "125, 4, 20, 129, 135", "132, 4, , 135, 135"})
    void aSitesBandLiesInsideTheTables(double setPoint, double from, @Nullable Double to, double least, double most) {
        OptionalDouble top = to == null ? OptionalDouble.empty() : OptionalDouble.of(to);
        Celsius temperature = new Celsius(setPoint);
        assertThat(Band.of(temperature, STANDARD).narrowed(temperature, from, top))
                .isEqualTo(new Band(least, most));
    }

    @Test
    void noSitesBandIsWiderThanTheTables() {
        for (double setPoint = 40; setPoint <= 135; setPoint++) {
            Celsius temperature = new Celsius(setPoint);
            Band table = Band.of(temperature, STANDARD);
            for (double from = 0; from <= 4; from += 0.5) {
                for (double to = from + 0.5; to <= 10; to += 0.5) {
                    Band site = table.narrowed(temperature, from, OptionalDouble.of(to));
                    assertThat(site.least()).isBetween(table.least(), site.most());
                    assertThat(site.most()).isLessThanOrEqualTo(table.most());
                }
            }
        }
    }

    @Test
    void aBandThatEndsBelowItsStartIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Band(2, 1));
    }
}
