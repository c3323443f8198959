package bagclock.platform;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import org.jdbi.v3.core.argument.AbstractArgumentFactory;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.config.ConfigRegistry;
import org.jdbi.v3.core.mapper.ColumnMapper;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;

/**
 * Instants as {@code timestamp with time zone}. They travel with their offset: by way of {@code java.sql.Timestamp} the
 * hour that a zone has twice in autumn would come back wrong on H2, and PostgreSQL's driver knows no Instant at all.
 */
final class InstantColumns {
    private InstantColumns() {}

    static final class Binder extends AbstractArgumentFactory<Instant> {
        Binder() {
            super(Types.TIMESTAMP_WITH_TIMEZONE);
        }

        @Override
        protected Argument build(Instant value, ConfigRegistry config) {
            OffsetDateTime stored = value.truncatedTo(ChronoUnit.MILLIS).atOffset(ZoneOffset.UTC);
            return (position, statement, ctx) -> statement.setObject(position, stored);
        }
    }

    static final class Reader implements ColumnMapper<@Nullable Instant> {
        @Override
        public @Nullable Instant map(ResultSet row, int column, StatementContext ctx) throws SQLException {
            OffsetDateTime stored = row.getObject(column, OffsetDateTime.class);
            return stored == null ? null : stored.toInstant();
        }
    }
}
