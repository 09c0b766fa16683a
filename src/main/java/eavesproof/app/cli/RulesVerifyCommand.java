package eavesproof.app.cli;

import eavesproof.app.VerifyRules;
import eavesproof.app.cli.Page.Look;
import eavesproof.findings.InWords;
import java.io.IOException;
import java.util.List;

/** Says whether a rule set is in order. */
final class RulesVerifyCommand implements Command {
    private static final int TEXT = 2;
    private static final int UNDER = 4;

    @Override
    public String name() {
        return "rules verify";
    }

    @Override
    public String takes() {
        return RulesOnDisk.CALLED;
    }

    @Override
    public String does() {
        return "says whether a rule set is in order";
    }

    @Override
    public List<String> more() {
        return List.of(
                "Its files are in the plain form, every requirement names document and clause, and the"
                        + " worked examples in its folder come to the verdicts that they expect.",
                "It ends with 0 if all is well, 1 if an example or a source is not, 65 if the rule set"
                        + " cannot be taken. It cannot know whether a limit is the right one.");
    }

    @Override
    public List<Flag> flags() {
        return List.of();
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
        String named = asked.one(RulesOnDisk.CALLED);
        VerifyRules found = RulesOnDisk.of(() -> VerifyRules.of(named, here.shippedRules()));
        Page page = new Page(here.colour());
        found.wrong().forEach(wrong -> page.say(0, UNDER, Look.ALARM, wrong));
        page.say(
                0,
                named
                        + ": "
                        + InWords.count(found.rules(), "requirement")
                        + " in the plain form; "
                        + InWords.count(found.expectations(), "verdict")
                        + " expected by "
                        + InWords.count(found.examples(), "worked example"));
        listed(page, "no worked example of:", found.withoutExample());
        listed(page, "look again at:", found.lookAgain());
        page.say(
                0,
                Look.STRONG,
                found.isWell()
                        ? "All is well."
                        : InWords.count(found.wrong().size(), "thing") + " not well.");
        here.show(page.text());
        return found.isWell() ? 0 : 1;
    }

    private static void listed(Page page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.say(0, title);
            lines.forEach(line -> page.say(TEXT, UNDER, Look.PLAIN, line));
        }
    }
}
