package eavesproof.drawing;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * Which characters a face has and how far each one advances, read from the tables cmap (format 12),
 * hhea, hmtx and head of the TrueType file (ISO/IEC 14496-22). A layout made from these numbers is
 * the same on every machine, which one made from the platform's font metrics is not.
 */
final class Glyphs {
    private static final int UNICODE_FULL = 3 << 16 | 10;

    private final ByteBuffer font;
    private final int groups;
    private final int groupCount;
    private final int advances;
    private final int advanceCount;
    private final double unitsPerEm;

    Glyphs(byte[] file) {
        font = ByteBuffer.wrap(file);
        unitsPerEm = unsigned(table("head") + 18);
        advanceCount = unsigned(table("hhea") + 34);
        advances = table("hmtx");
        int map = characterMap(table("cmap"));
        groupCount = font.getInt(map + 12);
        groups = map + 16;
    }

    /** The advance in em, or -1 where the face has no glyph for the character. */
    double advanceEm(int codePoint) {
        int glyph = glyph(codePoint);
        if (glyph == 0) {
            return -1;
        }
        return unsigned(advances + 4 * Math.min(glyph, advanceCount - 1)) / unitsPerEm;
    }

    private int glyph(int codePoint) {
        int low = 0;
        int high = groupCount - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int group = groups + 12 * middle;
            if (codePoint < font.getInt(group)) {
                high = middle - 1;
            } else if (codePoint > font.getInt(group + 4)) {
                low = middle + 1;
            } else {
                return font.getInt(group + 8) + codePoint - font.getInt(group);
            }
        }
        return 0;
    }

    private int table(String tag) {
        int count = unsigned(4);
        for (int entry = 12; entry < 12 + 16 * count; entry += 16) {
            byte[] name = new byte[4];
            font.get(entry, name);
            if (new String(name, StandardCharsets.US_ASCII).equals(tag)) {
                return font.getInt(entry + 8);
            }
        }
        throw new IllegalStateException("a bundled font has no table " + tag);
    }

    private int characterMap(int cmap) {
        int count = unsigned(cmap + 2);
        for (int i = 0; i < count; i++) {
            int entry = cmap + 4 + 8 * i;
            int map = cmap + font.getInt(entry + 4);
            if (font.getInt(entry) == UNICODE_FULL && unsigned(map) == 12) {
                return map;
            }
        }
        throw new IllegalStateException("a bundled font has no character map of format 12");
    }

    private int unsigned(int offset) {
        return Short.toUnsignedInt(font.getShort(offset));
    }
}
