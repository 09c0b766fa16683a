package eavesproof.survey;

import eavesproof.hydraulics.Weir;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;
import eavesproof.survey.Found.Lacking;
import java.util.ArrayList;
import java.util.List;

/**
 * The greatest rain that a run can spill over its front alone while all its outlets are blocked:
 * the front lip is a weir as long as the run, and the water may stand above it as far as the back
 * edge lies higher. Ends and corners are not counted, nor slots, weirs and other overflows.
 */
final class BlockedRain {
    private static final double MM_PER_M = 1000;
    private static final double LITRES = 1000;
    private static final double SECONDS = 3600;

    private BlockedRain() {}

    static void answer(
            Trough trough, Found<Catchments.Gathered> roof, Basis basis, Answers answers) {
        String run = trough.id();
        Found<FrontLower> tilt = FrontLower.of(trough);
        Found<Boolean> lower = tilt.then(FrontLower::lowerAllAlong);
        if (lower instanceof Found.Value<Boolean> told && !told.value()) {
            String why = "the front bead of run " + run + " does not lie lower all along";
            answers.none(Facts.BlockedRain.class, why, run);
            return;
        }
        List<Working> workings = new ArrayList<>();
        Found.by(
                        () -> {
                            lower.need();
                            return rain(trough, tilt.need().least(), roof.need(), basis, workings);
                        })
                .either(
                        rain ->
                                answers.known(
                                        new Facts.BlockedRain(run, rain.value()),
                                        rain,
                                        GutterWater.array(workings)),
                        why -> answers.gap(Facts.BlockedRain.class, why, run));
    }

    private static Uncertain rain(
            Trough trough,
            Uncertain headMm,
            Catchments.Gathered roof,
            Basis basis,
            List<Working> workings)
            throws Lacking {
        Basis.Amount part = basis.amount(BasisKey.LIP_COEFFICIENT).need();
        Basis.Amount runOff = basis.amount(BasisKey.RUN_OFF).need();
        double lengthMm = 0;
        for (int i = 0; i < trough.straights().size(); i++) {
            lengthMm += trough.length(i).need().value();
        }
        double head = headMm.value() / MM_PER_M;
        Weir lip = Weir.withDischargeCoefficient(part.value());
        double litres = lip.flow(lengthMm / MM_PER_M, head) * LITRES;
        double catches = runOff.value() * roof.totalM2();
        if (catches <= 0) {
            throw Found.lacking("no rain runs off to run " + trough.id());
        }
        double rain = litres * SECONDS / catches;
        workings.add(
                Answers.working(
                        "front bead below back edge",
                        headMm,
                        Unit.MM,
                        "the least of the readings"));
        workings.add(
                new Working("length of the lip", Decimals.with(lengthMm, Unit.MM), "of the run"));
        workings.add(
                GutterWater.flow(
                        "goes over the front lip",
                        litres,
                        "0.67 Cd L sqrt(2 g) h^1.5, Cd "
                                + Decimals.plain(part.value(), 3)
                                + "; "
                                + part.source()));
        workings.add(
                new Working(
                        "greatest rain",
                        Decimals.with(rain, Unit.MM_PER_H),
                        "that flow / (run-off x roof)"));
        // Flow goes with h^1.5: sensitivity 1.5 of the relative error (JCGM 100:2008 5.1.2).
        Uncertain off = headMm.minus(Uncertain.exact(headMm.value()));
        return Sureness.computed(
                Uncertain.exact(rain).plus(off.times(1.5 * rain / headMm.value())));
    }
}
