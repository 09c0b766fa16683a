package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Said;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The section of a gutter that is full: as somebody states it, else by the measures of its profile.
 * What is stated is held against those measures, so that a slip of a digit is not believed.
 */
record FullSection(Uncertain mm2, Provenance provenance, String from) {
    /** Our choice: a moulded section may be this much more or less than that of its plain shape. */
    private static final double ALIKE = 1.5;

    /** A tenth of the radius, as where the water is worked out. */
    private static final double ROUND = 1.0 / 20;

    static Found<FullSection> of(Gutter gutter) {
        Said<Double> said = gutter.areaMm2();
        return said.is() == null ? byProfile(gutter) : stated(gutter);
    }

    /** As stated, and alike to what its profile gives where that is known. */
    static Found<FullSection> stated(Gutter gutter) {
        Said<Double> said = gutter.areaMm2();
        String what = "the area of gutter " + gutter.id() + " when it is full";
        return Found.recorded(said.is(), what)
                .then(
                        mm2 -> {
                            Optional<String> doubt = doubt(mm2, byProfile(gutter), what);
                            Provenance by = Provenance.of(said);
                            return doubt.<Found<FullSection>>map(Found::missing)
                                    .orElseGet(
                                            () ->
                                                    Found.of(
                                                            new FullSection(
                                                                    Uncertain.exact(mm2),
                                                                    by,
                                                                    by.text())));
                        });
    }

    private static Optional<String> doubt(double mm2, Found<FullSection> shape, String what) {
        if (!(shape instanceof Found.Value<FullSection> known)) {
            return Optional.empty();
        }
        double plain = known.value().mm2().value();
        boolean alike = mm2 <= plain * ALIKE && mm2 >= plain / ALIKE;
        return alike
                ? Optional.empty()
                : Optional.of(
                        what
                                + " is stated as "
                                + Decimals.with(mm2, Unit.MM2)
                                + ", and its profile gives "
                                + Decimals.with(plain, Unit.MM2));
    }

    private static Found<FullSection> byProfile(Gutter gutter) {
        return Found.by(() -> measured(gutter));
    }

    private static FullSection measured(Gutter gutter) throws Lacking {
        String name = "gutter " + gutter.id();
        Gutter.Profile profile = Found.need(gutter.profile(), "the profile of " + name);
        String shape = Found.need(profile.shape(), "the shape of " + name);
        Uncertain width = read(profile.widthMm(), "width of " + name);
        if (shape.equals(Words.HALF_ROUND)) {
            Double depth = profile.depthMm();
            if (depth != null && Math.abs(depth - width.value() / 2) > width.value() * ROUND) {
                throw Found.lacking(
                        "the section of "
                                + name
                                + ", which is not half as deep as wide,"
                                + " is not stated");
            }
            Uncertain area = width.times(width).times(Math.PI / 8);
            return new FullSection(area, Provenance.MEASURED, "pi / 8 x width x width");
        }
        if (!shape.equals("rectangular") && !shape.equals("trapezoid")) {
            throw Found.lacking("the section of " + name + " is not stated");
        }
        Uncertain depth = read(profile.depthMm(), "depth of " + name);
        Uncertain sole =
                shape.equals("rectangular")
                        ? width
                        : read(profile.soleWidthMm(), "width of the sole of " + name);
        Uncertain area = width.plus(sole).times(0.5).times(depth);
        return new FullSection(
                area, Provenance.MEASURED, "mean of width and sole x depth to the lip");
    }

    private static Uncertain read(@Nullable Double mm, String what) throws Lacking {
        return Uncertain.exact(Found.need(mm, "the " + what));
    }
}
