package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Answer;
import eavesproof.survey.Facts;
import eavesproof.survey.Survey;
import eavesproof.survey.Vocabulary;
import eavesproof.survey.WaterLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the drawing of the water shows, and what it cannot show, in words. */
final class WaterWords {
    private final Run run;
    private final Survey survey;
    private final Passage passage;

    WaterWords(Run run, Survey survey, Passage passage) {
        this.run = run;
        this.survey = survey;
        this.passage = passage;
    }

    /** For those who cannot see the drawing. */
    String alt() {
        List<String> parts = new ArrayList<>();
        parts.add("The water of run " + run.id() + " in the design rain");
        parts.add(
                survey.water(run.id())
                        .map(line -> "across the gutter " + stands(line))
                        .orElse("how it stands in the gutter is not known"));
        for (Passage.Part part : passage.parts()) {
            parts.add(
                    part.name()
                            + ": "
                            + part.load()
                                    .map(
                                            load ->
                                                    load.words()
                                                            + ", "
                                                            + PassageBars.percent(load.ratio()))
                                    .orElse(part.words()));
        }
        return String.join("; ", parts) + ".";
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>();
        rain(notes);
        survey.water(run.id()).ifPresent(line -> line(notes, line));
        blocked(notes);
        allBlocked(notes);
        provisions(notes, run.eavesSection());
        if (survey.water(run.id()).isPresent()) {
            eaves(notes, run.eavesSection());
        }
        missing(notes);
        return notes;
    }

    private void rain(List<String> notes) {
        known(Facts.DesignRain.class)
                .findFirst()
                .ifPresent(
                        answer ->
                                notes.add(
                                        "The rain is "
                                                + answer.measure().text()
                                                + ", for "
                                                + answer.workings().get(0).value()
                                                + "."));
    }

    private void line(List<String> notes, WaterLine line) {
        WaterLine.At at = line.nearest();
        String over = ElevationWater.lip(line.lower());
        String spills =
                at.freeboardMm() < 0
                        ? "The gutter spills in the design rain: at "
                                + place(at)
                                + " the water would stand "
                                + ElevationWater.near(at, line.lower())
                                + "."
                        : "The water comes nearest to the lip at "
                                + place(at)
                                + ": "
                                + ElevationWater.near(at, line.lower())
                                + ". In more rain it spills there first, over "
                                + over
                                + ".";
        notes.add(spills + side());
    }

    private String side() {
        return known(Facts.SpillSide.class)
                .map(answer -> " What is spilled goes " + answer.measure().text() + ".")
                .findFirst()
                .orElse(" Where spilled water goes is not known.");
    }

    private void blocked(List<String> notes) {
        known(Facts.BlockedFreeboard.class)
                .forEach(
                        answer -> {
                            double free = ((Facts.BlockedFreeboard) answer.fact()).freeboardMm();
                            notes.add(
                                    "With outlet "
                                            + answer.place().key("outlet").orElse("")
                                            + " blocked "
                                            + (free < 0 ? "it spills: " : "it does not spill: ")
                                            + mm(Math.abs(free))
                                            + (free < 0 ? " above" : " below")
                                            + " the lower lip.");
                        });
    }

    private void allBlocked(List<String> notes) {
        known(Facts.BlockedRain.class)
                .forEach(
                        answer ->
                                notes.add(
                                        "With every outlet blocked up to "
                                                + answer.measure().text()
                                                + " of rain goes over the front lip alone,"
                                                + " where that lies level."));
    }

    private static void provisions(List<String> notes, Run.@Nullable EavesSection eaves) {
        List<String> provided = eaves == null ? null : named(eaves);
        if (provided != null && !provided.isEmpty()) {
            notes.add(
                    "Provided for what overflows, and not counted in any figure here: "
                            + String.join(", ", provided)
                            + ".");
        }
    }

    private static @Nullable List<String> named(Run.EavesSection eaves) {
        List<Run.Overflow> measured = eaves.overflows();
        return eaves.overflowProvisions() != null || measured == null
                ? eaves.overflowProvisions()
                : measured.stream()
                        .map(one -> Objects.requireNonNullElse(one.kind(), one.id()))
                        .toList();
    }

    private static void eaves(List<String> notes, Run.@Nullable EavesSection eaves) {
        Double below = eaves == null ? null : eaves.backEdgeBelowFasciaTopMm();
        Double gap = eaves == null ? null : eaves.gapBehindMm();
        if (below != null && gap != null) {
            notes.add(
                    "The back edge lies "
                            + mm(below)
                            + " below the top of the fascia, with a gap of "
                            + mm(gap)
                            + " behind it.");
            return;
        }
        List<String> unknown = new ArrayList<>();
        if (below == null) {
            unknown.add("how the back edge lies against the top of the fascia");
        }
        if (gap == null) {
            unknown.add("the gap behind the gutter");
        }
        notes.add("Not recorded, and so the fascia is dotted: " + String.join(", ", unknown) + ".");
    }

    /** What is dotted, those that are missing for one reason together. */
    private void missing(List<String> notes) {
        Map<String, List<String>> byWhy = new LinkedHashMap<>();
        for (Passage.Part part : passage.parts()) {
            part.why()
                    .ifPresent(
                            why ->
                                    byWhy.computeIfAbsent(why, it -> new ArrayList<>())
                                            .add(part.name()));
        }
        byWhy.forEach(
                (why, names) ->
                        notes.add(
                                "Dotted, because not known: "
                                        + String.join(", ", names)
                                        + " ("
                                        + why
                                        + ")."));
    }

    private Stream<Answer.Known> known(Class<? extends Facts.Fact> type) {
        return survey.of(Vocabulary.kind(type)).stream()
                .filter(Answer.Known.class::isInstance)
                .map(Answer.Known.class::cast)
                .filter(answer -> answer.place().key("run").filter(run.id()::equals).isPresent());
    }

    private static String stands(WaterLine line) {
        WaterLine.At at = line.nearest();
        return "at "
                + place(at)
                + " it stands "
                + mm(at.depthMm())
                + " deep, "
                + ElevationWater.near(at, line.lower());
    }

    private static String place(WaterLine.At at) {
        return Decimals.plain(at.stationMm(), 0) + " mm on " + at.straight();
    }

    private static String mm(double value) {
        return Decimals.with(value, Unit.MM);
    }
}
