package eavesproof.report;

import eavesproof.job.Gutter;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * What the owner of a gutter should know of it: what was fitted, what to look at and when, and what
 * not to do. Common practice of the trade throughout; no document stands behind it, and none is
 * named.
 */
final class CareOfGutter {
    private static final String TWICE = "Twice a year: after the leaves are down, and in spring";
    private static final String YEARLY = "Once a year, and after a storm";

    /** Of the cautions of the report those that concern whoever climbs up to look. */
    private static final Set<String> CLIMBING =
            Set.of("Height", "Ladder and gutter", "Fragile roofs", "Power lines");

    private final Job job;
    private final Set<String> materials = new LinkedHashSet<>();
    private final Set<String> jointings = new LinkedHashSet<>();

    private CareOfGutter(Job job) {
        this.job = job;
        Map<String, Gutter> gutters = Objects.requireNonNullElse(job.gutters(), Map.of());
        for (Run run : runs()) {
            Gutter gutter = run.gutter() == null ? null : gutters.get(run.gutter());
            if (gutter != null && gutter.material() != null) {
                materials.add(gutter.material());
            }
            if (gutter != null && gutter.jointing() != null) {
                jointings.add(gutter.jointing());
            }
        }
    }

    static Report.Care of(Job job, List<Report.Caution> cautions) {
        CareOfGutter care = new CareOfGutter(job);
        return new Report.Care(
                care.fitted(),
                care.tasks(),
                care.never(),
                cautions.stream().filter(c -> CLIMBING.contains(c.topic())).toList());
    }

    private List<Run> runs() {
        return Objects.requireNonNullElse(job.runs(), List.of());
    }

    private List<WayPart> way() {
        return Objects.requireNonNullElse(job.way(), List.of());
    }

