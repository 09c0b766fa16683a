package eavesproof.hydraulics;

import eavesproof.hydraulics.GutterRun.OutletAt;
import java.util.List;

/**
 * The water in a run: its surface from the left end to the right, and what each outlet takes.
 *
 * @param outlets as those of the run
 */
public record RunSurface(GutterRun run, WaterSurface surface, List<Taken> outlets) {
    public RunSurface {
        outlets = List.copyOf(outlets);
    }

    /**
     * @param flow what the outlet takes, m³/s
     * @param fromLeft what arrives from its left side; below 0 where it passes on to that side
     * @param fromRight likewise
     * @param leftEnd where the reach to its left begins, m
     * @param rightEnd where the reach to its right begins
     * @param depth at the outlet, above the sole, m
     */
    public record Taken(
            OutletAt outlet,
            double flow,
            double fromLeft,
            double fromRight,
            double leftEnd,
            double rightEnd,
            double depth) {}

    /** Where the water would spill first. */
    public WaterSurface.At worst() {
        return surface.worst();
    }

    /** Over which lip it would. */
    public Section.Lip spillsOver() {
        return run.channel().section().lowerLip();
    }
}
