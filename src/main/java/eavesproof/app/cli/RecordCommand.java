package eavesproof.app.cli;

import eavesproof.app.RuleSets;
import eavesproof.app.WholeFile;
import eavesproof.exchange.JobFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Writes a record to fill in. */
final class RecordCommand implements Command {
    private static final Flag TO = new Flag("o", "out", "JOB.json", "the file to write");
    private static final Flag RULES =
            new Flag("", "rules", "NAME", "the rule set that the job is to be held against");

    /** The rule set that knows no country, for whoever names none. */
    private static final String USUAL_RULES = "trade-practice";

    @Override
    public String name() {
        return "record";
    }

    @Override
    public String takes() {
        return "-o JOB.json";
    }

    @Override
    public String does() {
        return "writes a new record to fill in";
    }

    @Override
    public List<String> more() {
        return List.of(
                "Every key is there and null, with one example in each list. Leave null what you did"
                        + " not measure: it is then shown as not recorded. An empty list says that"
                        + " there are none. The samples folder has records that are filled in.");
    }

    @Override
    public List<Flag> flags() {
        return List.of(TO, RULES, Flag.FORCE);
    }

    @Override
    public int run(Asked asked, Surroundings here) throws WrongUse, IOException {
        asked.nothingElse();
        Path target = asked.file(TO);
        String rules = asked.value(RULES).orElse(USUAL_RULES);
        List<String> shipped = RuleSets.names(here.shippedRules());
        if (!shipped.contains(rules)) {
            throw new WrongUse(
                    "there is no rule set " + rules + "; there are " + String.join(", ", shipped));
        }
        new WholeFile(target, asked.has(Flag.FORCE))
                .write(JobFile.blank(rules).getBytes(StandardCharsets.UTF_8));
        here.messages().println("written: " + target);
        return 0;
    }
}
