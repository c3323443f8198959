package bagclock.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Published scans, each with its source, and the ways in which keyboards spoil them. */
class DecoderTest {
    private static final String PARTS =
            "[)>\u001e06\u001d1PTPS5/48-D22\u001dQ25\u001d1TAZ_1:QWM\u001d13E2a\u001e\u0004";
    private static final Set<Fact> ALWAYS = EnumSet.of(Fact.PART_NUMBER, Fact.LOT, Fact.LEVEL);

    static Stream<Sample> samples() {
        return Sample.all().stream();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void aPublishedScanSaysWhatItsLabelSays(Sample sample) {
        Reading reading = Decoder.read(sample.scan());
        Set<Fact> asked = EnumSet.copyOf(ALWAYS);
        asked.addAll(sample.facts().keySet());
        for (Fact fact : asked) {
            String value = String.join("+", reading.all(fact));
            assertThat(value).as(fact.name()).isEqualTo(sample.facts().getOrDefault(fact, ""));
        }
        assertThat(reading.flags()).isEqualTo(sample.flags());
    }

    @ParameterizedTest
    @MethodSource("samples")
    void ordersAndNamesAreNotKept(Sample sample) {
        assertThat(Decoder.read(sample.scan()).kept())
                .doesNotContain("PO-0001", "EXAMPLE", "GB0000000001", "00000001/", "00000007", "K00000003");
    }

    @Test
    void fieldsThatRunTogetherAreOfferedAndNotDecided() {
        Sample glued =
                samples().filter(one -> one.number().equals("11")).findFirst().orElseThrow();
        Reading reading = Decoder.read(glued.scan());
        assertThat(reading.found()).isEmpty();
        assertThat(reading.standing()).isEqualTo(Standing.ASK);
        assertThat(reading.choices().get(Fact.PART_NUMBER))
                .contains("860010672008")
                .hasSizeGreaterThan(1);
        assertThat(reading.choices().get(Fact.LOT)).contains("317510011436695");
    }

    /** Samples 33 to 36: the keys of a US scanner in another layout, after the maps of xkeyboard-config. */
    @ParameterizedTest
    @EnumSource(Layout.class)
    void anotherKeyboardLayoutIsPutRight(Layout layout) {
        String text = layout == Layout.BRITISH ? PARTS.replace("/48", "/#48") : PARTS;
        String arrived = layout.type(text);
        if (layout == Layout.FRENCH) {
            arrived = arrived.replace('\u001e', '\u001f');
        }
        Reading reading = Decoder.read(arrived.replace('\u0004', '\0'));
        assertThat(reading.only(Fact.PART_NUMBER)).hasValue(layout == Layout.BRITISH ? "TPS5/#48-D22" : "TPS5/48-D22");
        assertThat(reading.only(Fact.LOT)).hasValue("AZ_1:QWM");
        assertThat(reading.only(Fact.LEVEL)).hasValue("2a");
        assertThat(reading.flags()).contains(Flag.LAYOUT_MENDED);
        assertThat(reading.standing()).isEqualTo(Standing.READ);
    }

    /** The characters that samples 33 to 36 give for a header, a zero and a part number. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ' ',
            value = {"GERMAN ü=:06 1PXß1 Y3", "FRENCH ^0/à- &PX)& W\"", "ITALIAN è=:06 1PX'1 Z3"},
            quoteCharacter = '~')
    void theLayoutsTypeWhatWasSeen(Layout layout, String header, String part, String other) {
        assertThat(layout.type("[)>06")).isEqualTo(header);
        assertThat(layout.type("1PX-1")).isEqualTo(part);
        assertThat(layout.type("Z3")).isEqualTo(other);
    }

    /** Sample 34: in this layout a visible separator can't be told for sure. */
    @Test
    void aFrenchVisibleSeparatorIsAsked() {
        Reading reading = Decoder.read(Layout.FRENCH.type("[)>@06@1PX-1@Q5@@"));
        assertThat(reading.standing()).isEqualTo(Standing.ASK);
    }

    /** Sample 37. */
    @Test
    void capsLockIsPutRightAndTheSmallLetterOfALevelKept() {
        Reading reading = Decoder.read("[)>\u001e06\u001d1ptps548d22rvfr\u001dq5\u001d13e2A\u001e\u0004");
        assertThat(reading.only(Fact.PART_NUMBER)).hasValue("TPS548D22RVFR");
        assertThat(reading.only(Fact.LEVEL)).hasValue("2a");
        assertThat(reading.flags()).containsExactly(Flag.CASE_MENDED);
    }

    /** Sample 38. */
    @Test
    void visibleSeparatorsAreTaken() {
        for (String separator : List.of("]", "^", "@", "|", "~", "{GS}", " ", "\t", "<GS>")) {
            String end = separator.contains("GS") ? "{RS}" : separator;
            String text = String.join(separator, "[)>" + end + "06", "1PXAF-4", "Q3", "1TBF1103", "");
            Reading reading = Decoder.read(text);
            assertThat(reading.only(Fact.PART_NUMBER)).as(separator).hasValue("XAF-4");
            assertThat(reading.only(Fact.QUANTITY)).as(separator).hasValue("3");
            assertThat(reading.only(Fact.LOT)).as(separator).hasValue("BF1103");
        }
    }

    @Test
    void codesOneAfterAnotherFillOneLabel() {
        Reading reading = Decoder.read("1PCC0402CRNPO9BN3R0\r")
                .with(Decoder.read("Q4000\r"))
                .with(Decoder.read("1TSV8211X347\r"));
        assertThat(reading.only(Fact.PART_NUMBER)).hasValue("CC0402CRNPO9BN3R0");
        assertThat(reading.only(Fact.QUANTITY)).hasValue("4000");
        assertThat(reading.only(Fact.LOT)).hasValue("SV8211X347");
        assertThat(reading.with(Decoder.read("1TOTHER")).flags()).contains(Flag.SEVERAL_VALUES);
    }

    @Test
    void nothingKnownIsRefused() {
        for (String text : List.of("", "  ", "R-1042", "https://example.org", "[)>", "x".repeat(3000))) {
            assertThat(Decoder.read(text).standing()).as(text).isEqualTo(Standing.REFUSED);
        }
    }

    @Test
    void twoLabelsInOneScanAreRefusedAndTheSameTwiceIsOne() {
        String one = Sample.controls("[)><RS>06<GS>1PA-1<GS>Q3<RS><EOT>");
        assertThat(Decoder.read(one + one).only(Fact.PART_NUMBER)).hasValue("A-1");
        assertThat(Decoder.read(one + one.replace("A-1", "A-2")).standing()).isEqualTo(Standing.REFUSED);
    }
}
