package bagclock.platform;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.lang.reflect.Type;
import java.sql.SQLException;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;
import java.util.function.Function;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.config.ConfigRegistry;
import org.jdbi.v3.core.mapper.ColumnMappers;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.mapper.reflect.ConstructorMapper;

/**
 * The one database of a site, H2 or PostgreSQL: pool, migrations, transactions. Any record can be a row:
 * {@code query.mapTo(ItemRow.class)} maps columns to components by name. Instants are kept to the millisecond. May be
 * used by many threads.
 */
public final class Database implements AutoCloseable {
    private static final int ATTEMPTS = 8;
    private static final long FIRST_PAUSE_NANOS = 5_000_000;

    /** Serialization failure and dead lock; H2: lock time-out and concurrent update; PostgreSQL: dead lock, lock. */
    private static final Set<String> WORTH_ANOTHER_TRY = Set.of("40001", "HYT00", "90131", "40P01", "55P03");

    private static final String DUPLICATE_KEY = "23505";
    private static final String H2_FILE_IN_USE = "90020";

    private final HikariDataSource pool;
    private final Jdbi jdbi;

    private Database(HikariDataSource pool) {
        this.pool = pool;
        this.jdbi = Jdbi.create(pool);
        jdbi.registerArgument(new InstantColumns.Binder());
        jdbi.registerColumnMapper(new InstantColumns.Reader());
        jdbi.getConfig(ColumnMappers.class).setCoalesceNullPrimitivesToDefaults(false);
        jdbi.registerRowMapper(Database::rowMapper);
    }

    /** Opens the pool and brings the schema up to date; fails when the database can't be reached. */
    public static Database open(String url) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        config.setPoolName("bagclock");
        config.setMinimumIdle(1);
        if (url.startsWith("jdbc:h2:")) {
            config.setUsername("sa");
            config.setPassword("");
        }
        HikariDataSource pool = new HikariDataSource(config);
        try {
            Flyway.configure()
                    .dataSource(pool)
                    .locations("classpath:db/migration")
                    .validateMigrationNaming(true)
                    .load()
                    .migrate();
        } catch (RuntimeException failure) {
            pool.close();
            throw failure;
        }
        return new Database(pool);
    }

    /**
     * Runs the work in one transaction: all of it is kept, or none. Work that lost against another transaction is run
     * again, so it must have no effect outside the database.
     */
    public <T> T inTransaction(Function<Transaction, T> work) {
        for (int attempt = 1; ; attempt++) {
            try {
                return jdbi.inTransaction(handle -> work.apply(new Transaction(handle)));
            } catch (RuntimeException failure) {
                if (attempt == ATTEMPTS || !WORTH_ANOTHER_TRY.contains(sqlState(failure))) {
                    throw failure;
                }
                pauseAfter(attempt);
            }
        }
    }

    /** As {@link #inTransaction}, for work without a result. */
    public void withTransaction(Consumer<Transaction> work) {
        inTransaction(transaction -> {
            work.accept(transaction);
            return true;
        });
    }

    /** Runs queries that change nothing; each sees what was committed before it. */
    public <T> T read(Function<Transaction, T> query) {
        return jdbi.withHandle(handle -> query.apply(new Transaction(handle)));
    }

    /** Whether a failure says that a unique key is taken; on PostgreSQL the transaction is lost with it. */
    public static boolean isDuplicateKey(RuntimeException failure) {
        return DUPLICATE_KEY.equals(sqlState(failure));
    }

    /** Whether a failure to open says that another process has the H2 file. */
    public static boolean isInUse(Throwable failure) {
        return H2_FILE_IN_USE.equals(sqlState(failure));
    }

    @Override
    public void close() {
        pool.close();
    }

    private static Optional<RowMapper<?>> rowMapper(Type type, ConfigRegistry config) {
        return type instanceof Class<?> row && row.isRecord()
                ? Optional.of(ConstructorMapper.of(row))
                : Optional.empty();
    }

    private static String sqlState(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql && sql.getSQLState() != null) {
                return sql.getSQLState();
            }
        }
        return "";
    }

    /** Doubling, and by chance, so that two that met don't meet again. */
    private static void pauseAfter(int attempt) {
        long most = FIRST_PAUSE_NANOS << attempt;
        LockSupport.parkNanos(ThreadLocalRandom.current().nextLong(most / 2, most));
    }
}
