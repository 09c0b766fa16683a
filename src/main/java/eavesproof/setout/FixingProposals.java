package eavesproof.setout;

import eavesproof.job.Job;
import eavesproof.judge.Demanded;
import eavesproof.judge.Ruling;
import java.util.ArrayList;
import java.util.List;

/** How brackets, and what else holds the gutter up, are screwed to the fascia. */
final class FixingProposals {
    private FixingProposals() {}

    /** Screw holes left empty. */
    static List<Proposal> screws(Case here, List<Ruling> group) {
        Job job = here.job();
        List<String> words = new ArrayList<>();
        for (Ruling ruling : group) {
            String id = Case.key(ruling, "bracket");
            double most = ruling.demanded() instanceof Demanded.AtMost it ? it.limit() : 0;
            int missing = (int) StrictMath.ceil(Case.measured(ruling) - most);
            String straight = Case.straight(ruling);
            words.add(missing + " more in " + Parts.named(job, straight, id));
            job =
                    Edits.fixing(
                            job,
                            straight,
                            id,
                            it ->
                                    Edits.with(
                                            it,
                                            "screwsFitted",
                                            Edits.count(it, "screwsFitted") + missing));
        }
        return List.of(new Proposal("fit screws: " + Grid.listed(words), job));
    }

    /** Screws that do not sit deep enough: longer ones. */
    static List<Proposal> bite(Case here, List<Ruling> group) {
        double longer = 0;
        for (Ruling ruling : group) {
            if (ruling.demanded() instanceof Demanded.AtLeast least) {
                double more = least.limit() + Case.kept(ruling) - Case.measured(ruling);
                longer = Math.max(longer, StrictMath.ceil(more));
            }
        }
        Job job = here.job();
        List<String> ids = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (Ruling ruling : group) {
            String id = Case.key(ruling, "bracket");
            double bite = Case.measured(ruling) + longer;
            ids.add(Parts.named(job, Case.straight(ruling), id));
            least = Math.min(least, bite);
            job =
                    Edits.fixing(
                            job, Case.straight(ruling), id, it -> Edits.with(it, "biteMm", bite));
        }
        if (!(longer > 0)) {
            return List.of();
        }
        return List.of(
                new Proposal(
                        "replace the screws of "
                                + listed(ids)
                                + " with ones "
                                + Grid.mm(longer)
                                + " longer, so that they sit at least "
                                + Grid.mm(least)
                                + " deep in sound timber",
                        job));
    }

    static List<Proposal> screwMetal(Case here, List<Ruling> group) {
        Job job = here.job();
        if (!(group.get(0).demanded() instanceof Demanded.OneOf allowed)) {
            return List.of();
        }
        String metal = allowed.words().get(0);
        List<String> ids = new ArrayList<>();
        for (Ruling ruling : group) {
            String id = Case.key(ruling, "bracket");
            ids.add(Parts.named(job, Case.straight(ruling), id));
            job =
                    Edits.fixing(
                            job,
                            Case.straight(ruling),
                            id,
                            it -> Edits.with(it, "screwMetal", metal));
        }
        return List.of(
                new Proposal("replace the screws of " + listed(ids) + " with " + metal, job));
    }

    /** "brackets b1 and b2", or each by its own name where not all are brackets. */
    private static String listed(List<String> names) {
        String word = "bracket ";
        boolean all = names.stream().allMatch(it -> it.startsWith(word));
        return all && names.size() > 1
                ? "brackets "
                        + Grid.listed(
                                names.stream().map(it -> it.substring(word.length())).toList())
                : Grid.listed(names);
    }
}
