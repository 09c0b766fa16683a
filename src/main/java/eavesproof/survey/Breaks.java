package eavesproof.survey;

import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import java.util.List;
import java.util.Optional;

/**
 * What lets a straight move: its expansion joints, and the outlets that slide and are not cemented
 * to the gutter.
 */
final class Breaks {
    private Breaks() {}

    static Marks of(Trough trough, int index) {
        Marks marks = new Marks(trough, index);
        joints(trough.straight(index), marks);
        Way way = trough.way();
        if (!way.isRecorded()) {
            way.doubt().ifPresent(marks::addPerhapsMore);
        }
        for (Outlet outlet : trough.outletsOn(index)) {
            outlet(outlet, marks);
        }
        for (Outlet outlet : way.unplaced()) {
            if (slides(outlet).filter(slides -> !slides).isEmpty()) {
                marks.addPerhapsMore(Way.unplaced(outlet));
            }
        }
        return marks;
    }

    private static void joints(Straight straight, Marks marks) {
        List<Joint> joints = straight.joints();
        if (joints == null) {
            marks.addPerhapsMore("the joints of straight " + straight.id() + " are not recorded");
            return;
        }
        for (Joint joint : joints) {
            String name = "joint " + joint.id();
            String kind = joint.kind();
            if (kind == null || !Words.JOINT_KINDS.contains(kind)) {
                String why = "the kind of " + name + " is not recorded";
                marks.addPerhaps(joint.stationMm(), why);
            } else if (kind.equals(Words.EXPANSION)) {
                marks.add(joint.id(), name, joint.stationMm());
            }
        }
    }

    private static void outlet(Outlet outlet, Marks marks) {
        String name = "outlet " + outlet.id();
        Optional<Boolean> slides = slides(outlet);
        if (slides.isEmpty()) {
            String why =
                    Words.SLIDING.equals(outlet.hold())
                            ? Found.open(
                                    "whether " + name + " is cemented to the gutter",
                                    outlet.cementedToGutter().is())
                            : Found.open("whether " + name + " is sliding or fixed", outlet.hold());
            marks.addPerhaps(outlet.stationMm(), why);
        } else if (slides.get()) {
            marks.add(outlet.id(), name, outlet.stationMm());
        }
    }

    /** Whether the gutter can slide in the outlet; empty where that is not recorded. */
    private static Optional<Boolean> slides(Outlet outlet) {
        String cemented = outlet.cementedToGutter().is();
        if (Words.FIXED.equals(outlet.hold()) || Words.YES.equals(cemented)) {
            return Optional.of(false);
        }
        return Words.SLIDING.equals(outlet.hold()) && Words.NO.equals(cemented)
                ? Optional.of(true)
                : Optional.empty();
    }
}
