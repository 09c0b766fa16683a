package eavesproof.drawing;

import eavesproof.job.Run;
import eavesproof.job.WayPart;
import eavesproof.survey.WaterLine;
import java.util.List;
import java.util.Optional;

/**
 * One straight as it was built, with what was found about it.
 *
 * @param run the id of its run
 * @param outlets those on this straight
 * @param findings those that need action and lie on this straight
 * @param water in its run in the design rain, where that is known
 */
public record Built(
        String run,
        Run.Straight straight,
        List<WayPart.Outlet> outlets,
        List<Numbered> findings,
        List<Slope> slopes,
        Optional<WaterLine> water) {
    public Built {
        outlets = List.copyOf(outlets);
        findings = List.copyOf(findings);
        slopes = List.copyOf(slopes);
    }
}
