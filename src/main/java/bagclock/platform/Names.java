package bagclock.platform;

/** The names of persons as pages show them, by the ids that stand in every event. */
public final class Names {
    private final Database database;

    /** Names of one site's people. */
    public Names(Database database) {
        this.database = database;
    }

    /** The name shown for this id; the id itself if it is nobody's. */
    public String of(String id) {
        return database.read(tx -> tx.handle()
                .createQuery("select display from person where id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .findOne()
                .orElse(id));
    }
}
