package bagclock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import org.junit.jupiter.api.Test;

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
}
