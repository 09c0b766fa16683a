package eavesproof.report.photo;

import java.awt.image.BufferedImage;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * How the camera was held: tag 274 of TIFF 6.0, as CIPA DC-008 (Exif) puts it into JPEG and the PNG
 * specification, third edition, 11.3.3.5, into PNG.
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
        ByteBuffer in = ByteBuffer.wrap(file);
        try {
            return file.length > 0 && (file[0] & 0xFF) == 0xFF ? ofJpeg(in) : ofPng(in);
        } catch (IndexOutOfBoundsException
                | BufferUnderflowException
                | IllegalArgumentException broken) {
            return UPRIGHT;
        }
    }

    /** Segment after segment up to where the picture begins. */
    private static Orientation ofJpeg(ByteBuffer in) {
        int at = 2;
        while ((in.get(at) & 0xFF) == 0xFF) {
            int marker = in.get(at + 1) & 0xFF;
            if (marker == 0xFF) {
                at++;
                continue;
            }
            if (marker == 0xDA || marker == 0xD9) {
                return UPRIGHT;
            }
            int length = in.getShort(at + 2) & 0xFFFF;
            if (marker == 0xE1 && text(in, at + 4, 6).equals("Exif\0\0")) {
                return ofTiff(in.slice(at + 10, length - 8));
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static Orientation ofPng(ByteBuffer in) {
        int at = 8;
        while (true) {
            int length = in.getInt(at);
            String type = text(in, at + 4, 4);
            if (type.equals("eXIf")) {
                return ofTiff(in.slice(at + 8, length));
            }
            if (length < 0 || type.equals("IEND")) {
                return UPRIGHT;
            }
            at = Math.addExact(at, Math.addExact(length, 12));
        }
    }

    private static Orientation ofTiff(ByteBuffer in) {
        in.order(text(in, 0, 2).equals("II") ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = in.getInt(4);
        int entries = in.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + 12 * i;
            if ((in.getShort(entry) & 0xFFFF) == TAG && in.getShort(entry + 2) == SHORT) {
                return new Orientation(in.getShort(entry + 8));
            }
        }
        return UPRIGHT;
    }

    private static String text(ByteBuffer in, int at, int length) {
        byte[] bytes = new byte[length];
        in.get(at, bytes);
        return new String(bytes, StandardCharsets.ISO_8859_1);
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
