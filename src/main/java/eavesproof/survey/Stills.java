package eavesproof.survey;

import eavesproof.job.Run.Fitting;
import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What holds a straight still, so that it grows and shrinks from there: joints that are no
 * expansion joints, fittings in which the gutter does not slide, and fixed outlets, where these are
 * screwed to the fascia. In brackets it slides. Whether a corner holds it the rule set states.
 */
final class Stills {
    private final Marks marks;
    private final Straight straight;

    private Stills(Trough trough, int index) {
        this.marks = new Marks(trough, index);
        this.straight = trough.straight(index);
    }

    static Marks of(Trough trough, int index, Basis basis) {
        Stills stills = new Stills(trough, index);
        if (index > 0) {
            stills.corner(basis.choice(BasisKey.CORNER_HOLDS));
        }
        stills.joints();
        stills.fittings();
        Way way = trough.way();
        if (!way.isRecorded()) {
            way.doubt().ifPresent(stills.marks::addPerhapsMore);
        }
        for (Outlet outlet : trough.outletsOn(index)) {
            stills.holds(
                    outlet.id(),
                    "outlet ",
                    outlet.stationMm(),
                    outlet.screwedToFascia(),
                    fixed(outlet.hold()));
        }
        for (Outlet outlet : way.unplaced()) {
            boolean not =
                    Words.NO.equals(outlet.screwedToFascia())
                            || Words.SLIDING.equals(outlet.hold());
            if (!not) {
                stills.marks.addPerhapsMore(Way.unplaced(outlet));
            }
        }
        return stills.marks;
    }

    /** The one at the left end of the straight, where that of the one before it ends. */
    private void corner(Found<Basis.Choice> holds) {
        String id = Trough.leftEndOf(straight);
        holds.either(
                choice -> {
                    if (choice.word().equals(Basis.CORNER_HOLDS)) {
                        marks.add(id, "the corner at " + id, 0.0);
                    }
                },
                why -> marks.addPerhaps(0.0, why));
    }

    private static @Nullable String fixed(@Nullable String hold) {
        if (Words.FIXED.equals(hold)) {
            return Words.YES;
        }
        return Words.SLIDING.equals(hold) ? Words.NO : null;
    }

    private void joints() {
        List<Joint> joints = straight.joints();
        if (joints == null) {
            marks.addListNotRecorded("joints");
            return;
        }
        for (Joint joint : joints) {
            String kind = joint.kind();
            boolean known = kind != null && Words.JOINT_KINDS.contains(kind);
            String still = Words.EXPANSION.equals(kind) ? Words.NO : known ? Words.YES : null;
            holds(joint.id(), "joint ", joint.stationMm(), joint.screwedToFascia(), still);
        }
    }

    private void fittings() {
        List<Fitting> fittings = straight.fittings();
        if (fittings == null) {
            marks.addListNotRecorded("fittings");
            return;
        }
        for (Fitting fitting : fittings) {
            String slides = fitting.gutterSlides();
            String still =
                    Words.YES.equals(slides)
                            ? Words.NO
                            : Words.NO.equals(slides) ? Words.YES : null;
            holds(fitting.id(), "fitting ", fitting.stationMm(), fitting.screwedToFascia(), still);
        }
    }

    /** It holds only if it is screwed on and does not let the gutter slide. */
    private void holds(
            String id,
            String word,
            @Nullable Double stationMm,
            @Nullable String screwed,
            @Nullable String still) {
        if (Words.NO.equals(screwed) || Words.NO.equals(still)) {
            return;
        }
        if (Words.YES.equals(screwed) && Words.YES.equals(still)) {
            marks.add(id, word + id, stationMm);
        } else {
            marks.addPerhaps(stationMm, "whether " + word + id + " holds still is not recorded");
        }
    }
}
