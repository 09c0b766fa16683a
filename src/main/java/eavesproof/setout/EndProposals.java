package eavesproof.setout;

import eavesproof.job.Run.Fascia;
import eavesproof.job.Run.Straight;
import eavesproof.judge.Ruling;
import eavesproof.survey.Facts;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The outermost bracket towards an end of the gutter and of the timber: move it, or add one. */
final class EndProposals {
    private final Case here;
    private final String run;
    private final String gutterEnd;
    private final Straight straight;
    private final boolean left;
    private final double lengthMm;

    private EndProposals(Case here, String run, String gutterEnd, Straight straight) {
        this.here = here;
        this.run = run;
        this.gutterEnd = gutterEnd;
        this.straight = straight;
        left = gutterEnd.endsWith(".left");
        Double length = straight.lengthMm();
        lengthMm = length == null ? Double.NaN : length;
    }

    static List<Proposal> of(Case here, List<Ruling> group) {
        Ruling first = group.get(0);
        String end = Case.key(first, "gutterEnd");
        return Parts.straight(here.job(), Case.straight(first))
                .filter(it -> it.lengthMm() != null)
                .map(it -> new EndProposals(here, Case.run(first), end, it).of())
                .orElse(List.of());
    }

    /** Where the first bracket from an end may be for every rule on that end, if anywhere. */
    static Optional<Double> place(Case here, String run, Straight straight, boolean left) {
        String end = straight.id() + (left ? ".left" : ".right");
        EndProposals at = new EndProposals(here, run, end, straight);
        Case.Limits window = at.window();
        return window.atLeast() > window.atMost()
                ? Optional.empty()
                : Optional.of(at.station(Grid.near(at.middle(window))));
    }

    /** From the gutter's end inwards, mm. */
    private Case.Limits window() {
        Map<String, String> keys = Map.of("run", run, "gutterEnd", gutterEnd);
        Case.Limits end = here.limits(Facts.EndSupport.class, keys);
        Case.Limits window = new Case.Limits(0, lengthMm).and(0, Grid.down(end.atMost()));
        Fascia fascia = straight.fascia();
        Double timber = fascia == null ? null : left ? fascia.beginsMm() : fascia.endsMm();
        if (timber == null) {
            return window;
        }
        Case.Limits first = here.limits(Facts.TimberEndBracket.class, keys);
        double offset = left ? timber : lengthMm - timber;
        double least = Grid.up(offset + Math.max(0, first.atLeast()));
        return window.and(least, Grid.down(offset + first.atMost()));
    }

    /** Our choice where nothing bounds it: as near as practice has it, about 50 mm. */
    private double middle(Case.Limits window) {
        double middle = (window.atLeast() + window.atMost()) / 2;
        double usual = window.atLeast() + 50;
        return Math.min(middle, usual);
    }

    private double station(double inwardsMm) {
        return left ? inwardsMm : lengthMm - inwardsMm;
    }

    private List<Proposal> of() {
        Case.Limits window = window();
        List<Support> brackets =
                Support.of(here.job(), straight).stream().filter(Support::isBracket).toList();
        if (window.atLeast() > window.atMost() || brackets.isEmpty()) {
            return List.of();
        }
        Support outermost = brackets.get(left ? 0 : brackets.size() - 1);
        double now = station(outermost.stationMm());
        double nearest = Math.min(window.atMost(), Math.max(window.atLeast(), now));
        Set<Double> places = new LinkedHashSet<>();
        places.add(nearest);
        places.add(Grid.near(middle(window)));
        Room room = Room.forBracket(here, run, straight);
        List<Proposal> proposals = new ArrayList<>();
        for (double inwards : places) {
            double at = station(inwards);
            if (room.free(at) && at != outermost.stationMm()) {
                String words = "move bracket " + outermost.id() + " to " + Grid.mm(at);
                proposals.add(
                        new Proposal(
                                words + " on straight " + straight.id(),
                                Edits.moveBracket(here.job(), straight.id(), outermost.id(), at)));
            }
        }
        if (now > window.atMost()) {
            for (double inwards : places) {
                if (room.free(station(inwards))) {
                    proposals.add(
                            NewBracket.at(here, run, straight.id(), List.of(station(inwards))));
                }
            }
        }
        return proposals;
    }
}
