package eavesproof.drawing;

import eavesproof.job.Job;
import eavesproof.job.Run;
import eavesproof.survey.Survey;
import eavesproof.survey.WaterLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The water of one run in the design rain: to the left across the gutter where the water comes
 * nearest to the lip, to the right every part that it passes, with what comes to it against what it
 * carries.
 *
 * @param notes what the drawing cannot show, and what is missing from it, in sentences
 */
public record WaterSheet(Drawing drawing, List<String> notes) {
    static final double SMALL_PT = 6.8;
    private static final double ACROSS_SHARE = 0.44;

    public WaterSheet {
        notes = List.copyOf(notes);
    }

    /**
     * @param widthMm of the paper that it may take
     */
    public static WaterSheet of(Job job, Run run, Survey survey, double widthMm) {
        Optional<WaterLine> line = survey.water(run.id());
        Passage passage = Passage.of(job, run, survey);
        double left = ACROSS_SHARE * widthMm;
        GutterAcross across = new GutterAcross(line, run.eavesSection(), left - 2);
        PassageBars bars = new PassageBars(passage, left + 2, widthMm);
        List<Mark> marks = new ArrayList<>(across.marks());
        marks.addAll(bars.marks());
        WaterWords words = new WaterWords(run, survey, passage);
        return new WaterSheet(
                new Drawing(
                        widthMm, Math.max(across.heightMm(), bars.heightMm()), words.alt(), marks),
                words.notes());
    }
}
