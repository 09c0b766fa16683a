package eavesproof.survey;

import eavesproof.job.Gutter;
import eavesproof.job.Run;
import eavesproof.quantity.Decimals;
import eavesproof.quantity.Uncertain;
import eavesproof.quantity.Unit;

/**
 * What warmth does to a gutter: a length of it changes by itself times the coefficient of the
 * material times the degrees. How much, and how warm and cold it gets, the rule set states.
 *
 * @param fitted the temperature of the gutter itself when it was fitted, degrees Celsius
 * @param mmPerMC the coefficient, mm for each metre and degree
 */
record Expansion(
        Uncertain fitted,
        String light,
        Basis.Amount mmPerMC,
        Basis.Amount coldest,
        Basis.Amount warmest) {
    /**
     * Our choice: a gutter's temperature is known to 2 degrees in the shade, and to 5 in the sun.
     */
    private static final double SHADE_C = 2;

    private static final double SUN_C = 5;

    private static final double SQRT_3 = StrictMath.sqrt(3);
    private static final double MM_IN_A_M = 1000;
    private static final int DECIMALS = 4;

    static Found<Expansion> of(Run run, Found<Gutter> gutter, Basis basis) {
        return Found.by(
                () -> {
                    String name = "of run " + run.id() + " when it was fitted";
                    String what = "temperature of the gutter " + name;
                    Run.Fitted fitted = Found.need(run.fitted(), "the " + what);
                    double celsius = Found.need(fitted.temperatureC(), "the " + what);
                    Gutter of = gutter.need();
                    String material =
                            Found.need(of.material(), "the material of gutter " + of.id());
                    boolean shade = "shade".equals(fitted.light());
                    double unsure = (shade ? SHADE_C : SUN_C) / SQRT_3;
                    Basis.Amount mmPerMC = basis.of(BasisKey.EXPANSION_MM_M_C, material).need();
                    Basis.Amount coldest = basis.of(BasisKey.COLDEST_C, material).need();
                    Basis.Amount warmest = basis.of(BasisKey.WARMEST_C, material).need();
                    if (celsius > warmest.value() || celsius < coldest.value()) {
                        throw Found.lacking(beyond(what, celsius, coldest, warmest));
                    }
                    return new Expansion(
                            Uncertain.of(celsius, what, unsure),
                            shade ? "in the shade" : "in the sun, or not said",
                            mmPerMC,
                            coldest,
                            warmest);
                });
    }

    private static String beyond(
            String what, double celsius, Basis.Amount coldest, Basis.Amount warmest) {
        return "the "
                + what
                + ", "
                + Decimals.with(celsius, Unit.CELSIUS)
                + ", lies outside what is reckoned with, "
                + Decimals.with(coldest.value(), Unit.CELSIUS)
                + " to "
                + Decimals.with(warmest.value(), Unit.CELSIUS);
    }

    /** By how much a length still grows until it is as warm as it gets, mm. */
    Uncertain grows(Uncertain lengthMm) {
        return change(lengthMm, Uncertain.exact(warmest.value()).minus(fitted));
    }

    /** By how much a length still shrinks until it is as cold as it gets, mm. */
    Uncertain shrinks(Uncertain lengthMm) {
        return change(lengthMm, fitted.minus(Uncertain.exact(coldest.value())));
    }

    Working temperature() {
        return Answers.working("temperature when fitted", fitted, Unit.CELSIUS, light);
    }

    Working growth(Uncertain mm) {
        return Answers.working("grows by", mm, Unit.MM, formula("warmest", warmest));
    }

    Working shrinkage(Uncertain mm) {
        return Answers.working("shrinks by", mm, Unit.MM, formula("coldest", coldest));
    }

    private String formula(String which, Basis.Amount extreme) {
        return "moving length x "
                + Decimals.plain(mmPerMC.value(), DECIMALS)
                + " mm for each metre and degree ("
                + mmPerMC.source()
                + "), to "
                + Decimals.with(extreme.value(), Unit.CELSIUS)
                + " at its "
                + which
                + " ("
                + extreme.source()
                + ")";
    }

    private Uncertain change(Uncertain lengthMm, Uncertain degrees) {
        return lengthMm.times(mmPerMC.value() / MM_IN_A_M).times(degrees);
    }
}
