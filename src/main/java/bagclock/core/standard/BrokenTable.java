package bagclock.core.standard;

/** A table file that can't be read; its message names file, line and reason. It stops the start. */
public final class BrokenTable extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    BrokenTable(String file, int line, String reason) {
        super(file + " line " + line + ": " + reason);
    }
}
