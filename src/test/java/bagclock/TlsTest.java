package bagclock;

import static org.assertj.core.api.Assertions.assertThat;

import bagclock.platform.Engine;
import bagclock.platform.Settings;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A site with a key store of its own. */
class TlsTest {
    private static final String PASSWORD = "only-for-this-test";

    @Test
    void aSiteWithAKeyStoreSpeaksTlsAndItsCookieIsSecure(@TempDir Path folder) throws Exception {
        Path keyStore = folder.resolve("site.p12");
        makeKey(keyStore);
        Settings settings = new Settings("localhost", 0, folder, Engine.H2.freshUrl(), ZoneId.of("UTC"), false);
        try (Site site = Site.start(settings, Optional.of(new Tls(keyStore, PASSWORD)), Clock.systemUTC())) {
            HttpClient client =
                    HttpClient.newBuilder().sslContext(trusting(keyStore)).build();
            HttpResponse<String> answer = client.send(
                    HttpRequest.newBuilder(URI.create("https://localhost:" + site.port() + "/sign-in"))
                            .build(),
                    BodyHandlers.ofString());
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.headers().firstValue("Set-Cookie").orElse("")).contains("Secure");
        }
    }

    private static void makeKey(Path keyStore) throws IOException, InterruptedException {
        Process keytool = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "keytool")
                                .toString(),
                        "-genkeypair",
                        "-alias",
                        "site",
                        "-keyalg",
                        "EC",
                        "-dname",
                        "CN=localhost",
                        "-ext",
                        "san=dns:localhost",
                        "-keystore",
                        keyStore.toString(),
                        "-storetype",
                        "PKCS12",
                        "-storepass",
                        PASSWORD)
                .start();
        assertThat(keytool.waitFor()).isZero();
    }

    private static SSLContext trusting(Path keyStore) throws IOException, GeneralSecurityException {
        KeyStore known = KeyStore.getInstance("PKCS12");
        try (InputStream file = Files.newInputStream(keyStore)) {
            known.load(file, PASSWORD.toCharArray());
        }
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("site", known.getCertificate("site"));
        TrustManagerFactory trust = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return context;
    }
}
