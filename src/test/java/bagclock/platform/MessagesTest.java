package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MessagesTest {
    private final Messages messages = Messages.load();

    @Test
    void partsStandWhereTheTextSays() {
        assertThat(messages.text("span.hours-minutes", 3, "20 $1\\")).isEqualTo("3 h 20 $1\\ min");
    }

    @Test
    void aMissingKeyIsAFault() {
        assertThatThrownBy(() -> messages.text("no.such.key")).hasMessageContaining("no.such.key");
    }

    @Test
    void aMissingPartIsAFault() {
        assertThatThrownBy(() -> messages.text("span.hours-minutes", 3)).hasMessageContaining("span.hours-minutes");
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void everyRoleHasAWord(Role role) {
        assertThat(messages.text("role." + role)).isNotBlank();
    }
}
