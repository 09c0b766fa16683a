package eavesproof.drawing;

import eavesproof.job.Job;
import eavesproof.job.WayPart;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The parts that the water goes through from an outlet on, one after the other in boxes. */
final class PlanWay {
    private static final double SIZE_PT = 7;
    private static final double HIGH_MM = 5;
    private static final double APART_MM = 5;
    private static final double ROW_MM = 7;
    private static final double LEFT_MM = 4;

    private final Map<String, WayPart> parts = new LinkedHashMap<>();
    private final double widthMm;
    private final List<Mark> marks = new ArrayList<>();
    private final List<String> chains = new ArrayList<>();
    private final Set<String> drawn = new HashSet<>();
    private double x = LEFT_MM;
    private double top;

    PlanWay(Job job, double widthMm, double topMm) {
        Objects.requireNonNullElse(job.way(), List.<WayPart>of())
                .forEach(part -> parts.put(part.id(), part));
        this.widthMm = widthMm;
        top = topMm;
    }

    List<Mark> marks() {
        return marks;
    }

    double bottomMm() {
        return top + 1;
    }

    String inWords() {
        return chains.isEmpty() ? "no outlet" : String.join("; ", chains);
    }

    /** Ends where the water goes, where nothing more is recorded, or where it was drawn already. */
    void from(WayPart.Outlet outlet) {
        List<String> chain = new ArrayList<>();
        x = LEFT_MM;
        WayPart part = outlet;
        boolean again = false;
        while (part != null && !again) {
            again = !drawn.add(part.id());
            String text = words(part) + (again ? ", as above" : "");
            box(text, again ? Line.DASHED : Line.PLAIN);
            chain.add(text);
            String to = part.to();
            WayPart next = to == null ? null : parts.get(to);
            if (next == null && !(part instanceof WayPart.Discharge)) {
                box("not recorded", Line.DOTTED);
                chain.add("not recorded");
            }
            part = next;
        }
        chains.add(String.join(" to ", chain));
        top += ROW_MM;
    }

    private void box(String text, Line line) {
        double width = Lettering.widthMm(text, SIZE_PT, Weight.REGULAR) + 3;
        if (width > widthMm - 2 * LEFT_MM) {
            box(RoofPlan.fitting(text, widthMm - 2 * LEFT_MM - 4), line);
            return;
        }
        boolean first = x == LEFT_MM;
        double begin = first ? x : x + APART_MM;
        if (begin + width > widthMm - 1) {
            top += ROW_MM;
            begin = LEFT_MM + APART_MM;
            x = LEFT_MM;
            first = false;
        }
        double middle = top + HIGH_MM / 2;
        if (!first) {
            Point tip = new Point(begin, middle);
            marks.add(Mark.Stroke.between(x, middle, begin, middle, Line.FINE));
            marks.add(Mark.Area.arrowHead(new Point(x, middle), tip, 1.8));
        }
        marks.add(Mark.Area.box(begin, top, width, HIGH_MM, Fill.NONE, line));
        marks.add(Mark.Words.level(begin + width / 2, middle + 0.9, text, Anchor.MIDDLE, SIZE_PT));
        x = begin + width;
    }

    private static String words(WayPart part) {
        if (part instanceof WayPart.Outlet) {
            return "outlet " + part.id();
        }
        if (part instanceof WayPart.Branch) {
            return "branch " + part.id();
        }
        if (part instanceof WayPart.Downpipe pipe) {
            return "downpipe " + pipe.id() + others(pipe.alsoCarries());
        }
        if (part instanceof WayPart.Drain drain) {
            return "drain " + drain.id() + others(drain.alsoCarries());
        }
        if (part instanceof WayPart.Tank) {
            return "tank " + part.id();
        }
        WayPart.Discharge discharge = (WayPart.Discharge) part;
        String kind = Objects.requireNonNullElse(discharge.place().is(), "kind not recorded");
        return "discharge " + discharge.id() + ": " + kind;
    }

    /** Other roofs that it carries; nothing where the record says that there are none. */
    private static String others(@Nullable List<WayPart.OtherRoof> others) {
        if (others == null) {
            return " (other roofs not recorded)";
        }
        if (others.isEmpty()) {
            return "";
        }
        List<String> words = new ArrayList<>();
        for (WayPart.OtherRoof roof : others) {
            Double area = roof.planAreaM2().is();
            words.add(
                    roof.id()
                            + (area == null
                                    ? ""
                                    : ", " + Decimals.plain(area, Unit.M2.decimals()) + " m²"));
        }
        return " (also " + String.join("; ", words) + ")";
    }
}
