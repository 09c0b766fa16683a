package eavesproof.report;

import eavesproof.check.Coverage;
import eavesproof.findings.Finding;
import eavesproof.findings.Findings;
import eavesproof.findings.Outcome;
import eavesproof.job.Gutter;
import eavesproof.job.Instrument;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.job.WayPart;
import eavesproof.judge.Verdict;
import eavesproof.quantity.Unit;
import eavesproof.rules.RuleSet;
import eavesproof.survey.Basis;
import eavesproof.survey.Facts;
import eavesproof.survey.Place;
import eavesproof.survey.Provenance;
import eavesproof.survey.Surveyor;
import eavesproof.survey.Vocabulary;
import eavesproof.survey.Working;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A job with findings of every kind, made by hand: nothing of the check stands behind it. */
final class Verandah {
    static final Finding.Source PRACTICE =
            new Finding.Source(
                    "Common practice of the trade", "", "", RuleSet.Standing.COMMON_PRACTICE);

    private Verandah() {}

    static Job job(String title, int brackets, List<String> remarks) {
        List<Run.Bracket> supports = new ArrayList<>();
        for (int i = 0; i < brackets; i++) {
            supports.add(
                    new Run.Bracket(
                            "b" + (i + 1), 50.0 + i * 490, 2, 2, "stainless steel", 5.0, 32.0));
        }
        double length = 100 + (brackets - 1) * 490.0;
        Run.Straight straight =
                new Run.Straight(
                        "a1",
                        length,
                        null,
                        new Run.End("stop end", 12.0),
                        new Run.End("stop end", null),
                        List.of(read(60, 12), read(length / 2, 15.5), read(length - 80, 19)),
                        supports,
                        List.of(
                                new Run.Fitting(
                                        "f1", "overflow weir", 30.0, "no", "yes", "no", null)),
                        List.of(
                                new Run.Joint(
                                        "j1",
                                        "cemented",
                                        length / 2 + 60,
                                        45.0,
                                        "yes",
                                        null,
                                        40.0,
                                        "no",
                                        null)),
                        List.of(
                                new Run.KeepClear(
                                        "z1",
                                        "above the door",
                                        length / 2 - 400,
                                        length / 2 + 400)),
                        null,
                        new Run.Fascia(
                                -30.0,
                                length + 30,
                                "pine",
                                "H3.2",
                                Said.nothing(),
                                Said.nothing(),
                                null),
                        null);
        return new Job(
                "J-2041",
                title,
                "trade-practice",
                new Job.Site(
                        "12 Kōwhai Road, Ōtaki", "dwelling", "verandah", "to the left", null, null),
                null,
                new Job.Dates("2026-11-20", "2026-11-21", "2026-11-21", "dry, some wind", 17.0),
                List.of(
                        new Job.Person(
                                "p1",
                                "installer",
                                "Mere Tāmati",
                                "Tāmati Roofing",
                                "021 555 010",
                                "LBP 123456",
                                "roofing"),
                        new Job.Person("p2", "client", "J. Ngata", null, null, null, null)),
                new Job.Circumstances(
                        new Said<>("no", "told", "the owner", null),
                        new Said<>("no", "assumed", "the installer", null),
                        Said.nothing(),
                        Said.nothing(),
                        Said.nothing(),
                        Said.nothing(),
                        Said.nothing(),
                        null),
                Map.of(
                        "tape",
                        new Instrument("tape", "tape", "II", "no", null, null, 1.0, "2026-06-01")),
                "tape",
                Map.of("L1", new Instrument.SetUp("L1", "laser", "a1", 4000.0, "yes", null)),
                Map.of(
                        "g",
                        new Gutter(
                                "g",
                                "eaves",
                                "PVC-U",
                                "cemented",
                                new Gutter.Profile(
                                        "half-round", 112.0, 56.0, null, null, null, null),
                                Said.nothing(),
                                Said.nothing(),
                                null,
                                null,
                                "white",
                                null)),
                List.of(new Run("a", "north eaves", "g", List.of(straight), null, null, null)),
                null,
                List.of(
                        new WayPart.Outlet(
                                "o1",
                                "d1",
                                null,
                                "a1",
                                length - 200,
                                160.0,
                                "sliding",
                                new Said<>("no", "seen", "the installer", null),
                                Said.nothing(),
                                null,
                                null,
                                "no",
                                null,
                                80.0,
                                "sharp",
                                null,
                                null,
                                null),
                        new WayPart.Downpipe(
                                "d1",
                                "e1",
                                null,
                                80.0,
                                null,
                                null,
                                "PVC-U",
                                "existing",
                                List.of(),
                                null,
                                null,
                                null,
                                null,
                                null,
                                null),
                        new WayPart.Discharge(
                                "e1",
                                null,
                                new Said<>("surface-water gully", "seen", "the installer", null),
                                Said.nothing(),
                                new Said<>("dye", "seen", "the installer", null))),
                List.of(),
                List.of(
                        new Job.Photograph(
                                "f1",
                                "verandah-1.jpg",
                                "the run from the left",
                                "2026-11-21",
                                "a",
                                "no")),
                List.of("the back of the house, which has its own gutter"),
                remarks);
    }

