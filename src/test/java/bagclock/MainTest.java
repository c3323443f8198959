package bagclock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {

    @Test
    void anUnknownCommandIsABadRequest() {
        StringWriter said = new StringWriter();

        int status = Main.commandLine(Clock.systemUTC())
                .setErr(new PrintWriter(said))
                .execute("no-such-command");

        assertThat(status).isEqualTo(2);
        assertThat(said.toString()).contains("no-such-command");
    }

    @ParameterizedTest
    @ValueSource(strings = {"65536", "-1", "many", "99999"})
    void whatIsNoPortIsABadRequest(String port) {
        StringWriter said = new StringWriter();

        int status = Main.commandLine(Clock.systemUTC())
                .setErr(new PrintWriter(said))
                .execute("demo", "--port=" + port);

        assertThat(status).isEqualTo(2);
        assertThat(said.toString()).contains("a port is 0 to 65535");
    }
}
