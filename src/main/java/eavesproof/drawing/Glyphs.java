package eavesproof.drawing;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

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
        Map<String, Integer> tables = tables();
        unitsPerEm = unsigned(tables.get("head") + 18);
        advanceCount = unsigned(tables.get("hhea") + 34);
        advances = tables.get("hmtx");
        int map = characterMap(tables.get("cmap"));
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

    private Map<String, Integer> tables() {
        Map<String, Integer> offsets = new HashMap<>();
        int count = unsigned(4);
        for (int i = 0; i < count; i++) {
            byte[] tag = new byte[4];
            font.get(12 + 16 * i, tag);
            offsets.put(new String(tag, StandardCharsets.US_ASCII), font.getInt(12 + 16 * i + 8));
        }
        return offsets;
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
