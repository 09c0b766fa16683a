package eavesproof.survey;

import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How sure a reading is, by what it was taken with.
 *
 * <p>A stated greatest error a is a rectangular distribution of half-width a: u = a/√3 (JCGM
 * 100:2008 4.3.7). A smallest step d that can be read adds u = d/√12 (F.2.2.1), as a source of its
 * own. Where nobody stated an accuracy, a smallest step, or of what kind the instrument is, the
 * uncertainty is unstated, never zero: a usual step would be kinder than a coarser one that
 * somebody had recorded.
 */
final class Instruments {
    private static final double SQRT_3 = StrictMath.sqrt(3);
    private static final double SQRT_12 = StrictMath.sqrt(12);

    /**
     * Greatest error of a tape, ± (a + b L) mm with L in metres rounded up to the next whole metre,
     * and what is added where it is read from its hook (Directive 2014/32/EU annex MI-008; OIML R
     * 35).
     */
    private record TapeClass(double a, double b, double hook) {
        double halfWidthMm(double lengthMm, boolean fromHook) {
            return a + b * StrictMath.ceil(lengthMm / 1000) + (fromHook ? hook : 0);
        }
    }

    private static final Map<String, TapeClass> TAPE_CLASSES =
            Map.of(
                    "I", new TapeClass(0.1, 0.1, 0.1),
                    "II", new TapeClass(0.3, 0.2, 0.2),
                    "III", new TapeClass(0.6, 0.4, 0.3));

    private static final String WATER_LEVEL = "water level";
    private static final String STRING = "string";

    private final Map<String, Instrument> byId;
    private final Map<String, Instrument.SetUp> setUps;
    private final @Nullable String byDefault;

    Instruments(Job job) {
        Map<String, Instrument> instruments = job.instruments();
        Map<String, Instrument.SetUp> placed = job.setUps();
        byId = instruments == null ? Map.of() : instruments;
        setUps = placed == null ? Map.of() : placed;
        byDefault = job.measuredWith();
    }

    Optional<Instrument.SetUp> setUp(String id) {
        return Optional.ofNullable(setUps.get(id));
    }

    /**
     * A length, station or reading as it was read.
     *
     * @param source names this one reading, so that it stays apart from every other
     * @param with the instrument that it names, else the job's
     * @param thing what was measured, for the reason where nothing is stated
     */
    Uncertain read(double mm, String source, @Nullable String with, String thing) {
        Found<Instrument> found = instrument(with, thing);
        if (!(found instanceof Found.Value<Instrument> known)) {
            return Uncertain.unstated(mm, ((Found.Missing<Instrument>) found).why());
        }
        Instrument instrument = known.value();
        Double step = instrument.resolutionMm();
        if (instrument.kind() == null) {
            return Uncertain.unstated(mm, noKind(instrument));
        } else if (step == null) {
            return Uncertain.unstated(
                    mm, "the smallest step of " + instrument.id() + " is not recorded");
        }
        double halfWidth = halfWidthMm(instrument, Math.abs(mm));
        if (halfWidth < 0) {
            return Uncertain.unstated(
                    mm, "the accuracy of " + instrument.id() + " is not recorded");
        }
        return Uncertain.of(mm, source, halfWidth / SQRT_3)
                .plus(Uncertain.of(0, source + ", smallest step", step / SQRT_12));
    }

    private static String noKind(Instrument instrument) {
        return "what kind of instrument " + instrument.id() + " is is not recorded";
    }

    /**
     * What the level line of a set-up is off by at a distance along the gutter. A maker's ± mm for
     * each metre is the half-width; the lines to the left and to the right of where the instrument
     * stood are errors of their own. An accuracy of 0 is that of an exact datum, such as still
     * water.
     *
     * @param alongMm from where it stood, negative to the left
     */
    Uncertain levelLine(String setUpId, double alongMm) {
        Instrument.SetUp setUp = setUps.get(setUpId);
        if (setUp == null) {
            return Uncertain.unstated(0, "set-up " + setUpId + " is not recorded");
        }
        Found<Instrument> found = instrument(setUp.instrument(), "set-up " + setUpId);
        if (!(found instanceof Found.Value<Instrument> known)) {
            return Uncertain.unstated(0, ((Found.Missing<Instrument>) found).why());
        }
        if (known.value().kind() == null) {
            return Uncertain.unstated(0, noKind(known.value()));
        }
        Double perM = known.value().accuracyMmPerM();
        Double each = known.value().accuracyMm();
        if (perM == null && each != null && WATER_LEVEL.equals(known.value().kind())) {
            // Still water lies level however far away: each end of the tube is read by itself.
            return Uncertain.of(
                    0,
                    "water at "
                            + Decimals.plain(alongMm, 1)
                            + " mm from where set-up "
                            + setUpId
                            + " stood",
                    each / SQRT_3);
        }
        if (perM == null) {
            return Uncertain.unstated(
                    0,
                    "how far the level line of "
                            + known.value().id()
                            + " may be out for each metre is not recorded");
        }
        String side = alongMm < 0 ? "left" : "right";
        Uncertain line =
                Uncertain.of(
                        0,
                        "level line " + side + " of set-up " + setUpId,
                        perM / SQRT_3 * Math.abs(alongMm) / 1000);
        return STRING.equals(known.value().kind()) ? line.plus(StringSag.at(setUp, alongMm)) : line;
    }

    /** For workings: what the thing was measured with. */
    String named(@Nullable String with) {
        String id = with == null ? byDefault : with;
        return id == null ? "as recorded" : "measured with " + id;
    }

    private Found<Instrument> instrument(@Nullable String with, String thing) {
        String id = with == null ? byDefault : with;
        if (id == null) {
            return Found.missing("what " + thing + " was measured with is not recorded");
        }
        return Found.recorded(byId.get(id), "instrument " + id);
    }

    /** The greater of what the tape's class allows and what is stated; below 0 where neither is. */
    private static double halfWidthMm(Instrument instrument, double mm) {
        Double stated = instrument.accuracyMm();
        String tape = instrument.tapeClass();
        TapeClass tapeClass = tape == null ? null : TAPE_CLASSES.get(tape);
        // Whether it was read from the hook changes little: where it is not said, the worse.
        boolean fromHook = !Words.NO.equals(instrument.fromHook());
        return Math.max(
                stated == null ? -1 : stated,
                tapeClass == null ? -1 : tapeClass.halfWidthMm(mm, fromHook));
    }
}
