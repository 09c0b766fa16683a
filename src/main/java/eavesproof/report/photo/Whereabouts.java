package eavesproof.report.photo;

import eavesproof.quantity.Decimals;
import java.nio.BufferUnderflowException;
import java.util.Optional;
import java.util.OptionalInt;

/** Where a photograph was taken, as its file says: CIPA DC-008 (Exif), 4.6.6, tags 1 to 4. */
final class Whereabouts {
    private static final int DIRECTORY = 0x8825;
    private static final int LONG = 4;
    private static final int ASCII = 2;
    private static final int RATIONAL = 5;

    /** About a metre on the ground. */
    private static final int DECIMALS = 5;

    private Whereabouts() {}

    /** Degrees north or south and east or west; empty where the file does not say, or wrongly. */
    static Optional<String> of(byte[] file) {
        try {
            return Exif.of(file).flatMap(Whereabouts::of);
        } catch (IndexOutOfBoundsException | BufferUnderflowException broken) {
            return Optional.empty();
        }
    }

    private static Optional<String> of(Exif exif) {
        OptionalInt entry = exif.entry(exif.first(), DIRECTORY, LONG);
        if (entry.isEmpty()) {
            return Optional.empty();
        }
        int directory = exif.offsetAt(entry.getAsInt());
        Optional<String> north = degrees(exif, directory, 1, "NS", 90);
        Optional<String> east = degrees(exif, directory, 3, "EW", 180);
        return north.flatMap(n -> east.map(e -> n + ", " + e));
    }

    private static Optional<String> degrees(
            Exif exif, int directory, int tag, String letters, double most) {
        OptionalInt side = exif.entry(directory, tag, ASCII);
        OptionalInt angle = exif.entry(directory, tag + 1, RATIONAL);
        if (side.isEmpty() || angle.isEmpty()) {
            return Optional.empty();
        }
        char letter = exif.letterAt(side.getAsInt());
        double degrees =
                exif.fraction(angle.getAsInt(), 0)
                        + exif.fraction(angle.getAsInt(), 1) / 60
                        + exif.fraction(angle.getAsInt(), 2) / 3600;
        return letters.indexOf(letter) >= 0 && degrees <= most
                ? Optional.of(Decimals.fixed(degrees, DECIMALS) + "° " + letter)
                : Optional.empty();
    }
}
