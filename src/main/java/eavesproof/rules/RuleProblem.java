package eavesproof.rules;

/**
 * Why a rule set is refused.
 *
 * @param where file and line, {@code support.drl:12}; or only the file where no line can be named
 */
public record RuleProblem(String where, String found, String expected) {

    public static RuleProblem at(String file, int line, String found, String expected) {
        return new RuleProblem(line > 0 ? file + ":" + line : file, found, expected);
    }

    /** As people read it, on one line. */
    public String text() {
        return where + ": found " + found + "; expected " + expected;
    }
}
