package eavesproof.report.photo;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a camera writes beside the picture: a TIFF 6.0 directory that CIPA DC-008 (Exif) puts into
 * JPEG and the PNG specification, third edition, 11.3.3.5, into PNG.
 */
final class Exif {
    private static final int ENTRY = 12;
    private static final int NUMERATOR_AND_DENOMINATOR = 8;

    private final ByteBuffer tiff;

    private Exif(ByteBuffer tiff) {
        this.tiff = tiff;
    }

    /** Empty where there is none, or none that can be read. */
    static Optional<Exif> of(byte[] file) {
        ByteBuffer in = ByteBuffer.wrap(file);
        try {
            return file.length > 0 && (file[0] & 0xFF) == 0xFF ? ofJpeg(in) : ofPng(in);
        } catch (IndexOutOfBoundsException
                | BufferUnderflowException
                | ArithmeticException
                | IllegalArgumentException broken) {
            return Optional.empty();
        }
    }

    /** Segment after segment up to where the picture begins. */
    private static Optional<Exif> ofJpeg(ByteBuffer in) {
        int at = 2;
        while ((in.get(at) & 0xFF) == 0xFF) {
            int marker = in.get(at + 1) & 0xFF;
            if (marker == 0xFF) {
                at++;
                continue;
            }
            if (marker == 0xDA || marker == 0xD9) {
                return Optional.empty();
            }
            int length = in.getShort(at + 2) & 0xFFFF;
            if (marker == 0xE1 && text(in, at + 4, 6).equals("Exif\0\0")) {
                return Optional.of(ofTiff(in.slice(at + 10, length - 8)));
            }
            at += 2 + length;
        }
        return Optional.empty();
    }

    private static Optional<Exif> ofPng(ByteBuffer in) {
        int at = 8;
        while (true) {
            int length = in.getInt(at);
            String type = text(in, at + 4, 4);
            if (type.equals("eXIf")) {
                return Optional.of(ofTiff(in.slice(at + 8, length)));
            }
            if (length < 0 || type.equals("IEND")) {
                return Optional.empty();
            }
            at = Math.addExact(at, Math.addExact(length, 12));
        }
    }

    private static Exif ofTiff(ByteBuffer in) {
        in.order(text(in, 0, 2).equals("II") ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        return new Exif(in);
    }

    /** Where the first directory begins. */
    int first() {
        return tiff.getInt(4);
    }

    /** Where the entry of a tag begins in a directory, if it is of that type. */
    OptionalInt entry(int directory, int tag, int type) {
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + ENTRY * i;
            if ((tiff.getShort(entry) & 0xFFFF) == tag
                    && (tiff.getShort(entry + 2) & 0xFFFF) == type) {
                return OptionalInt.of(entry);
            }
        }
        return OptionalInt.empty();
    }

    int shortAt(int entry) {
        return tiff.getShort(entry + 8) & 0xFFFF;
    }

    int offsetAt(int entry) {
        return tiff.getInt(entry + 8);
    }

    char letterAt(int entry) {
        return (char) (tiff.get(entry + 8) & 0xFF);
    }

    /** One of the fractions that an entry points to; no number where it is divided by nothing. */
    double fraction(int entry, int index) {
        int at = offsetAt(entry) + NUMERATOR_AND_DENOMINATOR * index;
        return Integer.toUnsignedLong(tiff.getInt(at))
                / (double) Integer.toUnsignedLong(tiff.getInt(at + 4));
    }

    private static String text(ByteBuffer in, int at, int length) {
        byte[] bytes = new byte[length];
        in.get(at, bytes);
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
