package eavesproof.exchange;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** The text of a file's bytes: UTF-8 and nothing else, as RFC 8259 section 8.1 has it. */
final class FileText {
    /** No job is this large; a larger file is another file. */
    static final int MOST_BYTES = 16 * 1024 * 1024;

    private FileText() {}

    /** The text, or null if it is none; what is wrong with it goes to the problems. */
    static @Nullable String of(byte[] bytes, Problems problems) {
        if (bytes.length > MOST_BYTES) {
            problems.add(atStart(bytes.length + " bytes", "at most " + MOST_BYTES + " bytes"));
            return null;
        }
        if (looksLikeUtf16(bytes)) {
            problems.add(atStart("UTF-16 text", "UTF-8 text"));
            return null;
        }
        int skipped = 0;
        if (startsWith(bytes, 0xef, 0xbb, 0xbf)) {
            problems.add(atStart("a byte order mark", "UTF-8 text without one"));
            skipped = 3;
        }
        return decoded(ByteBuffer.wrap(bytes, skipped, bytes.length - skipped), problems);
    }

    private static @Nullable String decoded(ByteBuffer bytes, Problems problems) {
        CharsetDecoder decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer text = CharBuffer.allocate(bytes.remaining());
        CoderResult result = decoder.decode(bytes, text, true);
        String good = text.flip().toString();
        if (result.isError()) {
            int line = 1 + (int) good.chars().filter(letter -> letter == '\n').count();
            int column = good.length() - good.lastIndexOf('\n');
            String found = String.format("the byte %02x", bytes.get(bytes.position()) & 0xff);
            problems.add(new RecordProblem("", line, column, found, "UTF-8 text"));
            return null;
        }
        return good;
    }

    /** A JSON text begins with two ASCII characters, so a nought among them is UTF-16 or 32. */
    private static boolean looksLikeUtf16(byte[] bytes) {
        return startsWith(bytes, 0xfe, 0xff)
                || startsWith(bytes, 0xff, 0xfe)
                || (bytes.length > 1 && (bytes[0] == 0 || bytes[1] == 0));
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        for (int i = 0; i < start.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xff) != start[i]) {
                return false;
            }
        }
        return true;
    }

    private static RecordProblem atStart(String found, String expected) {
        return new RecordProblem("", 1, 1, found, expected);
    }
}
