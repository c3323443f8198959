package bagclock.platform;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;

/** The two kinds of database that every store must work on. */
public enum Engine {
    /** In memory. */
    H2 {
        @Override
        public String freshUrl() {
            return "jdbc:h2:mem:test" + COUNT.incrementAndGet() + ";DB_CLOSE_DELAY=-1";
        }
    },
    /** A real server, started once for a whole test run. */
    POSTGRES {
        @Override
        public String freshUrl() {
            return Server.databaseLike(Server.TEMPLATE);
        }
    };

    private static final AtomicInteger COUNT = new AtomicInteger();

    /** The address of a database that nobody else uses. */
    public abstract String freshUrl();

    /** Opens a database that nobody else uses, with its schema. */
    public Database fresh() {
        return Database.open(freshUrl());
    }

    private static final class Server {
        static final EmbeddedPostgres POSTGRES = start();
        static final String TEMPLATE = template();

        private Server() {}

        private static EmbeddedPostgres start() {
            try {
                return EmbeddedPostgres.builder()
                        .setServerConfig("fsync", "off")
                        .setServerConfig("full_page_writes", "off")
                        .start();
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        }

        /** Migrated once; a copy costs far less than the migrations. */
        private static String template() {
            Database.open(databaseLike("template0")).close();
            return "test" + COUNT.get();
        }

        static synchronized String databaseLike(String template) {
            String name = "test" + COUNT.incrementAndGet();
            try (Connection connection = POSTGRES.getPostgresDatabase().getConnection();
                    Statement statement = connection.createStatement()) {
                statement.execute("create database " + name + " template " + template);
            } catch (SQLException failure) {
                throw new IllegalStateException(failure);
            }
            return POSTGRES.getJdbcUrl("postgres", name);
        }
    }
}
