package bagclock.logfile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Finds out in which characters a file is written: by its mark, else UTF-8 if all of it is, else Windows-1252. */
final class Decoding {
    private static final Charset WESTERN = Charset.forName("windows-1252");
    private static final int BUFFER = 1 << 16;

    private Decoding() {}

    static Charset of(LogSource source) throws IOException {
        try (InputStream in = source.open()) {
            byte[] start = in.readNBytes(BUFFER);
            if (starts(start, 0xFF, 0xFE) || starts(start, 0xFE, 0xFF)) {
                return StandardCharsets.UTF_16;
            }
            return isUtf8(start, in) ? StandardCharsets.UTF_8 : WESTERN;
        }
    }

    private static boolean starts(byte[] bytes, int first, int second) {
        return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private static boolean isUtf8(byte[] start, InputStream rest) throws IOException {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.allocate(2 * BUFFER);
        CharBuffer characters = CharBuffer.allocate(2 * BUFFER);
        byte[] next = start;
        while (next.length > 0) {
            bytes.put(next).flip();
            characters.clear();
            CoderResult result = decoder.decode(bytes, characters, false);
            if (result.isError()) {
                return false;
            }
            bytes.compact();
            next = rest.readNBytes(BUFFER);
        }
        bytes.flip();
        characters.clear();
        return !decoder.decode(bytes, characters, true).isError();
    }
}
