package bagclock.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a workstation learns from the test code, under layouts as published (see {@code layouts.tsv}). */
class TestCodeTest {
    private static final String LABEL =
            Sample.controls("[)><RS>06<GS>1PTPS5/48-D22#{1}<GS>Q25<GS>1TAZ_1:QWM~y<GS>13E2a<RS><EOT>");

    static List<KeyboardLayout> layouts() {
        return KeyboardLayout.all();
    }

    private static TestCode.Learnt learnt(String arrived) {
        return TestCode.learn(arrived).orElseThrow();
    }

    private static TestCode.Learnt learnt(KeyboardLayout layout) {
        return learnt(layout.type(TestCode.text()));
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void whatAnyLayoutMakesOfALabelIsPutRight(KeyboardLayout layout) {
        TestCode.Learnt learnt = learnt(layout);
        assertThat(learnt.lost()).isEmpty();
        assertThat(learnt.doubtful()).isEmpty();
        assertThat(learnt.isWithoutControls()).isFalse();
        CharacterMap map = CharacterMap.parse(learnt.map().text());
        assertThat(map).isEqualTo(learnt.map());

        String arrived = layout.type(LABEL);
        assertThat(map.mend(arrived)).isEqualTo(LABEL);
        assertThat(map.arrived(LABEL)).isEqualTo(arrived);
        assertThat(map.mend(layout.type("BENCH-1 R10014 T-411"))).isEqualTo("BENCH-1 R10014 T-411");
        assertThat(learnt.isClean()).isEqualTo(layout.name().equals("us(basic)"));
    }

    /** Samples 33 and 34 of the research: what a header, a zero and a part number become. */
    @Test
    void theCharactersOfThePublishedSamplesAreLearnt() {
        CharacterMap german = learnt(KeyboardLayout.named("de(nodeadkeys)")).map();
        assertThat(german.mend("ü=:06")).isEqualTo("[)>06");
        assertThat(german.mend("1PXß1 Y3")).isEqualTo("1PX-1 Z3");
        CharacterMap french = learnt(KeyboardLayout.named("fr(basic)")).map();
        assertThat(french.mend("0/à- &PX)& W\"")).isEqualTo(")>06 1PX-1 Z3");
    }

    @Test
    void whatMayBeOneOfTwoIsDoubtedAndAsked() {
        TestCode.Learnt learnt = learnt(TestCode.text().replace('-', '/').replace("FY", "FZ"));
        assertThat(learnt.doubtful()).isEqualTo("-/YZ");
        assertThat(learnt.lost()).isEmpty();
        String mended = learnt.map().mend("[)>\u001e06\u001d1PX/1\u001dQ5\u001d1TL\u001e\u0004");
        assertThat(mended).contains("1PX\ufffd1");
        assertThat(learnt.map().mend("Y-1")).as("never sent by this scanner").isEqualTo("\ufffd\ufffd1");
        Reading reading = Decoder.read(CharacterMap.MARK + mended);
        assertThat(reading.flags()).contains(Flag.CHARACTERS_DOUBTFUL);
        assertThat(reading.standing()).isEqualTo(Standing.ASK);
    }

    @Test
    void whatDoesNotArriveIsNamedAndControlsAreMissed() {
        TestCode.Learnt learnt = learnt(TestCode.text().replace("F[", "F").replace("F~", "F~~"));
        assertThat(learnt.lost()).isEqualTo("[~");
        assertThat(learnt.isClean()).isFalse();
        assertThat(learnt(TestCode.text().replaceAll("[\u001d\u001e\u0004]", ""))
                        .isWithoutControls())
                .isTrue();
        assertThat(learnt(Decoder.visible(TestCode.text())).lost()).isEmpty();
    }

    /** A scanner of linear codes only has read them in another order, one of them twice. */
    @ParameterizedTest
    @MethodSource("layouts")
    void theBarsTeachWhatTheCodeTeaches(KeyboardLayout layout) {
        List<String> scans = new ArrayList<>(
                TestCode.bars().stream().map(layout::type).map(Decoder::visible).toList());
        Collections.reverse(scans);
        scans.add(2, scans.get(0));
        for (int some = 0; some < scans.size(); some++) {
            assertThat(TestCode.learn(String.join("\n", scans.subList(0, some))))
                    .as("%d scans", some)
                    .isEmpty();
        }
        String all = String.join("\n", scans);
        assertThat(TestCode.missingBars(all)).isEmpty();
        TestCode.Learnt learnt = learnt(all);
        assertThat(learnt.map()).isEqualTo(learnt(layout).map());
        assertThat(learnt.lost()).isEmpty();
        assertThat(learnt.isWithoutControls()).as("no bar has any").isFalse();
    }

    @Test
    void theBarsThatAreMissingAreNamed() {
        List<String> bars = TestCode.bars();
        assertThat(bars).hasSize(6).allMatch(TestCode::isBar);
        assertThat(TestCode.missingBars(bars.get(1) + "\n" + bars.get(4))).containsExactly(1, 3, 4, 6);
        assertThat(TestCode.isBar(bars.get(1).replace("F0", "0")))
                .as("not whole")
                .isFalse();
        assertThat(TestCode.isBar(TestCode.text())).isFalse();
        assertThat(TestCode.isInCapsLock(bars.get(2).toLowerCase(Locale.ROOT))).isTrue();
        String slips = String.join("\n", bars).replace("F[", "F").replace("FZ", "FY");
        assertThat(learnt(slips).lost()).isEqualTo("[");
        assertThat(learnt(slips).doubtful()).isEqualTo("YZ");
    }

    @Test
    void halfACodeOrAnotherTeachesNothing() {
        String text = TestCode.text();
        assertThat(TestCode.learn("")).isEmpty();
        assertThat(TestCode.learn("TESTFEND")).isEmpty();
        assertThat(TestCode.learn(LABEL)).isEmpty();
        for (int cut = 1; cut < text.length(); cut++) {
            assertThat(TestCode.learn(text.substring(cut))).as("from %d", cut).isEmpty();
            assertThat(TestCode.learn(text.substring(0, cut))).as("to %d", cut).isEmpty();
        }
        assertThat(TestCode.isInCapsLock("testfAfB")).isTrue();
        assertThat(learnt("+d1" + text + "\t").isClean()).isTrue();
    }

    /** A label that a workstation put right says so and is kept with that mark; no layout is guessed on top. */
    @Test
    void aMarkedLabelIsReadAsItIs() {
        Reading reading = Decoder.read(CharacterMap.MARK + LABEL);
        assertThat(reading.flags()).containsExactly(Flag.CHARACTERS_MAPPED);
        assertThat(reading.standing()).isEqualTo(Standing.READ);
        assertThat(reading.only(Fact.PART_NUMBER)).hasValue("TPS5/48-D22#{1}");
        assertThat(reading.kept()).startsWith("\u2328[)>");
        assertThat(Decoder.read(reading.kept()).found()).isEqualTo(reading.found());
    }

    /** Without a map: an accent that waits is a key of the layout that fits, or of the US one with accents. */
    @Test
    void accentsOfAKnownLayoutAreReadWithoutAMap() {
        String label = Sample.controls("[)><RS>06<GS>1PTPS5/48-D22<GS>Q25<GS>1TAZ'1:QM<GS>13E2a<RS><EOT>");
        for (String layout : List.of("fr(basic)", "us(intl)", "de(basic)")) {
            Reading reading = Decoder.read(KeyboardLayout.named(layout).type(label));
            assertThat(reading.only(Fact.PART_NUMBER)).as(layout).hasValue("TPS5/48-D22");
            assertThat(reading.only(Fact.LOT)).as(layout).hasValue("AZ'1:QM");
            assertThat(reading.flags()).as(layout).containsExactly(Flag.LAYOUT_MENDED);
        }
    }
}
