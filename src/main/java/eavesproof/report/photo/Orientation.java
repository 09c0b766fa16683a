package eavesproof.report.photo;

import java.awt.image.BufferedImage;
import java.nio.BufferUnderflowException;
import java.util.OptionalInt;

/**
 * How the camera was held: tag 274 of TIFF 6.0.
 *
 * @param value 1 to 8; 1 is upright
 */
record Orientation(int value) {
    private static final Orientation UPRIGHT = new Orientation(1);
    private static final int TAG = 274;
    private static final int SHORT = 3;

    Orientation {
        if (value < 1 || value > 8) {
            throw new IllegalArgumentException("no orientation: " + value);
        }
    }

    /** Upright where the file does not say, or says it in a way that nobody understands. */
    static Orientation of(byte[] file) {
        try {
            return Exif.of(file).map(Orientation::of).orElse(UPRIGHT);
        } catch (IndexOutOfBoundsException
                | BufferUnderflowException
                | IllegalArgumentException broken) {
            return UPRIGHT;
        }
    }

    private static Orientation of(Exif exif) {
        OptionalInt entry = exif.entry(exif.first(), TAG, SHORT);
        return entry.isEmpty() ? UPRIGHT : new Orientation(exif.shortAt(entry.getAsInt()));
    }

    BufferedImage upright(BufferedImage from) {
        if (value == 1) {
            return from;
        }
        int width = from.getWidth();
        int height = from.getHeight();
        boolean turned = value >= 5;
        BufferedImage to =
                new BufferedImage(
                        turned ? height : width,
                        turned ? width : height,
                        BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < to.getHeight(); y++) {
            for (int x = 0; x < to.getWidth(); x++) {
                int fromX = turned ? y : x;
                int fromY = turned ? x : y;
                boolean fromRight = value == 2 || value == 3 || value == 7 || value == 8;
                boolean fromBelow = value == 3 || value == 4 || value == 6 || value == 7;
                to.setRGB(
                        x,
                        y,
                        from.getRGB(
                                fromRight ? width - 1 - fromX : fromX,
                                fromBelow ? height - 1 - fromY : fromY));
            }
        }
        return to;
    }
}
