package eavesproof.survey;

import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** What a run lets out by its overflow measures, and the rain and roof that they must serve. */
final class OverflowWater {
    private static final double MM_PER_M = 1000;
    private static final double SECONDS = 3600;

    private final String run;
    private final Answers answers;

    private OverflowWater(String run, Answers answers) {
        this.run = run;
        this.answers = answers;
    }

    /**
     * @param design the rain that overflows are reckoned for
     */
    static void answer(
            Trough trough,
            Found<DesignRain> design,
            Found<Catchments.Gathered> roof,
            Basis basis,
            Answers answers) {
        OverflowWater of = new OverflowWater(trough.id(), answers);
        design.either(of::rain, why -> answers.gap(Facts.OverflowRain.class, why, of.run));
        roof.either(of::roof, why -> answers.gap(Facts.RunRoof.class, why, of.run));
        Found<Double> length = length(trough);
        Found.both(roof, length, (all, mm) -> all.totalM2() / mm * MM_PER_M)
                .either(of::width, why -> answers.gap(Facts.RoofWidth.class, why, of.run));
        Overflows.of(trough.run(), length, basis)
                .either(
                        capacity -> of.capacity(capacity, roof, basis),
                        why -> {
                            answers.gap(Facts.OverflowCapacity.class, why, of.run);
                            answers.gap(Facts.OverflowEachMetre.class, why, of.run);
                        });
    }

    private static Found<Double> length(Trough trough) {
        return Found.by(
                () -> {
                    double sum = 0;
                    for (int i = 0; i < trough.straights().size(); i++) {
                        sum += trough.length(i).need().value();
                    }
                    if (sum <= 0) {
                        throw Found.lacking(
                                "run " + trough.id() + " is recorded without any length");
                    }
                    return sum;
                });
    }

    private void rain(DesignRain design) {
        answers.known(
                new Facts.OverflowRain(run, design.mmPerH()),
                Uncertain.exact(design.mmPerH()),
                GutterWater.array(design.workings()));
    }

    private void roof(Catchments.Gathered all) {
        Uncertain m2 = Uncertain.exact(all.totalM2());
        List<Working> workings = new ArrayList<>(all.workings());
        workings.add(Answers.working("roof of the run", m2, Unit.M2, "the sum"));
        answers.known(new Facts.RunRoof(run, m2.value()), m2, GutterWater.array(workings));
    }

    private void width(double metres) {
        Uncertain width = Uncertain.exact(metres);
        answers.known(
                new Facts.RoofWidth(run, metres),
                width,
                Answers.working(
                        "roof for each metre of gutter",
                        width,
                        Unit.M,
                        "roof of the run, as it is counted / its length"));
    }

    private void capacity(
            Overflows.Capacity capacity, Found<Catchments.Gathered> roof, Basis basis) {
        List<Working> workings = new ArrayList<>(capacity.workings());
        workings.add(GutterWater.flow("capacity", capacity.allLs(), "the sum"));
        Found.both(
                        roof,
                        basis.amount(BasisKey.RUN_OFF),
                        (all, runOff) -> runOff.value() * all.totalM2())
                .map(
                        m2 ->
                                workings.add(
                                        new Working(
                                                "greatest rain while all outlets are blocked",
                                                Decimals.with(
                                                        capacity.allLs() * SECONDS / m2,
                                                        Unit.MM_PER_H),
                                                "capacity / (run-off x roof)")));
        answers.known(
                new Facts.OverflowCapacity(run, capacity.allLs()),
                Uncertain.exact(capacity.allLs()),
                GutterWater.array(workings));
        workings.clear();
        workings.addAll(capacity.workings());
        workings.add(
                GutterWater.flow(
                        "capacity for each metre",
                        capacity.eachMetreLs(),
                        "of all of them / length of the run"));
        answers.known(
                new Facts.OverflowEachMetre(run, capacity.eachMetreLs()),
                Uncertain.exact(capacity.eachMetreLs()),
                GutterWater.array(workings));
    }
}
