package eavesproof.survey;

import eavesproof.survey.SoleProfile.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Water that cannot leave: from where the sole rises no more towards the outlet, up along the reach
 * to where it is as high again, or to the high end.
 *
 * @param sill over which the water would have to go towards the outlet
 * @param lowest the lowest reading behind it
 * @param surface how deep it stands along the reach, from the outlet's side on; straight between
 *     the readings
 */
record Pond(Point sill, Point lowest, List<Depth> surface) {

    record Depth(double toOutletMm, double mm) {}

    double depthMm() {
        return lowest.belowMm() - sill.belowMm();
    }

    double lengthMm() {
        return surface.get(surface.size() - 1).toOutletMm() - surface.get(0).toOutletMm();
    }

    /**
     * Every pond of a profile, found by going up from the outlet: what is not above the highest
     * place passed on the way stands full up to that.
     */
    static List<Pond> of(SoleProfile profile, double endMm) {
        List<Pond> ponds = new ArrayList<>();
        List<Point> points = profile.points();
        for (int i = 0; i < points.size(); ) {
            Point sill = points.get(i);
            int above = i + 1;
            while (above < points.size()
                    && depth(points.get(above), sill) > ReachLevels.ROUNDING_MM) {
                above++;
            }
            if (above > i + 1) {
                ponds.add(behind(sill, points.subList(i, above), next(points, above), endMm));
            }
            i = above;
        }
        return ponds;
    }

    private static List<Point> next(List<Point> points, int index) {
        return points.subList(index, Math.min(index + 1, points.size()));
    }

    private static Pond behind(Point sill, List<Point> under, List<Point> next, double endMm) {
        List<Depth> surface = new ArrayList<>();
        Point lowest = under.get(1);
        for (Point point : under) {
            surface.add(new Depth(point.toOutletMm(), depth(point, sill)));
            lowest = point.belowMm() > lowest.belowMm() ? point : lowest;
        }
        Depth last = surface.get(surface.size() - 1);
        if (next.isEmpty()) {
            surface.add(new Depth(Math.max(endMm, last.toOutletMm()), last.mm()));
        } else {
            Point higher = next.get(0);
            double part = last.mm() / (last.mm() - depth(higher, sill));
            double on = part * (higher.toOutletMm() - last.toOutletMm());
            surface.add(new Depth(last.toOutletMm() + on, 0));
        }
        return new Pond(sill, lowest, List.copyOf(surface));
    }

    private static double depth(Point point, Point sill) {
        return point.belowMm() - sill.belowMm();
    }
}
