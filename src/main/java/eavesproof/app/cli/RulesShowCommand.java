package eavesproof.app.cli;

import eavesproof.app.RulesInWords;
import java.io.IOException;
import java.util.List;

/** Shows what a rule set will check, for people who do not read rule files. */
final class RulesShowCommand implements Command {

    @Override
    public String name() {
        return "rules show";
    }

    @Override
    public String takes() {
        return RulesOnDisk.CALLED;
    }

    @Override
    public String does() {
        return "shows every requirement of a rule set in words";
    }

    @Override
    public List<String> more() {
        return List.of(
                "Each with its limit, when it applies, where it comes from and how far that binds;"
                        + " then what the rule set does not check. Show it to your inspector before"
                        + " you rely on it.");
    }

    @Override
    public List<Flag> flags() {
        return List.of();
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
        String named = asked.one(RulesOnDisk.CALLED);
        RulesInWords rules = RulesInWords.of(RulesOnDisk.load(named, here));
        here.show(RulesSheetText.of(rules, here.colour()));
        return 0;
    }
}
