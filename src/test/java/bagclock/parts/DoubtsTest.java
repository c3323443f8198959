package bagclock.parts;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.core.standard.Edition;
import bagclock.core.standard.Standard;
import bagclock.parts.Doubt.Code;
import bagclock.register.PartType;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What contradicts itself or the standard. The lives and bakes compared with are S1's (table 5-1: level 3 168 h; table
 * 4-1: level 3 to 1.4 mm, 9 h at 125 C), the classification P4's (260 C for a small, thin lead-free body).
 */
class DoubtsTest {
    private static final Standard STANDARD = Standard.load(Edition.J_STD_033D);

    private static List<Code> codes(String facts) {
        Map<Column, String> texts = new EnumMap<>(Column.class);
        texts.put(Column.NUMBER, "SNR-1");
        texts.put(Column.DOCUMENT, "data sheet");
        for (String fact : facts.split("\\|")) {
            String[] sides = fact.split("=", 2);
            texts.put(Column.parse(sides[0].strip()).orElseThrow(), sides[1].strip());
        }
        PartReading.Read read = PartReading.of(texts);
        assertThat(read.faults()).isEmpty();
        PartType type = read.type().orElseThrow();
        return Doubts.about(type, STANDARD).stream().map(Doubt::code).toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '>',
            value = {
                "level=3|floor_life_h=169 > LIFE_LONGER",
                "level=3|floor_life_h=24 > LIFE_SHORTER",
                "level=1|floor_life_h=24 > LIFE_NOT_USED",
                "level=6|floor_life_h=24|use_within_h=6|bakes=125 C 24 h > LIFE_NOT_USED",
                "level=3|floor_life_h=168|floor_life_table=30 C 60 % 168 h > LIFE_AND_TABLE",
                "level=3|floor_life_table=30 C 60 % 200 h > TABLE_LIFE_LONGER",
                "level=3|floor_life_table=25 C 60 % 100 h > TABLE_WITHOUT_30_60",
                "level=3|floor_life_table=30 C 60 % 100 h; 35 C 60 % 120 h > CELL_LONGER",
                "level=3|peak_c=240|more_ratings=2@260|thickness_mm=3 > LEVEL_MILDER_WHEN_HOTTER",
                "level=3|peak_c=225|lead_free=yes|thickness_mm=1|length_mm=5|width_mm=5 > PEAK_BELOW_CLASS",
                "level=3|thickness_mm=1.4|body=leaded|bakes=125 C 8.9 h > BAKE_SHORTER",
                "level=3|thickness_mm=1.4|body=leaded|bakes=60 C 24 h 5 % > BAKE_SHORTER",
                "level=3|bakes=90 C 400 h > BAKE_WITHOUT_HUMIDITY",
                "level=3|bakes=125 C 97 h > BAKE_NEVER_ALLOWED",
                "level=3|baked_over_90_h=90|bakes=125 C 9 h > BAKE_NEVER_ALLOWED",
                "level=3|bakes=125 C 48 h carrier 60 C > CARRIER_BELOW_BAKE",
                "level=3|carrier_max_c=40|bakes=125 C 48 h > CARRIER_BELOW_BAKE",
                "level=3|peak_c=260|max_bake_c=270 > LIMIT_ABOVE_PEAK",
                "level=3|table_too=yes > TABLE_TOO_ALONE",
                "level=3|use_within_h=12 > USE_WITHIN_ALONE",
                "level=6|use_within_h=6 > LEVEL_6_WITHOUT_BAKE",
                "level=6|bakes=125 C 24 h > LEVEL_6_WITHOUT_TIME",
                "level=3|thickness_mm=4.6|length_mm=9|width_mm=9 > BODY_WITHOUT_ROW",
                "level=3|thickness_mm=3|length_mm=9|width_mm=2 > THICKER_THAN_WIDE",
                "level=3|max_bakes=1|bakes_before=1 > NO_BAKE_LEFT",
                "level=3|max_reflow_passes=2|passes_before=2 > NO_HEAT_LEFT",
                "level=3|floor_life_h=168|document= > NO_DOCUMENT"
            })
    void aContradictionIsNamed(String facts, Code code) {
        assertThat(codes(facts)).containsOnly(code);
    }

    @Test
    void whatAgreesWithTheStandardRaisesNoDoubt() {
        String body = "|peak_c=260|thickness_mm=1.4|length_mm=9|width_mm=9|body=leaded|lead_free=yes";
        assertThat(codes("level=3" + body)).isEmpty();
        assertThat(codes("level=3|floor_life_h=168|bakes=125 C 9 h" + body)).isEmpty();
        assertThat(codes("level=4|more_ratings=5@265|max_bake_c=125" + body)).isEmpty();
        assertThat(codes("level=6|use_within_h=6|bakes=125 C 24 h" + body)).isEmpty();
        assertThat(codes("level=")).isEmpty();
    }
}
