package eavesproof.report.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * An ICC profile of the sRGB colour space, composed here, so that no file of another licence has to
 * be shipped and the bytes depend on nothing.
 *
 * <p>A three-component matrix-based display profile as in ICC.1:2004-10 (profile version 4.2),
 * section 8.3.3. The matrix holds the primaries of IEC 61966-2-1 adapted to D50 by the linearised
 * Bradford transform of annex E; the curve is that of IEC 61966-2-1 as parametric curve type 3.
 */
final class SrgbProfile {
    /** The illuminant of the profile connection space, 7.2.16. */
    private static final double[] D50 = {0.9642, 1.0, 0.8249};

    private static final double[] RED = {0.436065, 0.222488, 0.013916};
    private static final double[] GREEN = {0.385147, 0.716873, 0.097076};
    private static final double[] BLUE = {0.143066, 0.060608, 0.714096};

    /** D65 to D50, by rows. */
    private static final double[] ADAPTATION = {
        1.047882, 0.022919, -0.050201, 0.029586, 0.990479, -0.017059, -0.009232, 0.015076, 0.751678
    };

    /** g, a, b, c, d of Y = (aX + b)^g for X at least d, and cX below. */
    private static final double[] CURVE = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};

    private static final int HEADER = 128;

    private SrgbProfile() {}

    static byte[] bytes() {
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", words("sRGB IEC61966-2.1"));
        tags.put("cprt", words("No copyright is claimed; composed from published figures."));
        tags.put("wtpt", numbers("XYZ ", D50));
        tags.put("chad", numbers("sf32", ADAPTATION));
        tags.put("rXYZ", numbers("XYZ ", RED));
        tags.put("gXYZ", numbers("XYZ ", GREEN));
        tags.put("bXYZ", numbers("XYZ ", BLUE));
        byte[] curve = curve();
        tags.put("rTRC", curve);
        tags.put("gTRC", curve);
        tags.put("bTRC", curve);
        return profile(tags);
    }

    private static byte[] profile(Map<String, byte[]> tags) {
        int first = HEADER + 4 + 12 * tags.size();
        int size = first + tags.values().stream().mapToInt(t -> t.length).sum();
        ByteBuffer out = ByteBuffer.allocate(size);
        out.putInt(0, size);
        out.putInt(8, 0x04200000);
        text(out, 12, "mntrRGB XYZ ");
        // 2026-01-01, by numbers of two bytes.
        out.putShort(24, (short) 2026).putShort(26, (short) 1).putShort(28, (short) 1);
        text(out, 36, "acsp");
        for (int i = 0; i < 3; i++) {
            out.putInt(68 + 4 * i, fixed(D50[i]));
        }
        out.putInt(HEADER, tags.size());
        int entry = HEADER + 4;
        int place = first;
        for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
            text(out, entry, tag.getKey());
            out.putInt(entry + 4, place).putInt(entry + 8, tag.getValue().length);
            out.put(place, tag.getValue());
            entry += 12;
            place += tag.getValue().length;
        }
        return out.array();
    }

    /** multiLocalizedUnicodeType, 10.13, with one record; padded to whole fours. */
    private static byte[] words(String text) {
        byte[] utf16 = text.getBytes(StandardCharsets.UTF_16BE);
        ByteBuffer out = ByteBuffer.allocate((28 + utf16.length + 3) / 4 * 4);
        text(out, 0, "mluc");
        out.putInt(8, 1).putInt(12, 12);
        text(out, 16, "enUS");
        out.putInt(20, utf16.length).putInt(24, 28);
        out.put(28, utf16);
        return out.array();
    }

    /** XYZType, 10.27, and s15Fixed16ArrayType, 10.18, differ in their name only. */
    private static byte[] numbers(String type, double[] values) {
        ByteBuffer out = ByteBuffer.allocate(8 + 4 * values.length);
        text(out, 0, type);
        for (int i = 0; i < values.length; i++) {
            out.putInt(8 + 4 * i, fixed(values[i]));
        }
        return out.array();
    }

    /** parametricCurveType, 10.15. */
    private static byte[] curve() {
        ByteBuffer out = ByteBuffer.allocate(12 + 4 * CURVE.length);
        text(out, 0, "para");
        out.putShort(8, (short) 3);
        for (int i = 0; i < CURVE.length; i++) {
            out.putInt(12 + 4 * i, fixed(CURVE[i]));
        }
        return out.array();
    }

    /** s15Fixed16Number. */
    private static int fixed(double value) {
        return (int) Math.round(value * 65536);
    }

    private static void text(ByteBuffer out, int place, String ascii) {
        out.put(place, ascii.getBytes(StandardCharsets.US_ASCII));
    }
}
