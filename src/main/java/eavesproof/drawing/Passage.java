package eavesproof.drawing;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.survey.Answer;
import eavesproof.survey.FactKind;
import eavesproof.survey.Facts;
import eavesproof.survey.Measure;
import eavesproof.survey.Survey;
import eavesproof.survey.Vocabulary;
import eavesproof.survey.Working;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the water of a run passes from its roof to where it goes, in the order of its coming. */
record Passage(List<Part> parts) {
    static final String NOT_KNOWN = "not known";

    Passage {
        parts = List.copyOf(parts);
    }

    /**
     * @param to the id of the part that it leads to; empty where it leads to none
     * @param load what comes to it over what it carries, where both are known
     * @param words what is said of it instead
     * @param why it is not known, where something is missing
     */
    record Part(
            String id,
            String to,
            String name,
            Optional<Load> load,
            String words,
            Optional<String> why) {}

    /**
     * @param words both in figures: "0.535 of 3.541 L/s"
     */
    record Load(double ratio, String words) {}

    static Passage of(Job job, Run run, Survey survey) {
        return new Passage(new Walk(job, run, survey).parts());
    }

    private record Walk(Job job, Run run, Survey survey, List<Part> parts, Set<String> seen) {
        Walk(Job job, Run run, Survey survey) {
            this(job, run, survey, new ArrayList<>(), new LinkedHashSet<>());
            List<WayPart.Outlet> outlets = outlets();
            roof();
            part(run.id(), first(outlets), "gutter", Facts.GutterRatio.class);
            outlets.forEach(this::from);
            if (outlets.isEmpty()) {
                parts.add(lost("the outlets", "no outlet of run " + run.id() + " is recorded"));
            }
        }

        private List<WayPart.Outlet> outlets() {
            List<String> straights =
                    Objects.requireNonNullElse(run.straights(), List.<Run.Straight>of()).stream()
                            .map(Run.Straight::id)
                            .toList();
            return way().stream()
                    .filter(WayPart.Outlet.class::isInstance)
                    .map(WayPart.Outlet.class::cast)
                    .filter(outlet -> outlet.on() != null && straights.contains(outlet.on()))
                    .toList();
        }

        private static String first(List<WayPart.Outlet> outlets) {
            return outlets.isEmpty() ? "" : outlets.get(0).id();
        }

        private List<WayPart> way() {
            return Objects.requireNonNullElse(job.way(), List.<WayPart>of());
        }

        private void roof() {
            Answer answer = answer(Facts.RunDemand.class, run.id());
            String words =
                    answer instanceof Answer.Known known ? known.measure().text() : NOT_KNOWN;
            parts.add(new Part("", run.id(), "roof", Optional.empty(), words, missing(answer)));
        }

        private void from(WayPart start) {
            WayPart part = start;
            while (seen.add(part.id())) {
                add(part);
                if (part instanceof WayPart.Discharge) {
                    return;
                }
                String to = part.to();
                Optional<WayPart> next =
                        way().stream().filter(other -> other.id().equals(to)).findFirst();
                if (next.isEmpty()) {
                    parts.add(
                            lost(
                                    "what follows",
                                    "where the water goes from " + part.id() + " is not recorded"));
                    return;
                }
                if (!part.leadsDownTo(next.get())) {
                    parts.add(
                            lost(
                                    "what lies between",
                                    "how the water gets from "
                                            + part.id()
                                            + " down to "
                                            + next.get().id()
                                            + " is not recorded"));
                }
                part = next.get();
            }
            parts.add(
                    new Part(
                            "",
                            "",
                            "on through " + part.id(),
                            Optional.empty(),
                            "as above",
                            Optional.empty()));
        }

        private static Part lost(String name, String why) {
            return new Part("", "", name, Optional.empty(), NOT_KNOWN, Optional.of(why));
        }

        private void add(WayPart part) {
            String to = Objects.requireNonNullElse(part.to(), "");
            String name = part.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
            String named = name + " " + part.id();
            if (part instanceof WayPart.Discharge discharge) {
                String place = discharge.place().is();
                parts.add(
                        new Part(
                                part.id(),
                                "",
                                named,
                                Optional.empty(),
                                place == null ? NOT_KNOWN : place,
                                place == null
                                        ? Optional.of(
                                                "what kind of discharge "
                                                        + part.id()
                                                        + " is, is not recorded")
                                        : Optional.empty()));
            } else {
                part(part.id(), to, named, kind(part));
            }
        }

        private static Class<? extends Facts.Fact> kind(WayPart part) {
            if (part instanceof WayPart.Outlet) {
                return Facts.OutletRatio.class;
            }
            if (part instanceof WayPart.Branch) {
                return Facts.BranchRatio.class;
            }
            if (part instanceof WayPart.Downpipe) {
                return Facts.DownpipeRatio.class;
            }
            return part instanceof WayPart.Drain
                    ? Facts.DrainRatio.class
                    : Facts.TankInletRatio.class;
        }

        private void part(String id, String to, String name, Class<? extends Facts.Fact> type) {
            Answer answer = answer(type, id);
            Optional<Load> load =
                    answer instanceof Answer.Known known
                            ? Optional.of(load(known))
                            : Optional.empty();
            parts.add(
                    new Part(
                            id,
                            to,
                            name,
                            load,
                            load.map(Load::words).orElse(NOT_KNOWN),
                            missing(answer)));
        }

        private static Optional<String> missing(@Nullable Answer answer) {
            if (answer instanceof Answer.Known) {
                return Optional.empty();
            }
            return Optional.of(
                    answer instanceof Answer.Gap gap ? gap.why() : "it was not worked out");
        }

        /** The answer for this very part, else one that is about the whole run. */
        private @Nullable Answer answer(Class<? extends Facts.Fact> type, String id) {
            FactKind kind = Vocabulary.kind(type);
            String key = kind.keys().get(kind.keys().size() - 1);
            List<Answer> all =
                    survey.of(kind).stream()
                            .filter(it -> it.place().key("run").orElse(run.id()).equals(run.id()))
                            .toList();
            return all.stream()
                    .filter(it -> it.place().key(key).filter(id::equals).isPresent())
                    .findFirst()
                    .or(() -> all.stream().filter(Answer.Gap.class::isInstance).findFirst())
                    .orElse(null);
        }

        private static Load load(Answer.Known known) {
            String comes = step(known, "demand");
            String carries = step(known, "capacity");
            String unit = carries.substring(carries.indexOf(' ') + 1);
            String figure = comes.endsWith(" " + unit) ? figure(comes) : comes;
            double ratio = ((Measure.Number) known.measure()).value().value();
            return new Load(ratio, figure + " of " + carries);
        }

        private static String figure(String amount) {
            return amount.substring(0, amount.indexOf(' '));
        }

        private static String step(Answer.Known known, String name) {
            return known.workings().stream()
                    .filter(step -> step.name().equals(name))
                    .reduce((one, last) -> last)
                    .map(Working::value)
                    .orElseThrow(() -> new IllegalStateException("no " + name + " in " + known));
        }
    }
}
