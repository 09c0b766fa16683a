package eavesproof.check.drools;

import java.util.Comparator;
import java.util.List;

/** What somebody may have meant who wrote a name that is not known. */
final class Nearest {
    private Nearest() {}

    /** "perhaps X" where one is near, else the whole list. */
    static String to(String written, List<String> known) {
        String all = "one of " + String.join(", ", known);
        return known.stream()
                .min(Comparator.comparingInt(name -> distance(written, name)))
                .filter(name -> distance(written, name) <= 1 + written.length() / 3)
                .map(name -> "perhaps " + name + "; " + all)
                .orElse(all);
    }

    /** How many letters must be put in, left out or changed (Levenshtein 1965). */
    private static int distance(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int corner = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int changed = corner + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                corner = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[other.length()];
    }
}
