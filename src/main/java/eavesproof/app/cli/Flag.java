package eavesproof.app.cli;

/**
 * An option of a command.
 *
 * @param letter a short form; empty where there is none
 * @param argument what follows it, as the manual calls it; empty where nothing does
 * @param says what it is for
 * @param repeats whether it may be given more than once
 */
record Flag(String letter, String name, String argument, String says, boolean repeats) {
    Flag(String letter, String name, String argument, String says) {
        this(letter, name, argument, says, false);
    }

    static final Flag RULES =
            new Flag(
                    "",
                    "rules",
                    "NAME|FOLDER",
                    "the rule set to hold it against, in place of the one that the record names");
    static final Flag TEMPLATE =
            new Flag(
                    "",
                    "template",
                    "NAME|FOLDER",
                    "the templates to set it by, in place of installer-record");
    static final Flag TEMPLATE_OF_RULES =
            new Flag(
                    "",
                    "template",
                    "NAME|FOLDER",
                    "the templates to set it by, in place of rule-sheet");
    static final Flag FORCE = new Flag("", "force", "", "replace a file that is there already");
    static final Flag HELP = new Flag("h", "help", "", "say what this command does");
    static final Flag TRACE =
            new Flag("", "trace", "", "if the program fails, show where in the program");

    /** As it is typed for short: -o JOB.json. */
    String typed() {
        return (letter.isEmpty() ? "--" + name : "-" + letter) + following();
    }

    /** Every way to type it: -o, --out JOB.json. */
    String everyWay() {
        return (letter.isEmpty() ? "" : "-" + letter + ", ") + "--" + name + following();
    }

    private String following() {
        return argument.isEmpty() ? "" : " " + argument;
    }
}
