package bagclock.platform;

import io.javalin.http.sse.SseClient;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * One browser that listens, with its own thread and a bounded queue: one that stalls holds up nobody, and is dropped
 * when its queue is full. It comes back by itself and fetches its page anew.
 */
final class LiveClient implements Runnable {
    private static final int QUEUE = 64;
    private static final long PING_SECONDS = 15;

    private final SseClient stream;
    private final BlockingQueue<Notice> waiting = new ArrayBlockingQueue<>(QUEUE);
    private volatile boolean closed;

    LiveClient(SseClient stream) {
        this.stream = stream;
    }

    void offer(Notice notice) {
        if (!waiting.offer(notice)) {
            close();
        }
    }

    /** May be called from any thread, more than once. */
    void close() {
        if (!closed) {
            closed = true;
            stream.close();
        }
    }

    @Override
    public void run() {
        try {
            stream.sendComment("listening");
            while (!closed && !stream.terminated()) {
                Notice notice = waiting.poll(PING_SECONDS, TimeUnit.SECONDS);
                if (closed) {
                    return;
                }
                if (notice == null) {
                    stream.sendComment("ping");
                } else {
                    stream.sendEvent("changed", notice.topic(), Long.toString(notice.id()));
                }
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        } finally {
            close();
        }
    }
}
