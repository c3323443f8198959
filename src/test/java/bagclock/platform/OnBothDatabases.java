package bagclock.platform;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

/** Base of every store's test: each of its tests runs on H2 and on PostgreSQL, with a fresh, migrated database. */
@ParameterizedClass(name = "{0}")
@EnumSource(Engine.class)
public abstract class OnBothDatabases {
    @Parameter
    protected Engine engine;

    protected Database database;

    @BeforeEach
    void openDatabase() {
        database = engine.fresh();
    }

    @AfterEach
    void closeDatabase() {
        database.close();
    }
}
