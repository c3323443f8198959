package bagclock;

import bagclock.platform.Database;
import bagclock.platform.Settings;
import io.javalin.util.JavalinBindException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The command line. Exit status: 0 done, 1 a failure, 2 a bad request. */
@Command(
        name = "bagclock",
        description = "The clock that starts when a dry bag is opened.",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND")
public final class Main implements Runnable {
    private static final int USUAL_PORT = 8080;

    @Spec
    CommandSpec spec;

    private Main() {}

    /** Runs one command; the process ends with its exit status, or goes on while a server runs. */
    public static void main(String[] args) {
        int status = commandLine(Clock.systemUTC()).execute(args);
        if (status != CommandLine.ExitCode.OK) {
            System.exit(status);
        }
    }

    /** The commands, with the clock that they hand on. */
    public static CommandLine commandLine(Clock clock) {
        return new CommandLine(new Main())
                .addSubcommand(new AssessCommand(System.in))
                .addSubcommand(new Demo(clock))
                .addSubcommand(new Serve(clock))
                .setExecutionExceptionHandler(Main::failed);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do.");
    }

    /** A failure that the operator can mend is said in one line; any other with its trace. */
    private static int failed(Exception failure, CommandLine command, CommandLine.ParseResult parsed) {
        if (failure instanceof JavalinBindException) {
            command.getErr().println("This port is taken. Choose another with --port, or stop what uses it.");
        } else if (Database.isInUse(failure)) {
            command.getErr().println("Another process uses these data. Stop it, or choose another folder with --data.");
        } else {
            failure.printStackTrace(command.getErr());
        }
        return CommandLine.ExitCode.SOFTWARE;
    }

    private static void announce(Site site, PrintWriter out, String what, String address) {
        Runtime.getRuntime().addShutdownHook(new Thread(site::close, "shutdown"));
        String root = address + ":" + site.port() + "/";
        out.println(what + ": " + root);
        site.firstStartCode()
                .ifPresent(code -> out.println("Nobody has an account yet. Make the first one at " + root
                        + "first-start with this one-time code: " + code));
        out.flush();
    }

    /** Refuses what is no port, before anything starts. */
    static final class Port implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            if (!text.matches("\\d{1,5}") || Integer.parseInt(text) > 65_535) {
                throw new TypeConversionException("a port is 0 to 65535, not " + text);
            }
            return Integer.valueOf(text);
        }
    }

    /** Shows the invented shop; everything is forgotten when it ends. */
    @Command(
            name = "demo",
            description = "Start the demonstration shop; nothing is kept.",
            mixinStandardHelpOptions = true)
    static final class Demo implements Callable<Integer> {
        private static final String IN_MEMORY = "jdbc:h2:mem:demo;DB_CLOSE_DELAY=-1;DB_CLOSE_ON_EXIT=FALSE";

        private final Clock clock;

        @Spec
        CommandSpec spec;

        @Option(
                names = "--port",
                converter = Port.class,
                description = "Port to listen on; another is taken if it is in use. Usually ${DEFAULT-VALUE}.")
        int port = USUAL_PORT;

        Demo(Clock clock) {
            this.clock = clock;
        }

        @Override
        public Integer call() {
            Settings settings = new Settings("localhost", port, Path.of("."), IN_MEMORY, ZoneId.systemDefault(), true);
            Site site = startSomewhere(settings);
            announce(
                    site,
                    spec.commandLine().getOut(),
                    "The demonstration shop is open",
                    "http://" + settings.address());
            return CommandLine.ExitCode.OK;
        }

        private Site startSomewhere(Settings settings) {
            try {
                return Site.demo(settings, clock);
            } catch (JavalinBindException taken) {
                return Site.demo(settings.withPort(0), clock);
            }
        }
    }

    /** Runs a site. */
    @Command(name = "serve", description = "Run a site.", mixinStandardHelpOptions = true)
    static final class Serve implements Callable<Integer> {
        private final Clock clock;

        @Spec
        CommandSpec spec;

        @Option(names = "--address", description = "Network address to listen on. Usually ${DEFAULT-VALUE}.")
        String address = "localhost";

        @Option(names = "--port", converter = Port.class, description = "Port to listen on. Usually ${DEFAULT-VALUE}.")
        int port = USUAL_PORT;

        @Option(names = "--data", description = "Folder of the site's files. Usually ${DEFAULT-VALUE}.")
        Path data = Path.of("bagclock-data");

        @Option(
                names = "--database",
                defaultValue = "${env:BAGCLOCK_DATABASE}",
                description =
                        "JDBC address of PostgreSQL, or set BAGCLOCK_DATABASE. Usually an H2 file in the data folder.")
        Optional<String> database = Optional.empty();

        @Option(
                names = "--zone",
                description = "Zone in which times are shown, such as Europe/Berlin. Usually the computer's.")
        Optional<ZoneId> zone = Optional.empty();

        @Option(names = "--key-store", description = "PKCS 12 file with the site's key; the site then speaks TLS only.")
        Optional<Path> keyStore = Optional.empty();

        @Option(
                names = "--key-store-password",
                defaultValue = "${env:BAGCLOCK_KEY_STORE_PASSWORD}",
                description = "Its password, or set BAGCLOCK_KEY_STORE_PASSWORD.")
        Optional<String> keyStorePassword = Optional.empty();

        Serve(Clock clock) {
            this.clock = clock;
        }

        @Override
        public Integer call() throws IOException {
            Files.createDirectories(data);
            Settings settings = new Settings(
                    address,
                    port,
                    data,
                    database.orElseGet(() -> Settings.h2Url(data)),
                    zone.orElseGet(ZoneId::systemDefault),
                    false);
            if (keyStore.isPresent() && !Files.isReadable(keyStore.get())) {
                throw new ParameterException(spec.commandLine(), "Can't read the key store " + keyStore.get() + ".");
            }
            Optional<Tls> tls = keyStore.map(file -> new Tls(file, keyStorePassword.orElse("")));
            String root = (tls.isPresent() ? "https://" : "http://") + address;
            announce(Site.start(settings, tls, clock), spec.commandLine().getOut(), "Bagclock is open", root);
            return CommandLine.ExitCode.OK;
        }
    }
}
