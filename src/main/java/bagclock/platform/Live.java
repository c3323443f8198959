package bagclock.platform;

import io.javalin.config.RoutesConfig;
import io.javalin.http.HttpStatus;
import io.javalin.http.sse.SseClient;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Tells the open pages what changed, by server-sent events at {@value #PATH}: event {@code changed}, its data the topic,
 * such as {@code item/R-1042}. Topics hold ids only; a page fetches what it shows. Notices go through the database, so
 * that every node's browsers hear of them, and a notice is told only if its transaction is kept.
 */
public final class Live implements AutoCloseable {
    /** The stream's address. */
    public static final String PATH = "/live";

    private static final Logger LOG = LoggerFactory.getLogger(Live.class);
    private static final int MOST_CLIENTS = 500;
    private static final Duration POLL = Duration.ofMillis(400);
    private static final int POLLS_BETWEEN_TIDYING = 750;
    private static final Duration KEPT_FOR = Duration.ofHours(1);

    /** Ids are drawn before they are committed: a slow transaction's notice shows up behind newer ones. */
    private static final int OVERLAP = 500;

    private final Database database;
    private final NoticeStore notices = new NoticeStore();
    private final Clock clock;
    private final Duration poll;
    private final Set<LiveClient> clients = ConcurrentHashMap.newKeySet();
    private final Set<Long> told = new LinkedHashSet<>();
    private final Thread poller;
    private long newest;

    /** Starts to poll; ends with {@link #close}. */
    public Live(Database database, Clock clock) {
        this(database, clock, POLL);
    }

    Live(Database database, Clock clock, Duration poll) {
        this.poll = poll;
        this.database = database;
        this.clock = clock;
        this.newest = database.read(notices::newest);
        database.read(tx -> notices.after(tx, newest - OVERLAP)).forEach(notice -> told.add(notice.id()));
        this.poller = daemon(this::poll, "live-poller");
        poller.start();
    }

    /** Declares the stream; anyone may listen, since ids alone say nothing. */
    public void register(RoutesConfig routes) {
        routes.sse(PATH, this::connect, Role.ANYONE);
    }

    /** Notes within a transaction that something changed. */
    public void tell(Transaction transaction, String topic) {
        notices.add(transaction, topic, clock.instant());
    }

    @Override
    public void close() {
        poller.interrupt();
        clients.forEach(LiveClient::close);
    }

    int clients() {
        return clients.size();
    }

    private void connect(SseClient stream) {
        if (clients.size() >= MOST_CLIENTS) {
            stream.ctx().status(HttpStatus.SERVICE_UNAVAILABLE);
            stream.close();
            return;
        }
        LiveClient client = new LiveClient(stream);
        stream.keepAlive();
        stream.onClose(() -> {
            clients.remove(client);
            client.close();
        });
        clients.add(client);
        daemon(client, "live-client").start();
    }

    private void poll() {
        try {
            for (int round = 1; ; round++) {
                Thread.sleep(poll.toMillis());
                tellNew();
                if (round % POLLS_BETWEEN_TIDYING == 0) {
                    tidy();
                }
            }
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        }
    }

    private void tellNew() {
        try {
            List<Notice> fresh = new ArrayList<>();
            for (Notice notice : database.read(tx -> notices.after(tx, newest - OVERLAP))) {
                if (told.add(notice.id())) {
                    fresh.add(notice);
                }
                newest = Math.max(newest, notice.id());
            }
            told.removeIf(id -> id <= newest - OVERLAP);
            clients.forEach(client -> fresh.forEach(client::offer));
        } catch (RuntimeException failure) {
            LOG.warn("notices could not be read; the next poll tries again", failure);
        }
    }

    private void tidy() {
        try {
            database.withTransaction(
                    tx -> notices.deleteBefore(tx, clock.instant().minus(KEPT_FOR)));
        } catch (RuntimeException failure) {
            LOG.warn("old notices could not be deleted; the next round tries again", failure);
        }
    }

    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }
}