    static Run.Reading read(double station, double below) {
        return new Run.Reading(station, "sole", below, "L1", null, null);
    }

    /** Every second spacing is too wide; some other things are too close, missing, or in order. */
    static Findings findings(Job job) {
        List<Run.Bracket> brackets = job.runs().get(0).straights().get(0).brackets();
        List<Finding> all = new ArrayList<>();
        for (int i = 1; i < brackets.size(); i++) {
            double from = brackets.get(i - 1).stationMm();
            double to = brackets.get(i).stationMm();
            Place place =
                    Place.of("run", "a", "from", "b" + i, "to", "b" + (i + 1)).at("a1", from, to);
            boolean tooWide = i % 7 == 3;
            all.add(
                    number(
                            "bracket centres",
                            "support",
                            "Brackets of a cemented PVC-U gutter are close enough together to keep it from sagging.",
                            tooWide ? Verdict.DOES_NOT_COMPLY : Verdict.COMPLIES,
                            "bracket-spacing",
                            place,
                            tooWide ? 640 : 490,
                            1.1,
                            true,
                            500));
        }
        all.add(
                number(
                        "fall of a reach",
                        "fall",
                        "The gutter falls towards its outlet, at least 1 in 500.",
                        Verdict.TOO_CLOSE,
                        "reach-fall",
                        Place.of("run", "a", "outlet", "o1", "side", "left").at("a1", 0, 4850),
                        2.01,
                        0.08,
                        false,
                        2));
        for (String rule :
                List.of("discharge approved", "discharge approved where pipes are old")) {
            all.add(
                    new Finding(
                            rule,
                            "discharge",
                            "Somebody who may do so has approved where the water goes.",
                            Verdict.NOT_RECORDED,
                            "discharge-approved",
                            "whether the place of discharge is approved",
                            Place.of("run", "a", "discharge", "e1"),
                            Optional.empty(),
                            Optional.of(new Finding.WordLimit(List.of("yes"))),
                            Optional.empty(),
                            Optional.empty(),
                            "simple",
                            List.of("whether discharge e1 is approved is not recorded"),
                            PRACTICE,
                            Optional.empty(),
                            List.of(),
                            Optional.of("ask the authority and record who said so"),
                            List.of()));
        }
        all.add(
                new Finding(
                        "outlet slides",
                        "movement",
                        "The outlet of a long gutter lets it slide.",
                        Verdict.NOT_APPLICABLE,
                        "outlet-hold",
                        "whether an outlet lets the gutter slide",
                        Place.of("run", "a", "outlet", "o1"),
                        Optional.of(new Finding.MeasuredWord("sliding")),
                        Optional.of(new Finding.WordLimit(List.of("sliding"))),
                        Optional.empty(),
                        Optional.empty(),
                        "simple",
                        List.of("straight length is 4510 mm (the condition is > 6000 mm)"),
                        PRACTICE,
                        Optional.of(Provenance.MEASURED),
                        List.of(),
                        Optional.empty(),
                        List.of()));
        return new Findings(
                job.id(),
                "0".repeat(64),
                Outcome.DOES_NOT_COMPLY,
                new Findings.RulesUsed(
                        "trade-practice",
                        "What a tidy gutter job satisfies",
                        "no particular country",
                        "a1b2c3d4".repeat(8),
                        "d4c3b2a1".repeat(8),
                        true,
                        List.of(),
                        Map.of(
                                "common practice",
                                new RuleSet.Document(
                                        "common practice",
                                        "Common practice of the trade",
                                        "",
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.of("2026-11-25"),
                                        RuleSet.Standing.COMMON_PRACTICE)),
                        List.of(
                                "Where water goes when the gutter overflows.",
                                "How joints were made.")),
                "eavesproof test",
                all,
                List.of(
                        new Coverage.Uncovered(
                                Vocabulary.kind(Facts.ScrewMetal.class),
                                "a",
                                3,
                                List.of("gutter material is PVC-U"))),
                List.of("heavy rain: no, by the installer"),
                List.of(),
                List.of());
    }

