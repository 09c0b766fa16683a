package eavesproof.app.cli;

import eavesproof.app.RuleSets;
import eavesproof.rules.RuleBook;
import java.io.IOException;
import java.util.List;

/** Shows which rule sets came with the program. */
final class RulesListCommand implements Command {
    private static final int MEANING = 20;

    @Override
    public String name() {
        return "rules list";
    }

    @Override
    public String takes() {
        return "";
    }

    @Override
    public String does() {
        return "shows the rule sets that there are";
    }

    @Override
    public List<String> more() {
        return List.of(
                "A record names one of them, or --rules does; a folder of your own is as good.");
    }

    @Override
    public List<Flag> flags() {
        return List.of();
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, BadInput, IOException {
        asked.nothingElse();
        Page page = new Page(here.colour());
        for (String name : RuleSets.names(here.shippedRules())) {
            RuleBook book = RulesOnDisk.of(() -> RuleSets.book(name, here.shippedRules()));
            int layers = book.layers().size();
            String on = layers > 1 ? ", on " + book.layers().get(layers - 2).name() : "";
            page.pair(
                    0,
                    MEANING,
                    name,
                    book.title()
                            + " ("
                            + book.jurisdiction()
                            + "): "
                            + book.rules().size()
                            + " requirements"
                            + on);
        }
        here.show(page.text());
        return 0;
    }
}
