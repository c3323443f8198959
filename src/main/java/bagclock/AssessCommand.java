package bagclock;

import bagclock.assess.AssessContract;
import bagclock.assess.BadRequest;
import bagclock.core.standard.Edition;
import bagclock.core.standard.Standard;
import bagclock.platform.AnswerTexts;
import bagclock.platform.Messages;
import bagclock.platform.Texts;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Answers requests of the assess contract from a file; needs no database. */
@Command(
        name = "assess",
        description = "Answer requests of the assess contract: may this part or board be heated?",
        mixinStandardHelpOptions = true)
final class AssessCommand implements Callable<Integer> {
    private static final String STANDARD_INPUT = "-";

    private final InputStream standardInput;

    @Spec
    CommandSpec spec;

    @Parameters(
            paramLabel = "FILE",
            description = "A JSON file with one request or an array of them; - for standard input.")
    String file;

    AssessCommand(InputStream standardInput) {
        this.standardInput = standardInput;
    }

    /** The contract in English, with times in UTC. */
    static AssessContract contract(Supplier<Standard> tables) {
        Messages messages = Messages.load();
        AnswerTexts text = new AnswerTexts(messages, new Texts(ZoneOffset.UTC, messages));
        return new AssessContract(tables, text);
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        try {
            Standard shipped = Standard.load(Edition.J_STD_033D);
            out.println(contract(() -> shipped).answer(read()));
            out.flush();
            return ExitCode.OK;
        } catch (BadRequest bad) {
            bad.problems().forEach(err::println);
        } catch (IOException | InvalidPathException unreadable) {
            err.println("The file can't be read: " + file);
        }
        err.flush();
        return ExitCode.USAGE;
    }

    private String read() throws IOException {
        byte[] bytes = file.equals(STANDARD_INPUT) ? standardInput.readAllBytes() : Files.readAllBytes(Path.of(file));
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