    /** No rule met anything. */
    static Findings nothing(Job job) {
        return new Findings(
                job.id(),
                "0".repeat(64),
                Outcome.NOT_SHOWN,
                new Findings.RulesUsed(
                        "trade-practice",
                        "What a tidy gutter job satisfies",
                        "no particular country",
                        "a1b2c3d4".repeat(8),
                        "d4c3b2a1".repeat(8),
                        true,
                        List.of(),
                        Map.of(),
                        List.of()),
                "eavesproof test",
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static Finding number(
            String rule,
            String topic,
            String says,
            Verdict verdict,
            String kind,
            Place place,
            double value,
            double expanded,
            boolean atMost,
            double limit) {
        Unit unit = kind.equals("reach-fall") ? Unit.MM_PER_M : Unit.MM;
        double margin = atMost ? limit - value : value - limit;
        return new Finding(
                rule,
                topic,
                says,
                verdict,
                kind,
                "",
                place,
                Optional.of(new Finding.MeasuredNumber(value, unit, Optional.of(expanded))),
                Optional.of(
                        new Finding.NumberLimit(
                                atMost, limit, unit, (int) limit + " " + unit.symbol())),
                Optional.of(margin),
                Optional.of(
                        verdict == Verdict.COMPLIES
                                ? 0.999999
                                : verdict == Verdict.TOO_CLOSE ? 0.6 : 0.0),
                "guarded r=1",
                verdict == Verdict.TOO_CLOSE
                        ? List.of(
                                "the reading itself meets the limit, by less than its uncertainty")
                        : List.of(),
                PRACTICE,
                Optional.of(Provenance.MEASURED),
                List.of(),
                Optional.empty(),
                List.of(
                        new Working("station of b1", "50 mm", "tape, class II"),
                        new Working(
                                "centres",
                                value + " " + unit.symbol(),
                                "station of b2 - station of b1")));
    }

    /** Of a job that may hold nothing at all. */
    static Issue bare(Job job) {
        return Issue.of(
                job,
                Surveyor.survey(job, Basis.NOTHING),
                nothing(job),
                "{}".getBytes(StandardCharsets.UTF_8),
                "{}".getBytes(StandardCharsets.UTF_8),
                LocalDate.of(2026, 11, 25),
                Paper.A4,
                "eavesproof test");
    }

    static Issue issue(Job job, Paper paper) {
        return Issue.of(
                job,
                Surveyor.survey(job, Basis.NOTHING),
                findings(job),
                "{}".getBytes(StandardCharsets.UTF_8),
                "{}".getBytes(StandardCharsets.UTF_8),
                LocalDate.of(2026, 11, 25),
                paper,
                "eavesproof test");
    }
}
