package bagclock.logfile;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;

/** A file that can be read from its beginning as often as needed. */
@FunctionalInterface
public interface LogSource {
    /** A fresh stream of its bytes; the caller closes it. */
    InputStream open() throws IOException;

    /** A file that is in memory already. */
    static LogSource of(byte[] bytes) {
        return () -> new ByteArrayInputStream(bytes);
    }
}
