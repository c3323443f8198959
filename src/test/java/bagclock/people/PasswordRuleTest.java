package bagclock.people;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.platform.Messages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordRuleTest {
    private final Messages messages = Messages.load();

    @ParameterizedTest
    @ValueSource(strings = {"twelve chars", "correct tide gauge", "über die Brücke"})
    void lengthIsEnough(String password) {
        assertThat(PasswordRule.fault(password, "someone", messages)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "eleven char", "aaaaaaaaaaaaaa", "Bench.Technician"})
    void shortAndGuessableOnesAreRefusedInWords(String password) {
        assertThat(PasswordRule.fault(password, "bench.technician", messages)).isNotEmpty();
    }

    @Test
    void oneSecretIsNotHashedForMinutes() {
        assertThat(PasswordRule.fault("ab".repeat(101), "someone", messages)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "471", "123456789", "47a1", "4444", "٤٧١١"})
    void aPinIsFourToEightDigits(String pin) {
        assertThat(PasswordRule.pinFault(pin, messages)).isNotEmpty();
    }

    @Test
    void aPinOfFourDifferentDigitsIsTaken() {
        assertThat(PasswordRule.pinFault("4711", messages)).isEmpty();
    }
}
