package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.job.Said;
import eavesproof.job.Words;
import eavesproof.quantity.Unit;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What kind of gutter a run is, and what the place does to it. */
final class Circumstances {
    /** The kinds answered here: those that do not ask what lies along the run. */
    static final Set<Class<? extends Facts.Fact>> KINDS =
            Set.of(
                    Facts.GutterKind.class,
                    Facts.GutterMaterial.class,
                    Facts.MaterialFamily.class,
                    Facts.WornByCopper.class,
                    Facts.Jointing.class,
                    Facts.GutterShape.class,
                    Facts.GutterWidth.class,
                    Facts.GutterHeld.class,
                    Facts.SnowArea.class,
                    Facts.HeavyRain.class,
                    Facts.PlaceRain.class,
                    Facts.EavesWidth.class,
                    Facts.EavesLined.class,
                    Facts.RoofMetal.class,
                    Facts.RoofLead.class,
                    Facts.CorrosionClass.class,
                    Facts.OverflowMeasures.class);

    private Circumstances() {}

    static void answer(Job job, Run run, Basis basis, Instruments instruments, Answers answers) {
        Found<Gutter> gutter = gutterOf(job, run);
        if (gutter instanceof Found.Value<Gutter> known) {
            gutter(run.id(), known.value(), instruments, answers);
        } else {
            String why = ((Found.Missing<Gutter>) gutter).why();
            answers.gap(Facts.GutterKind.class, why, run.id());
            answers.gap(Facts.GutterMaterial.class, why, run.id());
            answers.gap(Facts.MaterialFamily.class, why, run.id());
            answers.gap(Facts.WornByCopper.class, why, run.id());
            answers.gap(Facts.Jointing.class, why, run.id());
            answers.gap(Facts.GutterShape.class, why, run.id());
            answers.gap(Facts.GutterWidth.class, why, run.id());
        }
        answers.word(
                Facts.GutterHeld.class,
                run.held(),
                word -> new Facts.GutterHeld(run.id(), word),
                "whether run " + run.id() + " slides in its brackets or is fixed through",
                run.id());
        place(run.id(), job.circumstances(), answers);
        RainOfPlace.answer(job, run.id(), basis, answers);
        RoofMetals.answer(job, run.id(), answers);
        Eaves.answer(run, instruments, answers);
    }

    static Found<Gutter> gutterOf(Job job, Run run) {
        Map<String, Gutter> gutters = job.gutters();
        return Found.recorded(run.gutter(), "the gutter of run " + run.id())
                .then(
                        id ->
                                Found.recorded(
                                        gutters == null ? null : gutters.get(id), "gutter " + id));
    }

    private static void gutter(
            String run, Gutter gutter, Instruments instruments, Answers answers) {
        String name = "gutter " + gutter.id();
        answers.word(
                Facts.GutterKind.class,
                gutter.kind(),
                word -> new Facts.GutterKind(run, word),
                "the kind of " + name,
                run);
        answers.word(
                Facts.GutterMaterial.class,
                gutter.material(),
                word -> new Facts.GutterMaterial(run, word),
                "the material of " + name,
                run);
        answers.word(
                Facts.MaterialFamily.class,
                family(gutter.material()),
                word -> new Facts.MaterialFamily(run, word),
                "the material of " + name,
                run);
        answers.word(
                Facts.WornByCopper.class,
                wornByCopper(gutter.material()),
                word -> new Facts.WornByCopper(run, word),
                "the material of " + name,
                run);
        answers.word(
                Facts.Jointing.class,
                gutter.jointing(),
                word -> new Facts.Jointing(run, word),
                "the jointing of " + name,
                run);
        Gutter.Profile profile = gutter.profile();
        answers.word(
                Facts.GutterShape.class,
                profile == null ? null : profile.shape(),
                word -> new Facts.GutterShape(run, word),
                "the shape of " + name,
                run);
        width(run, gutter, instruments, answers);
    }

    /** Plastic, metal or other; a word that is no material is handed on, to be refused. */
    private static @Nullable String family(@Nullable String material) {
        if (material == null || !Words.MATERIALS.contains(material)) {
            return material;
        }
        if (Words.PLASTICS.contains(material)) {
            return Words.PLASTIC;
        }
        return Words.METALS.contains(material) ? Words.METAL : Words.OTHER;
    }

    /** Of a material that the record calls other, nobody can say. */
    private static @Nullable String wornByCopper(@Nullable String material) {
        if (material == null || !Words.MATERIALS.contains(material)) {
            return material;
        }
        if (material.equals(Words.OTHER)) {
            return Words.UNKNOWN;
        }
        return Words.WORN_BY_COPPER.contains(material) ? Words.YES : Words.NO;
    }

    private static void width(String run, Gutter gutter, Instruments instruments, Answers answers) {
        String name = "width of gutter " + gutter.id();
        Gutter.Profile profile = gutter.profile();
        Double mm = profile == null ? null : profile.widthMm();
        if (mm == null) {
            answers.gap(Facts.GutterWidth.class, "the " + name + " is not recorded", run);
            return;
        }
        var width = instruments.read(mm, name, null, "gutter " + gutter.id());
        answers.known(
                new Facts.GutterWidth(run, mm),
                width,
                Answers.working(name, width, Unit.MM, instruments.named(null)));
    }

    private static void place(
            String run, Job.@Nullable Circumstances circumstances, Answers answers) {
        Said<String> snow = circumstances == null ? Said.nothing() : circumstances.snowLies();
        Said<String> rain = circumstances == null ? Said.nothing() : circumstances.heavyRain();
        Said<Double> ground =
                circumstances == null ? Said.nothing() : circumstances.groundSnowKnM2();
        snow(run, snow, ground, answers);
        answers.said(
                Facts.HeavyRain.class,
                rain,
                word -> new Facts.HeavyRain(run, word),
                "whether the site has heavy rain",
                run);
        answers.said(
                Facts.CorrosionClass.class,
                circumstances == null ? Said.nothing() : circumstances.corrosionClass(),
                word -> new Facts.CorrosionClass(run, word),
                "the corrosion class of the site",
                run);
    }

    /** The load of the snow on the ground; none at all contradicts that snow lies. */
    static Found<Double> groundSnow(Job job) {
        Job.Circumstances place = job.circumstances();
        Double load = place == null ? null : place.groundSnowKnM2().is();
        if (place != null && load != null && load == 0 && Words.YES.equals(place.snowLies().is())) {
            return Found.missing("the snow load on the ground is recorded as 0 where snow lies");
        }
        return Found.recorded(load, "the snow load on the ground");
    }

    /** Where no snow is said to lie and a load of it is recorded, the worse of the two counts. */
    private static void snow(String run, Said<String> lies, Said<Double> ground, Answers answers) {
        String what = "whether snow lies at the site";
        Said<String> said = lies;
        Double load = ground.is();
        if (Words.NO.equals(lies.is()) && load != null && load > 0) {
            said = new Said<>(Words.YES, ground.how(), ground.by(), ground.reference());
            what +=
                    " (recorded as no, and with a ground snow of "
                            + Answers.text(load, Unit.KN_PER_M2)
                            + ": the worse counts)";
        }
        answers.said(Facts.SnowArea.class, said, word -> new Facts.SnowArea(run, word), what, run);
    }
}
