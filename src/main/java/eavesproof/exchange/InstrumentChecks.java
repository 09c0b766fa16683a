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
