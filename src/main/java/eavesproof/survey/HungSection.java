package eavesproof.survey;

import eavesproof.hydraulics.Profile;
import eavesproof.hydraulics.Refused;
import eavesproof.hydraulics.Section;
import eavesproof.job.Gutter;
import eavesproof.job.Words;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The cross-section of a gutter as it hangs: its profile, turned as the readings of front bead and
 * back edge have it. Of several readings the one counts that leaves the least depth.
 */
record HungSection(Profile profile, Section section, List<Working> workings) {
    private static final double MM_PER_M = 1000;

    /** A half-round is half as deep as wide, within this part. */
    private static final double ROUND = 0.1;

    static Found<HungSection> of(Gutter gutter, Found<FrontLower> hung) {
        String name = "gutter " + gutter.id();
        return Found.by(
                () -> {
                    try {
                        return hung(profile(gutter.profile(), name), hung.need(), name);
                    } catch (Refused refused) {
                        throw Found.lacking(name + ": " + refused.why());
                    }
                });
    }

    private static HungSection hung(Profile profile, FrontLower tilt, String name) {
        double counts = tilt.allMm().get(0);
        Profile turned = profile.tilted(counts / MM_PER_M);
        Section least = turned.section();
        for (double mm : tilt.allMm()) {
            Profile other = profile.tilted(mm / MM_PER_M);
            Section section = other.section();
            if (section.lip() < least.lip()) {
                turned = other;
                least = section;
                counts = mm;
            }
        }
        double areaMm2 = least.area(least.lip()) * MM_PER_M * MM_PER_M;
        return new HungSection(
                turned,
                least,
                List.of(
                        new Working(
                                "front bead below back edge",
                                Decimals.with(counts, Unit.MM),
                                tilt.from()),
                        new Working(
                                "depth to the lower lip",
                                Decimals.with(least.lip() * MM_PER_M, Unit.MM),
                                "the profile of " + name + ", turned so"),
                        new Working(
                                "area below the lower lip",
                                Decimals.with(areaMm2, Unit.MM2),
                                "by the points across it")));
    }

    private static Profile profile(Gutter.@Nullable Profile recorded, String name) throws Lacking {
        Gutter.Profile as = Found.need(recorded, "the profile of " + name);
        String shape = Found.need(as.shape(), "the shape of " + name);
        return switch (shape) {
            case Words.HALF_ROUND -> halfRound(as, name);
            case "rectangular" -> trapezoid(as, as.widthMm(), name);
            case "trapezoid" -> trapezoid(as, as.soleWidthMm(), name);
            case "points" -> points(as.points(), name);
            default -> throw Found.lacking("the shape of " + name + " is not one that is known");
        };
    }

    private static Profile halfRound(Gutter.Profile as, String name) throws Lacking {
        double width = Found.need(as.widthMm(), "the width of " + name);
        Double depth = as.depthMm();
        double radius = width / 2;
        if (depth != null && Math.abs(depth - radius) > ROUND * radius) {
            throw Found.lacking(
                    name
                            + " is recorded as half-round and is not half as deep as wide: the"
                            + " points across it are needed");
        }
        double usual = depth == null ? radius : depth;
        return Profile.halfRound(
                width / MM_PER_M,
                or(as.backHeightMm(), usual) / MM_PER_M,
                or(as.frontHeightMm(), usual) / MM_PER_M);
    }

    private static Profile trapezoid(Gutter.Profile as, @Nullable Double soleMm, String name)
            throws Lacking {
        return Profile.trapezoid(
                Found.need(soleMm, "the width of the sole of " + name) / MM_PER_M,
                Found.need(as.widthMm(), "the width of " + name) / MM_PER_M,
                height(as.backHeightMm(), as.depthMm(), name) / MM_PER_M,
                height(as.frontHeightMm(), as.depthMm(), name) / MM_PER_M);
    }

    private static double height(@Nullable Double mm, @Nullable Double depthMm, String name)
            throws Lacking {
        return Found.need(mm == null ? depthMm : mm, "the depth of " + name);
    }

    private static double or(@Nullable Double mm, double usual) {
        return mm == null ? usual : mm;
    }

    private static Profile points(@Nullable List<Gutter.Point> recorded, String name)
            throws Lacking {
        String what = "the points across " + name;
        List<Profile.Point> points = new ArrayList<>();
        for (Gutter.Point point : Found.need(recorded, what)) {
            points.add(
                    new Profile.Point(
                            Found.need(point.xMm(), what) / MM_PER_M,
                            Found.need(point.yMm(), what) / MM_PER_M));
        }
        return new Profile(points);
    }
}
