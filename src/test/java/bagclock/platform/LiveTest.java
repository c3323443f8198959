package bagclock.platform;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.Javalin;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class LiveTest extends OnBothDatabases {
    private Live here;
    private Live there;
    private Javalin hereServer;
    private Javalin thereServer;

    @BeforeEach
    void startTwoNodes() {
        here = new Live(database, Clock.systemUTC(), Duration.ofMillis(20));
        there = new Live(database, Clock.systemUTC(), Duration.ofMillis(20));
        hereServer = serve(here);
        thereServer = serve(there);
    }

    @AfterEach
    void stopBoth() {
        here.close();
        there.close();
        hereServer.stop();
        thereServer.stop();
    }

    @Test
    void aNoticeReachesTheBrowsersOfEveryNode() throws Exception {
        BlockingQueue<String> one = listen(hereServer);
        BlockingQueue<String> other = listen(thereServer);

        database.withTransaction(tx -> here.tell(tx, "item/R-1"));

        assertThat(one.poll(10, TimeUnit.SECONDS)).isEqualTo("item/R-1");
        assertThat(other.poll(10, TimeUnit.SECONDS)).isEqualTo("item/R-1");
    }

    @Test
    void whatWasRolledBackIsNotTold() throws Exception {
        BlockingQueue<String> heard = listen(hereServer);

        database.withTransaction(tx -> {
            here.tell(tx, "item/R-1");
            tx.handle().rollback();
        });
        database.withTransaction(tx -> here.tell(tx, "item/R-2"));

        assertThat(heard.poll(10, TimeUnit.SECONDS)).isEqualTo("item/R-2");
    }

    @Test
    void aNoticeThatIsCommittedLateIsToldAllTheSame() throws Exception {
        BlockingQueue<String> heard = listen(hereServer);
        CountDownLatch newerIsHeard = new CountDownLatch(1);
        CountDownLatch olderIsWritten = new CountDownLatch(1);
        Thread slow = new Thread(() -> database.withTransaction(tx -> {
            here.tell(tx, "slow");
            olderIsWritten.countDown();
            await(newerIsHeard);
        }));
        slow.start();
        await(olderIsWritten);

        database.withTransaction(tx -> here.tell(tx, "quick"));

        assertThat(heard.poll(10, TimeUnit.SECONDS)).isEqualTo("quick");
        newerIsHeard.countDown();
        assertThat(heard.poll(10, TimeUnit.SECONDS)).isEqualTo("slow");
        slow.join();
    }

    @Test
    void aBrowserThatStallsHoldsUpNobody() throws Exception {
        try (Socket stalled = new Socket()) {
            stalled.setReceiveBufferSize(1024);
            stalled.connect(new InetSocketAddress("localhost", hereServer.port()));
            OutputStream out = stalled.getOutputStream();
            out.write("GET /live HTTP/1.1\r\nHost: localhost\r\nAccept: text/event-stream\r\n\r\n"
                    .getBytes(StandardCharsets.US_ASCII));
            out.flush();
            await(() -> here.clients() == 1);
            BlockingQueue<String> heard = listen(hereServer);
            await(() -> here.clients() == 2);

            String padding = "x".repeat(180);
            for (int round = 0; here.clients() == 2; round++) {
                assertThat(round)
                        .as("the stalled browser should have been dropped")
                        .isLessThan(2_000);
                List<String> topics = new ArrayList<>();
                for (int i = 0; i < 50; i++) {
                    topics.add(padding + "/" + round + "/" + i);
                }
                database.withTransaction(tx -> topics.forEach(topic -> here.tell(tx, topic)));
                for (String topic : topics) {
                    assertThat(heard.poll(10, TimeUnit.SECONDS)).isEqualTo(topic);
                }
            }
            assertThat(here.clients()).isEqualTo(1);
        }
    }

    private static Javalin serve(Live live) {
        return Javalin.create(config -> {
                    live.register(config.routes);
                    config.jetty.addConnector(LiveTest::withSmallBuffers);
                })
                .start();
    }

    private static ServerConnector withSmallBuffers(Server server, HttpConfiguration http) {
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
        connector.setHost("localhost");
        connector.setPort(0);
        connector.setAcceptedSendBufferSize(4096);
        return connector;
    }

    /** The topics that a browser hears, after it is connected. */
    private static BlockingQueue<String> listen(Javalin server) throws Exception {
        BlockingQueue<String> topics = new LinkedBlockingQueue<>();
        CountDownLatch connected = new CountDownLatch(1);
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://localhost:" + server.port() + Live.PATH))
                .header("Accept", "text/event-stream")
                .build();
        Thread reader = new Thread(() -> {
            try {
                HttpClient.newHttpClient()
                        .send(request, BodyHandlers.ofLines())
                        .body()
                        .forEach(line -> {
                            connected.countDown();
                            if (line.startsWith("data: ")) {
                                topics.add(line.substring("data: ".length()));
                            }
                        });
            } catch (IOException | InterruptedException | RuntimeException ended) {
                topics.add("ended: " + ended);
            }
        });
        reader.setDaemon(true);
        reader.start();
        await(connected);
        return topics;
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(15, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException ended) {
            throw new IllegalStateException(ended);
        }
    }

    private static void await(BooleanSupplier condition) throws InterruptedException {
        for (int i = 0; i < 1_500 && !condition.getAsBoolean(); i++) {
            Thread.sleep(10);
        }
        assertThat(condition.getAsBoolean()).isTrue();
    }
}
