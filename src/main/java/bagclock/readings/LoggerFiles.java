package bagclock.readings;

import bagclock.logfile.LogSource;
import bagclock.platform.Database;
import bagclock.platform.NotThere;
import bagclock.platform.Transaction;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/** Loggers and their files. A file is kept as it came, so that what was read from it can be proved. */
public final class LoggerFiles {
    private static final int PIECE_BYTES = 500_000;

    private final FileStore files = new FileStore();
    private final LoggerStore loggers = new LoggerStore();
    private final HalfStore halves = new HalfStore();

    /** What a person uploads. */
    public record Upload(String logger, String placeCode, String fileName, InputStream content) {}

    /** Keeps a file. */
    public LoggerFile add(Transaction tx, Upload upload, Source source) throws IOException {
        String id = UUID.randomUUID().toString();
        MessageDigest digest = sha256();
        files.add(
                tx,
                new LoggerFile(
                        id,
                        upload.logger(),
                        upload.placeCode(),
                        upload.fileName(),
                        "",
                        0,
                        source.recordedAt(),
                        source.who()));
        long size;
        try (InputStream in = new DigestInputStream(upload.content(), digest);
                OutputStream out = new GZIPOutputStream(new Pieces(tx, id))) {
            size = in.transferTo(out);
        }
        files.setContent(tx, id, HexFormat.of().formatHex(digest.digest()), size);
        return byId(tx, id);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Writes pieces as they fill up. */
    private final class Pieces extends OutputStream {
        private final Transaction tx;
        private final String id;
        private final ByteArrayOutputStream piece = new ByteArrayOutputStream(PIECE_BYTES);
        private int seq;

        Pieces(Transaction tx, String id) {
            this.tx = tx;
            this.id = id;
        }

        @Override
        public void write(int one) {
            piece.write(one);
            if (piece.size() >= PIECE_BYTES) {
                close();
            }
        }

        @Override
        public void close() {
            if (piece.size() > 0) {
                files.addPiece(tx, id, seq, piece.toByteArray());
                piece.reset();
                seq++;
            }
        }
    }

    /** The bytes of a file, read piece by piece. */
    public LogSource source(Database database, String id) {
        return () -> new GZIPInputStream(new Packed(database, id), 1 << 16);
    }

    private final class Packed extends InputStream {
        private final Database database;
        private final String id;
        private byte[] piece = {};
        private int seq;
        private int at;

        Packed(Database database, String id) {
            this.database = database;
            this.id = id;
        }

        @Override
        public int read() {
            return isAtEnd() ? -1 : piece[at++] & 0xFF;
        }

        @Override
        public int read(byte[] target, int offset, int length) {
            if (isAtEnd()) {
                return -1;
            }
            int count = Math.min(length, piece.length - at);
            System.arraycopy(piece, at, target, offset, count);
            at += count;
            return count;
        }

        private boolean isAtEnd() {
            if (at == piece.length) {
                piece = database.read(tx -> files.piece(tx, id, seq)).orElse(new byte[0]);
                at = 0;
                seq++;
            }
            return piece.length == 0;
        }

        @Override
        public int available() {
            return isAtEnd() ? 0 : piece.length - at;
        }
    }

    /**
     * A file.
     *
     * @throws NotThere when there is none with this id
     */
    public LoggerFile byId(Transaction tx, String id) {
        return files.byId(tx, id).orElseThrow(() -> new NotThere("no file " + id));
    }

    /** The newest files first. */
    public List<LoggerFile> newest(Transaction tx, int most) {
        return files.newest(tx, most);
    }

    /** The newest files of the same logger at the same place first, without the file itself. */
    public List<LoggerFile> besides(Transaction tx, LoggerFile file, int most) {
        return files.newestOf(tx, file.logger(), file.placeCode(), most).stream()
                .filter(other -> !other.id().equals(file.id()))
                .toList();
    }

    /** Says that a file is read with another: one holds temperatures, the other humidities. */
    public void join(Transaction tx, String id, String otherId, Source source) {
        halves.say(tx, id, Optional.of(otherId), source);
    }

    /** Says that a file is read by itself again. */
    public void part(Transaction tx, String id, Source source) {
        halves.say(tx, id, Optional.empty(), source);
    }

    /** The file that this one is read with. */
    public Optional<LoggerFile> otherHalf(Transaction tx, String id) {
        return halves.otherOf(tx, id).map(other -> byId(tx, other));
    }

    /** The files that are read with this one. */
    public List<LoggerFile> readWith(Transaction tx, String id) {
        return halves.readWith(tx, id).stream().map(file -> byId(tx, file)).toList();
    }

    /** What happened to a file, in order. */
    public List<FileEvent> events(Transaction tx, String id) {
        return files.events(tx, id);
    }

    /** As {@link #events}, kept from others until the transaction ends: what is decided by them stays right. */
    public List<FileEvent> lockedEvents(Transaction tx, String id) {
        files.lock(tx, id);
        return files.events(tx, id);
    }

    /** Whether the import that began with this event is still the last that is known of the file; keeps it so. */
    public boolean isRunning(Transaction tx, String id, int begunSeq) {
        return lockedEvents(tx, id).size() == begunSeq;
    }

    /** Notes what happened; fails if another event with this number was noted meanwhile. */
    public void add(Transaction tx, String id, FileEvent event) {
        files.add(tx, id, event);
    }

    /** Notes how far an import is. */
    public void setProgress(Transaction tx, String id, Progress progress) {
        files.setProgress(tx, id, progress);
    }

    /** How far an import is. */
    public Progress progress(Transaction tx, String id) {
        return files.progress(tx, id);
    }

    /** Whether readings of these places that a logger measured at or after a moment count, or may yet. */
    public boolean hasReadSince(Transaction tx, String logger, Collection<String> places, Instant from) {
        return files.hasReadSince(tx, logger, places, from);
    }

    /** Every logger, by name. */
    public List<LoggerProfile> loggers(Transaction tx) {
        return loggers.all(tx).stream().map(LoggerRow::profile).toList();
    }

    /** A logger by its name. */
    public Optional<LoggerProfile> logger(Transaction tx, String name) {
        return loggers.of(tx, name).map(LoggerRow::profile);
    }

    /** Keeps what was said about a logger, as one more version if it differs. */
    public void keep(Transaction tx, LoggerProfile profile, Source source) {
        Optional<LoggerRow> before = loggers.of(tx, profile.name());
        if (before.isEmpty() || !before.get().profile().equals(profile)) {
            int version = before.map(LoggerRow::version).orElse(0) + 1;
            loggers.add(tx, LoggerRow.of(profile, version), source);
        }
    }

    /** Whether readings of a file count, or may yet, after these events. */
    public static boolean counts(List<FileEvent> events) {
        return !events.isEmpty() && events.get(events.size() - 1).what() != FileEvent.What.TAKEN_BACK;
    }

    /** From when until when the readings of a file may be, by its beginnings. */
    public static Optional<Instant> first(List<FileEvent> events) {
        return events.stream().flatMap(event -> event.first().stream()).min(Instant::compareTo);
    }

    /** As {@link #first}, the other end. */
    public static Optional<Instant> last(List<FileEvent> events) {
        return events.stream().flatMap(event -> event.last().stream()).max(Instant::compareTo);
    }
}
