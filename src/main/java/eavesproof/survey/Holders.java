package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Run.Bracket;
import eavesproof.job.Run.Fitting;
import eavesproof.job.Run.Fixing;
import eavesproof.job.Run.Joint;
import eavesproof.job.Run.Straight;
import eavesproof.job.Said;
import eavesproof.job.WayPart.Outlet;
import eavesproof.job.Words;
import eavesproof.survey.Holder.Sort;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What holds a straight up: its brackets that have a screw, and every joint, outlet and fitting
 * that carries it and is screwed to the fascia. A bracket without a screw is listed and holds
 * nothing.
 */
final class Holders {
    private final Trough trough;
    private final int index;
    private final Straight straight;
    private final List<Holder> all = new ArrayList<>();
    private final List<String> more = new ArrayList<>();

    private Holders(Trough trough, int index) {
        this.trough = trough;
        this.index = index;
        straight = trough.straight(index);
    }

    static Holders on(Trough trough, int index) {
        Holders holders = new Holders(trough, index);
        holders.brackets();
        holders.joints();
        holders.fittings();
        holders.outlets(trough.way(), trough.outletsOn(index));
        return holders;
    }

    List<Holder> all() {
        return all;
    }

    /** Why there may be others, wherever on the straight. */
    List<String> more() {
        return more;
    }

    /** Where it is held up. */
    Marks marks() {
        Marks marks = new Marks(trough, index);
        more.forEach(marks::addPerhapsMore);
        for (Holder holder : all) {
            holder.holds()
                    .either(
                            holds -> {
                                if (holds) {
                                    marks.add(holder.id(), holder.name(), holder.stationMm());
                                }
                            },
                            why -> marks.addPerhaps(holder.stationMm(), why));
        }
        return marks;
    }

    private void brackets() {
        List<Bracket> brackets = straight.brackets();
        if (brackets == null) {
            more.add(Brackets.notRecorded(straight));
            return;
        }
        Said<Double> carries =
                trough.gutter() instanceof Found.Value<Gutter> known
                        ? known.value().bracketCapacityN()
                        : Said.nothing();
        for (Bracket bracket : brackets) {
            Integer screws = bracket.screwsFitted();
            Fixing fixing =
                    new Fixing(
                            screws,
                            bracket.holesProvided(),
                            bracket.screwMetal(),
                            bracket.screwDiameterMm(),
                            bracket.biteMm(),
                            carries);
            Found<Boolean> holds =
                    screws == null
                            ? Found.missing(Brackets.screwsNotRecorded(bracket))
                            : Found.of(screws > 0);
            add(Sort.BRACKET, bracket.id(), bracket.stationMm(), fixing, holds);
        }
    }

    private void joints() {
        List<Joint> joints = straight.joints();
        if (joints == null) {
            more.add("the joints of straight " + straight.id() + " are not recorded");
            return;
        }
        for (Joint joint : joints) {
            screwed(
                    Sort.JOINT,
                    joint.id(),
                    joint.stationMm(),
                    joint.screwedToFascia(),
                    joint.fixing());
        }
    }

    private void fittings() {
        List<Fitting> fittings = straight.fittings();
        if (fittings == null) {
            more.add(fittingsNotRecorded(straight));
            return;
        }
        for (Fitting fitting : fittings) {
            fitting(fitting);
        }
    }

    static String fittingsNotRecorded(Straight straight) {
        return "the fittings of straight " + straight.id() + " are not recorded";
    }

    /** What is screwed on may be a weir or a guard: only what the gutter lies in holds it up. */
    private void fitting(Fitting fitting) {
        String carries = fitting.carriesGutter();
        String screwed = fitting.screwedToFascia();
        if (Words.NO.equals(carries) || Words.NO.equals(screwed)) {
            return;
        }
        if (Words.YES.equals(carries)) {
            screwed(Sort.FITTING, fitting.id(), fitting.stationMm(), screwed, fitting.fixing());
        } else {
            String name = Sort.FITTING.named(fitting.id());
            Found<Boolean> holds =
                    Found.missing("whether " + name + " carries the gutter is not recorded");
            add(Sort.FITTING, fitting.id(), fitting.stationMm(), of(fitting.fixing()), holds);
        }
    }

    private void outlets(Way way, List<Outlet> here) {
        if (!way.isRecorded()) {
            way.doubt().ifPresent(more::add);
        }
        for (Outlet outlet : here) {
            screwed(
                    Sort.OUTLET,
                    outlet.id(),
                    outlet.stationMm(),
                    outlet.screwedToFascia(),
                    outlet.fixing());
        }
        for (Outlet outlet : way.unplaced()) {
            if (!Words.NO.equals(outlet.screwedToFascia())) {
                more.add(Way.unplaced(outlet));
            }
        }
    }

    private void screwed(
            Sort sort,
            String id,
            @Nullable Double stationMm,
            @Nullable String screwed,
            @Nullable Fixing fixing) {
        Integer screws = of(fixing).screwsFitted();
        String name = sort.named(id);
        if (Words.NO.equals(screwed)) {
            return;
        }
        Found<Boolean> holds = Found.of(true);
        if (!Words.YES.equals(screwed)) {
            holds =
                    Found.missing(
                            Found.open("whether " + name + " is screwed to the fascia", screwed));
        } else if (screws != null && screws == 0) {
            holds =
                    Found.missing(
                            name + " is recorded as screwed to the fascia and without a screw");
        }
        add(sort, id, stationMm, of(fixing), holds);
    }

    private static Fixing of(@Nullable Fixing fixing) {
        return fixing == null ? Fixing.NOTHING : fixing;
    }

    private void add(
            Sort sort, String id, @Nullable Double stationMm, Fixing fixing, Found<Boolean> holds) {
        all.add(new Holder(sort, id, sort.named(id), stationMm, fixing, holds));
    }
}
