package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FieldTest {
    private static boolean holds(String value, String choice) {
        return Field.of("column", "", value).holds(Choice.of(choice, ""));
    }

    /** Loggers write commas into the names of their columns. */
    @Test
    void aChoiceIsHeldAloneWithItsCommasOrAsOneOfSeveral() {
        assertThat(holds("Temp, °C (b)", "Temp, °C (b)")).isTrue();
        assertThat(holds("Temp, °C (b)", "Temp, °C (a)")).isFalse();
        assertThat(holds("DOCK,LINE", "LINE")).isTrue();
        assertThat(holds("DOCK,LINE", "LIN")).isFalse();
    }
}
