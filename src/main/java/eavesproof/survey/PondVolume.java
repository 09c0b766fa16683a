package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Gutter.Profile;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** How much water a pond holds, by the shape of the gutter. */
final class PondVolume {
    private static final double MM3_IN_A_LITRE = 1e6;

    private PondVolume() {}

    /** In litres; empty where the shape of the gutter is not recorded, or is drawn by points. */
    static Optional<Double> litres(Pond pond, Found<Gutter> gutter) {
        if (!(gutter instanceof Found.Value<Gutter> known) || known.value().profile() == null) {
            return Optional.empty();
        }
        return wetAreaMm2(known.value().profile()).map(area -> litres(pond.surface(), area));
    }

    /** By Simpson's rule from reading to reading, the depth being straight in between. */
    private static double litres(List<Pond.Depth> surface, DoubleUnaryOperator area) {
        double mm3 = 0;
        for (int i = 1; i < surface.size(); i++) {
            Pond.Depth from = surface.get(i - 1);
            Pond.Depth to = surface.get(i);
            double ends = area.applyAsDouble(from.mm()) + area.applyAsDouble(to.mm());
            double middle = area.applyAsDouble((from.mm() + to.mm()) / 2);
            mm3 += (to.toOutletMm() - from.toOutletMm()) * (ends + 4 * middle) / 6;
        }
        return mm3 / MM3_IN_A_LITRE;
    }

    private static Optional<DoubleUnaryOperator> wetAreaMm2(Profile profile) {
        Double width = profile.widthMm();
        Double depth = profile.depthMm();
        Double sole = profile.soleWidthMm();
        if (width == null || width <= 0 || profile.shape() == null) {
            return Optional.empty();
        }
        return switch (profile.shape()) {
            case "half-round" -> Optional.of(mm -> segment(width / 2, Math.min(mm, width / 2)));
            case "rectangular" -> Optional.of(mm -> width * mm);
            case "trapezoid" ->
                    sole == null || depth == null || depth <= 0
                            ? Optional.empty()
                            : Optional.of(mm -> mm * (sole + (width - sole) * mm / depth / 2));
            default -> Optional.empty();
        };
    }

    /** A segment of a circle: r² arccos((r - h)/r) - (r - h) sqrt(2 r h - h²), geometry. */
    private static double segment(double r, double h) {
        double under = Math.max(0, 2 * r * h - h * h);
        return r * r * StrictMath.acos((r - h) / r) - (r - h) * StrictMath.sqrt(under);
    }
}
