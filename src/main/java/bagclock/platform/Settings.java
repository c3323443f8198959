package bagclock.platform;

import java.nio.file.Path;
import java.time.ZoneId;

/**
 * What a site is started with.
 *
 * @param address the network address to listen on
 * @param port 0 to 65535; 0 takes any free one
 * @param dataDirectory where the site keeps its files
 * @param databaseUrl JDBC address of H2 or PostgreSQL; may hold a password
 * @param siteZone the zone in which times are shown and read
 * @param demo whether this is the demonstration shop
 */
public record Settings(
        String address, int port, Path dataDirectory, String databaseUrl, ZoneId siteZone, boolean demo) {
    /** Refuses a port outside 0 to 65535. */
    public Settings {
        if (port < 0 || port > 65_535) {
            throw new IllegalArgumentException("port must be 0 to 65535, was " + port);
        }
    }

    /**
     * The address of the H2 file in a data directory. Every commit is on disk before it is acknowledged
     * ({@code WRITE_DELAY=0}); with H2's default a killed process loses more than a hundred of them.
     */
    public static String h2Url(Path dataDirectory) {
        return "jdbc:h2:file:" + dataDirectory.toAbsolutePath().resolve("bagclock")
                + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE";
    }

    /** The same settings on another port. */
    public Settings withPort(int other) {
        return new Settings(address, other, dataDirectory, databaseUrl, siteZone, demo);
    }

    /** Without the database's address, which may hold a password. */
    @Override
    public String toString() {
        return "Settings[%s:%d, %s, %s%s]".formatted(address, port, dataDirectory, siteZone, demo ? ", demo" : "");
    }
}
