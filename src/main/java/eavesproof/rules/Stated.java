package eavesproof.rules;

/**
 * One thing that a rule set states of its country for the engineering: a rain, a coefficient, a
 * method.
 *
 * @param source where it comes from
 */
public record Stated(Rule.Literal is, Rule.Cited source) {
    /** The same with its source settled. */
    Stated citing(Rule.Cited settled) {
        return new Stated(is, settled);
    }

    /** As a rule set writes it. */
    public String text() {
        return is instanceof Rule.Num number ? number.written() : ((Rule.Text) is).word();
    }
}
