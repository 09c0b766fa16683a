package eavesproof.report.pdf;

import eavesproof.report.SignedBy;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Calendar;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;

/**
 * Reads one signature of a file and says everything that is wrong with it. What it covers is taken
 * from the bytes of the file, since a reader of PDF may see a file otherwise than it lies there.
 */
final class SignatureReader {
    private final byte[] file;
    private final PDSignature signature;
    private final List<String> problems = new ArrayList<>();
    private byte[] room = {};
    private byte[] cms = {};

    SignatureReader(byte[] file, PDSignature signature) {
        this.file = file;
        this.signature = signature;
    }

    FoundSignature read() {
        if (!"ETSI.CAdES.detached".equals(signature.getSubFilter())) {
            problems.add("it is of a kind that this program does not make");
        }
        Optional<SignedBy> by = Optional.empty();
        int[] range = signature.getByteRange();
        if (isRange(range)) {
            if (range[2] + range[3] != file.length) {
                problems.add(
                        "it does not cover the whole file: "
                                + (file.length - range[2] - range[3])
                                + " bytes were added after it");
            }
            room = room(range[1], range[2]);
            cms = value();
            by = verified(covered(range));
        } else {
            problems.add(
                    "the bytes that it is to cover are not named in a way that can be followed");
        }
        return new FoundSignature(by, when(), problems);
    }

    /** The value alone, to put it again. */
    byte[] cms() {
        return cms.clone();
    }

    int reserved() {
        return room.length;
    }

    private boolean isRange(int[] range) {
        return range != null
                && range.length == 4
                && range[0] == 0
                && range[1] > 0
                && range[2] > range[1] + 1
                && range[3] >= 0
                && (long) range[2] + range[3] <= file.length;
    }

    /** All that is not covered: the value as a string of hexadecimal digits, and nothing else. */
    private byte[] room(int from, int to) {
        String hex = new String(file, from, to - from, StandardCharsets.ISO_8859_1);
        if (!hex.startsWith("<") || !hex.endsWith(">")) {
            problems.add("it leaves out more of the file than its own value");
            return room;
        }
        try {
            return HexFormat.of().parseHex(hex.substring(1, hex.length() - 1));
        } catch (IllegalArgumentException e) {
            problems.add("its value is not written in hexadecimal digits");
            return room;
        }
    }

    private byte[] value() {
        int length = derLength(room);
        if (length == 0) {
            problems.add("its value cannot be read");
            return cms;
        }
        for (int i = length; i < room.length; i++) {
            if (room[i] != 0) {
                problems.add("the room for its value holds something else as well");
                break;
            }
        }
        if (!Arrays.equals(room, signature.getContents())) {
            problems.add("its value is not the one that it leaves out");
        }
        return Arrays.copyOf(room, length);
    }

    /** Of a sequence with a definite length (ITU-T X.690, 8.1.3, 10.1); 0 for anything else. */
    private static int derLength(byte[] der) {
        if (der.length < 2 || der[0] != 0x30) {
            return 0;
        }
        int first = der[1] & 0xFF;
        int more = first < 0x80 ? 0 : first - 0x80;
        if (first == 0x80 || more > 3 || der.length < 2 + more) {
            return 0;
        }
        int length = more == 0 ? first : 0;
        for (int i = 0; i < more; i++) {
            length = (length << 8) | (der[2 + i] & 0xFF);
        }
        int all = 2 + more + length;
        return all <= der.length ? all : 0;
    }

    private byte[] covered(int[] range) {
        byte[] covered = new byte[range[1] + range[3]];
        System.arraycopy(file, 0, covered, 0, range[1]);
        System.arraycopy(file, range[2], covered, range[1], range[3]);
        return covered;
    }

    private Optional<SignedBy> verified(byte[] covered) {
        if (cms.length == 0) {
            return Optional.empty();
        }
        Verification verification = Verification.of(covered, cms);
        problems.addAll(verification.problems());
        return verification.by();
    }

    private Instant when() {
        Calendar moment = signature.getSignDate();
        if (moment == null) {
            problems.add("it does not say when it was made");
            return Instant.EPOCH;
        }
        return moment.toInstant();
    }
}