    private <T extends WayPart> List<T> parts(Class<T> kind) {
        return way().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private List<Report.Entry> fitted() {
        List<Report.Entry> fitted = new ArrayList<>();
        for (Run run : runs()) {
            String name = "Run " + run.id() + (run.title() == null ? "" : ", " + run.title());
            fitted.add(new Report.Entry(name, gutter(run)));
        }
        for (WayPart part : way()) {
            fitted.add(
                    new Report.Entry(
                            Verdicts.capital(WayWords.kind(part)) + " " + part.id(),
                            People.or(WayWords.text(part))));
        }
        return fitted;
    }

    private String gutter(Run run) {
        List<Run.Straight> straights =
                Objects.requireNonNullElse(run.straights(), List.<Run.Straight>of());
        List<String> lengths = new ArrayList<>();
        for (Run.Straight straight : straights) {
            lengths.add(
                    "straight "
                            + straight.id()
                            + " "
                            + People.or(Amounts.with(straight.lengthMm(), Unit.MM))
                            + (straight.brackets() == null
                                    ? ""
                                    : " on " + straight.brackets().size() + " brackets"));
        }
        return People.joined(AsRecorded.gutter(job, run), String.join(", ", lengths));
    }

    private List<Report.Task> tasks() {
        List<Report.Task> tasks = new ArrayList<>();
        tasks.add(
                new Report.Task(
                        "Take leaves, moss and grit out of the gutter; scoop, do not scrape.",
                        TWICE + "; every month under trees while they drop leaves",
                        "What lies in the gutter takes the room of the water and holds it back."));
        for (WayPart.Outlet outlet : parts(WayPart.Outlet.class)) {
            boolean strained =
                    outlet.strainer() != null
                            && !List.of("no", "unknown").contains(outlet.strainer());
            tasks.add(
                    new Report.Task(
                            strained
                                    ? "Lift the strainer out of outlet "
                                            + outlet.id()
                                            + ", rinse it and put it back."
                                    : "See that outlet " + outlet.id() + " is clear.",
                            strained ? TWICE + ", and after every storm" : TWICE,
                            "A blocked outlet fills the gutter in minutes of heavy rain."));
        }
        tasks.add(
                new Report.Task(
                        "Pour a bucket of water in at the high end and watch it go; look where"
                                + " water still stands an hour later.",
                        "Once a year",
                        "Water that stands where it did not before shows that a bracket has moved."));
        tasks.add(
                new Report.Task(
                        "Look along the brackets: none bent, loose or missing, no screw pulled.",
                        YEARLY + (snow() ? " and every fall of snow" : ""),
                        "One bracket less doubles the length that hangs free."));
        tasks.add(
                new Report.Task(
                        joints(), YEARLY, "A drip at a joint wets the timber behind the gutter."));
        movement(tasks);
        metal(tasks);
        below(tasks);
        return tasks;
    }

    private boolean snow() {
        return job.circumstances() != null && "yes".equals(job.circumstances().snowLies().is());
    }

    private String joints() {
        return jointings.isEmpty()
                ? "Look under the joints and corners for drips and stains."
                : "Look under the joints ("
                        + String.join(", ", jointings)
                        + ") and corners for drips and stains.";
    }

    private void movement(List<Report.Task> tasks) {
        boolean expands =
                runs().stream()
                        .flatMap(
                                r ->
                                        Objects.requireNonNullElse(
                                                r.straights(), List.<Run.Straight>of())
                                                .stream())
                        .flatMap(
                                s ->
                                        Objects.requireNonNullElse(s.joints(), List.<Run.Joint>of())
                                                .stream())
                        .anyMatch(j -> "expansion".equals(j.kind()));
        boolean slides =
                parts(WayPart.Outlet.class).stream().anyMatch(o -> "sliding".equals(o.hold()));
        if (expands || slides) {
            tasks.add(
                    new Report.Task(
                            "See that "
                                    + (expands ? "expansion joints" : "")
                                    + (expands && slides ? " and " : "")
                                    + (slides ? "sliding outlets" : "")
                                    + " are free of grit and still move.",
                            "Once a year",
                            "The gutter grows in the sun and shrinks in frost; what cannot slide"
                                    + " pulls joints apart."));
        }
    }

    private void metal(List<Report.Task> tasks) {
        if (materials.stream().anyMatch(CareOfGutter::isMetal)) {
            tasks.add(
                    new Report.Task(
                            "Rinse the outside where rain does not reach it, and look for rust,"
                                    + " white bloom and scratches down to the metal.",
                            "Once a year; every three months near the sea",
                            "Salt and dirt that stay eat through metal and its coating."));
        }
    }

    private void below(List<Report.Task> tasks) {
        if (!parts(WayPart.Downpipe.class).isEmpty()) {
            tasks.add(
                    new Report.Task(
                            "Look at the downpipes in rain: no drips at sockets, clips tight, water"
                                    + " coming out below.",
                            YEARLY,
                            "A pipe that drips at a socket is often blocked below it."));
        }
        for (WayPart.Tank tank : parts(WayPart.Tank.class)) {
            tasks.add(
                    new Report.Task(
                            "Clean the screen of tank "
                                    + tank.id()
                                    + ", empty its first flush, and see that its overflow is clear.",
                            "Every three months, and before the first rain after a dry spell",
                            "yes".equals(tank.drinkingWater())
                                    ? "People drink this water."
                                    : "What passes the screen settles in the tank."));
        }
        for (WayPart.Discharge discharge : parts(WayPart.Discharge.class)) {
            tasks.add(
                    new Report.Task(
                            "See that the water still goes where it should: "
                                    + People.or(discharge.place().is())
                                    + " "
                                    + discharge.id()
                                    + ", clear and not covered.",
                            TWICE,
                            "Water that cannot leave comes back up, or runs to the neighbour."));
        }
    }

    private List<String> never() {
        List<String> never = new ArrayList<>();
        never.add("Do not lean a ladder on the gutter, hang anything on it, or stand in it.");
        never.add(
                "Do not screw, cement or seal what is made to slide, and drive no screw through the"
                        + " gutter.");
        never.add(
                "Do not lead another roof, a tank overflow or an upper downpipe into it before"
                        + " somebody has reckoned whether it can carry the water.");
        never.add(
                "Do not close slots, weirs or rainheads: they are where too much water gets out.");
        never.add("Do not lead its water to another place than where it goes now.");
        if (materials.contains("PVC-U")) {
            never.add(
                    "Plastic: no solvent, hot water or flame, and no dark paint, under which it grows"
                            + " more than its gaps allow.");
        }
        if (materials.contains("copper")) {
            never.add(
                    "Copper: let its water run over no zinc, aluminium or coated steel, which it"
                            + " eats.");
        } else if (materials.stream().anyMatch(CareOfGutter::isMetal)) {
            never.add(
                    "Metal: fix nothing of copper above it or to it, use no wire brush, and leave no"
                            + " swarf or treated timber in it.");
        }
        return never;
    }

    private static boolean isMetal(String material) {
        return material.contains("steel")
                || List.of("zinc", "copper", "aluminium").contains(material);
    }
}
