package eavesproof.report;

import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.WayPart;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What belongs to the job as a whole, in tables: instruments, the way of the water, tests. */
final class Tables {
    private Tables() {}

    static List<Report.Grid> instruments(Job job) {
        Grids instruments =
                new Grids(
                                "Instruments",
                                "No instrument is recorded, so how sure any reading is is not known.")
                        .name("Name", 16)
                        .words("Kind", 16)
                        .words("Accuracy", 40)
                        .figures("Resolution, mm", 14)
                        .name("Last checked", 14);
        Objects.requireNonNullElse(job.instruments(), Map.<String, Instrument>of())
                .values()
                .forEach(
                        i ->
                                instruments.row(
                                        i.id(),
                                        i.kind(),
                                        accuracy(i),
                                        Amounts.plain(i.resolutionMm(), 2),
                                        i.lastChecked()));
        Grids setUps =
                new Grids("Set-ups", "No set-up is recorded.")
                        .name("Name", 16)
                        .words("Instrument", 22)
                        .words("Stood beside", 36)
                        .words("Gutter clean and empty", 26);
        Objects.requireNonNullElse(job.setUps(), Map.<String, Instrument.SetUp>of())
                .values()
                .forEach(
                        s ->
                                setUps.row(
                                        s.id(),
                                        s.instrument(),
                                        s.on() == null
                                                ? null
                                                : People.joined(
                                                        "straight " + s.on(),
                                                        s.stationMm() == null
                                                                ? "station not recorded"
                                                                : "at "
                                                                        + Amounts.with(
                                                                                s.stationMm(),
                                                                                Unit.MM)),
                                        s.clean()));
        return List.of(instruments.grid(), setUps.grid());
    }

    private static @Nullable String accuracy(Instrument instrument) {
        String text =
                People.joined(
                        instrument.tapeClass() == null ? null : "class " + instrument.tapeClass(),
                        "yes".equals(instrument.fromHook()) ? "read from the hook" : null,
                        instrument.accuracyMm() == null
                                ? null
                                : "± " + Decimals.plain(instrument.accuracyMm(), 2) + " mm",
                        instrument.accuracyMmPerM() == null
                                ? null
                                : "± "
                                        + Decimals.plain(instrument.accuracyMmPerM(), 3)
                                        + " mm for each metre");
        return text.isEmpty() ? null : text;
    }

    static Report.Grid way(Job job) {
        Grids grid =
                new Grids("", "The way of the water is not recorded.")
                        .name("Part", 10)
                        .words("What", 14)
                        .words("As recorded", 58)
                        .name("Leads to", 18);
        for (WayPart part : Objects.requireNonNullElse(job.way(), List.<WayPart>of())) {
            String to = part.to();
            grid.row(
                    part.id(),
                    WayWords.kind(part),
                    WayWords.text(part),
                    part instanceof WayPart.Discharge ? "—" : to);
        }
        return grid.grid();
    }

    static Report.Grid tests(Job job) {
        Grids grid =
                new Grids("", "No test with water is recorded.")
                        .name("Test", 10)
                        .words("What", 22)
                        .words("As recorded", 68);
        for (Job.WaterTest test :
                Objects.requireNonNullElse(job.tests(), List.<Job.WaterTest>of())) {
            String text = test(test);
            grid.row(test.id(), test.kind(), text.isEmpty() ? null : text);
        }
        return grid.grid();
    }

    private static String test(Job.WaterTest test) {
        return People.joined(
                test.run() == null ? null : "run " + test.run(),
                Amounts.with(test.litres(), Unit.LITRE),
                test.minutes() == null ? null : Decimals.plain(test.minutes(), 1) + " min",
                test.depthMm() == null ? null : Amounts.with(test.depthMm(), Unit.MM) + " deep",
                test.drips() == null ? null : "drips: " + test.drips(),
                test.seenAt() == null ? null : "seen at " + test.seenAt(),
                test.stood() == null ? null : "still stood: " + stood(test.stood()));
    }

    private static @Nullable String stood(@Nullable List<Job.Stood> stood) {
        if (stood == null) {
            return null;
        }
        return stood.isEmpty()
                ? "nothing"
                : String.join("; ", stood.stream().map(Tables::stood).toList());
    }

    private static String stood(Job.Stood water) {
        return People.joined(
                "on " + People.or(water.on()),
                "from "
                        + People.or(Amounts.plain(water.fromMm(), 1))
                        + " to "
                        + People.or(Amounts.with(water.toMm(), Unit.MM)),
                water.depthMm() == null ? null : Amounts.with(water.depthMm(), Unit.MM) + " deep");
    }

    static Report.Grid photographs(Job job) {
        Grids grid =
                new Grids("", "No photograph is recorded.")
                        .name("Photograph", 12)
                        .words("File", 28)
                        .words("Shows", 40)
                        .words("Run", 8)
                        .name("Taken", 16)
                        .words("Before covering", 12);
        for (Job.Photograph photograph :
                Objects.requireNonNullElse(job.photographs(), List.<Job.Photograph>of())) {
            grid.row(
                    photograph.id(),
                    photograph.file(),
                    photograph.shows(),
                    photograph.run(),
                    photograph.taken(),
                    photograph.beforeCovering());
        }
        return grid.grid();
    }
}
