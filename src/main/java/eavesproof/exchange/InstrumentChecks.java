package eavesproof.exchange;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Whether each instrument was used for something that it can do at all. */
final class InstrumentChecks {
    /** These measure along a line and give no level. */
    private static final List<String> NO_LEVEL = List.of("tape", "staff", "rule");

    /** These give a level and measure no length. A laser may be one that measures distances. */
    private static final List<String> NO_LENGTH = List.of("string", "water level");

    /**
     * The least error of one reading, the least error of a level line for each metre, and the least
     * step, mm, of the best of each kind (from memory): a record that has less slipped by a unit.
     */
    private record Best(double readingMm, double lineMmPerM, double stepMm) {}

    private static final Map<String, Best> BEST =
            Map.of(
                    "tape", new Best(0.1, 0, 0.1),
                    "staff", new Best(0.1, 0, 0.5),
                    "rule", new Best(0.05, 0, 0.05),
                    "laser", new Best(0.2, 0.02, 0.1),
                    "optical level", new Best(0.1, 0.003, 0.05),
                    "water level", new Best(0.2, 0.01, 0.1),
                    "string", new Best(0.2, 0.1, 0.2),
                    "bar level", new Best(0.1, 0.1, 0.05));

    private final Map<String, Found> instruments;
    private final Problems problems;

    private InstrumentChecks(Map<String, Found> instruments, Problems problems) {
        this.instruments = instruments;
        this.problems = problems;
    }

    static void check(Found job, Problems problems) {
        Found list = job.at("instruments");
        Map<String, Found> instruments = list == null ? Map.of() : list.keys();
        InstrumentChecks checks = new InstrumentChecks(instruments, problems);
        instruments.values().forEach(checks::ownClass);
        instruments.values().forEach(checks::noBetterThanTheBest);
        Found setUps = job.at("set_ups");
        if (setUps != null) {
            setUps.keys()
                    .values()
                    .forEach(at -> checks.not(NO_LEVEL, at.at("instrument"), "level"));
        }
        checks.length(job);
        for (Found run : job.items("runs")) {
            run.items("straights").forEach(checks::length);
        }
        job.items("way").forEach(checks::length);
    }

    private void length(Found thing) {
        not(NO_LENGTH, thing.at("measured_with"), "length");
    }

    private void not(List<String> kinds, @Nullable Found reference, String gives) {
        Found instrument = reference == null ? null : instruments.get(reference.value());
        String kind = instrument == null ? null : instrument.text("kind");
        if (reference != null && kind != null && kinds.contains(kind)) {
            String found = Shown.quoted((String) reference.value()) + ", which is a " + kind;
            problems.add(reference, found, "an instrument that gives a " + gives);
        }
    }

    private void noBetterThanTheBest(Found instrument) {
        String kind = instrument.text("kind");
        Best best = kind == null ? null : BEST.get(kind);
        if (best != null) {
            atLeast(instrument.at("accuracy_mm"), best.readingMm(), kind);
            atLeast(instrument.at("accuracy_mm_per_m"), best.lineMmPerM(), kind);
            atLeast(instrument.at("resolution_mm"), best.stepMm(), kind);
        }
    }

    private void atLeast(@Nullable Found found, double least, @Nullable String kind) {
        if (found != null && found.value() instanceof Number mm && mm.doubleValue() < least) {
            problems.add(
                    found,
                    Amount.plain(mm.doubleValue()),
                    "in millimetres no less than "
                            + Amount.plain(least)
                            + ", the best of a "
                            + kind);
        }
    }

    /** The class on a tape says its error; the class on a laser says what it does to an eye. */
    private void ownClass(Found instrument) {
        Found tapeClass = instrument.at("class");
        String kind = instrument.text("kind");
        if (tapeClass != null && kind != null && !NO_LEVEL.contains(kind)) {
            String expected = "no class: that of a " + kind + " says nothing of its error";
            problems.add(tapeClass, Shown.quoted((String) tapeClass.value()), expected);
        }
    }
}
