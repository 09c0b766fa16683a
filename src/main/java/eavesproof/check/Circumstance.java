package eavesproof.check;

import eavesproof.quantity.Decimals;
import eavesproof.rules.Rule;
import eavesproof.survey.Answer;
import eavesproof.survey.FactKind;
import eavesproof.survey.Measure;

/** What one comparison of a rule makes of one answer. */
record Circumstance(Is is, String because) {
    enum Is {
        HOLDS,
        /** It holds by the value itself, but not by more than its expanded uncertainty. */
        NEAR_HOLDS,
        /** It fails by the value itself, but not by more than its expanded uncertainty. */
        NEAR_FAILS,
        /** It holds by the value itself, and nobody said how sure the value is. */
        UNSURE_HOLDS,
        UNSURE_FAILS,
        FAILS,
        /** It was not recorded. */
        GAP
    }

    boolean holdsByValue() {
        return is == Is.HOLDS || is == Is.NEAR_HOLDS || is == Is.UNSURE_HOLDS;
    }

    /** Compares a known answer. A condition on a key compares ids and is never near. */
    static Circumstance of(Answer.Known known, Rule.Compare compare) {
        FactKind kind = known.kind();
        if (!compare.field().equals(kind.measure())) {
            String id = known.place().key(compare.field()).orElse("");
            boolean same = compare.literal() instanceof Rule.Text text && text.word().equals(id);
            return new Circumstance(
                    same ? Is.HOLDS : Is.FAILS,
                    kind.title() + ": " + compare.field() + " is " + id);
        }
        String recorded = kind.title() + " is " + known.measure().text();
        if (known.measure() instanceof Measure.Word word) {
            boolean same =
                    compare.literal() instanceof Rule.Text text && text.word().equals(word.word());
            return new Circumstance(same ? Is.HOLDS : Is.FAILS, recorded);
        }
        if (!(compare.literal() instanceof Rule.Num literal)) {
            throw new Engine.EngineFault(kind.name() + " is a number and was compared with a word");
        }
        Measure.Number number = (Measure.Number) known.measure();
        double value = number.value().value();
        boolean holds = holds(value, compare.operator(), literal.value());
        String condition =
                recorded
                        + " (the condition is "
                        + compare.operator().sign()
                        + " "
                        + literal.written()
                        + " "
                        + number.unit().symbol()
                        + ")";
        if (!number.value().isStated()) {
            return new Circumstance(
                    holds ? Is.UNSURE_HOLDS : Is.UNSURE_FAILS,
                    condition + ", and how sure it is was not recorded");
        }
        double expanded = number.value().expandedUncertainty();
        if (expanded > 0 && Math.abs(value - literal.value()) <= expanded) {
            return new Circumstance(
                    holds ? Is.NEAR_HOLDS : Is.NEAR_FAILS,
                    condition + ", within its uncertainty of " + plusMinus(expanded, number));
        }
        return new Circumstance(holds ? Is.HOLDS : Is.FAILS, condition);
    }

    private static String plusMinus(double expanded, Measure.Number number) {
        return "\u00b1 " + Decimals.with(expanded, number.unit());
    }

    private static boolean holds(double value, Rule.Operator operator, double literal) {
        return switch (operator) {
            case EQUAL -> value == literal;
            case LESS -> value < literal;
            case AT_MOST -> value <= literal;
            case MORE -> value > literal;
            case AT_LEAST -> value >= literal;
        };
    }
}
