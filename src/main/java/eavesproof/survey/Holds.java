package eavesproof.survey;

import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Fitting;
import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What holds a straight up: its brackets that have a screw, and every joint, outlet and fitting
 * that carries it and is screwed to the fascia.
 */
final class Holds {
    private final Marks marks;
    private final Straight straight;

    private Holds(Trough trough, int index) {
        marks = new Marks(trough, index);
        straight = trough.straight(index);
    }

    static Marks of(Trough trough, int index) {
        Holds holds = new Holds(trough, index);
        holds.brackets();
        holds.joints();
        holds.fittings();
        holds.outlets(trough.way(), trough.outletsOn(index));
        return holds.marks;
    }

    private void brackets() {
        List<Bracket> brackets = straight.brackets();
        if (brackets == null) {
            marks.addListNotRecorded("brackets");
            return;
        }
        for (Bracket bracket : brackets) {
            Integer screws = bracket.screwsFitted();
            if (screws == null) {
                marks.addPerhaps(bracket.stationMm(), Brackets.screwsNotRecorded(bracket));
            } else if (screws > 0) {
                marks.add(bracket.id(), "bracket " + bracket.id(), bracket.stationMm());
            }
        }
    }

    private void joints() {
        List<Joint> joints = straight.joints();
        if (joints == null) {
            marks.addListNotRecorded("joints");
            return;
        }
        for (Joint joint : joints) {
            screwed(joint.id(), "joint ", joint.stationMm(), joint.screwedToFascia());
        }
    }

    private void fittings() {
        List<Fitting> fittings = straight.fittings();
        if (fittings == null) {
            marks.addListNotRecorded("fittings");
            return;
        }
        for (Fitting fitting : fittings) {
            fitting(fitting);
        }
    }

    /** What is screwed on may be a weir or a guard: only what the gutter lies in holds it up. */
    private void fitting(Fitting fitting) {
        String name = "fitting " + fitting.id();
        String carries = fitting.carriesGutter();
        if (Words.NO.equals(carries) || Words.NO.equals(fitting.screwedToFascia())) {
            return;
        }
        if (Words.YES.equals(carries)) {
            screwed(fitting.id(), "fitting ", fitting.stationMm(), fitting.screwedToFascia());
        } else {
            String why = "whether " + name + " carries the gutter is not recorded";
            marks.addPerhaps(fitting.stationMm(), why);
        }
    }

    private void outlets(Way way, List<Outlet> here) {
        if (!way.isRecorded()) {
            way.doubt().ifPresent(marks::addPerhapsMore);
        }
        for (Outlet outlet : here) {
            screwed(outlet.id(), "outlet ", outlet.stationMm(), outlet.screwedToFascia());
        }
        for (Outlet outlet : way.unplaced()) {
            if (!Words.NO.equals(outlet.screwedToFascia())) {
                marks.addPerhapsMore(Way.unplaced(outlet));
            }
        }
    }

    private void screwed(
            String id, String word, @Nullable Double stationMm, @Nullable String screwed) {
        String name = word + id;
        if (Words.YES.equals(screwed)) {
            marks.add(id, name, stationMm);
        } else if (!Words.NO.equals(screwed)) {
            String why = Found.open("whether " + name + " is screwed to the fascia", screwed);
            marks.addPerhaps(stationMm, why);
        }
    }
}
