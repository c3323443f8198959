package bagclock;

import java.nio.file.Path;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/**
 * The site's own certificate.
 *
 * @param keyStore PKCS 12 or JKS file with the key and its certificates
 */
public record Tls(Path keyStore, String password) {
    Connector connector(Server server, HttpConfiguration http, String address, int port) {
        SslContextFactory.Server secrets = new SslContextFactory.Server();
        secrets.setKeyStorePath(keyStore.toAbsolutePath().toString());
        secrets.setKeyStorePassword(password);
        HttpConfiguration secure = new HttpConfiguration(http);
        secure.addCustomizer(new SecureRequestCustomizer(false));
        ServerConnector connector = new ServerConnector(server, secrets, new HttpConnectionFactory(secure));
        connector.setHost(address);
        connector.setPort(port);
        return connector;
    }

    /** Without the password. */
    @Override
    public String toString() {
        return "Tls[" + keyStore + "]";
    }
}
