package eavesproof.drawing;

import java.util.ArrayList;
import java.util.List;

/** Cuts outlines (I. Sutherland, G. Hodgman, Communications of the ACM 17(1), 1974). */
final class Clip {
    private Clip() {}

    /** What of a closed outline lies below a level line of the paper. */
    static List<Point> below(List<Point> outline, double yMm) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Point here = outline.get(i);
            Point next = outline.get((i + 1) % outline.size());
            if (here.yMm() >= yMm) {
                kept.add(here);
            }
            if ((here.yMm() >= yMm) != (next.yMm() >= yMm)) {
                double share = (yMm - here.yMm()) / (next.yMm() - here.yMm());
                kept.add(new Point(here.xMm() + share * (next.xMm() - here.xMm()), yMm));
            }
        }
        return kept;
    }
}
