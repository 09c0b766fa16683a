package eavesproof.survey;

import eavesproof.job.Job;
import eavesproof.job.Job.Stood;
import eavesproof.job.Job.WaterTest;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Trough.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What tests with water say of what stands in a run afterwards. */
final class WaterTests {
    /** Our choice: water that stands 1 mm deep is seen. */
    private static final double SEEN_MM = 1;

    /**
     * Our choice: twice what fills a gutter 100 mm wide 10 mm deep, deeper than any pond that is
     * let pass. With less than that a hollow may have stayed dry.
     */
    private static final double LITRES_PER_M = 2;

    /**
     * Our choice: a hose lets out no more in a minute. A garden hose gives 10 to 30 L (from
     * memory); what is recorded as faster was no hose, or no such test.
     */
    private static final double HOSE_L_PER_MIN = 60;

    private static final double MM_PER_M = 1000;

    private static final double SQRT_3 = StrictMath.sqrt(3);

    /** The one kind of test in which the water runs the whole length of a reach. */
    private static final String FROM_THE_HIGH_END = "hose at the high end";

    /**
     * @param text "test t1"
     * @param depth how deep it stood, or why that cannot be told
     */
    record Seen(String text, Found<Uncertain> depth) {}

    private final Trough trough;
    private final List<WaterTest> tests;

    private WaterTests(Trough trough, List<WaterTest> tests) {
        this.trough = trough;
        this.tests = tests;
    }

    /** Those after which somebody recorded what still stood. */
    static WaterTests of(Job job, Trough trough) {
        List<WaterTest> tests = job.tests();
        List<WaterTest> looked = new ArrayList<>();
        for (WaterTest test : tests == null ? List.<WaterTest>of() : tests) {
            boolean ofRun = test.run() == null || test.run().equals(trough.id());
            if (test.stood() != null && ofRun) {
                looked.add(test);
            }
        }
        return new WaterTests(trough, looked);
    }

    /** All that was seen to stand where a reach may lie. */
    List<Seen> stoodIn(ReachLevels reach) {
        List<Seen> seen = new ArrayList<>();
        for (WaterTest test : tests) {
            List<Stood> stood = test.stood();
            for (Stood one : stood == null ? List.<Stood>of() : stood) {
                if (mayLieIn(one, reach)) {
                    seen.add(seen(test, one));
                }
            }
        }
        return seen;
    }

    /**
     * The test that shows what stands in a reach without any reading: one with a hose at the high
     * end, of a run that has no other reach, with water enough for as long as a hose needs for it,
     * that was seen to come out.
     */
    Optional<String> ranThrough() {
        Found<Uncertain> length =
                trough.rightEnd(trough.straights().size() - 1)
                        .then(end -> trough.distance(trough.leftEnd(0), end));
        return length instanceof Found.Value<Uncertain> mm
                ? tests.stream()
                        .filter(it -> it.run() != null && FROM_THE_HIGH_END.equals(it.kind()))
                        .filter(it -> filled(it, mm.value().value()) && arrived(it))
                        .map(WaterTests::text)
                        .findFirst()
                : Optional.empty();
    }

    private static boolean filled(WaterTest test, double lengthMm) {
        Double litres = test.litres();
        return litres != null
                && litres >= LITRES_PER_M * lengthMm / MM_PER_M
                && believed(test, litres);
    }

    private static boolean believed(WaterTest test, double litres) {
        Double minutes = test.minutes();
        return minutes != null && litres <= HOSE_L_PER_MIN * minutes;
    }

    /** Why a test with a hose shows nothing, where that is how long it ran. */
    Optional<String> notBelieved() {
        for (WaterTest test : tests) {
            Double litres = test.litres();
            Double minutes = test.minutes();
            boolean hose = FROM_THE_HIGH_END.equals(test.kind());
            if (hose && minutes == null) {
                return Optional.of("how long the water of " + text(test) + " ran is not recorded");
            } else if (hose && minutes != null && litres != null && !believed(test, litres)) {
                return Optional.of(
                        Decimals.with(litres, Unit.LITRE)
                                + " within "
                                + Decimals.plain(minutes, 2)
                                + " min in "
                                + text(test)
                                + " is more than a hose lets out");
            }
        }
        return Optional.empty();
    }

    /** Whether somebody saw the water come out of the gutter, at the outlet or farther down. */
    private boolean arrived(WaterTest test) {
        return trough.way().from(trough.outlets()).parts().stream()
                .anyMatch(part -> part.id().equals(test.seenAt()));
    }

    /** All tests after which it was recorded what stood. */
    List<String> texts() {
        return tests.stream().map(WaterTests::text).toList();
    }

    /** Nothing was seen to stand: what is too shallow to be seen may be there all the same. */
    static Uncertain nothingSeen() {
        return Uncertain.of(0, "what a look at the gutter passes over", SEEN_MM / SQRT_3);
    }

    private boolean mayLieIn(Stood stood, ReachLevels reach) {
        if (stood.on() == null) {
            // Nobody said where: it may have stood anywhere.
            return true;
        }
        int index = trough.indexOf(stood.on());
        if (index < 0) {
            return false;
        }
        Double from = stood.fromMm() == null ? stood.toMm() : stood.fromMm();
        Double to = stood.toMm() == null ? stood.fromMm() : stood.toMm();
        if (from == null || to == null) {
            return reach.touches(index);
        }
        return reach.touches(
                new Position(index, Math.min(from, to)), new Position(index, Math.max(from, to)));
    }

    private Seen seen(WaterTest test, Stood stood) {
        String where = stood.on() == null ? "" : " on " + stood.on();
        String what = "depth of the water that stood" + where + " after " + text(test);
        return new Seen(
                text(test) + where,
                Found.recorded(stood.depthMm(), "the " + what)
                        .map(mm -> trough.instruments().read(mm, what, null, text(test))));
    }

    private static String text(WaterTest test) {
        return "test " + test.id();
    }
}
