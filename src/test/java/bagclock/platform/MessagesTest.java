package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
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

    /** The bundle says an apostrophe once: nothing takes one away, as formats of other programs do. */
    @Test
    void noApostropheStandsTwice() {
        assertThat(Path.of("src/main/resources/bagclock/messages.properties"))
                .content()
                .doesNotContain("''");
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void everyRoleHasAWord(Role role) {
        assertThat(messages.text("role." + role)).isNotBlank();
    }
}
