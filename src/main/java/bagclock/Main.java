package bagclock;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line. Exit status: 0 done, 1 a failure, 2 a bad request. */
@Command(
        name = "bagclock",
        description = "The clock that starts when a dry bag is opened.",
        mixinStandardHelpOptions = true)
public final class Main implements Callable<Integer> {

    private Main() {}

    /** Runs one command; the process ends with its exit status, or goes on while a server runs. */
    public static void main(String[] args) {
        int status = commandLine().execute(args);
        if (status != CommandLine.ExitCode.OK) {
            System.exit(status);
        }
    }

    static CommandLine commandLine() {
        return new CommandLine(new Main());
    }

    @Override
    public Integer call() {
        CommandLine.usage(this, System.err);
        return CommandLine.ExitCode.USAGE;
    }
}
