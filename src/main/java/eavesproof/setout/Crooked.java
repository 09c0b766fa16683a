package eavesproof.setout;

import eavesproof.judge.Ruling;
import eavesproof.quantity.Uncertain;
import eavesproof.survey.Answer;
import eavesproof.survey.Facts;
import eavesproof.survey.Measure;
import eavesproof.survey.Vocabulary;
import java.util.List;
import java.util.Optional;

/**
 * A gutter is hung by the level and not by its fascia: said where the fascia was read and is
 * crooked.
 */
final class Crooked {
    /** Our choice: a fascia that departs less from its line is as straight as they come. */
    private static final double STRAIGHT_MM = 2;

    private Crooked() {}

    /** The same changes, with a word about the fascia of the run. */
    static List<Proposal> told(Case here, Ruling ruling, List<Proposal> proposals) {
        return worst(here, Case.run(ruling))
                .map(
                        word ->
                                proposals.stream()
                                        .map(it -> new Proposal(it.words() + word, it.edited()))
                                        .toList())
                .orElse(proposals);
    }

    private static Optional<String> worst(Case here, String run) {
        double worst = STRAIGHT_MM;
        String words = null;
        for (Answer answer : here.checked().survey().of(Vocabulary.kind(Facts.FasciaSag.class))) {
            if (answer instanceof Answer.Known known
                    && known.fact() instanceof Facts.FasciaSag fascia
                    && fascia.run().equals(run)
                    && known.measure() instanceof Measure.Number number) {
                Uncertain sag = number.value();
                double mm = Math.abs(sag.value());
                if (mm > worst && sag.isStated() && mm > sag.expandedUncertainty()) {
                    worst = mm;
                    words =
                            "; the fascia of straight "
                                    + fascia.straight()
                                    + (sag.value() > 0 ? " sags by " : " bows up by ")
                                    + Grid.mm(mm)
                                    + ": pack the brackets out to the line, and do not follow it";
                }
            }
        }
        return Optional.ofNullable(words);
    }
}
