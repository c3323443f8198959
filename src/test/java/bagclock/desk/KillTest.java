package bagclock.desk;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.ledger.Ledger;
import bagclock.platform.Database;
import bagclock.platform.Settings;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A site on an H2 file is killed under load: every event that was acknowledged is found, and every chain holds. */
class KillTest {
    private static final int ACKNOWLEDGED = 120;

    @Test
    @Timeout(120)
    void everyAcknowledgedEventOutlivesTheProcess(@TempDir Path folder) throws Exception {
        String url = Settings.h2Url(folder);
        List<String> acknowledged = writeUntilKilled(url);

        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(ACKNOWLEDGED);
        Ledger ledger = new Ledger();
        try (Database database = Database.open(url)) {
            List<String> lost = database.read(tx -> acknowledged.stream()
                    .filter(key -> ledger.byKey(tx, key).isEmpty())
                    .toList());
            assertThat(lost).isEmpty();
            database.read(tx -> ledger.tags(tx).stream()
                            .flatMap(tag -> ledger.verify(tx, tag).stream())
                            .toList())
                    .forEach(fault -> assertThat(fault).isNull());
        }
    }

    private static List<String> writeUntilKilled(String url) throws IOException, InterruptedException {
        Process site = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledSite.class.getName(),
                        url)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        List<String> acknowledged = new ArrayList<>();
        try (BufferedReader lines = site.inputReader(StandardCharsets.UTF_8)) {
            String line = lines.readLine();
            while (line != null) {
                if (line.startsWith("R-")) {
                    acknowledged.add(line);
                }
                if (acknowledged.size() == ACKNOWLEDGED) {
                    site.toHandle().destroyForcibly();
                }
                line = lines.readLine();
            }
        } finally {
            site.destroyForcibly();
        }
        assertThat(site.waitFor(20, TimeUnit.SECONDS)).isTrue();
        return acknowledged;
    }
}
