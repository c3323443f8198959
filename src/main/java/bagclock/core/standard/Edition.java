package bagclock.core.standard;

/** An edition of the handling standard whose tables are on board; each member names the folder of its files. */
public enum Edition {
    /** IPC/JEDEC J-STD-033D (2018); classification by J-STD-020, D.1 and later. */
    J_STD_033D("d2018");

    private final String folder;

    Edition(String folder) {
        this.folder = folder;
    }

    /** Class-path name of one of its files, relative to this package. */
    String file(String name) {
        return folder + "/" + name;
    }
}
