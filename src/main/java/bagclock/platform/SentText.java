package bagclock.platform;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The text of a form that takes a file or pasted lines: the file if one was sent, else what was pasted. */
public final class SentText {
    private static final String FILE = "file";
    private static final String PASTED = "text";

    private SentText() {}

    /** What was sent; empty for a file that is no UTF-8 text. */
    public static Optional<String> of(Context ctx) {
        Optional<byte[]> file = file(ctx);
        try {
            return file.isEmpty()
                    ? Optional.of(pasted(ctx))
                    : Optional.of(StandardCharsets.UTF_8
                            .newDecoder()
                            .decode(ByteBuffer.wrap(file.get()))
                            .toString());
        } catch (CharacterCodingException notText) {
            return Optional.empty();
        }
    }

    /** What was sent; what is no UTF-8 text stands as replacement characters, so that its line can be named. */
    public static String withReplacements(Context ctx) {
        return file(ctx).map(bytes -> new String(bytes, StandardCharsets.UTF_8)).orElseGet(() -> pasted(ctx));
    }

    private static String pasted(Context ctx) {
        return Optional.ofNullable(ctx.formParam(PASTED)).orElse("");
    }

    private static Optional<byte[]> file(Context ctx) {
        UploadedFile file = ctx.uploadedFile(FILE);
        if (file == null || file.size() == 0) {
            return Optional.empty();
        }
        try (var content = file.content()) {
            return Optional.of(content.readAllBytes());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
