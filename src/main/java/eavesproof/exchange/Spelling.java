package eavesproof.exchange;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which of the known words somebody meant who wrote another one. */
final class Spelling {
    /** The trade's words of one country or another for what the record has one word for. */
    private static final Map<String, String> LOCAL = local();

    private Spelling() {}

    private static Map<String, String> local() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("spouting", "gutter");
        words.put("dropper", "downpipe");
        words.put("downspout", "downpipe");
        words.put("leader", "downpipe");
        words.put("hanger", "bracket");
        words.put("miter", "corner");
        words.put("mitre", "corner");
        return words;
    }

    /** The known word that this one most likely stands for. */
    static Optional<String> meant(String written, Collection<String> known) {
        if (written.length() > 40) {
            return Optional.empty();
        }
        String plain = plain(written);
        String ours = singular(inOurWords(plain));
        return known.stream()
                .filter(word -> singular(plain(word)).equals(ours))
                .findFirst()
                .or(() -> nearest(plain, known));
    }

    /** The record's word for a local one. */
    static Optional<String> ourWord(String written) {
        return LOCAL.entrySet().stream()
                .filter(word -> singular(plain(written)).endsWith(word.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    private static String inOurWords(String plain) {
        String ours = plain;
        for (Map.Entry<String, String> word : LOCAL.entrySet()) {
            ours = ours.replace(word.getKey(), word.getValue());
        }
        return ours;
    }

    private static String singular(String word) {
        return word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    }

    /** The nearest word, if few enough letters differ that it can be no chance. */
    private static Optional<String> nearest(String plain, Collection<String> known) {
        int allowed = plain.length() < 4 ? 1 : plain.length() < 8 ? 2 : 3;
        String best = null;
        int least = allowed + 1;
        for (String word : known) {
            int edits = edits(plain, plain(word));
            if (edits < least && edits * 2 < plain(word).length()) {
                best = word;
                least = edits;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Letters to put in, take out or change to make one word of the other (Levenshtein 1966). */
    private static int edits(String one, String other) {
        int[] above = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(above[j - 1] + change, Math.min(above[j], row[j - 1]) + 1);
            }
            above = row;
        }
        return above[other.length()];
    }
}
