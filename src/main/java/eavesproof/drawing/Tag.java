package eavesproof.drawing;

import eavesproof.judge.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A numbered mark above a drawing: one finding, or several that lie too close for a mark each.
 *
 * @param xMm where its middle is put
 */
record Tag(List<Numbered> members, double xMm) {
    static final double SIZE_PT = 7.5;
    static final double HEIGHT_MM = 4.2;
    private static final double APART_MM = 0.9;
    private static final double SAME_PLACE_MM = 0.5;
    private static final int MOST_PIECES = 3;

    Tag {
        members = List.copyOf(members);
    }

    /** Of what it marks, the worst. */
    Verdict verdict() {
        return members.stream().map(Numbered::verdict).min(Comparator.naturalOrder()).orElseThrow();
    }

    double widthMm() {
        return Math.max(HEIGHT_MM, Lettering.widthMm(text(), SIZE_PT, Weight.STRONG) + 1.8);
    }

    /** 3.2, or 3.1–3.4, 5; or, where that grows long, how many and from where to where. */
    String text() {
        List<String> pieces = new ArrayList<>();
        List<Numbered> sorted = sorted();
        int from = 0;
        for (int i = 1; i <= sorted.size(); i++) {
            if (i == sorted.size() || !follows(sorted.get(i - 1), sorted.get(i))) {
                String first = sorted.get(from).label();
                String last = sorted.get(i - 1).label();
                String piece = first.equals(last) ? first : first + "–" + last;
                if (!pieces.contains(piece)) {
                    pieces.add(piece);
                }
                from = i;
            }
        }
        return pieces.size() <= MOST_PIECES
                ? String.join(", ", pieces)
                : members.size()
                        + " from "
                        + sorted.get(0).label()
                        + " to "
                        + sorted.get(sorted.size() - 1).label();
    }

    private List<Numbered> sorted() {
        return members.stream()
                .sorted(Comparator.comparingInt(Numbered::block).thenComparingInt(Numbered::row))
                .toList();
    }

    private static boolean follows(Numbered one, Numbered next) {
        return one.block() == next.block() && next.row() - one.row() <= 1;
    }

    /** Where its leader ends: the middle of what it marks. */
    double anchorMm(StationScale scale) {
        return members.stream().mapToDouble(m -> scale.x(m.middleMm())).average().orElseThrow();
    }

    /**
     * Marks from left to right in one row, each as near as can be above what it marks. Where they
     * do not all fit, neighbours are drawn together until they do.
     */
    static List<Tag> row(
            List<Numbered> findings, StationScale scale, double leftMm, double rightMm) {
        List<Tag> tags = new ArrayList<>();
        findings.stream()
                .sorted(
                        Comparator.comparingDouble(Numbered::middleMm)
                                .thenComparingInt(Numbered::block)
                                .thenComparingInt(Numbered::row))
                .forEach(finding -> tags.add(new Tag(List.of(finding), 0)));
        double limit = SAME_PLACE_MM;
        while (needed(tags) > rightMm - leftMm || nearest(tags, scale) < SAME_PLACE_MM) {
            limit = Math.max(SAME_PLACE_MM, nearest(tags, scale) + 1e-9);
            drawTogether(tags, scale, limit);
        }
        return spread(tags, scale, leftMm, rightMm);
    }

    private static double needed(List<Tag> tags) {
        return tags.stream().mapToDouble(tag -> tag.widthMm() + APART_MM).sum();
    }

    private static double nearest(List<Tag> tags, StationScale scale) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < tags.size(); i++) {
            nearest =
                    Math.min(
                            nearest, tags.get(i).anchorMm(scale) - tags.get(i - 1).anchorMm(scale));
        }
        return nearest;
    }

    private static void drawTogether(List<Tag> tags, StationScale scale, double limitMm) {
        for (int i = 1; i < tags.size(); ) {
            Tag left = tags.get(i - 1);
            Tag right = tags.get(i);
            if (right.anchorMm(scale) - left.anchorMm(scale) <= limitMm) {
                List<Numbered> both = new ArrayList<>(left.members());
                both.addAll(right.members());
                tags.set(i - 1, new Tag(both, 0));
                tags.remove(i);
                // The pair that was joined has moved; it is not joined again in this round.
                i++;
            } else {
                i++;
            }
        }
    }

    /**
     * The places with the least sum of squared shifts that keep the order and the room of each: the
     * regression with a rising line of M. Ayer et al., Annals of Mathematical Statistics 26(4),
     * 1955, on what is left of each place when the room of those before it is taken off.
     */
    private static List<Tag> spread(
            List<Tag> tags, StationScale scale, double leftMm, double rightMm) {
        List<double[]> pools = new ArrayList<>();
        double[] before = new double[tags.size()];
        double room = 0;
        for (int i = 0; i < tags.size(); i++) {
            double width = tags.get(i).widthMm() + APART_MM;
            before[i] = room + width / 2;
            room += width;
            double[] pool = {tags.get(i).anchorMm(scale) - before[i], 1};
            while (!pools.isEmpty() && pools.get(pools.size() - 1)[0] > pool[0]) {
                double[] last = pools.remove(pools.size() - 1);
                double count = last[1] + pool[1];
                pool = new double[] {(last[0] * last[1] + pool[0] * pool[1]) / count, count};
            }
            pools.add(pool);
        }
        List<Tag> placed = new ArrayList<>();
        for (double[] pool : pools) {
            double at = Math.min(Math.max(pool[0], leftMm), rightMm - room);
            for (int n = 0; n < (int) pool[1]; n++) {
                int i = placed.size();
                placed.add(new Tag(tags.get(i).members(), at + before[i]));
            }
        }
        return placed;
    }
}
