package eavesproof.app.cli;

import eavesproof.app.cli.Page.Look;
import eavesproof.survey.BasisKey;
import eavesproof.survey.FactKind;
import eavesproof.survey.Vocabulary;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Shows what a rule can speak of, for people who write one. */
final class RulesWordsCommand implements Command {
    private static final int UNDER = 4;

    @Override
    public String name() {
        return "rules words";
    }

    @Override
    public String takes() {
        return "[WORD]";
    }

    @Override
    public String does() {
        return "shows what a rule can speak of, and what each of it measures";
    }

    @Override
    public List<String> more() {
        return List.of(
                "With a WORD only what has that word in it: rules words bracket. Each is shown as a"
                        + " rule file writes it, its keys and last its measure.");
    }

    @Override
    public List<Flag> flags() {
        return List.of();
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, IOException {
        String word = asked.atMostOne("WORD").orElse("");
        Page page = new Page(here.colour());
        boolean any = false;
        for (FactKind kind : Vocabulary.kinds()) {
            String keys = kind.keys().isEmpty() ? "" : String.join(", ", kind.keys()) + ", ";
            String written = kind.name() + "(" + keys + kind.measure() + ")";
            String is = kind.unit().map(unit -> "in " + unit.symbol()).orElse("one of ");
            String line = kind.says() + "; " + is + String.join(", ", kind.words());
            any |= show(page, word, written, line);
        }
        for (BasisKey key : BasisKey.values()) {
            any |= show(page, word, "basis " + key.key(), key.says() + "; " + key.expected());
        }
        if (!any) {
            throw new WrongUse("nothing that a rule can speak of has " + word + " in it");
        }
        here.show(page.text());
        return 0;
    }

    private static boolean show(Page page, String word, String written, String line) {
        String all = (written + " " + line).toLowerCase(Locale.ROOT);
        boolean fits = all.contains(word.toLowerCase(Locale.ROOT));
        if (fits) {
            page.say(0, Look.STRONG, written).say(UNDER, UNDER, Look.PLAIN, line);
        }
        return fits;
    }
}
